using Boardwright.Drying;
using Boardwright.Drying.Vacuum;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>A charge under vacuum: when it is done, and what its condensate and the moisture read in the kiln say.</summary>
/// <param name="Forecast">Of the stack that takes longest, with the power shared by all, as nothing but its wood and the kiln tell.</param>
/// <param name="Slowest">That stack.</param>
/// <param name="From">Moisture it went in with.</param>
/// <param name="Chamber">Pressure taken.</param>
/// <param name="Standing">Where it stands and when it is dry, by its condensate, readings in the kiln and what earlier charges taught; null without any.</param>
/// <param name="CaughtL">Water caught so far, litres; null where none was read.</param>
/// <param name="ReadInside">Readings of moisture taken in the kiln.</param>
/// <param name="Begun">What earlier vacuum charges taught of its rate, and which; null for none.</param>
/// <param name="Stood">Hours it did not dry so far, to be put on top of those it takes.</param>
public sealed record ChargeVacuum(
    VacuumForecast Forecast, Stack Slowest, MoistureContent From, Pressure Chamber, VacuumStanding? Standing, double? CaughtL, int ReadInside, (DryingRate Rate, IReadOnlyList<RateFound> From)? Begun, Elapsed Stood)
{
    private static readonly Length UsualLength = Length.FromFeet(8.0);

    // Points are how far off a reading is nine times in ten; the balance takes a standard error.
    private const double StandardErrorsInBand = 1.645;

    /// <summary>Mean moisture when condensate or moisture was last read in the kiln; null where neither was.</summary>
    public MoistureContent? ByCondensate => CaughtL is null && ReadInside == 0 ? null : Standing?.Likely;

    /// <summary>"By condensate", "By condensate and reading", "By reading in the kiln".</summary>
    public string ByWords => CaughtL is null ? "By reading in the kiln" : ReadInside > 0 ? "By condensate and reading" : "By condensate";

    /// <summary>Hours from the start until it is dry, those it stood included: early, likely, late.</summary>
    public (double Early, double Likely, double Late) Hours => Standing is { } standing
        ? (standing.HoursP10 + Stood.Hours, standing.HoursP50 + Stood.Hours, standing.HoursP90 + Stood.Hours)
        : (Forecast.HoursP10 + Stood.Hours, Forecast.HoursP50 + Stood.Hours, Forecast.HoursP90 + Stood.Hours);

    public static Outcome<ChargeVacuum> Of(YardState state, Charge charge) => Of(state, charge, true);

    /// <summary>As <see cref="Of(YardState, Charge)"/>, or as it would be if no charge had taught it.</summary>
    internal static Outcome<ChargeVacuum> Of(YardState state, Charge charge, bool taught)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(charge);
        var (kiln, figures) = (state.Kilns[charge.Kiln].Installed, PlanFigures.Of(state));
        if (kiln.Type != KilnType.RadioFrequencyVacuum)
            return new Outcome<ChargeVacuum>.NoAnswer("This kiln dries with air.");

        var chamber = charge.Gauges.LastOrDefault(gauge => gauge.Pressure is not null)?.Pressure ?? figures.VacuumPressure;
        var volume = Volume.FromCubicMetres(charge.FootageIn.NominalVolume.CubicMetres);
        var lastInside = charge.LoadedAt;
        var loads = new List<(Stack Stack, VacuumLoad Load, VacuumForecast Forecast)>();
        foreach (var stack in charge.Stacks.Select(tag => state.Stacks[tag]))
        {
            if (stack.Readings.LastOrDefault(reading => reading.Mean is not null && reading.At <= AtLoading(charge)) is not { Mean: { } from } read)
                return new Outcome<ChargeVacuum>.NoAnswer($"{stack.Tag} was not read before it went in.");
            var asked = new VacuumCharge(stack.Species, stack.SawnThickness ?? stack.Thickness.Length, stack.LongestPiece ?? UsualLength, from, charge.Target, volume, chamber, Power.FromKilowatts(kiln.HeatKw))
            {
                MostKilowattsPerCubicMetre = figures.MostKilowattsPerCubicMetre(stack.Species),
                HottestWood = Temperature.FromCelsius(Math.Min(kiln.DryBulbMaxC, 60.0)),
            };
            var outcome = VacuumDrying.Forecast(asked, figures.Generator);
            if (outcome is not Outcome<VacuumForecast>.Done(var forecast))
                return outcome.Then<ChargeVacuum>(_ => throw new InvalidOperationException("a forecast that is not done has no value"));
            var ovenDry = Mass.FromKilograms(volume.CubicMetres / charge.Stacks.Count * 1000.0 * stack.Species.BasicSpecificGravity);
            var inside = Inside(charge, stack).ToList();
            lastInside = inside.Select(one => one.At).Append(lastInside).Max();
            loads.Add((stack, new VacuumLoad(asked, ovenDry, ReadingError.Points(read, from.Percent) / StandardErrorsInBand) { Read = [.. inside.Select(one => one.Read)] }, forecast));
        }

        var slowest = loads.MaxBy(load => load.Forecast.HoursP50);
        var begun = taught ? LearnedKilnRates.BeforeVacuum(state, charge, slowest.Stack.Species, slowest.Forecast) : null;
        return Stands(charge, [.. loads.Select(load => load.Load)], slowest, begun, figures.Generator, lastInside);
    }

    private static ChargeVacuum Stands(Charge charge, IReadOnlyList<VacuumLoad> loads, (Stack Stack, VacuumLoad Load, VacuumForecast Forecast) slowest, (DryingRate Rate, IReadOnlyList<RateFound> From)? begun, RadioFrequency generator, DateTime lastInside)
    {
        var inside = loads.Sum(load => load.Read.Count);
        var read = charge.Gauges.Where(gauge => gauge.CondensateL is not null).ToList();
        var last = read.Select(gauge => gauge.At).Append(lastInside).Max();
        IReadOnlyList<CaughtWater> caught = [.. read.Select(gauge => new CaughtWater(Ran(charge, gauge.At), Mass.FromKilograms(gauge.CondensateL!.Value)))];
        var standing = caught.Count > 0 || inside > 0 || begun is not null
            ? CondensateFilter.Of(loads, slowest.Load, slowest.Forecast, generator, caught, Ran(charge, last), begun?.Rate)
            : null;
        return new(slowest.Forecast, slowest.Stack, slowest.Load.Charge.From, slowest.Load.Charge.Chamber, standing, read.Count > 0 ? read[^1].CondensateL : null, inside, begun, SampleRow.Stood(charge, charge.LoadedAt, last));
    }

    private static DateTime AtLoading(Charge charge) => charge.LoadedAt.AddHours(12.0);

    private static Elapsed Ran(Charge charge, DateTime at) => Elapsed.FromSeconds((at - charge.LoadedAt).TotalSeconds) - SampleRow.Stood(charge, charge.LoadedAt, at);

    // Whatever was read of a stack between loading and unloading and may be relied on.
    private static IEnumerable<(DateTime At, ReadInside Read)> Inside(Charge charge, Stack stack)
    {
        foreach (var reading in stack.Readings.Where(reading => reading.At > AtLoading(charge) && !(reading.At >= charge.UnloadedAt) && reading.Method is not MoistureMethod.AtUnloading))
        {
            if (ReadingError.For(reading) is { } read)
                yield return (reading.At, new(Ran(charge, reading.At), read.Mean, read.ErrorPercent, read.SharedErrorPercent));
        }
    }
}
