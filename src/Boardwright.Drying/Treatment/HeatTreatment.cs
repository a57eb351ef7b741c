using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Wood;

namespace Boardwright.Drying.Treatment;

/// <summary>How long green wood must stay in hot moist air until its core has been hot for long enough.</summary>
/// <remarks>
/// <para>The surface is taken to stand at the temperature of the medium from the start; <see cref="RectangleHeating"/> gives the centre. The diffusivities
/// are those of the handbook's own calculation for saturated air, and fitted to its measured times at 10 F depression; between, and to 12 F, by straight line.</para>
/// <para>Accuracy for hardwood against the measured times: -14 % (1 by 6 in) to +12 % (3 by 3 in), as the handbook's own calculated column. <see cref="HeatingUpper"/> multiplies by the largest ratio
/// of a printed 99 % bound to the equation.</para>
/// <para>Square softwood timbers follow the printed regression, see <see cref="TimberHeating"/>. The hold is that of the printed tables, see <see cref="HeatHold"/>.</para>
/// <para>Stickered wood only: solid piles take 2 to 10 times as long. An estimate is no proof: treatment is shown by probes in the coldest cores, and
/// packaging needs the mark of an accredited body.</para>
/// </remarks>
/// <source id="fpl-wood-handbook-2010" locator="ch. 20, eq. 20-4, tables 20-4 and 20-8"/>
/// <source id="ispm-15" locator="treatment HT"/>
/// <method page="docs/methods/heat-treatment.md"/>
public sealed record HeatTreatment
{
    private const double DepressionMaxKelvins = 12.0 / 1.8;
    private const double DepressionOfSecondColumnKelvins = 10.0 / 1.8;
    private const double SquareMetresPerSquareInch = 0.0254 * 0.0254;

    private static readonly Dictionary<string, DiffusivityRow> Rows = DryingData.Read("heat-diffusivities.csv").ToDictionary(
        row => row.Text("schedule_group"),
        row => new DiffusivityRow(row.Needed("saturated_in2_per_s"), row.Needed("at_10_f_depression_in2_per_s"), row.Needed("upper_factor"), row.Text("source"), row.Text("mark")));

    /// <summary>Core temperature of international heat treatment against pests, 56 C.</summary>
    public static Temperature CoreMin => Temperature.FromCelsius(56.0);

    /// <summary>Time the core must stay at it, 30 minutes without a break.</summary>
    public static Elapsed CoreHold => Elapsed.FromMinutes(30.0);

    /// <summary>Time until the core reaches its temperature.</summary>
    public required Elapsed Heating { get; init; }

    /// <summary>Time that covers the printed 99 % bounds of the handbook's measured pieces.</summary>
    public required Elapsed HeatingUpper { get; init; }

    /// <summary>Time to hold; null where for a core of this temperature no hold is known.</summary>
    public required Elapsed? Hold { get; init; }

    /// <summary>Heating and hold together; null without a hold.</summary>
    public Elapsed? Total => Hold is { } hold ? Heating + hold : null;

    /// <summary>Where the hold is printed; null without one.</summary>
    public string? HoldSource { get; init; }

    /// <summary>Where the diffusivity comes from.</summary>
    public required string Source { get; init; }

    /// <summary>P from the handbook's row of this wood, C taken over from another.</summary>
    public required string Mark { get; init; }

