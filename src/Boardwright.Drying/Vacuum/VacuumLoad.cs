using Boardwright.Quantities;

namespace Boardwright.Drying.Vacuum;

/// <summary>A part of a vacuum charge: one wood of one start.</summary>
/// <param name="Charge">As it is forecast.</param>
/// <param name="OvenDry">Oven-dry mass of this part.</param>
/// <param name="StartErrorPercent">Standard error of the moisture it went in with, percent moisture content.</param>
public sealed record VacuumLoad(VacuumCharge Charge, Mass OvenDry, double StartErrorPercent)
{
    /// <summary>Moisture read in this part while it dries.</summary>
    public IReadOnlyList<ReadInside> Read { get; init; } = [];
}

/// <summary>Moisture of a part read in the kiln.</summary>
/// <param name="At">Since the start.</param>
/// <param name="Mean">Mean of the boards read.</param>
/// <param name="ErrorPercent">Standard error that is new in every reading, percent moisture content.</param>
/// <param name="SharedErrorPercent">Standard error that all readings of the part have in common, percent moisture content.</param>
public readonly record struct ReadInside(Elapsed At, MoistureContent Mean, double ErrorPercent, double SharedErrorPercent);

/// <summary>Condensate read.</summary>
/// <param name="At">Since the start.</param>
/// <param name="Caught">All the water caught so far.</param>
public readonly record struct CaughtWater(Elapsed At, Mass Caught);

/// <summary>Where a charge stands and when it will be dry, by its condensate.</summary>
/// <param name="Low">One load in ten is drier than this.</param>
/// <param name="Likely">Mean moisture of the part that takes longest.</param>
/// <param name="High">One load in ten is wetter than this.</param>
/// <param name="HoursP10">From the start: dry that early one time in ten.</param>
/// <param name="HoursP50">As likely later as earlier.</param>
/// <param name="HoursP90">Dry by then nine times in ten.</param>
/// <param name="Rate">How fast it dries against its forecast.</param>
/// <param name="Caught">Share of the vapour the condenser is now supposed to catch.</param>
public sealed record VacuumStanding(MoistureContent Low, MoistureContent Likely, MoistureContent High, double HoursP10, double HoursP50, double HoursP90, DryingRate Rate, Share Caught);
