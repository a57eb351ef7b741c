using Boardwright.Numerics;
using Boardwright.Quantities;

namespace Boardwright.Drying.Vacuum;

/// <summary>Takes the condensate of a vacuum charge for what it measures: the water the load has lost, on the average, by a balance with a leak and a hold-up nobody knows; and with it the moisture read in the kiln.</summary>
/// <remarks>
/// <para>Unknown are the rate of the charge against its forecast (as wide as the forecast's band, or what earlier charges taught), the share of the vapour the condenser catches while the pump
/// carries the rest, and with it how well the oven-dry mass is known (0.95, standard deviation 0.05: 0.03 and 0.04 together), the water that stands in pipes and on walls (2 kg, 1.5) and how far off the moisture at the start was. Caught = share x lost - held up, read
/// to 1 kg and 1 %. All figures but the forecast's are common practice.</para>
/// <para>Bayes' rule on a grid of equal slices of each unknown: exact for so few unknowns, no chance in it, and nothing that could degenerate. The start is not seen by the condensate: its error stays in the
/// moisture for good, which is why a charge is stopped on sections or probes and never on condensate alone. A reading in the kiln sees it: it is off by what its instrument is off every time, by an error of its own, and by
/// nothing of the start, so it narrows the rate and the start together.</para>
/// </remarks>
/// <method page="docs/methods/vacuum-drying.md"/>
public static class CondensateFilter
{
    private const int RateSlices = 61;
    private const int CaughtSlices = 9;
    private const int HeldSlices = 5;
    private const int StartSlices = 15;
    private const int InstrumentSlices = 9;
    private const double CaughtSpread = 0.05;
    private const double HeldKilograms = 2.0;
    private const double HeldSpreadKilograms = 1.5;
    private const double ReadKilograms = 1.0;
    private const double ReadShare = 0.01;
    private const double DecilesApart = 2.0 * 1.2815515655446004;

    /// <summary>The standing of a charge.</summary>
    /// <param name="loads">Its parts.</param>
    /// <param name="slowest">The part whose drying ends it, one of them.</param>
    /// <param name="forecast">The forecast of that part.</param>
    /// <param name="generator">The generator.</param>
    /// <param name="caught">Condensate read so far; none, and no reading in the kiln, leaves what it was begun with.</param>
    /// <param name="now">Since the start.</param>
    /// <param name="begun">The rate it was begun with; null for the forecast's own band.</param>
    public static VacuumStanding Of(
        IReadOnlyList<VacuumLoad> loads, VacuumLoad slowest, VacuumForecast forecast, RadioFrequency generator, IReadOnlyList<CaughtWater> caught, Elapsed now, DryingRate? begun = null)
    {
        ArgumentNullException.ThrowIfNull(loads);
        ArgumentNullException.ThrowIfNull(slowest);
        ArgumentNullException.ThrowIfNull(forecast);
        ArgumentNullException.ThrowIfNull(caught);
        var prior = begun ?? UsualRate(forecast);
        var courses = loads.Select(load => (Course: VacuumDrying.Course(load.Charge, generator), load.OvenDry.Kilograms, From: load.Charge.From.Fraction)).ToList();
        double Lost(double hours) => courses.Sum(part => part.Kilograms * (part.From - Moisture(part.Course, hours)));

        var logs = Slices(RateSlices).Select(normal => Math.Log(prior.Factor) + prior.Spread * normal).ToArray();
        var weights = new double[RateSlices, StartSlices];
        var (total, shareSum) = (0.0, 0.0);
        for (var i = 0; i < RateSlices; i++)
        {
            var rate = Math.Exp(logs[i]);
            var lost = caught.Select(one => Lost(rate * one.At.Hours)).ToArray();
            var (balance, caughtSum) = (0.0, 0.0);
            foreach (var share in Slices(CaughtSlices).Select(normal => Condensate.UsualCaught.Fraction + CaughtSpread * normal))
            {
                var weight = Slices(HeldSlices).Sum(normal => Likelihood(caught, lost, share, Math.Max(0.0, HeldKilograms + HeldSpreadKilograms * normal)));
                balance += weight;
                caughtSum += weight * share;
            }

            var others = 1.0;
            var starts = Enumerable.Repeat(1.0, StartSlices).ToArray();
            foreach (var (load, part) in loads.Zip(courses).Where(one => one.First.Read.Count > 0))
            {
                var byStart = Starts(load).Select(error => Likelihood(load, part.Course, rate, error)).ToArray();
                if (ReferenceEquals(load, slowest))
                    starts = byStart;
                else
                    others *= byStart.Average();
            }

            for (var start = 0; start < StartSlices; start++)
            {
                weights[i, start] = balance * others * starts[start];
                total += weights[i, start];
            }

            shareSum += caughtSum * others * starts.Sum();
        }

        var course = VacuumDrying.Course(slowest.Charge, generator);
        return Standing(slowest, course, logs, weights, total, Share.FromFraction(Math.Min(1.0, shareSum / total)), now);
    }

