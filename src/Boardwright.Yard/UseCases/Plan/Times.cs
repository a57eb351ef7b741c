using System.Collections.Concurrent;
using Boardwright.Drying;
using Boardwright.Drying.Schedules;
using Boardwright.Drying.Vacuum;
using Boardwright.Quantities;
using Boardwright.Wood;
using Boardwright.Yard.Book.Facts;
using BookState = Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>Times in a kiln of the yard. Forecasts that do not change are kept, so that a plan made again after one reading is quick.</summary>
internal static class PlanTimes
{
    private const string NotThroughVacuum = "nearly-impermeable";

    private static readonly ConcurrentDictionary<(string Species, double ThicknessM, double To, double HottestK, StepRule StepsBy), KilnTimes> Kept = new();

    /// <summary>Times of wood in a heated and vented kiln.</summary>
    public static KilnTimes InKiln(BookState.Kiln kiln, Species species, Length thickness, MoistureContent to, StepRule stepsBy)
    {
        var hottest = Temperature.FromCelsius(kiln.Installed.DryBulbMaxC);
        return Kept.GetOrAdd((species.ScientificName, thickness.Metres, to.Fraction, hottest.Kelvins, stepsBy), _ => new KilnTimes(species, thickness, to, new KilnEquipment(kiln.Name, hottest), stepsBy));
    }

    /// <summary>Forecast of wood in a radio-frequency vacuum kiln, its power kept to what the wood bears.</summary>
    public static Outcome<VacuumForecast> InVacuum(BookState.Kiln kiln, BookState.Stack stack, MoistureContent from, MoistureContent to, PlanFigures figures)
    {
        var volume = stack.Footage.NominalVolume;
        var most = figures.MostKilowattsPerCubicMetre(stack.Species);
        var platen = Power.FromKilowatts(Math.Min(kiln.Installed.HeatKw, most * volume.CubicMetres / figures.Generator.Applicator.Fraction));
        var charge = new VacuumCharge(stack.Species, stack.Thickness.Length, stack.LongestPiece ?? Length.FromMetres(kiln.Installed.PieceLengthMaxM), from, to, volume, figures.VacuumPressure, platen);
        return VacuumDrying.Forecast(charge with { HottestWood = Temperature.FromCelsius(Math.Min(charge.HottestWood.Celsius, kiln.Installed.DryBulbMaxC)) }, figures.Generator);
    }

    /// <summary>Long boards that let no vapour through are left to the other kilns.</summary>
    public static bool ClosedToVacuum(BookState.Stack stack, VacuumForecast forecast) => forecast.Limit == VacuumLimit.Permeability && VacuumClass.Of(stack.Species).Name == NotThroughVacuum;

    /// <summary>Wood that is down to its target already still goes through the kiln's own cycle: half a point of drying.</summary>
    public static MoistureContent AtLeastHalfAPoint(MoistureContent from, MoistureContent to) => MoistureContent.FromPercent(Math.Max(from.Percent, to.Percent + 0.5));

    public static bool IsVacuum(BookState.Kiln kiln) => kiln.Installed.Type == KilnType.RadioFrequencyVacuum;
}
