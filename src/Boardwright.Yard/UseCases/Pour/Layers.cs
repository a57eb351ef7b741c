using Boardwright.Casting.Cure;
using Boardwright.Numerics;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;
using CastingMix = Boardwright.Casting.Mix;

namespace Boardwright.Yard.UseCases;

/// <summary>How deep one layer of a pour may be. Wood may be signed for, this may not: resin that is too deep cracks, smokes and gives off harmful gas, whoever wants it.</summary>
/// <param name="MostMm">What the label allows or the model keeps under the resin's peak, whichever is less; whole millimetres.</param>
/// <param name="Why">What sets it.</param>
/// <param name="Layers">Equal ones for the depth planned; 0 where even a thin one gets too hot.</param>
/// <param name="SoftMm">Poured last and still soft as long as <paramref name="CoolAt"/> is ahead.</param>
/// <param name="CoolAt">When that has peaked and cooled; null when nothing is poured, or it does not cool in this shop.</param>
public sealed record PourLayers(double MostMm, string Why, int Layers, double SoftMm, DateTime? CoolAt)
{
    private const double ThinnestMm = 5.0;
    private const double DeepestMm = 500.0;

    /// <summary>Depth of one of them, mm.</summary>
    public double LayerMm(Pour pour)
    {
        ArgumentNullException.ThrowIfNull(pour);
        return pour.Plan.DepthMm / Math.Max(1, Layers);
    }

    /// <summary>"at most 50 mm in a layer (the label), so 2 layers of 30 mm, each after the one before has peaked and cooled".</summary>
    public string Words(Pour pour) => Layers == 0
        ? $"a colder shop: in this one even a layer of {ThinnestMm:0} mm gets too hot"
        : $"at most {MostMm:0} mm in a layer ({Why}){(Layers > 1 ? $", so {Layers} layers of {LayerMm(pour):0.#} mm, each after the one before has peaked and cooled" : "")}";

    /// <summary>By the label and by the model in the shop the book knows.</summary>
    public static Outcome<PourLayers> Of(YardState state, Pour pour) => PourShop.For(state, pour, null).Then(air => PourCure.For(state, pour, air)).Then<PourLayers>(cure => Of(pour, cure));

    /// <summary>By the label and by a cure that was worked out.</summary>
    public static PourLayers Of(Pour pour, PourCure cure)
    {
        ArgumentNullException.ThrowIfNull(pour);
        ArgumentNullException.ThrowIfNull(cure);
        var label = cure.Resin.Label.DeepestPour?.Millimetres ?? double.PositiveInfinity;
        var model = cure.Model is { } run ? Cool(run) : double.PositiveInfinity;
        var most = Math.Min(label, model);
        var layers = most < ThinnestMm ? 0 : (int)Math.Ceiling(pour.Plan.DepthMm / most);
        return new(most, label <= model ? "the label" : $"deeper, it passes {cure.Model!.Section.Resin.PeakCelsiusMax:0} °C in this shop", layers, pour.Layers.Count == 0 ? 0.0 : PourCure.DepthMm(pour, cure.Resin), CoolAtOf(pour, cure));
    }

    /// <summary>Depth, mm, that a mix adds to what is in the mould, its waste taken off.</summary>
    public static Outcome<double> Fills(YardState state, Pour pour, Mass mixed)
    {
        ArgumentNullException.ThrowIfNull(pour);
        var from = pour.Plan.DepthMm - pour.LeftMm;
        return PourModel.Mix(state, pour).Then<double>(_ =>
        {
            var kilograms = WantedKg(state, pour, from) + mixed.Kilograms;
            return (Root.Between(mm => WantedKg(state, pour, mm) - kilograms, 0.0, DeepestMm) ?? DeepestMm) - from;
        });
    }

    /// <summary>What to weigh for the layer that comes next.</summary>
    public Outcome<CastingMix> NextMix(YardState state, Pour pour)
    {
        ArgumentNullException.ThrowIfNull(pour);
        var from = pour.Plan.DepthMm - pour.LeftMm;
        return PourModel.Volume(pour, from + NextMm(pour)).Then(to => (from < 1.0 ? new Volume() : PourModel.Volume(pour, from).Then<Volume>(below => below.Volume))
            .Then(below => PourModel.Resin(state, pour.Plan.Resin).Then<CastingMix>(resin => CastingMix.For(resin, to.Volume - below, Share.FromFraction(pour.Plan.WasteShare)))));
    }

    /// <summary>Depth of the layer that comes next, mm.</summary>
    public double NextMm(Pour pour)
    {
        ArgumentNullException.ThrowIfNull(pour);
        return pour.LeftMm / Math.Max(1.0, Math.Ceiling(pour.LeftMm / MostMm));
    }

    /// <summary>Refuses resin that would heat together deeper than a layer may be, whoever signed.</summary>
    internal void Demand(Pour pour, string what, string given, double mm, DateTime at, Typed read)
    {
        var isSoft = SoftMm > 0.0 && pour.DemouldedAt is null && (CoolAt is not { } cool || at < cool);
        if (Math.Round(mm + (isSoft ? SoftMm : 0.0)) <= MostMm)
            return;
        var on = isSoft ? $" on {SoftMm:0} mm of {pour.PouredAt:d MMM HH:mm} that has not peaked and cooled" : "";
        var from = isSoft && CoolAt is { } later ? $" (from {later:ddd d MMM HH:mm})" : "";
        read.Refuse(what, $"{given}{on}", $"{Words(pour)}{from}. No signature lifts it: deeper, it can run away, crack, smoke and give off harmful gas");
    }

    private static double WantedKg(YardState state, Pour pour, double mm) =>
        mm > 0.1 && PourModel.Mix(state, pour with { Plan = pour.Plan with { DepthMm = mm } }) is Outcome<CastingMix>.Done(var mix) ? mix.Total.Kilograms : 0.0;

    // The margin is searched on a coarser grid than the peak: where the two differ, the peak decides.
    private static double Cool(PourForecast run)
    {
        var depth = run.Section.Layers.Sum(layer => layer.Depth.Millimetres);
        var most = Math.Floor(depth + run.MarginMillimetres);
        return run.IsSafe ? Math.Max(most, depth) : Math.Min(most, depth - 1.0);
    }

    private static DateTime? CoolAtOf(Pour pour, PourCure cure)
    {
        if (pour.PouredAt is not { } at)
            return null;
        if (cure.Model is not { } run)
            return cure.LabelDemouldHour is { } hours ? at.AddHours(hours) : null;
        var cool = run.Centre.Curve.FirstOrDefault(point => point.Hour > run.Centre.PeakHour && point.HottestCelsius <= run.Section.Resin.DemouldCelsiusMax);
        return cool.Hour > 0.0 ? at.AddHours(cool.Hour) : null;
    }
}
