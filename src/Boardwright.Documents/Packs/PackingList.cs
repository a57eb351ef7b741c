using Boardwright.Documents.Setting;

namespace Boardwright.Documents.Packs;

/// <summary>Packing list: the packs of an order on the first sheet, then the piece tally of each.</summary>
public static class PackingList
{
    private static readonly Column[] PackColumns =
    [
        new("Pack", 16, Align.Left, Bold: true), new("Wood", 52, Align.Left), new("Moisture", 26, Align.Left), new("Heat\ntreated", 20, Align.Left),
        new("Pieces", 14), new("bf", 16, Bold: true), new("m³", 17), new("kg", 15), new("Counted", 16, Pencil: true),
    ];

    /// <param name="paper">A4 or letter. Default A4.</param>
    /// <exception cref="ArgumentException">A pack's subtotals do not add up to its boards.</exception>
    public static byte[] Render(PackingListContent content, Paper? paper = null)
    {
        ArgumentNullException.ThrowIfNull(content);
        foreach (var pack in content.Packs)
            pack.MustAddUp();

        var head = new FormHead("Packing list", content.Order, content.Yard, Print.Day(content.Date));
        using var form = new Form(paper ?? Paper.A4, $"Packing list {content.Order}", content.Date.ToDateTime(TimeOnly.MinValue), head);
        DrawConsignee(form, content);
        DrawPacks(form, content);
        DrawRemarks(form);
        Signatures.Draw(form, "Packed by, day", "Checked by, day", "Received in good order except as noted, day");
        foreach (var pack in content.Packs)
        {
            form.Part = $"pack {pack.Pack}";
            form.NewSheet();
            PieceTally.Draw(form, pack);
        }

        return form.Finish();
    }

    private static void DrawConsignee(Form form, PackingListContent content)
    {
        var fit = Fit.Into(form.Sheet, form.Letters.Bold, content.Customer, form.Width, 2, 14.0, 12.0, 10.0);
        fit.Draw(form.Sheet, form.Left, form.Y);
        form.Y += fit.HeightMm + 1.0;
        if (content.DeliverTo is { } place)
            form.Paragraph("Deliver to: " + place);

        if (content.Promised is { } promised)
            form.Paragraph("Promised for " + Print.Day(promised));

        form.Y += 2.0;
    }

    private static void DrawPacks(Form form, PackingListContent content)
    {
        var rows = content.Packs.Select(pack => Row.Of(
            pack.Pack,
            $"{pack.Thickness} {pack.Species}, {pack.Surface}, {pack.Grade}",
            Moisture(pack),
            Words.Of(pack.HeatTreatment),
            Print.Number(pack.Boards.Count),
            Print.Number(pack.Footage.Count),
            pack.Volume is { } volume ? Print.Number(volume.CubicMetres, 3) : "",
            pack.Weight is { } weight ? Print.Number(weight.Kilograms) : "",
            "")).ToList();
        rows.Add(Total(content.Packs));
        new Table(PackColumns) { RowMm = 10.0, Grows = true }.Draw(form, rows);
        form.Y += 1.0;
        foreach (var basis in content.Packs.Select(pack => pack.Basis).Distinct())
            form.Paragraph(basis == FootageBasis.Net ? FootageStatement.Net : FootageStatement.Gross);

        foreach (var same in content.Packs.Where(pack => pack.MoistureOrdered is not null).GroupBy(pack => pack.MoistureOrdered))
            form.Paragraph($"Moisture of {string.Join(", ", same.Select(pack => pack.Pack))}: {same.Key}.");

        if (content.Packs.Any(pack => pack.HeatTreatment == HeatTreatment.Yes))
            form.Paragraph("Heat treated: yes means a measured core temperature and time, kept with the charge. It is a record, not an official mark.");
    }

    private static void DrawRemarks(Form form)
    {
        const double heightMm = 30.0;
        form.Heading("Remarks at loading and on receipt", heightMm);
        form.Sheet.Box(form.Left, form.Y, form.Width, heightMm, Ink.Fine);
        form.Y += heightMm + 2.0;
    }

    private static Row Total(IReadOnlyList<PackTally> packs)
    {
        // One missing weight or volume makes the sum unknown: leave it blank rather than print a part as the whole.
        static string Sum(IReadOnlyList<PackTally> packs, Func<PackTally, double?> value, int decimals) =>
            packs.All(pack => value(pack) is not null) ? Print.Number(packs.Sum(pack => value(pack)!.Value), decimals) : "";

        return new(
        [
            "Total", packs.Count == 1 ? "1 pack" : $"{packs.Count} packs", "", "",
            Print.Number(packs.Sum(pack => pack.Boards.Count)),
            Print.Number(packs.Sum(pack => pack.Footage.Count)),
            Sum(packs, pack => pack.Volume?.CubicMetres, 3),
            Sum(packs, pack => pack.Weight?.Kilograms, 0),
            "",
        ], Heavy: true);
    }

    internal static string Moisture(PackTally pack) =>
        (pack.MoistureLow, pack.MoistureHigh) is ({ } low, { } high) ? Print.Range(low, high) : "";
}
