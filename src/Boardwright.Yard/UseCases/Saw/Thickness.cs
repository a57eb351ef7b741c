using System.Globalization;
using Boardwright.Numerics;
using Boardwright.Quantities;
using Boardwright.Quantities.Reading;
using Boardwright.Sawing;
using Boardwright.Wood;
using Boardwright.Yard.Book;

namespace Boardwright.Yard.UseCases;

/// <summary>One setting of the mill and what it costs.</summary>
/// <param name="Setting">Green, as the setworks make it.</param>
/// <param name="ThinShare">Boards that will not dress.</param>
/// <param name="YieldLowPct">Yield lost against the target, at least.</param>
/// <param name="YieldHighPct">At most.</param>
/// <param name="Words">Nearest, the house's own, or too thin.</param>
public sealed record ThicknessChoice(Length Setting, double ThinShare, double YieldLowPct, double YieldHighPct, string Words);

/// <summary>How thick to saw green for a dressed size, with the mill's own variation: the target with its spread, the settings around it and what each costs.</summary>
public sealed record SawThickness
{
    // Each 1/32 in too thick costs 2 to 3 % of the yield; source wengert-woodweb-thickness.
    private const double YieldLowPctPer32nd = 2.0;
    private const double YieldHighPctPer32nd = 3.0;
    private const double ShrinkageSpread = 0.15; // single boards about the mean of the species
    private const double ThinTooMany = 0.10;
    private static readonly Length UsualDeviation = Length.FromInches(0.020);

    // Standard surfaced two sides, rough quarters to finished inches; source nhla-rules.
    private static readonly Dictionary<int, double> SurfacedInches = new() { [3] = 0.5625, [4] = 0.8125, [5] = 1.0625, [6] = 1.3125, [7] = 1.5, [8] = 1.75, [12] = 2.75, [16] = 3.75 };

    public required Species Species { get; init; }

    public required NominalThickness Nominal { get; init; }

    public required GreenTarget Target { get; init; }

    /// <summary>The setting to use.</summary>
    public required Length Setting { get; init; }

    /// <summary>What the house sets for this thickness; null when it has none.</summary>
    public Length? House { get; init; }

    public required IReadOnlyList<ThicknessChoice> Choices { get; init; }

    public required IReadOnlyList<Traced> Figures { get; init; }

    public required string NextDo { get; init; }

    public required string NextWhy { get; init; }

    /// <summary>The standard dressed size of a thickness, as it is typed; null where no rule prints one.</summary>
    public static string? Surfaced(int quarters) => SurfacedInches.TryGetValue(quarters, out var inches) ? $"{LogsToOpen.Sixteenths(inches).Replace('‑', '-')}in" : null;

    /// <summary>A setting as the mill makes it, in sixteenths.</summary>
    public static string SettingWords(Length setting) => LogsToOpen.Sixteenths(setting.Inches);

    /// <summary>Works it out from what was typed.</summary>
    /// <param name="state">The yard.</param>
    /// <param name="species">Common name.</param>
    /// <param name="thickness">Nominal, such as 4/4.</param>
    /// <param name="dressed">Finished, such as 13/16; empty for the standard surfaced size.</param>
    /// <param name="moisture">When dressed, percent; empty for 7.</param>
    /// <param name="isQuartersawn">Standing rings: the thickness shrinks tangentially.</param>
    public static Outcome<SawThickness> Of(YardState state, string species, string thickness, string? dressed, string? moisture, bool isQuartersawn)
    {
        ArgumentNullException.ThrowIfNull(state);
        return SpeciesTable.Find("Species", species).Then(wood => QuartersTyped.Of(state, "Thickness", thickness).Then(nominal =>
            DressedOf(nominal, dressed).Then(finished => Read.MoistureContent("Moisture when dressed", Suffixed(moisture, "7", "%")).Then(final => Make(state, wood, nominal, finished, final, isQuartersawn)))));
    }

