using Boardwright.Quantities;

namespace Boardwright.Wood;

/// <summary>The wood a meter is set to: a species of the table, or Douglas-fir, which most meters leave the factory with.</summary>
/// <method page="docs/methods/moisture-meter.md"/>
public sealed record MeterSetting
{
    private readonly Species? species;

    private MeterSetting(Species? species, MeterResistance? resistance, string name)
    {
        this.species = species;
        Resistance = resistance;
        Name = name;
    }

    /// <summary>Set to coast Douglas-fir.</summary>
    public static MeterSetting DouglasFir { get; } = new(null, MeterResistance.DouglasFir, "Douglas-fir");

    /// <summary>What the wood is called.</summary>
    public string Name { get; }

    /// <summary>Its row of the resistance table; null where there is none.</summary>
    public MeterResistance? Resistance { get; }

    /// <summary>Set to a species.</summary>
    public static MeterSetting For(Species species) => new(species, MeterResistance.Find(species.MeterGroup), species.CommonName);

    /// <summary>Reads a person's word for it: "douglas-fir" or a species of the table.</summary>
    public static Outcome<MeterSetting> Find(string what, string text) =>
        text.Trim().Replace(' ', '-').Equals("douglas-fir", StringComparison.OrdinalIgnoreCase)
            ? DouglasFir
            : SpeciesTable.Find(what, text).Then<MeterSetting>(species => For(species));

    /// <summary>Whether the meter needs no correction for this species.</summary>
    public bool IsFor(Species wood) => species == wood || (Resistance is { } row && row.Group == wood.MeterGroup);
}
