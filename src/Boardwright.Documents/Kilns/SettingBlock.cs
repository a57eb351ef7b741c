using Boardwright.Documents.Setting;
using Boardwright.Quantities;

namespace Boardwright.Documents.Kilns;

/// <summary>The present setting and the next one side by side, large enough to read at the controller.</summary>
internal static class SettingBlock
{
    private const double HeightMm = 37.0;

    public static void Draw(Form form, KilnRunSheetContent content)
    {
        form.Need(HeightMm);
        var half = (form.Width - 5.0) / 2.0;
        DrawOne(form, form.Left, half, "Now", content.NowSince, content.Now, content.Next is null);
        if (content.Next is { } next)
            DrawOne(form, form.Left + half + 5.0, half, "Next", content.NextWhen ?? "", next, true);
        else
            DrawStay(form, form.Left + half + 5.0, half, content.NextWhen);

        form.Y += HeightMm + 3.0;
    }

    private static void DrawOne(Form form, double x, double width, string word, string when, KilnSetting setting, bool heavy)
    {
        var (sheet, letters, top) = (form.Sheet, form.Letters, form.Y);
        sheet.Box(x, top, width, HeightMm, heavy ? Ink.Heavy : Ink.Fine);
        sheet.Text(x + 4.0, top + 6.5, word, letters.Bold(13.0));
        var wordMm = sheet.WidthMm(word, letters.Bold(13.0));
        Fit.Into(sheet, letters.Regular, when, width - wordMm - 11.0, 1, 11.0, 10.0, 9.0).Draw(sheet, x + wordMm + 7.0, top + 3.9);
        var (figures, unit, names, other) = Read(setting);
        var large = Fit.Into(sheet, letters.Bold, figures, width - 20.0, 1, 40.0, 34.0, 28.0);
        sheet.Text(x + 4.0, top + 22.0, large.Lines[0], large.Font);
        sheet.Text(x + 5.5 + sheet.WidthMm(large.Lines[0], large.Font), top + 22.0, unit, letters.Regular(13.0));
        sheet.Text(x + 4.0, top + 28.0, names, letters.Regular(10.0));
        sheet.Text(x + 4.0, top + 33.5, other, letters.Bold(13.0));
    }

    private static void DrawStay(Form form, double x, double width, string? when)
    {
        form.Sheet.Box(x, form.Y, width, HeightMm, Ink.Fine);
        form.Sheet.Text(x + 4.0, form.Y + 6.5, "Next", form.Letters.Bold(13.0));
        var text = when is null ? "No change is due." : $"Leave it as it is set; {when}.";
        Fit.Into(form.Sheet, form.Letters.Regular, text, width - 8.0, 4, 13.0, 11.0, 10.0).Draw(form.Sheet, x + 4.0, form.Y + 12.0);
    }

    private static (string Figures, string Unit, string Names, string Other) Read(KilnSetting setting) => setting switch
    {
        KilnSetting.Air air => (
            $"{Print.Number(air.DryBulb.Fahrenheit)} / {Print.Number(air.WetBulb.Fahrenheit)}", "°F", "dry bulb / wet bulb",
            $"{AsPrinted(air.DryBulb)} / {AsPrinted(air.WetBulb)} °C"),
        KilnSetting.Vacuum vacuum => (
            $"{Print.Number(vacuum.Wood.Fahrenheit)} / {Print.Number(vacuum.Vessel.Pascals / 100.0)}", "°F / mbar", "wood temperature / vessel pressure",
            $"{Print.Number(vacuum.Wood.Celsius, 1)} °C / {Print.Number(vacuum.Vessel.Pascals / 1000.0, 1)} kPa"),
        _ => throw new InvalidOperationException("A kiln setting has two cases."),
    };

    // Of the whole degrees Fahrenheit printed above it, which are what is set.
    private static string AsPrinted(Temperature bulb) => Print.Number(Temperature.FromFahrenheit(Math.Round(bulb.Fahrenheit)).Celsius, 1);
}