    /// <summary>The times for one size of piece.</summary>
    /// <param name="species">The wood, green.</param>
    /// <param name="thickness">Actual thickness, 0.25 to 24 in.</param>
    /// <param name="width">Actual width; null for a board much wider than thick.</param>
    /// <param name="initial">Temperature of the wood at the start.</param>
    /// <param name="core">Temperature the core must reach.</param>
    /// <param name="medium">Temperature of the air between the layers.</param>
    /// <param name="depression">Wet-bulb depression of that air, 0 to 12 F.</param>
    /// <param name="against">What the wood is heated against.</param>
    /// <returns>The times; no answer where the wet surface cannot become as hot as the core must be.</returns>
    public static Outcome<HeatTreatment> For(
        Species species, Length thickness, Length? width, Temperature initial, Temperature core, Temperature medium, TemperatureDifference depression, HeatAgainst against = HeatAgainst.Pests)
    {
        ArgumentNullException.ThrowIfNull(species);
        if (Problem(thickness, width, depression) is { } problem)
            return problem;

        if (medium - depression <= core)
        {
            return new Outcome<HeatTreatment>.NoAnswer(
                $"Wet wood stays near the wet bulb, {Fahrenheit(medium - depression)}: the core cannot be relied on to reach {Fahrenheit(core)} until the surface has dried, which takes many hours. Use hotter or moister air.");
        }

        var row = RowOf(species);
        var timber = IsSquareTimber(species, thickness, width);
        var share = depression.Kelvins / DepressionOfSecondColumnKelvins;
        var (inches, depressionF) = (thickness.Inches, 1.8 * depression.Kelvins);
        var diffusivity = timber ? TimberHeating.DiffusivityM2PerS(inches, depressionF, initial.Fahrenheit) : SquareMetresPerSquareInch * (row.Saturated + share * (row.AtTenDepression - row.Saturated));
        var remaining = (medium - core).Kelvins / (medium - initial).Kelvins;
        var seconds = initial >= core ? 0.0 : RectangleHeating.SecondsUntil(remaining, diffusivity, thickness.Metres, width?.Metres ?? double.PositiveInfinity);
        var hold = HeatHold.For(against, core, thickness);
        return new HeatTreatment
        {
            Heating = Elapsed.FromSeconds(seconds),
            HeatingUpper = Elapsed.FromSeconds(seconds * (timber ? TimberHeating.UpperMinutes(inches, depressionF, initial.Fahrenheit) / TimberHeating.Minutes(inches, depressionF, initial.Fahrenheit) : row.UpperFactor)),
            Hold = hold?.Time,
            HoldSource = hold?.Source,
            Source = timber ? "fpl-wood-handbook-2010 table 20-8 (ponderosa pine timbers)" : row.Source,
            Mark = row.Mark,
        };
    }

    // Thick and about as wide: the table of timbers; its smallest is 4 by 4 in, sawn or planed.
    private static bool IsSquareTimber(Species species, Length thickness, Length? width) =>
        species.StainGroup == "softwood" && thickness.Inches >= 3.4 && width is { } wide && wide / thickness < 1.1;

    private static DiffusivityRow RowOf(Species species) =>
        species.ScheduleGroup is { } group && Rows.TryGetValue(group, out var row) ? row
        : Rows[species.StainGroup == "softwood" ? "softwood" : "other hardwood"];

    private static Refusal? Problem(Length thickness, Length? width, TemperatureDifference depression) =>
        thickness.Inches is < 0.25 or > 24.0 ? new Refusal("thickness", Inches(thickness), "0.25 to 24 in")
        : width is { } wide && wide < thickness ? new Refusal("width", Inches(wide), $"at least the thickness, {Inches(thickness)}")
        : depression.Kelvins is < 0.0 or > DepressionMaxKelvins + 1e-9 ? new Refusal("wet-bulb-depression", string.Create(CultureInfo.InvariantCulture, $"{depression.Kelvins * 1.8:0.##}F"), "0 to 12 F, the range of the measured times")
        : null;

    private static string Inches(Length length) => string.Create(CultureInfo.InvariantCulture, $"{length.Inches:0.##}in");

    private static string Fahrenheit(Temperature temperature) => string.Create(CultureInfo.InvariantCulture, $"{temperature.Fahrenheit:0.#} F");

    private sealed record DiffusivityRow(double Saturated, double AtTenDepression, double UpperFactor, string Source, string Mark);
}
