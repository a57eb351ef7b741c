using System.Collections.Concurrent;
using Boardwright.Casting;
using Boardwright.Casting.Cure;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;
using CastingResin = Boardwright.Casting.Resin;

namespace Boardwright.Yard.UseCases;

/// <summary>How a pour of the book cures under a course of shop temperature: by the model and, apart from it, by the label's rule.</summary>
/// <param name="Resin">As listed.</param>
/// <param name="Shop">The air it was worked out for.</param>
/// <param name="Model">Null when the book does not say how the resin cures.</param>
/// <param name="PlannedHour">Hours from the pour to the planned demoulding.</param>
public sealed record PourCure(CastingResin Resin, PourShop Shop, PourForecast? Model, double PlannedHour)
{
    private const int KeptMost = 64;
    private const double WarmCelsius = 28.0;

    // A forecast takes a second or two; the same question gets the same answer.
    private static readonly ConcurrentDictionary<string, Outcome<PourCure>> Kept = new(StringComparer.Ordinal);

    /// <summary>The bottom of a mould the book does not describe: 12.7 mm of HDPE, common practice.</summary>
    public static Outcome<MouldWall> UsualWall { get; } = MouldWall.Of("mould", "hdpe", Length.FromMillimetres(12.7));

    /// <summary>Hour of the day a pour is taken to begin while it is planned.</summary>
    public static TimeOnly UsualHour { get; } = new(16, 0);

    /// <summary>Works the cure out.</summary>
    /// <param name="state">The yard.</param>
    /// <param name="pour">The pour.</param>
    /// <param name="shop">The shop's air.</param>
    public static Outcome<PourCure> For(YardState state, Pour pour, PourShop shop)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(pour);
        ArgumentNullException.ThrowIfNull(shop);
        if (Kept.Count > KeptMost)
            Kept.Clear();
        var key = $"{pour.Tag}|{string.Join(',', pour.History)}|{pour.DemouldOn}|{state.Resins.GetValueOrDefault(pour.Plan.Resin)?.Label}|{string.Join(' ', shop.Points)}|{shop.Words}";
        return Kept.GetOrAdd(key, _ => Work(state, pour, shop));
    }

    /// <summary>Hours at the label's temperature the shop has been worth so far.</summary>
    public Elapsed Worth(double hour) => LabelRule.Worth(Resin.Label, Shop.Air, Elapsed.FromHours(hour));

    /// <summary>When the label's demoulding time is reached; null when the label or the shop does not get there.</summary>
    public double? LabelDemouldHour => Resin.Label.Demould is { } label ? LabelRule.Reaches(Resin.Label, Shop.Air, label)?.Hours : null;

    /// <summary>When the label's gel time is reached.</summary>
    public double? LabelGelHour => Resin.Label.Gel is { } label ? LabelRule.Reaches(Resin.Label, Shop.Air, label)?.Hours : null;

    /// <summary>Hours in a room of 28 °C from an hour on until the label's demoulding time is reached; zero when it is.</summary>
    public double? WarmHoursNeeded(double hour) => Resin.Label.Demould is { } label
        ? LabelRule.Reaches(Resin.Label, Shop.Air.Then(Elapsed.FromHours(hour), Temperature.FromCelsius(WarmCelsius)), label) is { } reached ? Math.Max(0.0, reached.Hours - hour) : null
        : null;

    /// <summary>Depth that heats as one, mm: as planned, or what was poured last and, before that had gelled, just before it.</summary>
    internal static double DepthMm(Pour pour, CastingResin resin) => pour.Layers.Count == 0 ? pour.Plan.DepthMm
        : pour.Layers.Where(layer => (pour.Layers[^1].At - layer.At).TotalHours <= (resin.Label.Gel?.Hours ?? 0.0)).Sum(layer => layer.DepthMm);

    private static Outcome<PourCure> Work(YardState state, Pour pour, PourShop shop) => PourModel.Resin(state, pour.Plan.Resin).Then(resin =>
    {
        var begun = pour.PouredAt ?? pour.PourOn.ToDateTime(UsualHour);
        var planned = (pour.DemouldOn.ToDateTime(UsualHour) - begun).TotalHours;
        if (resin.Curing is not { } curing)
            return (Outcome<PourCure>)new PourCure(resin, shop, null, planned);
        var depth = Length.FromMillimetres(DepthMm(pour, resin));
        Length? edge = pour.Plan.ThinnestMm is { } thin and >= 0.5 && thin < depth.Millimetres ? Length.FromMillimetres(thin) : null;
        return UsualWall.Then(wall => PourForecast.Of(new CureSection { Resin = curing, Layers = [new(depth, default)], Wall = wall, Shop = shop.Air }, edge, Math.Clamp(planned, 72.0, 240.0)))
            .Then<PourCure>(model => new PourCure(resin, shop, model, planned));
    });
}
