using System.Globalization;
using Boardwright.Drying.Board;
using Boardwright.Quantities;

namespace Boardwright.Drying;

/// <summary>Forecast of a stack drying in the open air, with a band.</summary>
/// <remarks>
/// <para>Each of 96 boards, different as stacks of one description are, is stepped through the weather of one of 16 seasons that could come
/// (see <see cref="BoardEnsemble"/> and <see cref="DryingCoefficients"/>); the band is the spread of their means. Wood gains as well as loses, and a stack that is
/// not dry in autumn is carried over the winter. Readings move the band and its rate, and are told back to the days before them.</para>
/// <para>Validity: 0.25 to 6 in, -40 to 50 C. The equilibrium shown is that of the day's mean air.</para>
/// <para>Cost: 10 ms for a summer, 25 ms for a winter and spring, on one core.</para>
/// </remarks>
/// <method page="docs/methods/air-drying.md"/>
public static class AirDrying
{
    private const int Members = 96;
    private const int Scenarios = 16;
    private const int StepsPerDay = 2;
    private const int CurveDaysMin = 60;
    private const int CurveDaysAfter = 14;
    private const double SecondsPerStep = 86400.0 / StepsPerDay;

    /// <summary>When the stack will be dry.</summary>
    /// <returns>The forecast; a refusal of from, to, thickness, start, readings or horizon outside what the model is for.</returns>
    public static Outcome<AirDryingForecast> Forecast(AirDryingInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        return Problem(input) is { } problem ? problem : new Run(input, Members, Scenarios).Forecast();
    }

    /// <summary>Days the middle board takes in the weather as given, without chance: what the coefficients are fitted with. Null when not dry within the look ahead.</summary>
    internal static double? CentralDays(AirDryingInput input, double coefficientM2PerS) => new Run(input, 1, 1, coefficientM2PerS).Days();

    private static Refusal? Problem(AirDryingInput input) =>
        input.Thickness.Inches is < 0.25 or > 6.0 ? new Refusal("thickness", Number(input.Thickness.Inches) + "in", "0.25 to 6 in")
        : input.From.Percent is < 4.0 or > 250.0 ? new Refusal("from", Number(input.From.Percent) + "%", "4% to 250%")
        : input.To.Percent is < 4.0 or > 250.0 ? new Refusal("to", Number(input.To.Percent) + "%", "4% to 250%")
        : input.HorizonDays is < 1 or > 1500 ? new Refusal("horizon", input.HorizonDays.ToString(CultureInfo.InvariantCulture), "1 to 1500 days")
        : input.Weather.On(input.Start) is null ? new Refusal("start", Iso(input.Start), $"a day of the weather, {Iso(input.Weather.First)} to {Iso(input.Weather.Last)}; weather of a whole year serves any day")
        : null;

    private static string Number(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);

