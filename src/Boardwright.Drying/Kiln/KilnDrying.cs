using System.Globalization;
using Boardwright.Drying.Board;
using Boardwright.Drying.Schedules;
using Boardwright.Quantities;

namespace Boardwright.Drying;

/// <summary>Forecast of the hours a charge needs in a kiln, with a band.</summary>
/// <remarks>
/// <para>Each of 101 charges is stepped through the schedule; a step ends when its controlling moisture content, its mean, or 6 % above it for the wettest half of the
/// samples, reaches the point, or when its hours are over. Air is held with the 90 F floor of the wet bulb. While the first third of the moisture is leaving, the loss keeps to the safe rate.
/// Equalizing and conditioning come on top. A charge that has been weighed dries on at the rate it has shown, see <see cref="KilnRate"/>.</para>
/// <para>Wood is taken to be as hot as the air; warm-up is not counted. Validity: 0.25 to 6 in.</para>
/// </remarks>
/// <method page="docs/methods/kiln-time.md"/>
public static class KilnDrying
{
    private const int Members = 101;
    internal const double SurfaceMetresPerSecond = 2.5e-7;
    private const double WettestHalfOverMean = 1.06;
    private const int StepsMax = 40000;
    private const int CurvePoints = 120;

    /// <summary>How long the charge takes.</summary>
    /// <returns>The forecast; a refusal of from, to or thickness; no answer without a schedule or when its air cannot dry so far.</returns>
    public static Outcome<KilnForecast> Forecast(KilnDryingInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        if (Problem(input) is { } problem)
            return problem;

        var schedule = input.Schedule is { } given ? given : KilnSchedule.For(input.Species, input.Thickness);
        return schedule.Then(found => new Run(input, found.LimitedTo(input.Kiln.DryBulbMax), Members).Forecast());
    }

    /// <summary>Days of the middle charge, without chance: what the coefficients are fitted with.</summary>
    internal static double CentralDays(KilnDryingInput input, KilnSchedule schedule, double coefficientM2PerS) =>
        new Run(input, schedule, 1, coefficientM2PerS).Hours() / 24.0;

    // Steps by the clock are whole half hours: the longest step of time that goes into all of them, not over the usual one.
    internal static double StepHours(KilnSchedule schedule, double most)
    {
        var halves = schedule.Steps.SkipLast(1).Where(one => one.Lasts is not null).Aggregate(0L, (sum, one) => Common(sum, (long)Math.Max(1.0, Math.Round(2.0 * one.Lasts!.Value.Hours))));
        return halves == 0L ? most : 0.5 * halves / Math.Ceiling(0.5 * halves / most - 1e-9);
    }

    private static long Common(long one, long other) => other == 0L ? one : Common(other, one % other);

    private static Refusal? Problem(KilnDryingInput input) =>
        input.Thickness.Inches is < 0.25 or > 6.0 ? new Refusal("thickness", Number(input.Thickness.Inches) + "in", "0.25 to 6 in")
        : input.From.Percent is < 4.0 or > 250.0 ? new Refusal("from", Number(input.From.Percent) + "%", "4% to 250%")
        : input.To.Percent < 4.0 || input.To >= input.From ? new Refusal("to", Number(input.To.Percent) + "%", $"4% to less than the start, {Number(input.From.Percent)}%")
        : null;

    private static string Number(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);

    private sealed class Run
    {
        private readonly KilnDryingInput input;
        private readonly KilnSchedule schedule;
        private readonly DryingCoefficients coefficients;
        private readonly BoardSet set;
        private readonly KilnAir[] air;
        private readonly int[] step;
        private readonly double[] done;
        private readonly double[] sorted;
        private readonly double[,] hoursInStep;
        private readonly double hoursPerStep;
        private readonly double safeLossPerStep;
        private readonly double guardedAbove;
        private readonly double controllingOverMean;

        public Run(KilnDryingInput input, KilnSchedule schedule, int members, double? coefficientM2PerS = null)
        {
            this.input = input;
            this.schedule = schedule;
            controllingOverMean = input.StepsBy == StepRule.WettestHalf ? WettestHalfOverMean : 1.0;
            coefficients = DryingCoefficients.For(input.Species);
            var (factor, spread) = input.Rate is { } rate ? (rate.Factor, rate.Spread) : (1.0, coefficients.KilnSpread);
            set = new BoardSet(input.Species, input.Thickness, input.From, (coefficientM2PerS ?? coefficients.KilnM2PerS) * factor, spread, members, input.Seed);
            air = [.. schedule.Steps.Select(one => new KilnAir(
                BoardPhysics.DiffusionFactor(one.DryBulb.Celsius),
                set.SurfaceFactor(one.DryBulb.Celsius),
                one.AirFloored90.Emc!.Value.Fraction))];
            step = new int[members];
            done = new double[members];
            sorted = new double[members];
            hoursInStep = new double[members, air.Length];
            done.AsSpan().Fill(double.PositiveInfinity);
            hoursPerStep = StepHours(schedule, Math.Max(0.5, input.Thickness.Inches * input.Thickness.Inches));
            safeLossPerStep = SafeRate.For(input.Species, input.Thickness) is Outcome<SafeRate>.Done(var safe)
                ? safe.DailyLossPercent / 100.0 * hoursPerStep / 24.0
                : double.PositiveInfinity;
            var green = Math.Max(GreenWood.Moisture(input.Species).Fraction, input.From.Fraction);
            guardedAbove = Math.Max(green - (green - input.To.Fraction) / 3.0, DiffusionLaw.FiberSaturationFraction);
        }

