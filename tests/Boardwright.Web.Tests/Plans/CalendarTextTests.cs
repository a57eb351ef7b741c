using System.Text;
using Boardwright.Web.Plans;

namespace Boardwright.Web.Tests.Plans;

/// <summary>What RFC 5545 asks of a calendar, by its sections (from memory of the standard; folding and escaping are its own examples in kind).</summary>
public sealed class CalendarTextTests
{
    private static readonly DateTime MadeUtc = new(2026, 11, 2, 11, 30, 0, DateTimeKind.Utc);

    [Fact]
    public void An_event_is_written_in_full()
    {
        var text = CalendarText.Of("Ollenwhin Sawyard", MadeUtc, [new("load-K2-S-07", new(2026, 11, 3, 8, 0, 0), new(2026, 11, 3, 12, 0, 0), "Load K2", "S-07, S-01; for O-301")]);

        Assert.Equal(
            "BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:-//Boardwright//Season//EN\r\nX-WR-CALNAME:Ollenwhin Sawyard\r\nBEGIN:VEVENT\r\nUID:load-K2-S-07@boardwright\r\nDTSTAMP:20261102T113000Z\r\n"
            + "DTSTART:20261103T080000\r\nDTEND:20261103T120000\r\nSUMMARY:Load K2\r\nDESCRIPTION:S-07\\, S-01\\; for O-301\r\nEND:VEVENT\r\nEND:VCALENDAR\r\n", text);
    }

    /// <summary>Section 3.6.1: the end of an event is not in it, so one whole day ends on the next.</summary>
    [Fact]
    public void A_whole_day_ends_on_the_next()
    {
        var text = CalendarText.Of("a", MadeUtc, [new("due-O-301", new(2026, 11, 30), null, "O-301 due")]);

        Assert.Contains("DTSTART;VALUE=DATE:20261130\r\nDTEND;VALUE=DATE:20261201\r\n", text, StringComparison.Ordinal);
    }

    /// <summary>Section 3.3.11: backslash, semicolon, comma and line break are written with a backslash; a control character has no place in text.</summary>
    [Fact]
    public void Text_is_escaped()
    {
        var text = CalendarText.Of("a", MadeUtc, [new("x", new(2026, 11, 30), null, "a\\b;c,d\ne\r\nf\u0007g")]);

        Assert.Contains("SUMMARY:a\\\\b\\;c\\,d\\ne\\nfg\r\n", text, StringComparison.Ordinal);
    }

    /// <summary>Section 3.1: no line is longer than 75 octets without its break, and unfolding gives back what was folded, letters of several octets whole.</summary>
    [Theory]
    [InlineData("n")]
    [InlineData("é")]
    [InlineData("木")]
    [InlineData("🪵")]
    public void Long_lines_are_folded_at_75_octets_without_cutting_a_letter(string letter)
    {
        var summary = string.Concat(Enumerable.Repeat(letter, 200));

        var text = CalendarText.Of("a", MadeUtc, [new("x", new(2026, 11, 30), null, summary)]);

        Assert.All(text.Split("\r\n"), line => Assert.InRange(Encoding.UTF8.GetByteCount(line), 0, 75));
        Assert.Contains("SUMMARY:" + summary + "\r\n", text.Replace("\r\n ", "", StringComparison.Ordinal), StringComparison.Ordinal);
    }
}
