using Boardwright.Quantities;
using Boardwright.Quantities.Reading;
using Boardwright.Wood;
using Boardwright.Yard.Book;

namespace Boardwright.Yard.Commands;

/// <summary>One request: the texts a person gave, read as quantities. Every refusal found on the way is kept.</summary>
/// <remarks>
/// A use case reads all it needs, then returns <see cref="Refuses"/> when that is set. A value that could not be read comes back
/// as the type's default so that reading can go on and every fault is reported at once.
/// </remarks>
public sealed class Ask(Command command, IReadOnlyDictionary<string, IReadOnlyList<string>> texts, string? argument, IAskHost host)
{
    private static readonly char[] Separators = [',', ';'];

    private readonly List<Refusal> refusals = [];

    public Command Command { get; } = command;

    /// <summary>What the person gave in the place of the command's argument; null when nothing.</summary>
    public string? Argument { get; } = argument;

    public bool Refuses => refusals.Count > 0;

    public IReadOnlyList<Refusal> Refusals => refusals;

    public bool Has(string option) => texts.ContainsKey(option);

    public string? TextOrNull(string option) => texts.TryGetValue(option, out var given) ? given[^1] : null;

    public IReadOnlyList<string> Texts(string option) => texts.TryGetValue(option, out var given) ? given : [];

    public string Text(string option) => TextOrNull(option) ?? throw new InvalidOperationException($"{Command.Words}: --{option} was read but is not required.");

    public Length Length(string option, Length? orElse = null) => Get(option, Read.Length, orElse);

    public Length? LengthOrNull(string option) => GetOrNull(option, Read.Length);

    public NominalThickness NominalThickness(string option) => Get(option, Read.NominalThickness);

    public Volume Volume(string option, Volume? orElse = null) => Get(option, Read.Volume, orElse);

    public Mass Mass(string option) => Get(option, Read.Mass);

    public Temperature Temperature(string option, Temperature? orElse = null) => Get(option, Read.Temperature, orElse);

    public Temperature? TemperatureOrNull(string option) => GetOrNull(option, Read.Temperature);

    public TemperatureDifference TemperatureDifference(string option, TemperatureDifference? orElse = null) => Get(option, Read.TemperatureDifference, orElse);

    public Pressure Pressure(string option, Pressure? orElse = null) => Get(option, Read.Pressure, orElse);

    public Density Density(string option) => Get(option, Read.Density);

    public Power Power(string option, Power? orElse = null) => Get(option, Read.Power, orElse);

    public Elapsed Elapsed(string option, Elapsed? orElse = null) => Get(option, Read.Elapsed, orElse);

    public MoistureContent Moisture(string option, MoistureContent? orElse = null) => Get(option, Read.MoistureContent, orElse);

    public MoistureContent? MoistureOrNull(string option) => GetOrNull(option, Read.MoistureContent);

    public RelativeHumidity Humidity(string option, RelativeHumidity? orElse = null) => Get(option, Read.RelativeHumidity, orElse);

    public RelativeHumidity? HumidityOrNull(string option) => GetOrNull(option, Read.RelativeHumidity);

    public Share Share(string option, Share? orElse = null) => Get(option, Read.Share, orElse);

    public Share? ShareOrNull(string option) => GetOrNull(option, Read.Share);

    public double Number(string option, double? orElse = null) => Get(option, Read.Number, orElse);

    public DateOnly Date(string option, DateOnly? orElse = null) => Get(option, ReadDate, orElse);

    /// <summary>The species of the table; null only when refused.</summary>
    public Species? Species(string option) => Has(option) ? Take("--" + option, SpeciesTable.Find("--" + option, Text(option))) : null;

    /// <summary>One of a few words.</summary>
    public string Choice(string option, string? orElse, params string[] accepted)
    {
        var text = TextOrNull(option) ?? orElse ?? "";
        var word = accepted.FirstOrDefault(choice => string.Equals(choice, text, StringComparison.OrdinalIgnoreCase));
        if (word is null)
        {
            Refuse(option, text, string.Join(", ", accepted));
        }

        return word ?? accepted[0];
    }