        public Outcome<KilnForecast> Forecast()
        {
            var last = schedule.Steps[^1].AirFloored90.Emc!.Value;
            if (last.Fraction >= input.To.Fraction - 0.003)
                return new Outcome<KilnForecast>.NoAnswer($"The last step holds an equilibrium of {Number(last.Percent)} %: wood does not come down to {Number(input.To.Percent)} % in it.");

            var curve = new List<KilnPoint> { Point(0.0) };
            Simulate(hours => curve.Add(Point(hours)));
            done.CopyTo(sorted, 0);
            Array.Sort(sorted);
            if (double.IsPositiveInfinity(Scatter.Ranked(sorted, 0.9)))
                return new Outcome<KilnForecast>.NoAnswer($"One charge in ten does not come down to {Number(input.To.Percent)} % within {Number(StepsMax * hoursPerStep / 24.0)} days.");

            var middle = Array.IndexOf(done, Scatter.Ranked(sorted, 0.5));
            return new KilnForecast
            {
                HoursP10 = Scatter.Ranked(sorted, 0.1),
                HoursP50 = done[middle],
                HoursP90 = Scatter.Ranked(sorted, 0.9),
                Steps = [.. Enumerable.Range(0, air.Length).Where(one => hoursInStep[middle, one] > 0.0).Select(one => new KilnStepTime(schedule.Steps[one], hoursInStep[middle, one]))],
                Curve = Thinned(curve),
                WaterKilogramsPerCubicMetre = 1000.0 * input.Species.BasicSpecificGravity * (input.From.Fraction - input.To.Fraction),
                Schedule = schedule,
                Origin = coefficients.Origin,
                Mark = coefficients.Mark,
                Notes = Notes(),
            };
        }

        public double Hours()
        {
            Simulate(_ => { });
            return done[0];
        }

        private void Simulate(Action<double> afterStep)
        {
            for (var n = 0; n < StepsMax; n++)
            {
                var drying = 0;
                for (var m = 0; m < set.Members; m++)
                {
                    if (double.IsPositiveInfinity(done[m]))
                    {
                        drying++;
                        SetMember(m);
                    }
                    else
                    {
                        set.SetStep(m, 0.0, 0.0, 0.0, 0.0, 0.0);
                    }

                    sorted[m] = set.Boards.Average[m];
                }

                // Nine in ten are done: the slowest do not bear on the band.
                if (drying == 0 || drying < 0.1 * set.Members)
                    return;

                set.Boards.Step();
                NoteDone(n);
                afterStep((n + 1) * hoursPerStep);
            }
        }

        private void SetMember(int m)
        {
            var mean = set.Boards.Average[m];
            var controlling = mean * controllingOverMean;
            while (step[m] < air.Length - 1 && IsOver(m, controlling))
            {
                step[m]++;
            }

            var now = air[step[m]];
            set.SetStep(m, now.DiffusionFactor, SurfaceMetresPerSecond, now.SurfaceFactor, now.EquilibriumFraction, hoursPerStep * 3600.0);
            set.Boards.LossLimit[m] = mean > guardedAbove ? safeLossPerStep : double.PositiveInfinity;
        }

        private bool IsOver(int m, double controlling) => schedule.Steps[step[m]] is var now && now.Lasts is { } lasts
            ? hoursInStep[m, step[m]] >= lasts.Hours - 1e-6
            : controlling <= now.Above.Fraction;

        private void NoteDone(int n)
        {
            for (var m = 0; m < set.Members; m++)
            {
                if (!double.IsPositiveInfinity(done[m]))
                    continue;

                var now = set.Boards.Average[m];
                var share = now <= input.To.Fraction ? (sorted[m] - input.To.Fraction) / (sorted[m] - now) : 1.0;
                hoursInStep[m, step[m]] += share * hoursPerStep;
                if (now <= input.To.Fraction)
                    done[m] = (n + share) * hoursPerStep;
            }
        }

        private KilnPoint Point(double hours)
        {
            var values = set.Boards.Average.ToArray();
            Array.Sort(values);
            MoistureContent Rank(double rank) => MoistureContent.FromFraction(Scatter.Ranked(values, rank));
            return new KilnPoint(hours, Rank(0.1), Rank(0.5), Rank(0.9));
        }

        private static List<KilnPoint> Thinned(List<KilnPoint> curve)
        {
            var every = Math.Max(1, curve.Count / CurvePoints);
            return [.. curve.Where((_, index) => index % every == 0 || index == curve.Count - 1)];
        }

        private List<string> Notes()
        {
            var notes = new List<string> { "drying only: equalizing and conditioning come on top" };
            if (coefficients.Mark == "C")
                notes.Add(coefficients.Origin);

            if (input.Rate is { } rate)
                notes.Add($"this charge dries {Number(rate.Factor)} times as fast as its wood usually does");

            if (double.IsPositiveInfinity(safeLossPerStep))
                notes.Add($"no safe rate is printed for {input.Species.CommonName}: the schedule alone limits the first days");

            if (schedule.Note is { } note)
                notes.Add(note);

            if (schedule.Steps[^1].Lasts is { } least)
                notes.Add($"the last step stands for {Number(least.Hours)} h: it is held on until the wood is at {Number(input.To.Percent)} %");

            return notes;
        }
    }

    private readonly record struct KilnAir(double DiffusionFactor, double SurfaceFactor, double EquilibriumFraction);
}
