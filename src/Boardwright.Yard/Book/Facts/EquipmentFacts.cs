using System.Text.Json.Serialization;

namespace Boardwright.Yard.Book.Facts;

public enum KilnType
{
    Conventional,
    RadioFrequencyVacuum,
    Dehumidification,
}

/// <summary>A kiln, its room, its limits, its heat and what running it takes.</summary>
/// <remarks>Capacity is in 4/4 on 3/4 in stickers. Heat is a hot-water coil's at its water temperature, or the radio frequency output at the platen.</remarks>
public sealed record KilnInstalled(
    string Kiln, KilnType Type, double CapacityBf, double PieceLengthMaxM, double DryBulbMaxC, double HeatKw, [property: JsonIgnore(Condition = JsonIgnoreCondition.Never)] double? HeatAtWaterC,
    int StackPlaces, double PlaceWidthMm, double PlaceLengthM, double PlaceHeightMm, double FillOfLayers,
    double LoadHours, double UnloadHours, double FansKw, decimal FixedPerDayMoney, IReadOnlyList<HoldingHeat> HoldingHeat, string? Note = null, double? LoadMaxKg = null) : SetupFact;

/// <summary>Heat that keeps a kiln warm at an outside temperature.</summary>
public sealed record HoldingHeat(double OutsideC, double HeatKw);

/// <summary>A boiler and what it gives steadily.</summary>
public sealed record BoilerInstalled(string Boiler, double SteadyOutputKw, double? StokedEveryHours = null) : SetupFact;

/// <summary>A kiln or boiler stopped at the time of the entry; when it is expected back, and when at the worst.</summary>
public sealed record EquipmentDown(string Equipment, string Why, DateOnly? BackExpectedOn = null, DateOnly? BackLateOn = null) : Fact;

/// <summary>A new promise for equipment that is down.</summary>
public sealed record EquipmentPromised(string Equipment, DateOnly BackExpectedOn, DateOnly? BackLateOn = null, string? Why = null) : Fact;

/// <summary>Equipment works again.</summary>
public sealed record EquipmentBack(string Equipment) : Fact;

/// <summary>Fuel wood on hand, in cords of 128 ft3 stacked.</summary>
public sealed record FuelCounted(double Cords, double SolidShare, string Species, double McPct) : Fact;

/// <summary>A boiler was stoked.</summary>
public sealed record BoilerStoked(string Boiler, double? WoodKg = null) : Fact;