    /// <summary>Several quantities parted by commas, such as 118.6g,121.2g.</summary>
    public IReadOnlyList<T> List<T>(string option, Func<string, string, Outcome<T>> read)
    {
        ArgumentNullException.ThrowIfNull(read);
        var parts = Text(option).Split(Separators, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        if (parts.Length == 0)
        {
            Refuse(option, Text(option), "one value or more, parted by commas");
        }

        return [.. parts.Select(part => Take("--" + option, read("--" + option, part))!)];
    }

    /// <summary>The text of the file named as the command's argument; empty only when refused.</summary>
    public string ArgumentFile() => Take(Command.Argument!.Name, host.ReadFile(Command.Argument.Name, Argument!)) ?? "";

    /// <summary>The text of the file named by an option; empty only when refused.</summary>
    public string File(string option) => Take("--" + option, host.ReadFile("--" + option, Text(option))) ?? "";

    /// <summary>Where the book is that --yard or --data names; null for the one usual here, or when refused.</summary>
    public BookPlace? BookPlace()
    {
        if (Has("yard") && Has("data"))
            Refuse("yard", Text("yard"), "one of --data and --yard");
        return Has("yard") ? Take("--yard", Commands.BookPlace.Of("--yard", Text("yard"))) : TextOrNull("data") is { } folder ? Commands.BookPlace.OfFolder(folder) : null;
    }

    /// <summary>The book that --yard or --data names, else the usual one; null only when refused.</summary>
    /// <param name="make">Whether an empty book is made where there is none.</param>
    public YardBook? Book(bool make = false)
    {
        var place = BookPlace();
        var what = Has("yard") ? "--yard" : "--data";
        return Refuses ? null : Take(what, host.OpenBook(what, place, make));
    }

    /// <summary>The book usual here, where there is one; nothing is refused.</summary>
    public YardBook? UsualBook() => host.OpenBook("--data", null, make: false) is Outcome<YardBook>.Done(var book) ? book : null;

    /// <summary>The yard of the book named, else of the usual one, else the demonstration yard; null only when refused.</summary>
    public YardState? YardOrDemonstration() => Has("yard") || Has("data")
        ? Book()?.State
        : (UsualBook() ?? Take("--yard", host.OpenBook("--yard", new BookPlace.InMemory(), make: false)))?.State;

    /// <summary>See <see cref="IAskHost.ReplaceBook"/>.</summary>
    public Outcome<string> ReplaceBook(BookPlace place, IReadOnlyList<Entry> entries) => host.ReplaceBook(Has("yard") ? "--yard" : "--data", place, entries);

    /// <summary>Refuses an option in words of the use case.</summary>
    public void Refuse(string option, string given, string accepted) => refusals.Add(new Refusal("--" + option, given, accepted));

    /// <summary>Keeps the reasons of a refused reading; the default of the type when it was not done.</summary>
    public T? Take<T>(string what, Outcome<T> reading)
    {
        switch (reading)
        {
            case Outcome<T>.Done(var value):
                return value;
            case Outcome<T>.Refused(var reasons):
                refusals.AddRange(reasons);
                return default;
            case Outcome<T>.NoAnswer(var why):
                refusals.Add(new Refusal(what, "", why));
                return default;
            default:
                throw new InvalidOperationException("An outcome has three cases.");
        }
    }

    /// <summary>An answer of the computation, whose refusals name inputs plainly, with those inputs named as the options they came from.</summary>
    /// <remarks>What was given is shown as the person wrote it, except where one option holds several values.</remarks>
    public Outcome<T> Named<T>(Outcome<T> answer) => answer is Outcome<T>.Refused(var reasons)
        ? new Outcome<T>.Refused([.. reasons.Select(Named)])
        : answer;

    private Refusal Named(Refusal reason) => Command.FindOption(reason.What) is null ? reason : reason with
    {
        What = "--" + reason.What,
        Given = TextOrNull(reason.What) is { } text && !text.AsSpan().ContainsAny(Separators) ? text : reason.Given,
    };

    /// <summary>The refusals as the outcome of the use case.</summary>
    public Outcome<T> Refused<T>() => new Outcome<T>.Refused(refusals);

    private static Outcome<DateOnly> ReadDate(string what, string text) =>
        DateOnly.TryParseExact(text, "yyyy-MM-dd", out var date) ? date : new Refusal(what, text, "a date as year-month-day, such as 2026-11-02");

    private T Get<T>(string option, Func<string, string, Outcome<T>> read, T? orElse = null)
        where T : struct => TextOrNull(option) is { } text
            ? Take("--" + option, read("--" + option, text))
            : orElse ?? throw new InvalidOperationException($"{Command.Words}: --{option} is neither required nor has a default.");

    private T? GetOrNull<T>(string option, Func<string, string, Outcome<T>> read)
        where T : struct => TextOrNull(option) is { } text ? Take("--" + option, read("--" + option, text)) : null;
}
