using System.Text.Json;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.Tables;

namespace Boardwright.Yard.UseCases;

// The season: what happens on which day, played forward day by day.
public static partial class DemoYard
{
    private const string SeasonFile = "season.jsonl";
    private const string SeasonWeather = "season-weather.csv";

    /// <summary>One line of the season.</summary>
    /// <param name="HappenedAt">When.</param>
    /// <param name="By">Who writes it.</param>
    /// <param name="Event">Its number among the told events, E-01 to E-20; none for the ordinary work between them.</param>
    /// <param name="Fact">What happened.</param>
    /// <param name="ChoosesTallyOf">Instead of a fact: a tally of this pack is chosen, the one its person made.</param>
    /// <param name="TalliedBy">Who made the tally chosen.</param>
    /// <param name="Id">Given by a phone.</param>
    public sealed record SeasonLine(DateTime HappenedAt, string By, string? Event = null, Fact? Fact = null, string? ChoosesTallyOf = null, string? TalliedBy = null, Guid? Id = null)
    {
        internal NewEntry? Entry => Fact is null ? null : new(By, Fact, HappenedAt, Id: Id);
    }

    /// <summary>What one day brought.</summary>
    /// <param name="Day">The day.</param>
    /// <param name="Happened">Lines written.</param>
    /// <param name="Left">Lines that did not fit what was written meanwhile, each with its reason.</param>
    public sealed record PlayedDay(DateOnly Day, IReadOnlyList<SeasonLine> Happened, IReadOnlyList<(SeasonLine Line, Refusal Why)> Left);

    /// <summary>Turns the demonstration forward day by day, up to and with a day, and writes what happens on each.</summary>
    /// <remarks>A line that does not fit any more, because somebody loaded another kiln, is left out and named: the yard is not forced back.</remarks>
    public static Outcome<IReadOnlyList<PlayedDay>> PlayForward(YardBook book, string folder, DateOnly until)
    {
        if (!book.State.IsDemonstration)
            return new Refusal("book", "a yard of its own", "a demonstration yard; days of a real one turn by themselves");
        if (until <= book.State.Today)
            return new Refusal("until", $"{until:yyyy-MM-dd}", $"a day after {book.State.Today:yyyy-MM-dd}; time is not turned back");

        var first = book.State.Entries.Select(e => e.Fact).OfType<DayTurned>().First().Day;
        var weeks = WeeksTo(first);
        var season = Season(folder, weeks);
        var weather = YardTables.For("weather.csv")!.Read(SeasonWeather, Moved(File.ReadAllText(Path.Combine(folder, SeasonWeather)), weeks), Writer).Entries.Select(e => e.Entry).ToList();
        var played = new List<PlayedDay>();
        for (var day = book.State.Today.AddDays(1); day <= until; day = day.AddDays(1))
        {
            var outcome = PlayDay(book, day, [.. season.Where(line => DateOnly.FromDateTime(line.HappenedAt) == day)], weather.Where(e => ((WeatherObserved)e.Fact).Date == day.AddDays(-1)));
            if (outcome is not Outcome<PlayedDay>.Done(var done))
                return outcome.Then<IReadOnlyList<PlayedDay>>(_ => played);
            played.Add(done);
        }

        return played;
    }

    /// <summary>The season's lines, in order, moved by whole weeks.</summary>
    public static IReadOnlyList<SeasonLine> Season(string folder, int weeks)
    {
        var path = Path.Combine(folder, SeasonFile);
        return !File.Exists(path) ? [] : [.. Moved(File.ReadAllText(path), weeks).Split('\n', StringSplitOptions.RemoveEmptyEntries)
            .Where(line => !line.StartsWith('#'))
            .Select(line => JsonSerializer.Deserialize<SeasonLine>(line, BookJson.Options) ?? throw new JsonException($"{SeasonFile}: a line is not null."))
            .OrderBy(line => line.HappenedAt)];
    }

    private static Outcome<PlayedDay> PlayDay(YardBook book, DateOnly day, IReadOnlyList<SeasonLine> lines, IEnumerable<NewEntry> weather)
    {
        NewEntry[] turned = [new(Writer, new DayTurned(day), day.ToDateTime(TimeOnly.MinValue)), .. weather];
        var wanted = lines.Select(line => Resolved(book.State, line)).ToList();
        var why = book.Check([.. turned, .. wanted.OfType<NewEntry>()]);
        var (happened, left, entries) = (new List<SeasonLine>(), new List<(SeasonLine, Refusal)>(), new List<NewEntry>(turned));
        var place = turned.Length;
        for (var index = 0; index < lines.Count; index++)
        {
            var refusal = wanted[index] is null ? new Refusal("pack", lines[index].ChoosesTallyOf ?? "", "a pack with a tally by that person") : why[place++];
            if (refusal is not null)
            {
                left.Add((lines[index], refusal));
                continue;
            }

            happened.Add(lines[index]);
            entries.Add(wanted[index]!);
        }

        return book.Write(entries).Then<PlayedDay>(_ => new PlayedDay(day, happened, left));
    }

    private static NewEntry? Resolved(YardState yard, SeasonLine line) => line.ChoosesTallyOf is not { } pack
        ? line.Entry is { Fact: Shipped shipped } entry && yard.Shipments.ContainsKey(shipped.Shipment) ? entry with { Fact = shipped with { Shipment = $"{shipped.Shipment}a" } } : line.Entry
        : yard.Packs.TryGetValue(pack, out var tallied) && tallied.Tallies.FindLast(tally => tally.By == line.TalliedBy) is { } tally
            ? new(line.By, new TallyChosen(pack, tally.Entry, "third look at the boards that differ"), line.HappenedAt)
            : null;
}
