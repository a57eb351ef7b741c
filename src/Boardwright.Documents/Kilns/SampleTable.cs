using Boardwright.Documents.Setting;

namespace Boardwright.Documents.Kilns;

/// <summary>The kiln samples: earlier weights with the moisture under each, and empty boxes for today's.</summary>
internal static class SampleTable
{
    private const int DaysMax = 5;
    private const double RowMm = 10.5;

    public static void Draw(Form form, KilnRunSheetContent content)
    {
        if (content.Samples.Count > 0)
            DrawSamples(form, content);

        DrawRate(form, content);
    }

    private static void DrawSamples(Form form, KilnRunSheetContent content)
    {
        var skip = Math.Max(0, content.WeighingDays.Count - DaysMax);
        var columns = new List<Column> { new("Sample", 22, Align.Left, Bold: true), new("Dry weight,\ng", 22) };
        columns.AddRange(content.WeighingDays.Skip(skip).Select(day => new Column(Print.ShortDay(day), 17)));
        columns.AddRange([new("Today,\ng", 24, Pencil: true), new("MC,\n%", 17, Pencil: true), new("Loss a day,\n%", 20, Pencil: true)]);
        form.Heading("Samples: weight, and the moisture content it means", 40.0);
        var rows = content.Samples.Select(sample => new Row([.. Cells(sample, skip)])).ToList();
        new Table(columns) { RowMm = RowMm }.Draw(form, rows);
        DrawSummary(form);
        if (skip > 0)
            form.Paragraph(skip == 1 ? "One earlier weighing is not on this sheet." : $"{skip} earlier weighings are not on this sheet.");
    }

    private static IEnumerable<string> Cells(KilnSample sample, int skip)
    {
        yield return sample.Remark.Length > 0 ? $"{sample.Number}\n{sample.Remark}" : sample.Number;
        yield return Print.Number(sample.DryWeight.Grams, 1);
        foreach (var weighing in sample.Weighings.Skip(skip))
            yield return weighing is null ? "" : $"{Print.Number(weighing.Weight.Grams)}\n{Print.Percent(weighing.Moisture)}";

        yield return "";
        yield return "";
        yield return "";
    }

    /// <summary>Three boxes to sum the round up in.</summary>
    private static void DrawSummary(Form form)
    {
        const double boxMm = 22.0;
        form.Need(11.0);
        var third = form.Width / 4.0;
        string[] names = ["Wettest, %", "Driest, %", "Mean, %", "Weighed by"];
        for (var i = 0; i < names.Length; i++)
        {
            var x = form.Left + (i * third);
            form.Sheet.Text(x, form.Y + 6.0, names[i], form.Letters.Regular(10.0));
            form.Sheet.Box(x + third - boxMm - (i < names.Length - 1 ? 4.0 : 0.0), form.Y, boxMm, 9.0, Ink.Rule);
        }

        form.Y += 12.0;
    }

    private static void DrawRate(Form form, KilnRunSheetContent content)
    {
        var parts = new List<string>();
        if (content.SafeDailyLoss is { } safe)
            parts.Add($"Safe loss {Print.Number(safe.Percent, 1)} % a day{(content.SafeDailyLossBasis is { } basis ? $" ({basis})" : "")}.");

        if (content.LastDailyLoss is { } last)
            parts.Add($"Last measured: {Print.Number(last.Percent, 1)} % a day.");

        if (parts.Count == 0)
            return;

        parts.Add("Faster than safe: hold the step, do not change the setting.");
        form.Paragraph(string.Join(" ", parts), 11.0);
        form.Y += 2.0;
    }
}
