using Boardwright.Quantities;

namespace Boardwright.Wood;

/// <summary>One species of the table: mean values of the wood and the groups it is found under in other tables.</summary>
/// <remarks>
/// Values are means of clear wood; single trees differ (coefficient of variation about 10 % for specific gravity, 15 % for
/// shrinkage). A value no source prints is null, never guessed. Shrinkage is from green to oven-dry, in percent of the green size.
/// </remarks>
/// <source id="usfs-fiadb-ref-species-2021" locator="basic specific gravity, average green moisture content"/>
/// <source id="fpl-wood-handbook-2010" locator="tables 4-1, 4-3, 5-3"/>
/// <method page="docs/methods/species.md"/>
public sealed record Species
{
    /// <summary>Common name, as the trade writes it.</summary>
    public required string CommonName { get; init; }

    /// <summary>Botanical name.</summary>
    public required string ScientificName { get; init; }

    /// <summary>Other names the table answers to: trade names and older botanical names.</summary>
    public required IReadOnlyList<string> AlsoCalled { get; init; }

    /// <summary>Oven-dry mass per green volume, over the density of water.</summary>
    public required double BasicSpecificGravity { get; init; }

    /// <summary>Oven-dry mass per volume at 12 % moisture content, over the density of water; null where not printed.</summary>
    public required double? SpecificGravityAt12Percent { get; init; }

    /// <summary>Mean moisture content of green heartwood; null where no source prints it.</summary>
    public required MoistureContent? GreenMoistureHeartwood { get; init; }

    /// <summary>Mean moisture content of green sapwood; null where no source prints it.</summary>
    public required MoistureContent? GreenMoistureSapwood { get; init; }

    /// <summary>Mean moisture content of green wood, heart and sap together; null where no source prints it.</summary>
    public required MoistureContent? GreenMoistureAverage { get; init; }

    /// <summary>Shrinkage across the growth rings, percent of the green size; null where no source prints it.</summary>
    public required double? ShrinkageRadialPercent { get; init; }

    /// <summary>Shrinkage along the growth rings, percent of the green size; null where no source prints it.</summary>
    public required double? ShrinkageTangentialPercent { get; init; }

    /// <summary>Shrinkage of volume, percent of the green volume; measured, never derived from the other two; null where no source prints it.</summary>
    public required double? ShrinkageVolumetricPercent { get; init; }

    /// <summary>Moisture content below which the wood shrinks.</summary>
    public required MoistureContent ShrinkageStart { get; init; }

    /// <summary>Row of the kiln schedule tables; null where there is none.</summary>
    public required string? ScheduleGroup { get; init; }

    /// <summary>Row of the safe drying rate table; null where there is none.</summary>
    public required string? SafeRateGroup { get; init; }

    /// <summary>Row of the drying time tables; null where there is none.</summary>
    public required string? DryingTimeGroup { get; init; }

    /// <summary>Row of the electric resistance table; null where there is none.</summary>
    public required string? MeterGroup { get; init; }

    /// <summary>Group for stain and discoloration in drying.</summary>
    public required string? StainGroup { get; init; }

    /// <summary>Permeability class for vacuum drying: permeable, heat-limited, nearly-impermeable or unknown.</summary>
    public required string? VacuumClass { get; init; }

    /// <summary>How sure the groups are: M from memory of the tables, C chosen by common practice.</summary>
    public required string GroupMark { get; init; }

    /// <summary>What to know about the groups; null when there is nothing.</summary>
    public required string? GroupNote { get; init; }

    /// <summary>Where the numbers come from.</summary>
    public required string Source { get; init; }

    /// <summary>The weakest mark of the numbers: P printed source seen, M from memory of the source.</summary>
    public required string Mark { get; init; }

    /// <summary>What to know about the numbers; null when there is nothing.</summary>
    public required string? Note { get; init; }

    /// <summary>The common name.</summary>
    public override string ToString() => CommonName;
}
