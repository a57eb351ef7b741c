using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Quantities.Reading;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.Book.Tables;

/// <summary>One row on its way to facts. Every fault is kept with file, line and column; what could not be read comes back as the type's default.</summary>
/// <remarks>
/// A column may end in its unit (le_dib_in, le_dib_cm) and then holds bare numbers, or have no unit and hold texts such as 8 ft 5 in.
/// What was typed is kept for the entry.
/// </remarks>
public sealed class TableRow(CsvRow row, ICollection<Refusal> refusals)
{
    private readonly Dictionary<string, string> typed = new(StringComparer.Ordinal);
    private readonly HashSet<string> asked = new(StringComparer.Ordinal);

    public int Line => row.Line;

    /// <summary>Columns that were looked for, whether they are there or not.</summary>
    public IReadOnlyCollection<string> Asked => asked;

    public IReadOnlyDictionary<string, string>? Typed => typed.Count > 0 ? typed : null;

    /// <summary>All fields, for telling the same row sent again.</summary>
    public string AllFields => string.Join('\u001f', row.Fields);

    public string Text(string column) => TextOrNull(column) ?? Refuse(column, "nothing", "a text", "");

    /// <summary>A wood as written, known to the species table.</summary>
    public string Species(string column)
    {
        var text = Text(column);
        return text.Length > 0 && Wood.SpeciesTable.Find(column, text) is Outcome<Wood.Species>.Refused(var reasons) ? Refuse(column, text, reasons[0].Accepted, text) : text;
    }

    public string? TextOrNull(string column) => Field(column) is { Length: > 0 } text ? text : null;

