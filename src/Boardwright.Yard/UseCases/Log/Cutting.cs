using System.Collections.Concurrent;
using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;
using Boardwright.Quantities;
using Boardwright.Sawing;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>How to open a log of the yard: its shape as measured, the house's green settings and kerf, prices by its own grade shares, thickness by plan and open orders.</summary>
public sealed record LogCutting(LogShape Shape, SawingRules Rules, CuttingPlan Plan, IReadOnlyList<BoardPrice> Prices, IReadOnlyList<NominalThickness> Thicknesses, string Priced)
{
    /// <summary>What of the open order lines it fills; none where no line wants its wood.</summary>
    public IReadOnlyList<LineFill> Fills { get; init; } = [];

    private static readonly string[] GradeNames = ["fas", "1c", "2a", "below"];
    private const double UsualKerfMm = 1.397;
    private static readonly int[] Known = [4, 5, 6, 8, 10, 12, 16];

    // A plan is worked out once for a state of the yard, however often its page is opened.
    private static readonly ConditionalWeakTable<YardState, ConcurrentDictionary<string, Outcome<LogCutting>>> Done = [];

    /// <summary>The plan.</summary>
    /// <param name="state">The yard.</param>
    /// <param name="log">The log.</param>
    /// <param name="thickness">A thickness to try instead of the planned ones.</param>
    /// <param name="pattern">A pattern to try instead of the planned one.</param>
    /// <param name="wanted">Which open order lines count.</param>
    public static Outcome<LogCutting> Of(YardState state, Log log, NominalThickness? thickness = null, SawPattern? pattern = null, OrdersWanted wanted = OrdersWanted.Missing)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(log);
        return Done.GetOrCreateValue(state).GetOrAdd($"{log.Tag} {thickness} {pattern} {wanted}", _ => WorkOut(state, log, thickness, pattern, wanted));
    }

    /// <summary>Thicknesses planned for the log in words, else asked for by open orders of its species, else 4/4.</summary>
    public static IReadOnlyList<NominalThickness> Planned(YardState state, Log log)
    {
        var quarters = Known.Where(one => log.PlannedFor is { } plan && Regex.IsMatch(plan, $@"\b{one}/4")).ToList();
        if (quarters.Count == 0)
            quarters = [.. OpenLines(state, log).Select(line => line.ThicknessQuarters).OfType<int>().Where(Known.Contains).Distinct()];
        return [.. (quarters.Count > 0 ? quarters : [4]).Select(NominalThickness.FromQuarters)];
    }

    /// <summary>Lines of open orders that ask for the log's species.</summary>
    public static IEnumerable<Book.Facts.OrderLine> OpenLines(YardState state, Log log) => state.Orders.Values.Where(order => order.IsOpen)
        .SelectMany(order => order.Lines).Where(line => !line.IsFilled && line.Asked.Species == log.Species.CommonName).Select(line => line.Asked);

    private static Outcome<LogCutting> WorkOut(YardState state, Log log, NominalThickness? thickness, SawPattern? pattern, OrdersWanted wanted)
    {
        IReadOnlyList<WantedLine> lines = thickness is null ? LogOrders.Of(state, log, wanted) : [.. LogOrders.Of(state, log, wanted).Where(line => line.Asked.ThicknessQuarters == thickness.Value.Quarters)];
        return Ready(state, log, thickness, lines, pattern).Then(ready => (lines.Count == 0
            ? CuttingPlanner.Plan(ready.Shape, ready.Rules, ready.Prices, pattern ?? Usual(log)).Then<(CuttingPlan Plan, IReadOnlyList<LineFill> Fills)>(plan => (plan, []))
            : DeckPlanner.Plan([ready], [.. lines.Select(line => line.Open)], pattern ?? Usual(log)).Then<(CuttingPlan Plan, IReadOnlyList<LineFill> Fills)>(deck => (deck.Plans[0]!, deck.Fills)))
            .Then<LogCutting>(found => new LogCutting(ready.Shape, ready.Rules, found.Plan, ready.Prices, [.. ready.Rules.Settings.Select(setting => setting.Nominal)], Basis(state, log, ready.Prices)) { Fills = found.Fills }));
    }

    /// <summary>The pattern a log is sawn in where nobody says otherwise: quarter where that is planned, else live.</summary>
    public static SawPattern Usual(Log log)
    {
        ArgumentNullException.ThrowIfNull(log);
        return log.PlannedFor?.Contains("quarter", StringComparison.OrdinalIgnoreCase) == true ? SawPattern.Quarter : SawPattern.Live;
    }

    /// <summary>A log with its shape, the house's green settings and kerf, and prices, those of order lines too; a boule is priced as slabs, and no slab comes off a cant or a quarter.</summary>
    internal static Outcome<DeckLog> Ready(YardState state, Log log, NominalThickness? thickness, IReadOnlyList<WantedLine> lines, SawPattern? pattern = null)
    {
        if (!log.Proven)
            return new Outcome<DeckLog>.NoAnswer("No plan while the species is not proven.");

        List<NominalThickness> thicknesses = thickness is { } one ? [one] : [.. Planned(state, log).Union(lines.Select(line => NominalThickness.FromQuarters(line.Asked.ThicknessQuarters!.Value)))];
        var rules = new SawingRules
        {
            Kerf = Length.FromMillimetres(state.Yard?.KerfMm ?? UsualKerfMm),
            Settings = [.. thicknesses.Select(nominal => new GreenSetting(nominal, state.Setting($"house_green_{nominal.Quarters}_4") is { } inches ? Length.FromInches(inches) : nominal.Length + Length.FromInches(0.125)))],
        };
        List<BoardPrice> prices = [.. thicknesses.SelectMany(nominal => PricesOf(state, log, nominal, pattern)), .. lines.SelectMany(line => LogOrders.Rows(state, line, PricesOf(state, log, NominalThickness.FromQuarters(line.Asked.ThicknessQuarters!.Value), pattern), GradeShares(state, log)))];
        return prices.Count == 0 ? new Outcome<DeckLog>.NoAnswer($"No price of {log.Species.CommonName}{(pattern == SawPattern.Boule ? " slabs" : "")} is set.") : LogShapes.Of(log).Then<DeckLog>(shape => new DeckLog(shape, rules, prices));
    }

    /// <summary>What a board foot brings on average with the house's own share of grades for the diameter: full-size boards, and smaller ones that no rule grades FAS.</summary>
    private static IEnumerable<BoardPrice> PricesOf(YardState state, Log log, NominalThickness nominal, SawPattern? pattern)
    {
        if (pattern == SawPattern.Boule || (pattern is null or SawPattern.Live && log.PlannedFor?.Contains("slab", StringComparison.OrdinalIgnoreCase) == true && nominal.Quarters >= 6))
        {
            var slab = YardLog.OfSpecies(state, "slab_dry_", log.Species.CommonName) ?? state.Setting("slab_dry");
            if (slab is { } money)
                yield return new(nominal, "slab", Length.FromInches(6), Length.FromFeet(6), money) { Edge = pattern == SawPattern.Boule ? BoardEdge.Boule : BoardEdge.Live };
            yield break;
        }

        if (state.Prices.GetValueOrDefault(log.Species.CommonName) is not { } priced)
            yield break;

        var (fas, common, second, below) = GradeShares(state, log);
        var premium = 1.0 + ((state.Setting($"premium_{nominal.Quarters}_4") ?? 0.0) / 100.0);
        var rest = (common * (double)priced.Dry1cMoney) + (second * (double)priced.Dry2aMoney) + (below * (state.Setting("below_2a") ?? 0.0));
        var (large, small) = ((fas * (double)priced.DryFasMoney) + rest, (fas * (double)priced.Dry1cMoney) + rest);
        var quartered = 1.0 + ((YardLog.OfSpecies(state, "premium_quartersawn_", log.Species.CommonName) ?? state.Setting("premium_quartersawn") ?? 0.0) / 100.0);
        foreach (var (grain, factor, name) in new (BoardGrain?, double, string)[] { (null, 1.0, ""), (BoardGrain.Quartered, quartered, ", quartersawn") }.Take(quartered > 1.0 ? 2 : 1))
        {
            yield return new(nominal, $"6 in and wider{name}", Length.FromInches(6), Length.FromFeet(8), large * premium * factor, grain) { Wane = WaneOf(state, "full_size") };
            yield return new(nominal, $"smaller{name}", Length.FromInches(3), Length.FromFeet(4), small * premium * factor, grain) { Wane = WaneOf(state, "smaller") };
        }
    }

    /// <summary>Share of the thickness that may be missing along the edges of one face of boards the house sells (settings <c>wane_full_size</c>, <c>wane_smaller</c>); none where nothing is set.</summary>
    /// <param name="state">The yard.</param>
    /// <param name="of">full_size or smaller.</param>
    public static Share WaneOf(YardState state, string of)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state.Setting($"wane_{of}") is { } percent and >= 0.0 and <= 90.0 ? Share.FromPercent(percent) : default;
    }

    private static (double Fas, double Common, double Second, double Below) GradeShares(YardState state, Log log)
    {
        var inches = Math.Round(log.ScalingDiameter.Inches);
        var size = inches >= 22 ? "22_in_up" : inches >= 16 ? "16_to_21_in" : inches >= 13 ? "13_to_15_in" : "to_12_in";
        var graded = log.Seen.Grade is { } seen && GradeNames.All(grade => state.Setting($"log_grade_share_{grade}_{seen.ToString().ToLowerInvariant()}") is not null);
        double Share(string grade) => (state.Setting(graded ? $"log_grade_share_{grade}_{log.Seen.Grade.ToString()!.ToLowerInvariant()}" : $"grade_share_{grade}_{size}") ?? 25.0) / 100.0;
        return (Share("fas"), Share("1c"), Share("2a"), Share("below"));
    }

    private static string Basis(YardState state, Log log, IReadOnlyList<BoardPrice> prices)
    {
        if (prices.All(price => price.Edge != BoardEdge.Square))
            return string.Create(CultureInfo.InvariantCulture, $"dry slabs at {prices.Max(price => price.MoneyPerBoardFoot):0.00} a board foot");

        var (fas, common, second, below) = GradeShares(state, log);
        return string.Create(CultureInfo.InvariantCulture, $"dry prices at the mill’s own share of grades for this size: FAS {fas:0.#%}, 1C {common:0.#%}, 2A {second:0.#%}, below {below:0.#%}");
    }
}
