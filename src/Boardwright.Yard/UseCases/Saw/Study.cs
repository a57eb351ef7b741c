using Boardwright.Quantities;
using Boardwright.Quantities.Reading;
using Boardwright.Sawing;
using Boardwright.Wood;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>What is asked of a thickness study, as typed: moisture in percent, money without its sign.</summary>
public sealed record StudyAsked(string? FinalMoisture, string? FootagePerYear, string? Price, string? LesserPrice);

/// <summary>A thickness study of the mill's own readings: how the saw cuts, whether it holds, what can be dressed from it, what a wrong size costs.</summary>
/// <param name="Set">The readings.</param>
/// <param name="Variation">How evenly the saw cuts.</param>
/// <param name="Chart">Board by board.</param>
/// <param name="Target">Green target for the standard surfaced thickness; null where the nominal thickness has none.</param>
/// <param name="Lumber">After drying.</param>
/// <param name="Sizes">Finished thicknesses tried, thickest first.</param>
/// <param name="Loss">Money of a year, at the surfaced thickness; null without a price.</param>
/// <param name="LeastCut">Taken off both faces together for a clean board.</param>
/// <param name="Feed">Passes through the planer to the surfaced thickness, or to the nominal one where it has none.</param>
public sealed record SawStudy(
    ThicknessSet Set, SawVariation Variation, ThicknessChart Chart, GreenTarget? Target, Dressing Lumber, IReadOnlyList<DressedSize> Sizes, ThicknessLoss? Loss, Length LeastCut, StudyFeed Feed)
{
    // What a small planer takes in hard wood, both heads together: common practice, no source.
    private const double UsualPassInches = 1.0 / 8.0;
    private const double UsualLoosePerSolid = 3.5;
    private const double UsualBfPerHour = 350.0;

    // A thousand board feet of one nominal inch stand for 92.903 m² of face.
    private const double FaceM2PerThousand = 1000.0 * 0.3048 * 0.3048;

    private static readonly Length UsualCut = Length.FromInches(1.0 / 32.0);

    // Under the nominal size, in thirty-seconds of an inch: of inch stock 1-1/16, 1-1/32, 1, 15/16, 29/32 (23 mm) and 13/16.
    private static readonly int[] ThirtySecondsUnder = [-2, -1, 0, 2, 3, 6];

    /// <summary>The study of the readings taken last; no answer where the mill has none.</summary>
    public static Outcome<SawStudy> Of(YardState state, StudyAsked asked)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(asked);
        if (state.ThicknessSets.Count == 0)
            return new Outcome<SawStudy>.NoAnswer("No thickness was read yet. Read four to ten places on each of a dozen boards and write them under Write, thickness.");

        var set = state.ThicknessSets[^1];
        var readings = set.Fact.Boards.SelectMany(board => board.PointsMm.Select(point => new ThicknessReading($"{board.Board}", Length.FromMillimetres(point)))).ToList();
        return SpeciesTable.Find("Species", set.Fact.Species).Then(species =>
            Read.MoistureContent("Moisture when dressed", (asked.FinalMoisture ?? "7").Trim().TrimEnd('%') + "%").Then(final =>
            Number("Board feet a year", asked.FootagePerYear).Then(footage => Number("Price", asked.Price).Then(price => Number("Price of what skips", asked.LesserPrice).Then(lesser =>
            SawVariation.Of(readings).Then(variation => ThicknessChart.Of(readings).Then(chart =>
            Dressing.Of(variation.Mean, variation.Within, variation.BetweenComponent, species, final, default).Then<SawStudy>(lumber =>
            {
                var nominal = NominalThickness.FromQuarters(set.Fact.ThicknessQuarters);
                var surfaced = RoughThickness.Surfaced(nominal.Length);
                var target = surfaced is { } dressed && GreenTarget.Of(dressed, Length.FromInches(0.125), species, final, variation.Within, variation.BetweenComponent, GreenTarget.UsualUndersize, default) is Outcome<GreenTarget>.Done(var found) ? found : null;
                var sizes = ThirtySecondsUnder.Select(step => lumber.To(Length.FromInches(Math.Max(1.0 / 8.0, nominal.Inches - (step / 32.0))), UsualCut, Dressing.UsualPlaces)).ToList();
                var over = target is null ? default : Length.FromMetres(Math.Max(0.0, variation.Mean.Metres - target.Target.Metres));
                var clean = lumber.To(surfaced ?? nominal.Length, UsualCut, Dressing.UsualPlaces).CleanUp;
                var loss = price > 0.0 && footage > 0.0 ? ThicknessLoss.Of(over, clean, BoardFeet.From(footage), price, lesser) : null;
                return new SawStudy(set, variation, chart, target, lumber, sizes, loss, UsualCut, FeedOf(state, lumber, nominal, surfaced ?? nominal.Length));
            }))))))));
    }

    /// <summary>Loose shavings of a thousand board feet at a finished thickness, cubic metres.</summary>
    public double LooseShavingsM3(DressedSize size)
    {
        ArgumentNullException.ThrowIfNull(size);
        return Math.Max(0.0, Lumber.Dry.Metres - size.Finished.Metres) * FaceM2PerThousand / (Set.Fact.ThicknessQuarters / 4.0) * Feed.LoosePerSolid;
    }

    /// <summary>Passes to a finished thickness.</summary>
    public int Passes(DressedSize size)
    {
        ArgumentNullException.ThrowIfNull(size);
        return FeedPlan.Of(Lumber, size.Finished, Feed.MostPerPass).Openings.Count;
    }

    private static StudyFeed FeedOf(YardState state, Dressing lumber, NominalThickness nominal, Length finished)
    {
        var most = Length.FromInches(state.Setting("planer_most_per_pass") is { } set and > 0.0 and <= 1.0 ? set : UsualPassInches);
        var plan = FeedPlan.Of(lumber, finished, most);
        return new(plan, finished, most, 1000.0 * Math.Max(1, plan.Openings.Count) / (state.Setting("planer_output") ?? UsualBfPerHour), state.Setting("shavings_loose_per_solid") ?? UsualLoosePerSolid);
    }

    private static Outcome<double> Number(string what, string? text) => string.IsNullOrWhiteSpace(text) ? 0.0
        : Read.Number(what, text.Replace(",", "", StringComparison.Ordinal)).Then<double>(value => value is >= 0.0 and <= 1e9 ? value : new Refusal(what, text, "0 to 1,000,000,000"));
}

/// <summary>How a lot is fed through the planer.</summary>
/// <param name="Plan">Openings pass by pass.</param>
/// <param name="Finished">Finished thickness.</param>
/// <param name="MostPerPass">Off both faces together (setting <c>planer_most_per_pass</c>).</param>
/// <param name="HoursPerThousand">Hours a thousand board feet, at the planer's output for one pass.</param>
/// <param name="LoosePerSolid">Loose shavings over solid wood.</param>
public sealed record StudyFeed(FeedPlan Plan, Length Finished, Length MostPerPass, double HoursPerThousand, double LoosePerSolid);
