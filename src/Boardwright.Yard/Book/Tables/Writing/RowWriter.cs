using System.Globalization;
using System.Text.Json;
using Boardwright.Quantities;
using Boardwright.Quantities.Reading;

namespace Boardwright.Yard.Book.Tables.Writing;

/// <summary>One row of a table on its way out of the book: <see cref="TableRow"/> reads back what this writes.</summary>
/// <remarks>Sizes are written with their unit, as they were typed where that is known, else in the unit in which it is shortest and still gives the kept value back to the last digit.</remarks>
internal sealed class RowWriter(Entry entry)
{
    private readonly List<(string Column, string Text)> cells = [];

    public IReadOnlyList<(string Column, string Text)> Cells => cells;

    public RowWriter Text(string column, string? text)
    {
        cells.Add((column, text ?? ""));
        return this;
    }

    public RowWriter Number(string column, double? value) => Text(column, value?.ToString("R", CultureInfo.InvariantCulture));

    public RowWriter Money(string column, decimal? value) => Text(column, value?.ToString(CultureInfo.InvariantCulture));

    public RowWriter Yes(string column, bool value) => Text(column, value ? "yes" : "no");

    public RowWriter List(string column, IEnumerable<string>? items) => Text(column, items is null ? null : string.Join(';', items));

    public RowWriter Date(string column, DateOnly? date) => Text(column, date?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));

    public RowWriter Time(string column, TimeOnly? time) => Text(column, time?.ToString("HH:mm", CultureInfo.InvariantCulture));

    /// <summary>When it happened.</summary>
    public RowWriter At(string column) => At(column, entry.HappenedAt);

    public RowWriter At(string column, DateTime at) => Text(column, at.ToString(at.Second == 0 ? "yyyy-MM-dd HH:mm" : "yyyy-MM-dd HH:mm:ss", CultureInfo.InvariantCulture));

    public RowWriter Word<T>(string column, T? word)
        where T : struct, Enum => Text(column, word is { } value ? JsonNamingPolicy.SnakeCaseLower.ConvertName(value.ToString()) : null);

    public RowWriter Quarters(string column, int? quarters) => Text(column, quarters is { } value ? string.Create(CultureInfo.InvariantCulture, $"{value}/4") : null);

    public RowWriter Mm(string column, double? mm, string? fact = null) =>
        Sized(column, mm, fact, text => Done(Read.Length("", text))?.Millimetres, ("mm", 1.0, 0.0), ("in", 1.0 / 25.4, 0.0), ("ft", 1.0 / 304.8, 0.0));

    public RowWriter M(string column, double? m, string? fact = null) =>
        Sized(column, m, fact, text => Done(Read.Length("", text))?.Metres, ("m", 1.0, 0.0), ("ft", 1.0 / 0.3048, 0.0), ("in", 1.0 / 0.0254, 0.0), ("mm", 1000.0, 0.0));

    public RowWriter C(string column, double? c, string? fact = null) =>
        Sized(column, c, fact, text => Done(Read.Temperature("", text))?.Celsius, ("C", 1.0, 0.0), ("F", 1.8, 32.0));

    public RowWriter G(string column, double? g, string? fact = null) =>
        Sized(column, g, fact, text => Done(Read.Mass("", text))?.Grams, ("g", 1.0, 0.0), ("kg", 0.001, 0.0), ("lb", 1.0 / 453.59237, 0.0));

    private RowWriter Sized(string column, double? value, string? fact, Func<string, double?> back, params (string Unit, double Factor, double Offset)[] units)
    {
        if (value is not { } kept)
            return Text(column, null);
        if (fact is not null && entry.Typed(fact) is { } typed && back(typed) == kept)
            return Text(column, typed);

        var typedOnce = units.Select(unit => Math.Round(kept * unit.Factor + unit.Offset, 9).ToString("R", CultureInfo.InvariantCulture) + unit.Unit);
        var nearby = Neighbours(kept).Select(number => number.ToString("R", CultureInfo.InvariantCulture) + units[0].Unit);
        return Text(column, typedOnce.Where(text => back(text) == kept).MinBy(text => text.Length) ?? nearby.FirstOrDefault(text => back(text) == kept) ?? nearby.First());
    }

    // Reading passes through metres or kelvins: the text that gives a value back may be a last digit away from it.
    private static IEnumerable<double> Neighbours(double value)
    {
        yield return value;
        var (up, down) = (value, value);
        for (var step = 0; step < 8; step++)
        {
            yield return up = Math.BitIncrement(up);
            yield return down = Math.BitDecrement(down);
        }
    }

    private static T? Done<T>(Outcome<T> reading)
        where T : struct => reading is Outcome<T>.Done(var value) ? value : null;
}
