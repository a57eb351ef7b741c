using Boardwright.Quantities;

namespace Boardwright.Drying.Vacuum;

/// <summary>What a vacuum charge takes.</summary>
/// <param name="Boiling">Water in the chamber boils at this.</param>
/// <param name="Water">Leaves the wood.</param>
/// <param name="HoursP10">One charge in ten is quicker.</param>
/// <param name="HoursP50">As likely longer as shorter.</param>
/// <param name="HoursP90">One charge in ten is slower.</param>
/// <param name="Limit">What sets the pace for the longer part of the run.</param>
/// <param name="InWoodKilowattHours">Heat the wood takes.</param>
/// <param name="MainsKilowattHours">Electricity for that heat.</param>
/// <param name="PumpKilowattHours">Pumps and cooling, a rough figure.</param>
/// <param name="Condensate">Water the condenser catches.</param>
/// <param name="LowestMoisture">The wood cannot be dried below this at its hottest and at this pressure.</param>
public sealed record VacuumForecast(
    Temperature Boiling, Mass Water, double HoursP10, double HoursP50, double HoursP90, VacuumLimit Limit,
    double InWoodKilowattHours, double MainsKilowattHours, double PumpKilowattHours, Mass Condensate, MoistureContent LowestMoisture);