    private static Outcome<Length> DressedOf(NominalThickness nominal, string? dressed)
    {
        var text = string.IsNullOrWhiteSpace(dressed) ? Surfaced(nominal.Quarters) : dressed;
        return text is null ? new Refusal("Dressed to", "", $"a finished thickness in inches; no rule prints one for {nominal}")
            : Read.Length("Dressed to", Suffixed(text, text, "in")).Then<Length>(length => length.Metres > 0.0 && length < nominal.Length ? length : new Refusal("Dressed to", text, $"above 0 and under {nominal.Length.Inches:0.##} in, the rough size"));
    }

    private static string Suffixed(string? text, string orElse, string unit) => string.IsNullOrWhiteSpace(text) ? orElse + unit : char.IsAsciiDigit(text.Trim()[^1]) ? text.Trim() + unit : text;

    private static Outcome<SawThickness> Make(YardState state, Species species, NominalThickness nominal, Length dressed, MoistureContent final, bool isQuartersawn)
    {
        var (within, between, readings) = Variation(state, species, nominal);
        var planing = Inches(state, "planing_both_faces", 0.125);
        var undersize = Share.FromPercent(state.Setting("undersize_accepted") ?? 5.0);
        return GreenTarget.Of(dressed, planing, species, final, within, between, undersize, isQuartersawn ? Angle.FromDegrees(90.0) : Angle.FromDegrees(0.0)).Then<SawThickness>(target =>
        {
            var step = Inches(state, "mill_step", 1.0 / 16.0);
            var setting = GreenTarget.Setting(target.Target, step);
            var house = state.Setting($"house_green_{nominal.Quarters}_4") is { } inches ? Length.FromInches(inches) : (Length?)null;
            var (act, why) = Next(target, setting, house);
            return new SawThickness
            {
                Species = species,
                Nominal = nominal,
                Target = target,
                Setting = setting,
                House = house,
                Choices = [.. ChoicesOf(target, setting, house, step)],
                Figures = FiguresOf(species, nominal, target, setting, final, undersize, readings),
                NextDo = act,
                NextWhy = why,
            };
        });
    }

    // The mill's latest readings of this wood and thickness, else of the thickness, else of anything it sawed.
    private static (Length Within, Length Between, string Words) Variation(YardState state, Species species, NominalThickness nominal)
    {
        var set = state.ThicknessSets.Where(one => one.Fact.Boards.Count > 1).OrderBy(one => one.Fact.ThicknessQuarters == nominal.Quarters).ThenBy(one => one.Fact.Species == species.CommonName).ThenBy(one => one.At).LastOrDefault();
        if (set is not null && SawVariation.Of([.. set.Fact.Boards.SelectMany(board => board.PointsMm.Select(point => new ThicknessReading($"{board.Board}", Length.FromMillimetres(point))))]) is Outcome<SawVariation>.Done(var variation))
            return (variation.Within, variation.BetweenComponent, string.Create(CultureInfo.InvariantCulture, $"{variation.Boards} boards of {set.Fact.Species} {set.Fact.ThicknessQuarters}/4, {variation.Points} readings, {set.At:d MMM yyyy}"));
        return (UsualDeviation, default, "no readings of this mill: 0.020 in assumed, a good band mill; measure 20 boards");
    }

    private static Length Inches(YardState state, string setting, double usual) => Length.FromInches(state.Setting(setting) ?? usual);

    private static double LostPercent(GreenTarget target) => 100.0 * target.Shrinkage.Metres / (target.Dressed + target.Planing + target.Shrinkage).Metres;

    private static double Thin(GreenTarget target, Length setting) =>
        1.0 - Distributions.NormalProbability((setting.Inches - (target.Target - target.Variation).Inches) / target.TotalDeviation.Inches);

