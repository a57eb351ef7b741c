using Boardwright.Drying.Vacuum;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>A charge under vacuum: when it is done, and what its condensate says.</summary>
/// <param name="Forecast">Of the stack that takes longest, with the power shared by all.</param>
/// <param name="Slowest">That stack.</param>
/// <param name="From">Moisture it went in with.</param>
/// <param name="Chamber">Pressure taken.</param>
/// <param name="ByCondensate">Mean moisture by the water caught; null where none was read.</param>
/// <param name="CaughtL">Water caught so far, litres.</param>
public sealed record ChargeVacuum(VacuumForecast Forecast, Stack Slowest, MoistureContent From, Pressure Chamber, MoistureContent? ByCondensate, double? CaughtL)
{
    // The middle of the pressures the kiln's card names.
    private static readonly Pressure UsualChamber = Pressure.FromPascals(7500.0);
    private static readonly Length UsualLength = Length.FromFeet(8.0);

    public static Outcome<ChargeVacuum> Of(YardState state, Charge charge)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(charge);
        var kiln = state.Kilns[charge.Kiln].Installed;
        if (kiln.Type != KilnType.RadioFrequencyVacuum)
            return new Outcome<ChargeVacuum>.NoAnswer("This kiln dries with air.");

        var chamber = charge.Gauges.LastOrDefault(gauge => gauge.Pressure is not null)?.Pressure ?? UsualChamber;
        var volume = Volume.FromCubicMetres(charge.FootageIn.NominalVolume.CubicMetres);
        ChargeVacuum? slowest = null;
        foreach (var stack in charge.Stacks.Select(tag => state.Stacks[tag]))
        {
            if (stack.Readings.LastOrDefault(reading => reading.Mean is not null && reading.At <= charge.LoadedAt.AddHours(12)) is not { Mean: { } from })
                return new Outcome<ChargeVacuum>.NoAnswer($"{stack.Tag} was not read before it went in.");
            var outcome = VacuumDrying.Forecast(
                new VacuumCharge(stack.Species, stack.SawnThickness ?? stack.Thickness.Length, stack.LongestPiece ?? UsualLength, from, charge.Target, volume, chamber, Power.FromKilowatts(kiln.HeatKw))
                {
                    HottestWood = Temperature.FromCelsius(Math.Min(kiln.DryBulbMaxC, 60.0)),
                },
                RadioFrequency.Usual);
            if (outcome is not Outcome<VacuumForecast>.Done(var forecast))
                return outcome.Then<ChargeVacuum>(_ => slowest!);
            if (slowest is null || forecast.HoursP50 > slowest.Forecast.HoursP50)
                slowest = new(forecast, stack, from, chamber, null, null);
        }

        return WithCondensate(state, charge, slowest!);
    }

    private static ChargeVacuum WithCondensate(YardState state, Charge charge, ChargeVacuum run)
    {
        if (charge.Gauges.LastOrDefault(gauge => gauge.CondensateL is not null)?.CondensateL is not { } litres)
            return run;

        var ovenDry = Mass.FromKilograms(charge.Stacks.Sum(tag => charge.FootageIn.NominalVolume.CubicMetres / charge.Stacks.Count * 1000.0 * state.Stacks[tag].Species.BasicSpecificGravity));
        return run with
        {
            CaughtL = litres,
            ByCondensate = Condensate.MoistureOf(run.From, Mass.FromKilograms(litres), Condensate.UsualCaught, ovenDry) is Outcome<MoistureContent>.Done(var now) ? now : null,
        };
    }
}
