namespace Boardwright.Yard.Book.Facts;

public enum MoistureMethod
{
    Pin,
    CorePins,
    OvenSections,
    SampleBoards,
    InKiln,
    AtUnloading,
    Estimate,
    PackWeight,
}

/// <summary>A moisture reading on a stack. A pin meter gives the raw reading, the species it was set to and the wood temperature; a scale the weight of all and of what on it is not wood; other methods give the mean.</summary>
public sealed record MoistureRead(
    string Stack, MoistureMethod Method, double? RawPct = null, double? MeanPct = null, double? SdPct = null, int? Boards = null,
    string? SpeciesSetting = null, double? WoodC = null, double? PinDepthMm = null, double? WeightKg = null, double? TareKg = null) : Fact;

/// <summary>Oven sections of a stack: wet and dry weights.</summary>
public sealed record SectionsWeighed(string Stack, IReadOnlyList<Section> Sections) : Fact;

/// <summary>One oven section.</summary>
public sealed record Section(double WetG, double DryG);
