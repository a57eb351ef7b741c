namespace Boardwright.Documents.Setting;

/// <summary>The usual cautions in a heavy frame, and who has the last word about them.</summary>
internal static class CautionBox
{
    public static void Draw(Form form, string title, IReadOnlyList<string> cautions, string deference)
    {
        var font = form.Letters.Regular(10.0);
        var lines = cautions.Append(deference)
            .SelectMany(caution => Fit.Wrap(form.Sheet, font, caution, form.Width - 12.0).Select((text, i) => (text, Bullet: i == 0 && caution != deference))).ToList();
        var line = Sheet.LineMm(font);
        var height = 8.5 + (lines.Count * line) + 1.0;
        form.Need(height);
        form.Sheet.Box(form.Left, form.Y, form.Width, height, Ink.Heavy);
        form.Sheet.Text(form.Left + 4.0, form.Y + 6.0, title, form.Letters.Bold(12.0));
        var y = form.Y + 11.0;
        foreach (var (text, bullet) in lines)
        {
            if (bullet)
                form.Sheet.Text(form.Left + 4.0, y, "•", font);

            form.Sheet.Text(form.Left + 8.0, y, text, font);
            y += line;
        }

        form.Y += height + 2.0;
    }
}
