using System.Globalization;
using Boardwright.Drying.Board;
using Boardwright.Quantities;

namespace Boardwright.Drying;

/// <summary>One forecast under way: the boards, the weather that could come, the readings, and what is noted day by day.</summary>
internal sealed class AirDryingRun
{
    private const int Cells = 16;
    private const int CurveDaysMin = 60;
    private const int CurveDaysAfter = 14;
    private const double SecondsPerDay = 86400.0;

    private readonly AirDryingInput input;
    private readonly DryingCoefficients coefficients;
    private readonly BoardSet set;
    private readonly FutureWeather weather;
    private readonly List<StackReading> readings;
    private readonly List<double[]> past = [];
    private readonly StackClimate climate;
    private readonly InstrumentErrors instruments;
    private readonly double usualM2PerS;
    private readonly double target;
    private readonly double[] readyDays;
    private readonly double[] before;
    private readonly double[] sorted;

    public AirDryingRun(AirDryingInput input, int members, int scenarios, double? coefficientM2PerS = null)
    {
        this.input = input;
        coefficients = DryingCoefficients.For(input.Species);
        usualM2PerS = coefficientM2PerS ?? coefficients.AirM2PerS;
        var rate = input.Rate ?? new DryingRate(1.0, coefficients.AirSpread);
        set = new BoardSet(input.Species, input.Thickness, input.From, usualM2PerS * rate.Factor, rate.Spread, members, input.Seed, Cells, passes: 1);
        readings = [.. input.Readings.Where(reading => reading.Date >= input.Start).OrderBy(reading => reading.Date)];
        weather = new FutureWeather(scenarios, input.Place, KnownThrough(), input.Seed, input.PastSeasons);
        climate = new StackClimate(members, input.Seed);
        instruments = new InstrumentErrors(members, input.Seed);
        target = input.To.Fraction;
        readyDays = new double[members];
        before = new double[members];
        sorted = new double[members];
        ResetReady(0);
    }

    /// <summary>Days from the start until each board was dry; infinity for those that were not.</summary>
    public ReadOnlySpan<double> ReadyDays => readyDays;

    /// <summary>Moisture of each board this evening, fraction.</summary>
    public ReadOnlySpan<double> Averages => set.Boards.Average;

    /// <summary>The day's weather of each season.</summary>
    public ReadOnlySpan<DailyWeather> Outdoors => weather.Outdoors;

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
            Rate = set.Rate(usualM2PerS),
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

    /// <summary>One day: the weather, the steps, the boards that became dry, the readings of the evening. False where there is no weather.</summary>
    public bool Advance(int day)
    {
        var date = input.Start.AddDays(day);
        if (input.Weather.On(date) is not { } outdoors)
            return false;

        foreach (var move in input.Moves.Where(move => day == 0 ? move.Date <= input.Start : move.Date == date).OrderBy(move => move.Date))
        {
            weather.MoveTo(move.Place);
        }

        weather.Take(outdoors);
        climate.Turn();
        if (set.Members > 1)
            ReadingFilter.Shift(set.Boards, climate.Wander(set.Boards.Average));
        set.Boards.Average.CopyTo(before);
        for (var step = 0; step < weather.Steps; step++)
        {
            set.SetAir(weather.Air(step), climate, SecondsPerDay / weather.Steps);
            set.Boards.Step();
        }

        NoteReady(day);
        foreach (var reading in readings.Where(reading => reading.Date == date))
        {
            ReadingFilter.Take(set, climate, instruments, past, reading);
            ResetReady(day + 1);
        }

        if (date == input.AskedOn)
            ResetReady(day + 1);
        return true;
    }

    private void NoteReady(int day)
    {
        for (var m = 0; m < set.Members; m++)
        {
            var now = set.Boards.Average[m];
            if (double.IsPositiveInfinity(readyDays[m]) && now <= target)
                readyDays[m] = day + (before[m] > now ? Math.Clamp((before[m] - target) / (before[m] - now), 0.0, 1.0) : 1.0);
        }
    }

    // After a reading, and on the evening it is asked, a board counts as dry only if it still is.
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
        var days = Scatter.Quantile(sorted, rank);
        return double.IsPositiveInfinity(days) ? null : days;
    }

    private DateOnly? Date(double? days) => days is { } known ? input.Start.AddDays((int)Math.Ceiling(known)) : null;

    private bool NoReadingAfter(int day) => readings.Count == 0 || readings[^1].Date <= input.Start.AddDays(day);

    private DryingDay Day(DateOnly date)
    {
        var outdoors = input.Weather.On(date) ?? input.Weather.On(input.Start)!.Value;
        return Day(set.Boards.Average, date, MoistureContent.FromFraction(outdoors.EquilibriumFraction));
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

        if (input.Rate is { } rate)
            notes.Add(string.Create(CultureInfo.InvariantCulture, $"begun with a rate {rate.Factor:0.##} times the usual one of the wood, as learned from earlier stacks"));

        if (input.PastSeasons is { } seasons)
            notes.Add($"after {Iso(KnownThrough())} the same season of {seasons.Years} past years is used");

        if (input.Weather.InterpolatedDays is > 0 and var filled)
            notes.Add($"{filled} missing days of weather were filled between their neighbours");

        if (input.Weather.FilledHours is > 0 and var hours)
            notes.Add($"{hours} missing hours of weather were filled between their neighbours");

        if (input.Start < input.Weather.First || end > input.Weather.Last)
            notes.Add($"outside {Iso(input.Weather.First)} to {Iso(input.Weather.Last)} the weather of the same calendar day is used");

        if (input.Readings.Count > readings.Count)
            notes.Add($"{input.Readings.Count - readings.Count} readings before the start were not used");

        return notes;
    }

    private static string Iso(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
