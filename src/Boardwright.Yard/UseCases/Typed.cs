using Boardwright.Quantities;
using Boardwright.Quantities.Reading;
using Boardwright.Yard.Book;

namespace Boardwright.Yard.UseCases;

/// <summary>Reads the fields of a form: every refusal is collected, and a bare figure takes the unit that stands beside its field.</summary>
internal sealed class Typed
{
    private readonly List<Refusal> refusals = [];

    public IReadOnlyList<Refusal> Refusals => refusals;

    public void Refuse(string what, string? given, string accepted) => refusals.Add(new(what, given ?? "", accepted));

    /// <summary>Adds a refusal, where there is one.</summary>
    public void Refuse(Refusal? refusal)
    {
        if (refusal is not null)
            refusals.Add(refusal);
    }

    public Mass Mass(string what, string? text) => Take(Read.Mass(what, WithUnit(text, "kg")));

    public Mass Grams(string what, string? text) => Take(Read.Mass(what, WithUnit(text, "g")));

    public Temperature Fahrenheit(string what, string? text) => Take(Read.Temperature(what, WithUnit(text, "F")));

    /// <summary>Absolute pressure, millibars unless another unit is written.</summary>
    public Pressure Millibars(string what, string? text) => Take(Read.Pressure(what, WithUnit(text, "mbar")));

    public MoistureContent Percent(string what, string? text) => Take(Read.MoistureContent(what, WithUnit(text, "%")));

    public double Number(string what, string? text, double least, double most, string accepted)
    {
        if (Read.Number(what, text ?? "") is Outcome<double>.Done(var value) && value >= least && value <= most)
            return value;
        Refuse(what, text, accepted);
        return least;
    }

    /// <summary>A size; a tenth of a metre in its stead where it is refused.</summary>
    public Length Size(Outcome<SizeTyped> size) => Take(size, new SizeTyped(Quantities.Length.FromMetres(0.1), "")).Length;

    /// <summary>What was read, or something in its stead where it is refused.</summary>
    public T Take<T>(Outcome<T> outcome, T instead)
    {
        if (outcome is Outcome<T>.Done(var value))
            return value;
        refusals.AddRange(((Outcome<T>.Refused)outcome).Reasons);
        return instead;
    }

    public Temperature Celsius(string what, string? text) => Take(Read.Temperature(what, WithUnit(text, "C")));

    public Length? Millimetres(string what, string? text) => string.IsNullOrWhiteSpace(text) ? null : Take(Read.Length(what, WithUnit(text, "mm")));

    /// <summary>A whole number in a range.</summary>
    public int Whole(string what, string? text, int least, int most)
    {
        if (int.TryParse(text, System.Globalization.NumberStyles.AllowLeadingWhite | System.Globalization.NumberStyles.AllowTrailingWhite, System.Globalization.CultureInfo.InvariantCulture, out var value) && value >= least && value <= most)
            return value;
        Refuse(what, text, $"a whole number from {least} to {most}");
        return least;
    }

    public string Named(string what, string? text, string accepted)
    {
        if (string.IsNullOrWhiteSpace(text))
            Refuse(what, text, accepted);
        return text?.Trim() ?? "";
    }

    public string By(YardState state, string? text)
    {
        if (text is null || !state.People.ContainsKey(text))
            Refuse("Who", text, state.People.Count == 0 ? "a person of the house; nobody is written in yet (The house, People)" : $"one of {string.Join(", ", state.People.Keys)}");
        return text ?? "";
    }

    /// <summary>When it happened, as the form says.</summary>
    public DateTime Time(YardBook book, PostedKey key) => Take(key.Time(book));

    /// <summary>Writes when nothing was refused.</summary>
    public Outcome<IReadOnlyList<Entry>> Then(Func<Outcome<IReadOnlyList<Entry>>> write) => refusals.Count > 0 ? new Outcome<IReadOnlyList<Entry>>.Refused(refusals) : write();

    private static string WithUnit(string? text, string unit) => text is null || text.Trim().Length == 0 ? "" : char.IsAsciiDigit(text.Trim()[^1]) ? text.Trim() + unit : text;

    private T Take<T>(Outcome<T> outcome)
        where T : struct
    {
        switch (outcome)
        {
            case Outcome<T>.Done(var value):
                return value;
            case Outcome<T>.Refused(var reasons):
                refusals.AddRange(reasons);
                return default;
            default:
                throw new InvalidOperationException("A typed figure is read or refused.");
        }
    }
}
