namespace Boardwright.Documents.Setting;

/// <summary>Lines to sign on, side by side, each with what the signature says under it.</summary>
internal static class Signatures
{
    private const double HeightMm = 24.0;
    private const double GapMm = 6.0;

    public static void Draw(Form form, params string[] meanings)
    {
        form.Need(HeightMm);
        var width = (form.Width - (GapMm * (meanings.Length - 1))) / meanings.Length;
        var line = form.Y + 14.0;
        for (var i = 0; i < meanings.Length; i++)
        {
            var x = form.Left + (i * (width + GapMm));
            form.Sheet.Line(x, line, x + width, line, Ink.Rule);
            Fit.Into(form.Sheet, form.Letters.Regular, meanings[i], width, 2, 9.0).Draw(form.Sheet, x, line + 1.6);
        }

        form.Y += HeightMm;
    }
}
