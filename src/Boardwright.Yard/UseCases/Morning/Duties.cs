using System.Text.RegularExpressions;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.UseCases;

/// <summary>Kinds of work in a yard. One person may have several; none is a person's name.</summary>
[Flags]
public enum Duties
{
    /// <summary>None named.</summary>
    None = 0,

    /// <summary>Selling, prices, promises, money.</summary>
    Office = 1,

    /// <summary>Logs and the band mill.</summary>
    Mill = 2,

    /// <summary>Stacks, kilns, boilers.</summary>
    Kilns = 4,

    /// <summary>Dressing.</summary>
    Planer = 8,

    /// <summary>Moulds, resin, classes.</summary>
    Casting = 16,

    /// <summary>Packs to band and load: who has no trade of their own named.</summary>
    Hands = 32,

    /// <summary>Everybody.</summary>
    All = Office | Mill | Kilns | Planer | Casting | Hands,
}

/// <summary>What a person does, read from the words of their role in the book.</summary>
public static partial class Roles
{
    private static readonly (string Word, Duties Duty)[] Words =
    [
        ("owner", Duties.Office), ("office", Duties.Office), ("selling", Duties.Office), ("price", Duties.Office), ("sales", Duties.Office),
        ("sawyer", Duties.Mill), ("sawing", Duties.Mill), ("logs", Duties.Mill),
        ("kiln", Duties.Kilns), ("yard", Duties.Kilns), ("boiler", Duties.Kilns), ("stack", Duties.Kilns),
        ("planer", Duties.Planer), ("dressing", Duties.Planer),
        ("cast", Duties.Casting), ("class", Duties.Casting), ("resin", Duties.Casting),
    ];

    /// <summary>Duties of a role; <see cref="Duties.Hands"/> where its words name no trade.</summary>
    public static Duties Of(PersonNamed person)
    {
        ArgumentNullException.ThrowIfNull(person);
        var said = person.Role.Split([' ', ',', ';', ':', '.', '/'], StringSplitOptions.RemoveEmptyEntries);
        var found = Words.Where(word => said.Any(one => one.StartsWith(word.Word, StringComparison.OrdinalIgnoreCase))).Aggregate(Duties.None, (all, word) => all | word.Duty);
        return found == Duties.None ? Duties.Hands : found;
    }

    /// <summary>Hours of the day the role names, such as the rounds of a kiln hand at 06:00 and 21:00; empty where it names none.</summary>
    public static IReadOnlyList<TimeOnly> Rounds(PersonNamed person)
    {
        ArgumentNullException.ThrowIfNull(person);
        return [.. Clock().Matches(person.Role).Select(match => TimeOnly.TryParseExact(match.Value, "HH:mm", out var hour) ? hour : (TimeOnly?)null).OfType<TimeOnly>().Order()];
    }

    [GeneratedRegex(@"\b\d\d:\d\d\b", RegexOptions.CultureInvariant)]
    private static partial Regex Clock();
}