    public IReadOnlyList<string> List(string column) => Field(column).Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);

    public bool Yes(string column) => Field(column).ToUpperInvariant() switch
    {
        "" or "NO" or "FALSE" => false,
        "YES" or "TRUE" => true,
        _ => Refuse(column, Field(column), "yes or no", false),
    };

    public double Number(string column) => NumberOrNull(column) ?? Refuse(column, "nothing", "a number", 0.0);

    public double? NumberOrNull(string column) => TextOrNull(column) is { } text ? Take(row.Get(column, Read.Number), column, text) : null;

    public int Whole(string column) => WholeOrNull(column) ?? Refuse(column, "nothing", "a whole number", 0);

    public int? WholeOrNull(string column) => TextOrNull(column) is not { } text ? null
        : int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : Refuse(column, text, "a whole number", 0);

    public decimal Money(string column) => MoneyOrNull(column) ?? Refuse(column, "nothing", "an amount", 0m);

    public decimal? MoneyOrNull(string column) => TextOrNull(column) is not { } text ? null
        : decimal.TryParse(text, NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var money) ? money : Refuse(column, text, "an amount, such as 5.20", 0m);

    public DateOnly Date(string column) => DateOrNull(column) ?? Refuse(column, "nothing", "a date as year-month-day", default(DateOnly));

    public DateOnly? DateOrNull(string column) => TextOrNull(column) is not { } text ? null
        : DateOnly.TryParseExact(text, "yyyy-MM-dd", out var date) ? date : Refuse(column, text, "a date as year-month-day, such as 2026-11-02", default(DateOnly));

    /// <summary>A day and hour; the given hour where only a day stands.</summary>
    public DateTime At(string column, int hour = 12) => TextOrNull(column) is not { } text ? Refuse(column, "nothing", "a date and time", default(DateTime))
        : DateTime.TryParseExact(text, ["yyyy-MM-dd HH:mm", "yyyy-MM-dd HH:mm:ss"], CultureInfo.InvariantCulture, DateTimeStyles.None, out var at) ? at
        : DateOnly.TryParseExact(text, "yyyy-MM-dd", out var day) ? day.ToDateTime(new(hour, 0))
        : Refuse(column, text, "a date and time as 2026-11-02 10:15, or a date", default(DateTime));

    public TimeOnly? TimeOrNull(string column) => TextOrNull(column) is not { } text ? null
        : TimeOnly.TryParseExact(text, "HH:mm", out var time) ? time : Refuse(column, text, "a time as 07:30", default(TimeOnly));

    /// <summary>A word of a list, written with blanks or underscores.</summary>
    public T Word<T>(string column)
        where T : struct, Enum => Enum.TryParse<T>(Field(column).Replace("_", "", StringComparison.Ordinal).Replace(" ", "", StringComparison.Ordinal), ignoreCase: true, out var word) && Enum.IsDefined(word)
            ? word
            : Refuse(column, Field(column), string.Join(", ", Enum.GetNames<T>().Select(System.Text.Json.JsonNamingPolicy.SnakeCaseLower.ConvertName)), default(T));

    public double Mm(string name, string? fact = null) => MmOrNull(name, fact) ?? Missing(name, "mm, cm, in, m or ft");

    public double? MmOrNull(string name, string? fact = null) => Sized(name, fact, Read.Length, "mm cm in m ft") is { } length ? length.Millimetres : null;

    public double M(string name, string? fact = null) => MOrNull(name, fact) ?? Missing(name, "m, ft, mm or in");

    /// <summary>A length along wood: in a column of feet a bare figure is asked about as in the forms, except in a row the book wrote itself.</summary>
    public double? MOrNull(string name, string? fact = null) => Sized(name, fact, Read.Length, "mm cm in m ft", TextOrNull("entry_id") is null ? Feet : null) is { } length ? length.Metres : null;

    public double C(string name, string? fact = null) => COrNull(name, fact) ?? Missing(name, "c or f");

    public double? COrNull(string name, string? fact = null) => Sized(name, fact, Read.Temperature, "c f") is { } temperature ? temperature.Celsius : null;

    /// <summary>A difference of temperatures, in a column that ends in c or f.</summary>
    public TemperatureDifference? DifferenceOrNull(string name) => Sized(name, null, Read.TemperatureDifference, "c f");

    /// <summary>How many faults were found so far, in this row and in those that share them.</summary>
    public int Faults => refusals.Count;

    public double G(string name, string? fact = null) => Sized(name, fact, Read.Mass, "g kg lb") is { } mass ? mass.Grams : Missing(name, "g, kg or lb");

    public int Quarters(string column) => Take(QuartersTyped.Of(null, row.Where(column), Field(column)), column, Field(column)).Quarters;

    public int? QuartersOrNull(string column) => TextOrNull(column) is null ? null : Quarters(column);

    /// <summary>The id of the entry a row was exported from; null for a row that has none.</summary>
    public Guid? EntryId() => TextOrNull("entry_id") is not { } text ? null
        : Guid.TryParseExact(text, "D", out var id) ? id : Refuse("entry_id", text, "an id as export writes it, or nothing for a new row", (Guid?)null);

    public T Refuse<T>(string column, string given, string accepted, T instead)
    {
        refusals.Add(new(row.Where(column), given, accepted));
        return instead;
    }

    private static Outcome<Length> Feet(string what, string text) => SizeTyped.Along(what, text, "ft", SizeTyped.Longest(null)).Then<Length>(size => size.Length);

    private string Field(string column)
    {
        asked.Add(column);
        return row.Text(column);
    }

    private double Missing(string name, string units) => Refuse(name, "nothing", $"a size, in a column that ends in its unit ({units}) or with the unit beside it", 0.0);

    // The column with or without a unit at its end; a bare number takes the unit of its column.
    private T? Sized<T>(string name, string? fact, Func<string, string, Outcome<T>> read, string units, Func<string, string, Outcome<T>>? bareFeet = null)
        where T : struct
    {
        foreach (var column in units.Split(' ').Select(unit => $"{name}_{unit}").Prepend(name))
        {
            if (TextOrNull(column) is not { } text)
                continue;
            var unit = column.Length > name.Length ? column[(name.Length + 1)..] : "";
            var bare = unit.Length > 0 && text.All(c => char.IsAsciiDigit(c) || c is '.' or '-' or '/' or ' ');
            var whole = bare ? text + unit : text;
            if (fact is not null)
                typed[fact] = whole;
            return Take(bare && unit == "ft" && bareFeet is not null ? bareFeet(row.Where(column), text) : read(row.Where(column), whole), column, text);
        }

        return null;
    }

    private T Take<T>(Outcome<T> reading, string column, string given)
        where T : struct
    {
        if (reading is Outcome<T>.Done(var value))
            return value;
        refusals.Add(reading is Outcome<T>.Refused(var reasons) ? reasons[0] with { What = row.Where(column), Given = given } : new(row.Where(column), given, "another value"));
        return default;
    }
}

/// <summary>Where a field stands.</summary>
internal static class CsvRowPlace
{
    public static string Where(this CsvRow row, string column) => string.Create(CultureInfo.InvariantCulture, $"{row.What}, line {row.Line}, {column}");
}
