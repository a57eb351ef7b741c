using System.Globalization;
using Boardwright.Documents.Setting;

namespace Boardwright.Documents.Weeks;

/// <summary>The week on one sheet for the wall: loading, unloading, promises and pours by day, with a box to tick.</summary>
public static class WeekSheet
{
    private const int Days = 7;

    private static readonly Column[] Columns =
    [
        new("Day", 24, Align.Left, Bold: true), new("Hour", 14), new("What", 40, Align.Left, Bold: true), new("Which", 84, Align.Left), new("Done, by", 20, Pencil: true),
    ];

    /// <param name="paper">A4 or letter. Default A4.</param>
    public static byte[] Render(WeekSheetContent content, Paper? paper = null)
    {
        ArgumentNullException.ThrowIfNull(content);
        var head = new FormHead("Week sheet", $"{Print.ShortDay(content.First)} to {Print.ShortDay(content.First.AddDays(Days - 1))}", content.Yard, $"plan of {Print.Moment(content.Made)}");
        using var form = new Form(paper ?? Paper.A4, $"Week sheet {content.First:yyyy-MM-dd}", content.Made, head);
        new Table(Columns) { RowMm = 8.0, Grows = true }.Draw(form, [.. Enumerable.Range(0, Days).SelectMany(day => Rows(content, content.First.AddDays(day)))]);
        form.Paragraph("Unloading: only when the samples say that the charge is done; the plan's hour is the likely one.");
        return form.Finish();
    }

    private static IEnumerable<Row> Rows(WeekSheetContent content, DateOnly day)
    {
        var lines = content.Lines.Where(line => line.Day == day).OrderBy(line => line.At ?? TimeOnly.MinValue).ThenBy(line => line.What, StringComparer.Ordinal).ToList();
        var name = day.ToString("ddd d MMM", CultureInfo.InvariantCulture);
        return lines.Count == 0
            ? [Row.Of(name, "", "", "", "")]
            : lines.Select((line, index) => Row.Of(index == 0 ? name : "", line.At?.ToString("HH:mm", CultureInfo.InvariantCulture) ?? "", line.What, line.Which, ""));
    }
}