    private static IEnumerable<ThicknessChoice> ChoicesOf(GreenTarget target, Length setting, Length? house, Length step) =>
        new[] { setting.Inches - step.Inches, setting.Inches, setting.Inches + step.Inches, house?.Inches ?? setting.Inches }.Where(inches => inches > target.Dressed.Inches).Select(inches => Math.Round(inches, 4)).Distinct().Order().Select(inches =>
        {
            var green = Length.FromInches(inches);
            var over = Math.Max(0.0, (inches - target.Target.Inches) * 32.0);
            var thin = Thin(target, green);
            var isHouse = house is { } own && Math.Abs(own.Inches - inches) < 1e-3;
            var words = Math.Abs(inches - setting.Inches) < 1e-3 ? isHouse ? "nearest, and the house’s own" : "nearest" : isHouse ? "the house’s own" : thin > ThinTooMany ? "too thin" : "";
            return new ThicknessChoice(green, thin, over * YieldLowPctPer32nd, over * YieldHighPctPer32nd, words);
        });

    private static List<Traced> FiguresOf(Species species, NominalThickness nominal, GreenTarget target, Length setting, MoistureContent final, Share undersize, string readings)
    {
        double At(double factor) => (GreenTarget.Critical(target.Dressed, target.Planing, LostPercent(target) * factor) + target.Variation).Inches;
        var green = GreenTarget.ForSaleGreen(nominal, target.TotalDeviation, undersize) is Outcome<Length>.Done(var sold) ? sold : nominal.Length;
        (string, string)[] inputs =
        [
            ("dressed", Text($"{target.Dressed.Inches:0.0000} in")), ("planed off, both faces", Text($"{target.Planing.Inches:0.000} in")), ($"shrinks to {final.Percent:0.#} %", Text($"{target.Shrinkage.Inches:0.000} in, {LostPercent(target):0.0} %")),
            ("variation of the mill", Text($"{target.Variation.Inches:0.000} in = {target.Z:0.00} × {target.TotalDeviation.Inches:0.0000}")), ("too thin, accepted", Text($"{undersize.Percent:0.#} %")), ("measured on", readings),
        ];
        return
        [
            new("Green target", Text($"{target.Target.Inches:0.000}"), "in", Text($"{At(1.0 - ShrinkageSpread):0.000} to {At(1.0 + ShrinkageSpread):0.000} as boards shrink less or more than the mean of {species.CommonName}")) { Method = "green-target", Source = "Brown, EM 8731; shrinkage: Wood Handbook, FPL-GTR-282", Inputs = inputs },
            new("Set the mill to", LogsToOpen.Sixteenths(setting.Inches), "in", Text($"the next step; {100.0 * Thin(target, setting):0.0} % of boards too thin to dress")) { Method = "green-target", Source = "step of the setworks, a setting", Inputs = inputs },
            new("Sold green or air dried", Text($"{green.Inches:0.000}"), "in", "at least this, to hold its nominal thickness in 19 boards of 20") { Method = "green-target", Source = "National Hardwood Lumber Association rules: 4/4 at least 1.00 in green and air dried", Inputs = [("nominal", Text($"{nominal.Length.Inches:0.##} in"))] },
        ];
    }

    private static (string Do, string Why) Next(GreenTarget target, Length setting, Length? house)
    {
        if (house is not { } own || Math.Abs(own.Inches - setting.Inches) < 1e-3)
            return ($"Set {LogsToOpen.Sixteenths(setting.Inches)} in.", house is null ? "The house has no setting of its own for this thickness." : "The house’s own setting is the right one.");
        var over = (own.Inches - setting.Inches) * 32.0;
        return over > 0.0
            ? ($"Set {LogsToOpen.Sixteenths(setting.Inches)} in for this, not {LogsToOpen.Sixteenths(own.Inches)}.", Text($"The house’s own setting is {over:0} thirty-seconds thicker: {over * YieldLowPctPer32nd:0} to {over * YieldHighPctPer32nd:0} % of the yield. Try it on one log and measure ten boards before it becomes the rule; cup and twist may want some of it back."))
            : ($"Set {LogsToOpen.Sixteenths(setting.Inches)} in for this: {LogsToOpen.Sixteenths(own.Inches)} is too thin.", Text($"At the house’s own setting {100.0 * Thin(target, own):0} % of the boards would not dress."));
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
