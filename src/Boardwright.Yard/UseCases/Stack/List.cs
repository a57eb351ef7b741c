using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>One stack in a list.</summary>
/// <param name="Stack">The stack.</param>
/// <param name="Days">Days since it was sawn.</param>
/// <param name="MoisturePct">Likely this evening, else as last read; null where nothing is known.</param>
/// <param name="MoistureBasis">How it is known.</param>
/// <param name="Ready">When it is dry enough, as a band in words.</param>
/// <param name="Gains">It gets wetter where it is.</param>
public sealed record StackRow(Stack Stack, int Days, double? MoisturePct, string MoistureBasis, string Ready, bool Gains);

/// <summary>The stacks that are here, in the order of their places.</summary>
/// <param name="Rows">What is asked for.</param>
/// <param name="Places">Places that hold a stack, in order: to choose from.</param>
/// <param name="Woods">Woods that are here.</param>
/// <param name="FootageBf">Footage of the rows.</param>
/// <param name="All">How many stacks are here in all.</param>
public sealed record StackList(IReadOnlyList<StackRow> Rows, IReadOnlyList<string> Places, IReadOnlyList<string> Woods, double FootageBf, int All)
{
    private const int SurprisesOverDays = 365;

    /// <summary>Counts of a year that were otherwise than the card said, in a sentence; empty where nothing was counted.</summary>
    public string Surprises { get; private init; } = "";

    /// <summary>What may be shown, by its word in an address.</summary>
    public static IReadOnlyList<(string Word, string Name)> Shows { get; } = [("all", "all"), ("drying", "still drying"), ("ready", "dry enough"), ("kiln", "in a kiln"), ("dry", "kiln dried")];

    /// <param name="state">The yard.</param>
    /// <param name="place">Only this place; empty for all.</param>
    /// <param name="wood">Only this wood; empty for all.</param>
    /// <param name="show">A word of <see cref="Shows"/>; empty for all.</param>
    public static Outcome<StackList> Of(YardState state, string? place = null, string? wood = null, string? show = null)
    {
        ArgumentNullException.ThrowIfNull(state);
        var here = state.Stacks.Values.Where(stack => stack.IsHere).OrderBy(stack => Order(state, stack.Place)).ThenBy(stack => stack.Place, StringComparer.Ordinal).ThenBy(stack => stack.Tag, StringComparer.Ordinal).ToList();
        var (places, woods) = (here.Select(stack => stack.Place).Distinct().ToList(), here.Select(Wood).Distinct().Order(StringComparer.Ordinal).ToList());
        if ((Unknown("place", place, places) ?? Unknown("wood", wood, woods) ?? Unknown("show", show, Shows.Select(s => s.Word))) is { } refusal)
            return refusal;

        var wanted = here.Where(stack => (string.IsNullOrEmpty(place) || stack.Place == place) && (string.IsNullOrEmpty(wood) || Wood(stack) == wood)).ToList();
        var rows = wanted.AsParallel().AsOrdered().Select(stack => Row(state, stack)).Where(row => Shown(row.Stack, row.Ready, show)).ToList();
        return new StackList(rows, places, woods, rows.Sum(row => row.Stack.Footage.Count), here.Count) { Surprises = SurpriseWords(state) };
    }

    private static string SurpriseWords(YardState state)
    {
        var from = state.Today.AddDays(-SurprisesOverDays);
        var counts = state.Stacks.Values.SelectMany(stack => stack.Counts.Where(count => count.At.Day() >= from).Select(count => (stack.Tag, Count: count))).ToList();
        var off = counts.Where(one => one.Count.IsSurprise).OrderByDescending(one => one.Count.At).ToList();
        return counts.Count == 0 ? ""
            : off.Count == 0 ? $"{(counts.Count == 1 ? "The one count" : $"All {counts.Count} counts")} of the last year agreed with the card within 5 %."
            : string.Create(CultureInfo.InvariantCulture, $"Surprises: {off.Count} of {counts.Count} counts of the last year were more than 5 % off the card; the last {off[0].Tag} on {DayWords.Of(off[0].Count.At.Day(), state.Today)}, {off[0].Count.Card.Count:#,0} bf on the card, {off[0].Count.Counted.Count:#,0} counted.");
    }

    private static string Wood(Stack stack) => stack.Proven ? stack.Species.CommonName : "unproven";

    private static Refusal? Unknown(string what, string? given, IEnumerable<string> accepted) =>
        string.IsNullOrEmpty(given) || accepted.Contains(given) ? null : new(what, given, string.Join(", ", accepted));

    // Sheds, then rows, then kilns, then dry stores: the round through the yard.
    private static int Order(YardState state, string place) => state.Places.GetValueOrDefault(place)?.Type switch
    {
        PlaceKind.Shed => 0,
        PlaceKind.Row => 1,
        null => 3,
        PlaceKind.Store or PlaceKind.Workshop => 4,
        _ => 2,
    };

    private static StackRow Row(YardState state, Stack stack)
    {
        var days = state.Today.DayNumber - stack.SawnOn.DayNumber;
        if (StackForecast.Of(state, stack.Tag) is Outcome<StackForecast>.Done(var drying))
            return new(stack, days, drying.Now.P50.Percent, "likely this evening", drying.ReadyWords, drying.Gain is not null);

        var now = StackNow.Of(state, stack);
        return new(stack, days, now?.Mean.Percent, now?.How ?? "never read",
            stack.Stage == StackStage.InKiln ? $"in {stack.Charge}" : "dry", false);
    }

    private static bool Shown(Stack stack, string ready, string? show) => show switch
    {
        "drying" => stack.Stage == StackStage.AirDrying && !ready.StartsWith("since", StringComparison.Ordinal),
        "ready" => stack.Stage == StackStage.AirDrying && ready.StartsWith("since", StringComparison.Ordinal),
        "kiln" => stack.Stage == StackStage.InKiln,
        "dry" => stack.Stage is StackStage.KilnDried or StackStage.Dressed,
        _ => true,
    };
}
