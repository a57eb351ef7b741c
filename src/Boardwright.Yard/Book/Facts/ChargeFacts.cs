using Boardwright.Drying;
using Boardwright.Drying.Schedules;

namespace Boardwright.Yard.Book.Facts;

/// <summary>A charge the owner means to run. It binds nothing until it is loaded.</summary>
public sealed record ChargePlanned(string Charge, string Kiln, DateOnly InOn, DateOnly OutOn, IReadOnlyList<string> Stacks, string? Serves = null) : Fact;

/// <summary>A kiln schedule of the house's own. Written again under its name, it takes the place of the one before.</summary>
public sealed record ScheduleWritten(string Schedule, IReadOnlyList<ScheduleRow> Rows, string? Note = null) : SetupFact;

/// <summary>One row of it: a step of drying that ends by moisture or by hours, equalizing or conditioning.</summary>
public sealed record ScheduleRow(SchedulePhase Phase, double DryBulbC, double WetBulbC, double? McAbovePct = null, double? Hours = null);

/// <summary>Stacks went into a kiln as one charge, to be dried by a schedule of the house where one is named.</summary>
public sealed record ChargeLoaded(string Charge, string Kiln, IReadOnlyList<string> Stacks, double TargetMcPct, DateOnly? ExpectedOutOn = null, string? Note = null, string? Schedule = null) : Fact;

/// <summary>A charge is dried by another schedule from now on: one of the house, or where none is named the listed one of its woods.</summary>
public sealed record ScheduleChosen(string Charge, string? Schedule = null, string? Note = null) : Fact;

/// <summary>A sample board: its sections and its first weight.</summary>
public sealed record SampleCut(string Charge, string Sample, IReadOnlyList<Section> Sections, double WeightG, string? Stack = null) : Fact;

/// <summary>A sample board was weighed.</summary>
public sealed record SampleWeighed(string Charge, string Sample, double WeightG) : Fact;

/// <summary>A sample board lost wood. With the weight after it its dry weight is scaled; without it the sample is retired.</summary>
public sealed record SampleDamaged(string Charge, string Sample, double BeforeG, double? AfterG = null, string? Note = null) : Fact;

/// <summary>The controller was set.</summary>
public sealed record SettingsChanged(string Charge, double DryBulbC, double WetBulbC, string? Note = null) : Fact;

/// <summary>What gauges or a hand instrument showed.</summary>
public sealed record GaugeRead(
    string Charge, double? DryBulbC = null, double? WetBulbC = null, double? PressurePa = null, double? CoreC = null, double? CondensateL = null, double? EnergyKwh = null,
    string? Note = null) : Fact;

public enum InterruptionCause
{
    PowerCut,
    DoorOpen,
    HeatLost,
    LowWater,
    Sensor,
    Other,
}

/// <summary>A gap in a charge: the drying clock stands still, nothing is interpolated over it.</summary>
public sealed record Interrupted(
    string Charge, InterruptionCause Cause, DateTime From, DateTime? To = null, double? DryBulbLowestC = null, bool? DoorsShut = null, bool? VentsShut = null, bool? FansRan = null,
    string? Note = null) : Fact;

/// <summary>A step of bringing a kiln back is done. The last one ends an interruption that was still open.</summary>
public sealed record RestartStepDone(string Charge, RestartStep Step) : Fact;

/// <summary>A stress section was cut and its prongs looked at; settled when the moisture had evened out in it. Gaps between the tips where they were measured.</summary>
public sealed record StressTested(
    string Charge, ProngTurn Turn, bool Settled, string? Sample = null, double? ProngLengthMm = null, double? GapSawnMm = null, double? GapReadMm = null, string? Note = null) : Fact;

/// <summary>Heat treatment of a charge: the lowest core temperature held, for how long, by the coldest probe.</summary>
public sealed record HeatTreated(string Charge, double CoreC, double HeldMinutes, string? Probe = null) : Fact;

/// <summary>Stacks came out of a kiln, each with what was measured. The charge ends when the last one is out.</summary>
public sealed record ChargeUnloaded(string Charge, IReadOnlyList<StackOut> Stacks) : Fact;

/// <summary>One stack out of a kiln. A new tag only where the wood got one.</summary>
public sealed record StackOut(
    string Stack, double Bf, string Place, double? McMeanPct = null, double? McSdPct = null, double? McLowPct = null, double? McHighPct = null, int? Boards = null,
    int? Pieces = null, string? OutStack = null);