    /// <summary>The rate of a charge of which nothing is known but its forecast, as wide as that.</summary>
    public static DryingRate UsualRate(VacuumForecast forecast)
    {
        ArgumentNullException.ThrowIfNull(forecast);
        return new(1.0, Math.Log(forecast.HoursP90 / forecast.HoursP10) / DecilesApart);
    }

    private static VacuumStanding Standing(VacuumLoad slowest, IReadOnlyList<(double Hours, double Moisture)> course, double[] logs, double[,] weights, double total, Share caught, Elapsed now)
    {
        var moistures = new List<(double Value, double Weight)>();
        var hours = new List<(double Value, double Weight)>();
        var ofRate = new double[logs.Length];
        for (var i = 0; i < logs.Length; i++)
        {
            var rate = Math.Exp(logs[i]);
            var start = 0;
            foreach (var error in Starts(slowest))
            {
                moistures.Add((Math.Max(0.0, Moisture(course, rate * now.Hours) + error), weights[i, start]));
                hours.Add((HoursAt(course, slowest.Charge.To.Fraction - error) / rate, weights[i, start]));
                ofRate[i] += weights[i, start++];
            }
        }

        var mean = logs.Zip(ofRate, (log, weight) => log * weight).Sum() / total;
        var variance = logs.Zip(ofRate, (log, weight) => (log - mean) * (log - mean) * weight).Sum() / total;
        MoistureContent At(double rank) => MoistureContent.FromFraction(Rank(moistures, rank));
        return new(At(0.1), At(0.5), At(0.9), Rank(hours, 0.1), Rank(hours, 0.5), Rank(hours, 0.9), new(Math.Exp(mean), Math.Sqrt(variance)), caught);
    }

    private static double Likelihood(IReadOnlyList<CaughtWater> caught, double[] lost, double share, double held)
    {
        var log = 0.0;
        for (var i = 0; i < lost.Length; i++)
        {
            var error = ReadKilograms + ReadShare * caught[i].Caught.Kilograms;
            var off = (caught[i].Caught.Kilograms - Math.Max(0.0, share * lost[i] - held)) / error;
            log -= 0.5 * off * off;
        }

        // So far off that nothing explains it is still better than farther off: no weight is quite nothing.
        return Math.Exp(Math.Max(log, -600.0));
    }

    // Of what was read in a part that started off by this fraction: over what the instrument may be off every time.
    private static double Likelihood(VacuumLoad load, IReadOnlyList<(double Hours, double Moisture)> course, double rate, double startError) =>
        Slices(InstrumentSlices).Average(normal => Math.Exp(Math.Max(-600.0, -0.5 * load.Read.Sum(read =>
            Math.Pow((read.Mean.Percent - 100.0 * (Moisture(course, rate * read.At.Hours) + startError) - read.SharedErrorPercent * normal) / read.ErrorPercent, 2.0)))));

    private static IEnumerable<double> Starts(VacuumLoad load) => Slices(StartSlices).Select(normal => load.StartErrorPercent / 100.0 * normal);

    private static double Moisture(IReadOnlyList<(double Hours, double Moisture)> course, double hours)
    {
        for (var i = 1; i < course.Count; i++)
        {
            if (hours < course[i].Hours)
            {
                var share = Math.Clamp((hours - course[i - 1].Hours) / (course[i].Hours - course[i - 1].Hours), 0.0, 1.0);
                return course[i - 1].Moisture + share * (course[i].Moisture - course[i - 1].Moisture);
            }
        }

        return course[^1].Moisture;
    }

    private static double HoursAt(IReadOnlyList<(double Hours, double Moisture)> course, double moisture)
    {
        for (var i = 1; i < course.Count; i++)
        {
            if (course[i].Moisture <= moisture)
            {
                var share = Math.Clamp((course[i - 1].Moisture - moisture) / (course[i - 1].Moisture - course[i].Moisture), 0.0, 1.0);
                return course[i - 1].Hours + share * (course[i].Hours - course[i - 1].Hours);
            }
        }

        // Drier than the course goes: at the pace of its end.
        var (before, last) = (course[^2], course[^1]);
        return last.Hours + (last.Moisture - moisture) / (before.Moisture - last.Moisture) * (last.Hours - before.Hours);
    }

    private static double Rank(List<(double Value, double Weight)> values, double rank)
    {
        var sorted = values.OrderBy(one => one.Value).ToList();
        var wanted = rank * sorted.Sum(one => one.Weight);
        var sum = 0.0;
        foreach (var (value, weight) in sorted)
        {
            sum += weight;
            if (sum >= wanted)
                return value;
        }

        return sorted[^1].Value;
    }

    // Middles of equal slices of the normal distribution.
    private static IEnumerable<double> Slices(int count) => Enumerable.Range(0, count).Select(i => Distributions.NormalQuantile((i + 0.5) / count));
}