    private static string Iso(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private sealed class Run
    {
        private readonly AirDryingInput input;
        private readonly DryingCoefficients coefficients;
        private readonly BoardSet set;
        private readonly FutureWeather weather;
        private readonly List<StackReading> readings;
        private readonly List<double[]> past = [];
        private readonly StackClimate climate;
        private readonly double target;
        private readonly double[] readyDays;
        private readonly double[] before;
        private readonly double[] sorted;

        public Run(AirDryingInput input, int members, int scenarios, double? coefficientM2PerS = null)
        {
            this.input = input;
            coefficients = DryingCoefficients.For(input.Species);
            set = new BoardSet(input.Species, input.Thickness, input.From, coefficientM2PerS ?? coefficients.AirM2PerS, coefficients.AirSpread, members, input.Seed);
            readings = [.. input.Readings.Where(reading => reading.Date >= input.Start).OrderBy(reading => reading.Date)];
            weather = new FutureWeather(scenarios, input.Place, KnownThrough(), input.Seed);
            climate = new StackClimate(members, input.Seed);
            target = input.To.Fraction;
            readyDays = new double[members];
            before = new double[members];
            sorted = new double[members];
            ResetReady(0);
        }

        public AirDryingForecast Forecast()
        {
            var curve = new List<DryingDay> { Day(input.Start.AddDays(-1)) with { Date = input.Start } };
            past.Add(set.Boards.Average.ToArray());
            var fastest = 0.0;
            for (var day = 0; day < input.HorizonDays; day++)
            {
                if (!Advance(day))
                    break;

                if (!NoReadingAfter(day - 1))
                    past.Add(set.Boards.Average.ToArray());
                curve.Add(Day(input.Start.AddDays(day)) with { Date = input.Start.AddDays(day + 1) });
                fastest = Math.Max(fastest, curve[^2].P50.Percent - curve[^1].P50.Percent);
                if (day + 1 >= CurveDaysMin && Ready(0.9) is { } late && day + 1 >= late + CurveDaysAfter && NoReadingAfter(day) && !(input.CurveThrough > curve[^1].Date))
                    break;
            }

            return new AirDryingForecast
            {
                ReadyP10 = Date(Ready(0.1)),
                ReadyP50 = Date(Ready(0.5)),
                ReadyP90 = Date(Ready(0.9)),
                DaysP50 = Ready(0.5),
                Curve = curve,
                Hindsight = readings.Count == 0 ? [] : [.. past.Zip(curve, (boards, day) => Day(boards, day.Date, day.Emc))],
                FastestDailyLossPercent = fastest,
                Origin = coefficients.Origin,
                Mark = coefficients.Mark,
                Notes = Notes(curve[^1].Date),
            };
        }

        public double? Days()
        {
            for (var day = 0; day < input.HorizonDays && Ready(0.5) is null; day++)
            {
                if (!Advance(day))
                    break;
            }

            return Ready(0.5);
        }

        // One day: the weather, the steps, the boards that became dry, the readings of the evening.
        private bool Advance(int day)
        {
            if (input.Weather.On(input.Start.AddDays(day)) is not { } outdoors)
                return false;

            foreach (var move in input.Moves.Where(move => day == 0 ? move.Date <= input.Start : move.Date == input.Start.AddDays(day)).OrderBy(move => move.Date))
            {
                weather.MoveTo(move.Place);
            }

            weather.Take(outdoors);
            climate.Turn();
            if (set.Members > 1)
                ReadingFilter.Shift(set.Boards, climate.Wander(set.Boards.Average));
            for (var step = 0; step < StepsPerDay; step++)
            {
                set.Boards.Average.CopyTo(before);
                for (var m = 0; m < set.Members; m++)
                {
                    var air = weather.Air[m % weather.Scenarios];
                    set.SetStep(m, air.DiffusionFactor, air.SurfaceMetresPerSecond, set.SurfaceFactor(air.Celsius), climate.Equilibrium(m, air.EquilibriumFraction), SecondsPerStep);
                }

                set.Boards.Step();
                NoteReady(day + (double)step / StepsPerDay);
            }

            foreach (var reading in readings.Where(reading => reading.Date == input.Start.AddDays(day)))
            {
                ReadingFilter.Smooth(past, set.Boards.Average, reading.Mean.Fraction, reading.ErrorPercent / 100.0);
                ReadingFilter.Take(set, climate, reading.Mean.Fraction, reading.ErrorPercent / 100.0);
                ResetReady(day + 1);
            }

            return true;
        }

        private void NoteReady(double daysBefore)
        {
            for (var m = 0; m < set.Members; m++)
            {
                var now = set.Boards.Average[m];
                if (double.IsPositiveInfinity(readyDays[m]) && now <= target)
                    readyDays[m] = daysBefore + (before[m] - target) / (before[m] - now) / StepsPerDay;
            }
        }

        // After a reading a board counts as dry only if it still is.
        private void ResetReady(double days)
        {
            for (var m = 0; m < set.Members; m++)
            {
                if (set.Boards.Average[m] > target)
                    readyDays[m] = double.PositiveInfinity;
                else if (days == 0 || double.IsPositiveInfinity(readyDays[m]))
                    readyDays[m] = days;
            }
        }

        private double? Ready(double rank)
        {
            readyDays.CopyTo(sorted, 0);
            Array.Sort(sorted);
            var days = Scatter.Ranked(sorted, rank);
            return double.IsPositiveInfinity(days) ? null : days;
        }

        private DateOnly? Date(double? days) => days is { } known ? input.Start.AddDays((int)Math.Ceiling(known)) : null;

        private bool NoReadingAfter(int day) => readings.Count == 0 || readings[^1].Date <= input.Start.AddDays(day);

        private DryingDay Day(DateOnly date)
        {
            var outdoors = input.Weather.On(date) ?? input.Weather.On(input.Start)!.Value;
            return Day(set.Boards.Average, date, MoistureContent.FromFraction(FutureWeather.EquilibriumFraction(outdoors.MeanCelsius, outdoors.HumidityPercent)));
        }

        private DryingDay Day(ReadOnlySpan<double> boards, DateOnly date, MoistureContent emc)
        {
            boards.CopyTo(sorted);
            Array.Sort(sorted);
            MoistureContent Rank(double rank) => MoistureContent.FromFraction(Scatter.Around(sorted, rank));
            return new DryingDay(date, Rank(0.1), Rank(0.5), Rank(0.9), emc);
        }

        private DateOnly KnownThrough()
        {
            var read = readings.Count > 0 ? readings[^1].Date : input.Start;
            return input.WeatherKnownThrough > read ? input.WeatherKnownThrough.Value : read;
        }

        private List<string> Notes(DateOnly end)
        {
            var notes = new List<string>();
            if (coefficients.Mark == "C")
                notes.Add(coefficients.Origin);

            if (input.Weather.InterpolatedDays is > 0 and var filled)
                notes.Add($"{filled} missing days of weather were filled between their neighbours");

            if (input.Start < input.Weather.First || end > input.Weather.Last)
                notes.Add($"outside {Iso(input.Weather.First)} to {Iso(input.Weather.Last)} the weather of the same calendar day is used");

            if (input.Readings.Count > readings.Count)
                notes.Add($"{input.Readings.Count - readings.Count} readings before the start were not used");

            return notes;
        }
    }
}
