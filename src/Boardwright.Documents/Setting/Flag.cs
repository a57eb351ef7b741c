namespace Boardwright.Documents.Setting;

/// <summary>A caution: black flag with its word reversed, the sentences beside it in a heavy frame.</summary>
internal static class Flag
{
    private const double PadMm = 3.0;

    public static void Draw(Form form, string word, params IReadOnlyList<string> sentences)
    {
        var bold = form.Letters.Bold(12.0);
        var text = form.Letters.Regular(11.0);
        var flag = form.Sheet.WidthMm(word, bold) + 8.0;
        var lines = sentences.SelectMany(sentence => Fit.Wrap(form.Sheet, text, sentence, form.Width - flag - (2.0 * PadMm))).ToList();
        var height = (lines.Count * Sheet.LineMm(text)) + (2.0 * PadMm) - 1.0;
        form.Need(height + 2.0);
        form.Sheet.Box(form.Left, form.Y, form.Width, height, Ink.Heavy);
        form.Sheet.Fill(form.Left, form.Y, flag, height);
        form.Sheet.Text(form.Left + (flag / 2.0), form.Y + PadMm + Sheet.CapitalMm(bold), word, bold, Align.Centre, white: true);
        for (var i = 0; i < lines.Count; i++)
            form.Sheet.Text(form.Left + flag + PadMm, form.Y + PadMm + Sheet.CapitalMm(text) + (i * Sheet.LineMm(text)), lines[i], text);

        form.Y += height + 2.0;
    }
}
