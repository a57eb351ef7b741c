using Boardwright.Documents.Setting;

namespace Boardwright.Documents.Packs;

/// <summary>The tag on a pack: half a sheet, read from the seat of the forklift. On a full sheet two are printed, one for each end.</summary>
public static class PackTag
{
    private const double EdgeMm = 8.0;

    /// <param name="paper">A5 or half letter for one tag, A4 or letter for two. Default A5.</param>
    public static byte[] Render(PackTagContent content, Paper? paper = null)
    {
        ArgumentNullException.ThrowIfNull(content);
        paper ??= Paper.A5;
        var made = content.Date.ToDateTime(TimeOnly.MinValue);
        using var form = new Form(paper, $"Pack tag {content.Pack}", made, null, landscape: !paper.IsFullSheet);
        if (!paper.IsFullSheet)
        {
            new Tag(form, content, 0.0, form.PaperHeightMm).Draw();
            return form.Finish();
        }

        var half = form.PaperHeightMm / 2.0;
        new Tag(form, content, 0.0, half).Draw();
        form.Sheet.Line(0.0, half, form.PaperWidthMm, half, Ink.Dashed);
        new Tag(form, content, half, half).Draw();
        return form.Finish();
    }

    /// <summary>One tag in a field as wide as the paper.</summary>
    private sealed class Tag(Form form, PackTagContent content, double topMm, double heightMm)
    {
        private readonly Sheet sheet = form.Sheet;
        private readonly Lettering letters = form.Letters;
        private readonly double left = EdgeMm;
        private readonly double right = form.PaperWidthMm - EdgeMm;
        private readonly double bottom = topMm + heightMm - EdgeMm;

        public void Draw()
        {
            var y = DrawName(topMm + EdgeMm);
            y = DrawCounts(y);
            y = DrawDrying(y);
            DrawWhose(y);
            DrawStatement();
        }

        private double DrawName(double top)
        {
            const double codeMm = 44.0;
            var width = right - left - codeMm - 4.0;
            QrMark.Draw(sheet, content.CodeText, right - codeMm, top - 3.0, codeMm);
            Fit.Into(sheet, letters.Bold, content.Yard, width - 26.0, 1, 11.0, 10.0, 9.0).Draw(sheet, left, top);
            sheet.Text(left + width, top + Sheet.CapitalMm(letters.Regular(10.0)), Print.Day(content.Date), letters.Regular(10.0), Align.Right);
            var number = Fit.Into(sheet, letters.Bold, content.Pack, width, 1, 84.0, 72.0, 60.0, 48.0, 36.0, 24.0, 18.0);
            number.Draw(sheet, left - 1.0, top + 6.5 + ((20.0 - Sheet.CapitalMm(number.Font)) / 2.0));
            DrawWood(top + 30.5, width);
            Fit.Into(sheet, letters.Regular, $"{content.Surface}, {content.Grade}", width, 1, 15.0, 13.0, 11.0, 9.0).Draw(sheet, left, top + 40.0);
            sheet.Line(left, top + 46.0, right, top + 46.0, Ink.Heavy);
            return top + 46.0;
        }

        /// <summary>Thickness and species on one line: what the eye sorts packs by. A long species name gives way, the thickness never.</summary>
        private void DrawWood(double top, double width)
        {
            var thickness = Fit.Into(sheet, letters.Bold, content.Thickness, width * 0.4, 1, 26.0, 20.0, 14.0, 11.0);
            thickness.Draw(sheet, left, top);
            var x = left + sheet.WidthMm(thickness.Lines[0], thickness.Font) + 4.0;
            var species = Fit.Into(sheet, letters.Bold, content.Species, left + width - x, 1, 26.0, 22.0, 18.0, 14.0, 11.0);
            sheet.Text(x, top + Sheet.CapitalMm(thickness.Font), species.Lines[0], species.Font);
        }

        private double DrawCounts(double top)
        {
            var basis = content.Basis == FootageBasis.Net ? "net" : "gross";
            var width = right - left;
            Figure(left, top, width * 0.17, Print.Number(content.Pieces), "pieces", Lengths());
            Figure(left + (width * 0.19), top, width * 0.35, Print.Number(content.Footage.Count), $"bf {basis}", content.FootageRule);
            Figure(left + (width * 0.56), top, width * 0.22, content.Volume is { } volume ? Print.Number(volume.CubicMetres, 3) : null, "m³", content.VolumeBasis);
            Figure(left + (width * 0.80), top, width * 0.20, content.Weight is { } weight ? Print.Number(weight.Kilograms) : null, "kg",
                content.Weight is { } pounds ? $"{Print.Number(pounds.Pounds)} lb" : "not weighed");
            sheet.Line(left, top + 24.0, right, top + 24.0, Ink.Rule);
            return top + 24.0;
        }

        private string Lengths() => (content.ShortestPiece, content.LongestPiece) switch
        {
            ({ } shortest, { } longest) when shortest != longest => $"{Print.Short(shortest.Feet, 1)} to {Print.Short(longest.Feet, 1)} ft",
            ({ } one, _) => $"{Print.Short(one.Feet, 1)} ft",
            _ => "",
        };

