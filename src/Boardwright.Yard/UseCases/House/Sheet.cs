using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.UseCases;

/// <summary>A row of the house.</summary>
/// <param name="Name">Its name; empty where there is only one.</param>
/// <param name="Words">What is written of it.</param>
/// <param name="Entry">The entry that says so.</param>
public sealed record HouseRow(string Name, string Words, Entry Entry);

/// <summary>A figure of the house as it stands.</summary>
/// <param name="Name">Its name in the book.</param>
/// <param name="Words">What it is.</param>
/// <param name="Value">The value; null where nobody set it and none is usual.</param>
/// <param name="Entry">The entry that set it; null where the usual value is reckoned with.</param>
public sealed record HouseValue(string Name, string Words, double? Value, string Unit, Entry? Entry);

/// <summary>How the yard is set up: what stands, and what a new yard still needs.</summary>
/// <param name="Lists">Each table with its rows, the figures apart.</param>
/// <param name="Figures">Figures by group.</param>
/// <param name="Needed">Tables without a row, what the first log waits for first.</param>
public sealed record HouseSheet(IReadOnlyList<(HouseTable Table, IReadOnlyList<HouseRow> Rows)> Lists, IReadOnlyList<(string Group, IReadOnlyList<HouseValue> Values)> Figures, IReadOnlyList<HouseTable> Needed)
{
    private const int Months = 12;

    /// <summary>The house of a yard.</summary>
    public static HouseSheet Of(YardState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        var standing = Standing(state);
        var lists = HouseTable.All.Select(table => (table, Rows: (IReadOnlyList<HouseRow>)[.. standing.Where(one => one.Table == table).Select(one => one.Row)])).ToList();
        var set = lists[^1].Rows.ToDictionary(row => row.Name, row => row.Entry, StringComparer.Ordinal);
        return new(
            [.. lists.SkipLast(1)],
            [.. HouseFigure.All.SelectMany(figure => Values(figure, set)).GroupBy(value => value.Group, value => value.Value).Select(group => (group.Key, (IReadOnlyList<HouseValue>)[.. group]))],
            [.. lists.SkipLast(1).Where(list => list.Rows.Count < (list.table.Name == "normals" ? Months : 1)).Select(list => list.table).OrderBy(table => table.Step).ThenBy(table => table.Turn)]);
    }

    /// <summary>The entry that says what stands of a row; null for one that is not in the book.</summary>
    internal static Entry? Row(YardState state, HouseTable table, string name) => Standing(state).FirstOrDefault(one => one.Table == table && one.Row.Name == name).Row?.Entry;

    // In the order of the book; written again, a row takes the place of the one before.
    private static List<(HouseTable Table, HouseRow Row)> Standing(YardState state)
    {
        var rows = new Dictionary<(HouseTable, string), HouseRow>();
        foreach (var (_, entry) in Corrections.Standing(state.Entries))
        {
            if (entry.Fact is SetupFact && HouseTable.All.FirstOrDefault(table => table.Key(entry.Fact) is not null) is { } table)
                rows[(table, table.Key(entry.Fact)!)] = new(table.Key(entry.Fact)!, table.Said(entry.Fact), entry);
        }

        return [.. rows.Select(row => (row.Key.Item1, row.Value))];
    }

    private static IEnumerable<(string Group, HouseValue Value)> Values(HouseFigure figure, Dictionary<string, Entry> set)
    {
        var names = set.Keys.Where(name => HouseFigure.Of(name) == figure).Order(StringComparer.Ordinal).ToList();
        foreach (var name in names)
        {
            var fact = (SettingSet)set[name].Fact;
            yield return (figure.Group, new(name, figure.Said(name), fact.Value, figure.Unit.Length > 0 ? figure.Unit : fact.Unit, set[name]));
        }

        if (names.Count == 0 && !figure.IsMany)
            yield return (figure.Group, new(figure.Name, figure.Words, figure.Usual, figure.Unit, null));
    }
}
