using System.Text.Json;
using Boardwright.Casting;
using Boardwright.Casting.Cure;
using Boardwright.Quantities;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>A resin as written in a file, from its data sheet.</summary>
internal sealed record ResinFile
{
    public string? Name { get; init; }

    public double? RatioAByMass { get; init; }

    public double? RatioBByMass { get; init; }

    public double? DensityA { get; init; }

    public double? DensityB { get; init; }

    public double? DensityMixedKgPerM3 { get; init; }

    public double? GelMin { get; init; }

    public double? GelMassG { get; init; }

    public double? GelTemperatureC { get; init; }

    public double? DepthMaxMm { get; init; }

    public double? HeatJPerG { get; init; }

    public double? EquivalentWeightEpoxy { get; init; }

    public double? EquivalentWeightHydrogen { get; init; }

    /// <summary>A built-in resin by name, or a file.</summary>
    public static Outcome<Resin> Find(Ask ask, string option)
    {
        var text = ask.Text(option);
        if (ResinTable.Find("--" + option, text) is Outcome<Resin>.Done built)
            return built;
        return text.EndsWith(".json", StringComparison.OrdinalIgnoreCase)
            ? InputFile.Read<ResinFile>("--" + option, ask.File(option)).Then(file => file.Resin())
            : ResinTable.Find("--" + option, text);
    }

    /// <summary>A resin inside another file: a name, or the same keys nested.</summary>
    public static Outcome<Resin> Of(JsonElement? element) => element switch
    {
        null => new Refusal("resin", "nothing", "the name of a resin or its data"),
        { ValueKind: JsonValueKind.String } name => ResinTable.Find("resin", name.GetString()!),
        { ValueKind: JsonValueKind.Object } nested => InputFile.Read<ResinFile>("resin", nested.GetRawText()).Then(file => file.Resin()),
        { } other => new Refusal("resin", other.GetRawText(), "the name of a resin or its data"),
    };

    private Outcome<Resin> Resin()
    {
        if (RatioAByMass is not > 0.0 || RatioBByMass is not > 0.0)
            return new Refusal("ratio_a_by_mass, ratio_b_by_mass", $"{RatioAByMass}, {RatioBByMass}", "both parts by mass, above zero, such as 100 and 38");
        var ratio = RatioBByMass.Value / RatioAByMass.Value;
        return Density("density_a", DensityA).Then(a => Density("density_b", DensityB).Then(b => Mixed(ratio, a, b).Then(mixed => Curing(mixed).Then<Resin>(curing =>
            new Resin(Name ?? "resin", ratio, a, b, mixed, Label(), curing, "data sheet as entered", "I")))));
    }

    private Outcome<Density> Mixed(double ratio, Density a, Density b) => DensityMixedKgPerM3 is null
        ? Casting.Resin.AdditiveDensity(ratio, a, b)
        : Density("density_mixed_kg_per_m3", DensityMixedKgPerM3);

    // Data sheets give kg/L or kg/m3; the two ranges do not overlap.
    private static Outcome<Density> Density(string what, double? given) => given switch
    {
        >= 0.5 and <= 3.0 => Quantities.Density.FromGramsPerCubicCentimetre(given.Value),
        >= 500.0 and <= 3000.0 => Quantities.Density.FromKilogramsPerCubicMetre(given.Value),
        _ => new Refusal(what, given is { } wrong ? $"{wrong}" : "nothing", "kg/L from 0.5 to 3 or kg/m3 from 500 to 3000"),
    };

    private ResinLabel Label() => new()
    {
        DeepestPour = DepthMaxMm is > 0.0 and <= 1000.0 ? Length.FromMillimetres(DepthMaxMm.Value) : null,
        CupGel = GelMin is > 0.0 ? Elapsed.FromMinutes(GelMin.Value) : null,
        CupMass = GelMassG is > 0.0 ? Mass.FromGrams(GelMassG.Value) : null,
        CupAt = GelTemperatureC is > -20.0 and < 120.0 ? Temperature.FromCelsius(GelTemperatureC.Value) : null,
    };

    private Outcome<CuringResin?> Curing(Density mixed)
    {
        var label = Label();
        var heat = HeatJPerG * 1000.0
            ?? (EquivalentWeightEpoxy is > 0.0 && EquivalentWeightHydrogen is > 0.0 ? ResinFit.HeatJoulesPerKilogram(EquivalentWeightEpoxy.Value, EquivalentWeightHydrogen.Value) : null);
        return heat is { } joules && label is { CupGel: { } gel, CupMass: { } mass, CupAt: { } at }
            ? ResinFit.FromCup(joules, mixed, gel, mass, at).Then(curing => new Outcome<CuringResin?>.Done(curing))
            : new Outcome<CuringResin?>.Done(null);
    }
}
