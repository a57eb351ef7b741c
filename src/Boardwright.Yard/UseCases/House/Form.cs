using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.Tables;
using Boardwright.Yard.Book.Tables.Writing;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>A form of the house: one row of a plain table, read by the same rules as an imported one.</summary>
/// <param name="Table">Which table.</param>
/// <param name="Name">The row; empty for a new one.</param>
/// <param name="Fields">Each column with what stands in it now.</param>
public sealed record HouseForm(HouseTable Table, string Name, IReadOnlyList<(HouseColumn Column, string Text)> Fields)
{
    /// <summary>The form of a row, or of a new one.</summary>
    public static Outcome<HouseForm> Of(YardState state, string table, string? name)
    {
        ArgumentNullException.ThrowIfNull(state);
        if (Known(table) is not { } known)
            return new Refusal("table of the house", table ?? "", string.Join(", ", HouseTable.All.Select(one => one.Name)));
        var row = name is null && known.Add.Length > 0 ? null : HouseSheet.Row(state, known, name ?? "");
        var cells = row is null ? [] : SetupRows.Of(row)!.Value.Rows.First().Cells.ToDictionary(cell => cell.Column, cell => cell.Text, StringComparer.Ordinal);
        var figure = known.Name == "settings" && name is not null ? HouseFigure.Of(name) : null;
        return new HouseForm(known, row is null ? "" : name ?? "", [.. known.Columns.Select(column => (column, cells.GetValueOrDefault(column.Column) is { Length: > 0 } text ? text
            : column.Column == known.Columns[0].Column ? name ?? ""
            : figure is not null && column.Column == "unit" ? figure.Unit : ""))]);
    }

    /// <summary>Writes a row from its filled form. The first person of a new yard signs for himself.</summary>
    public static Outcome<IReadOnlyList<Entry>> Write(YardBook book, string table, IReadOnlyDictionary<string, string> values, string? by, PostedKey key)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(values);
        ArgumentNullException.ThrowIfNull(key);
        return Of(book.State, table, null).Then(form =>
        {
            var typed = new Typed();
            var person = book.State.People.Count == 0 && form.Table.Name == "people" ? values.GetValueOrDefault("person")?.Trim() ?? "" : typed.By(book.State, by);
            var columns = form.Table.Columns.Select(column => column.Column).ToList();
            var text = CsvText.Line(columns) + CsvText.Line(columns.Select(column => values.GetValueOrDefault(column)?.Trim() ?? ""));
            var (entries, refusals, _) = YardTables.For(table)!.Read(table, text, person);
            foreach (var refusal in refusals.Concat(entries.Count == 1 ? Wrong(entries[0].Entry.Fact) : []))
                typed.Refuse(Label(form.Table, refusal.What), refusal.Given, Asked(form.Table, refusal));
            return typed.Then(() => key.Write(book, person, entries[0].Entry.Fact, entries[0].Entry.AsEntered));
        });
    }

    private static HouseTable? Known(string table) => HouseTable.All.FirstOrDefault(one => one.Name == table);

    // The file and line mean nothing on a form.
    private static string Label(HouseTable table, string what) => Column(table, what)?.Label ?? what;

    private static HouseColumn? Column(HouseTable table, string what) => table.Columns.FirstOrDefault(column => column.Column == what[(what.LastIndexOf(' ') + 1)..]);

    // On a form the column of a table means nothing: what the field asks for says more.
    private static string Asked(HouseTable table, Refusal refusal) => Column(table, refusal.What) is { Hint.Length: > 0 } column
        ? column.Hint.StartsWith("such as", StringComparison.Ordinal) ? column.Column == "role" ? $"words, {column.Hint}" : $"a size with its unit, {column.Hint}" : $"{refusal.Accepted}: {column.Hint}"
        : refusal.Accepted;

    // A figure nothing asks for is most often a slip of its name; another unit would be taken for its own.
    private static IEnumerable<Refusal> Wrong(Fact fact)
    {
        if (fact is not SettingSet set)
            yield break;
        if (HouseFigure.Of(set.Name) is not { } figure)
            yield return new("name", set.Name, $"a figure the house reckons with, such as {NearestNames.Of(set.Name, [.. HouseFigure.All.Select(one => one.Name)])}");
        else if (set.Unit != figure.Unit && figure.Unit.Length > 0)
            yield return new("unit", set.Unit, $"{figure.Unit}; the value is reckoned in it");
        else if (figure.Only is { Count: > 0 } only && !only.Contains(set.Value))
            yield return new("value", set.Value.ToString(CultureInfo.InvariantCulture), string.Join(" or ", only.Select(value => value.ToString(CultureInfo.InvariantCulture))));
    }
}