        /// <summary>A large figure with its unit, its basis on the line below; an empty box where nothing was measured.</summary>
        private void Figure(double x, double top, double width, string? figure, string unit, string basis)
        {
            var unitFont = letters.Regular(12.0);
            var room = width - sheet.WidthMm(unit, unitFont) - 1.5;
            var baseline = top + 14.0;
            if (figure is null)
            {
                sheet.Box(x, top + 5.0, Math.Min(room, 22.0), 9.0, Ink.Rule);
                sheet.Text(x + Math.Min(room, 22.0) + 1.5, baseline, unit, unitFont);
            }
            else
            {
                var fit = Fit.Into(sheet, letters.Bold, figure, room, 1, 36.0, 30.0, 26.0, 22.0, 18.0, 14.0);
                sheet.Text(x, baseline, fit.Lines[0], fit.Font);
                sheet.Text(x + sheet.WidthMm(fit.Lines[0], fit.Font) + 1.5, baseline, unit, unitFont);
            }

            Fit.Into(sheet, letters.Regular, basis, width, 2, 10.0, 9.0).Draw(sheet, x, top + 16.2);
        }

        private double DrawDrying(double top)
        {
            var width = right - left;
            var middle = left + (width * 0.44);
            Label(left, top, content.Charge is null ? "Moisture, not from a kiln" : $"Moisture, kiln charge {content.Charge}", (width * 0.44) - 3.0);
            if ((content.MoistureLow, content.MoistureHigh) is ({ } low, { } high))
                Fit.Into(sheet, letters.Bold, Print.Range(low, high), (width * 0.44) - 3.0, 1, 20.0, 16.0).Draw(sheet, left, top + (content.MoistureOrdered is null ? 8.0 : 6.6));
            else
                sheet.Box(left, top + 7.0, 40.0, 9.0, Ink.Rule);

            var basis = content.MoistureBasis ?? "not measured";
            if (content.MoistureOrdered is { } ordered)
            {
                Fit.Into(sheet, letters.Regular, basis, (width * 0.44) - 3.0, 2, 9.0).Draw(sheet, left, top + 13.2);
                DrawOrdered(ordered, top + 20.0, (width * 0.44) - 3.0);
            }
            else
            {
                Fit.Into(sheet, letters.Regular, basis, (width * 0.44) - 3.0, 2, 10.0, 9.0).Draw(sheet, left, top + 17.0);
            }

            DrawHeat(middle, top, right - middle);
            sheet.Line(left, top + 26.0, right, top + 26.0, Ink.Rule);
            return top + 26.0;
        }

        private void DrawOrdered(string ordered, double top, double width)
        {
            const double blockMm = 5.2;
            var fit = Fit.Into(sheet, letters.Bold, ordered, width - 4.0, 1, 12.0, 11.0, 10.0, 9.0);
            if (content.IsWetter)
                sheet.Fill(left, top, sheet.WidthMm(fit.Lines[0], fit.Font) + 4.0, blockMm);
            sheet.Text(left + (content.IsWetter ? 2.0 : 0.0), top + ((blockMm + Sheet.CapitalMm(fit.Font)) / 2.0), fit.Lines[0], fit.Font, white: content.IsWetter);
        }

        /// <summary>Yes is a solid block, no an open one, unproven a dashed one with a question mark: told apart by form, not by shade.</summary>
        private void DrawHeat(double x, double top, double width)
        {
            var font = letters.Bold(16.0);
            var (word, pen) = content.HeatTreatment switch
            {
                HeatTreatment.Yes => ("yes", Ink.Heavy),
                HeatTreatment.No => ("no", Ink.Heavy),
                _ => ("unproven ?", Ink.HeavyDashed),
            };
            Label(x, top, "Heat treated", width);
            var block = sheet.WidthMm(word, font) + 8.0;
            if (content.HeatTreatment == HeatTreatment.Yes)
                sheet.Fill(x, top + 6.8, block, 8.8);
            else
                sheet.Box(x, top + 6.8, block, 8.8, pen);

            sheet.Text(x + (block / 2.0), top + 13.1, word, font, Align.Centre, white: content.HeatTreatment == HeatTreatment.Yes);
            Fit.Into(sheet, letters.Regular, content.HeatTreatmentProof ?? "", width, 2, 10.0, 9.0).Draw(sheet, x, top + 17.0);
        }

        private void DrawWhose(double top)
        {
            var width = right - left;
            var first = content.Owner is null ? width * 0.70 : width * 0.42;
            Label(left, top, content.Order is null ? "Not ordered" : $"Order {content.Order}", first - 3.0);
            Value(left, top, first - 3.0, content.Customer ?? "");
            if (content.Owner is { } owner)
            {
                var x = left + first;
                sheet.Box(x - 1.5, top + 1.2, (width * 0.28) - 1.5, 17.3, Ink.Heavy);
                Label(x, top, "Customer's own wood", (width * 0.28) - 4.5);
                Value(x, top, (width * 0.28) - 4.5, owner);
            }

            Label(left + (width * 0.71), top, "Tallied by", width * 0.29);
            Value(left + (width * 0.71), top, width * 0.29, content.TalliedBy);
        }

        private void Label(double x, double top, string text, double width) =>
            Fit.Into(sheet, letters.Regular, text, width, 1, 10.0, 9.0).Draw(sheet, x, top + 2.6);

        private void Value(double x, double top, double width, string text) =>
            Fit.Into(sheet, letters.Bold, text, width, 2, 15.0, 13.0, 11.0, 10.0, 9.0).Draw(sheet, x, top + 7.6);

        private void DrawStatement()
        {
            var text = content.Basis == FootageBasis.Net ? FootageStatement.Net : FootageStatement.Gross;
            var fit = Fit.Into(sheet, letters.Regular, text, right - left, 1, 10.0, 9.0);
            sheet.Line(left, bottom - 5.2, right, bottom - 5.2, Ink.Rule);
            fit.Draw(sheet, left, bottom - 3.2);
        }
    }
}
