using Boardwright.Documents.Setting;

namespace Boardwright.Documents.Kilns;

/// <summary>The log to write in at every visit, filling the sheet, and what the end of a charge has to show.</summary>
internal static class KilnLog
{
    private const double RowMm = 9.0;
    private const double EndMm = 52.0;

    public static void Draw(Form form, KilnRunSheetContent content)
    {
        form.Heading("Log: one line a visit, temperatures in °F", (5.0 * RowMm) + EndMm);
        var vacuum = content.Now is KilnSetting.Vacuum;
        Column[] columns = vacuum
            ? [Box("Day", 18), Box("Hour", 15), Box("Wood,\nset", 17), Box("Wood,\nread", 17), Box("Pressure,\nset", 19), Box("Pressure,\nread", 19), Box("RF,\nkW", 15), Box("Condensate,\nl", 23), Box("Remark", 38), Box("By", 13)]
            : [Box("Day", 17), Box("Hour", 14), Box("Dry bulb,\nset", 18), Box("Dry bulb,\nread", 18), Box("Wet bulb,\nset", 18), Box("Wet bulb,\nread", 18), Box("Fans,\nway", 14), Box("Vents", 14), Box("Spray", 14), Box("Water in", 17), Box("Remark", 26), Box("By", 12)];
        var rows = (int)((form.Room - EndMm - 12.0) / RowMm);
        new Table(columns) { RowMm = RowMm }.Draw(form, [.. Enumerable.Repeat(new Row([.. columns.Select(_ => "")]), rows)]);
        DrawEnd(form, content);
    }

    private static Column Box(string head, double share) => new(head, share, Align.Centre, Pencil: true);

    private static void DrawEnd(Form form, KilnRunSheetContent content)
    {
        form.Heading("End of the charge", EndMm - 12.0);
        string Hold(string name, Quantities.MoistureContent? emc) => emc is { } known ? $"{name} at EMC {Print.Percent(known)}, hours" : $"{name}: EMC, hours";

        (string Left, string Right)[] lines =
        [
            (Hold("Equalize", content.EqualizeEmc), "Wettest, driest at the end, %"),
            (Hold("Condition", content.ConditionEmc), "Stress test, prongs"),
            ("Coldest core, temperature", "Core at 56 °C or more, hours"),
        ];
        var half = (form.Width - 6.0) / 2.0;
        foreach (var (left, right) in lines)
        {
            Field(form, form.Left, half, left);
            Field(form, form.Left + half + 6.0, half, right);
            form.Y += 10.5;
        }
    }

    private static void Field(Form form, double x, double width, string name)
    {
        var label = Fit.Into(form.Sheet, form.Letters.Regular, name, width * 0.52, 2, 10.0, 9.0);
        label.Draw(form.Sheet, x, form.Y + ((9.0 - label.HeightMm) / 2.0) + 0.8);
        form.Sheet.Box(x + (width * 0.55), form.Y, width * 0.45, 9.0, Ink.Fine);
    }
}
