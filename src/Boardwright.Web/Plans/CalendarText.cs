using System.Globalization;
using System.Text;

namespace Boardwright.Web.Plans;

/// <summary>An event of a calendar, in the yard's own time.</summary>
/// <param name="Id">Stays the same as long as it is the same event.</param>
/// <param name="From">When it begins; its day for a whole-day event.</param>
/// <param name="To">When it ends; null for a whole day.</param>
/// <param name="Summary">What it is, in a line.</param>
/// <param name="Details">More of it; null for nothing more.</param>
public sealed record CalendarEvent(string Id, DateTime From, DateTime? To, string Summary, string? Details = null);

/// <summary>Writes a calendar as RFC 5545 asks.</summary>
/// <remarks>
/// Times are local ("form 1", section 3.3.5): the hour on the yard's clock. Text is escaped (3.3.11), lines are folded at 75 octets without cutting a
/// letter in two (3.1) and end in CR LF; control characters have no place in text and are left out.
/// </remarks>
/// <source id="rfc-5545" locator="sections 3.1, 3.3.5, 3.3.11, 3.6.1, 3.8.4.7, 3.8.7.2"/>
public static class CalendarText
{
    private const int LineOctetsMost = 75;

    /// <summary>The calendar.</summary>
    /// <param name="name">Whose it is.</param>
    /// <param name="madeUtc">When it was made, in coordinated universal time.</param>
    /// <param name="events">The events.</param>
    public static string Of(string name, DateTime madeUtc, IEnumerable<CalendarEvent> events)
    {
        ArgumentNullException.ThrowIfNull(events);
        var text = new StringBuilder();
        void Line(string line) => Folded(text, line);
        Line("BEGIN:VCALENDAR");
        Line("VERSION:2.0");
        Line("PRODID:-//Boardwright//Season//EN");
        Line("X-WR-CALNAME:" + Escaped(name));
        foreach (var one in events)
        {
            Line("BEGIN:VEVENT");
            Line("UID:" + Escaped(one.Id) + "@boardwright");
            Line("DTSTAMP:" + Moment(madeUtc) + "Z");
            Line(one.To is null ? "DTSTART;VALUE=DATE:" + Day(one.From) : "DTSTART:" + Moment(one.From));
            Line(one.To is { } to ? "DTEND:" + Moment(to) : "DTEND;VALUE=DATE:" + Day(one.From.AddDays(1)));
            Line("SUMMARY:" + Escaped(one.Summary));
            if (one.Details is { } details)
            {
                Line("DESCRIPTION:" + Escaped(details));
            }

            Line("END:VEVENT");
        }

        Line("END:VCALENDAR");
        return text.ToString();
    }

    private static string Escaped(string text)
    {
        var written = new StringBuilder();
        foreach (var letter in text.ReplaceLineEndings("\n"))
        {
            _ = letter switch
            {
                '\\' or ';' or ',' => written.Append('\\').Append(letter),
                '\n' => written.Append("\\n"),
                _ when char.IsControl(letter) => written,
                _ => written.Append(letter),
            };
        }

        return written.ToString();
    }

    private static void Folded(StringBuilder text, string line)
    {
        var octets = 0;
        foreach (var rune in line.EnumerateRunes())
        {
            if (octets + rune.Utf8SequenceLength > LineOctetsMost)
            {
                text.Append("\r\n ");
                octets = 1;
            }

            text.Append(rune);
            octets += rune.Utf8SequenceLength;
        }

        text.Append("\r\n");
    }

    private static string Day(DateTime day) => day.ToString("yyyyMMdd", CultureInfo.InvariantCulture);

    private static string Moment(DateTime moment) => moment.ToString("yyyyMMdd'T'HHmmss", CultureInfo.InvariantCulture);
}
