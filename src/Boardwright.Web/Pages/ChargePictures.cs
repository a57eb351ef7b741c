using Boardwright.Drying;
using Boardwright.Quantities;
using Boardwright.Web.Drawings;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;
using Boardwright.Yard.UseCases;

namespace Boardwright.Web.Pages;

/// <summary>The pictures of a charge.</summary>
internal static class ChargePictures
{
    // Places where samples are drawn: where they hang is not on record.
    private static readonly (double Across, double Down)[] Hangs = [(.06, .04), (.47, .3), (.9, .12), (.14, .58), (.92, .66), (.54, .8), (.3, .16), (.72, .46), (.26, .9), (.76, .9), (.06, .8), (.66, .04)];

    private const int CoursesDrawn = 16;
    private const int CoursesDrawnHigh = 9;

    /// <summary>The kiln from its door.</summary>
    public static KilnDoorDrawing Door(YardState state, Kiln kiln, Charge? charge, IReadOnlyList<SampleRow> samples)
    {
        var wettest = charge?.Wettest?.Name;
        var packs = charge is null ? [] : ChargePacks.Of(state, charge);
        var most = packs.Count > Math.Min(2, kiln.Installed.StackPlaces) ? CoursesDrawnHigh : CoursesDrawn;
        return new(kiln.Name, [.. packs.Select(pack => new KilnLoad(pack.Stack.Tag, pack.Stack.Species.CommonName, Math.Min(pack.Courses, most), pack.ThicknessIn))])
        {
            PlacesWide = Math.Min(2, kiln.Installed.StackPlaces),
            Vacuum = kiln.Installed.Type == KilnType.RadioFrequencyVacuum,
            EmptyWords = kiln.Down is { } down ? $"down: {down.Why}" : "empty",
            Samples = [.. samples.Where(row => !row.Sample.Retired).Take(Hangs.Length).Select((row, index) => new SampleTag(row.Sample.Name, $"{row.Last.Moisture.Percent:0.0}", Hangs[index].Across, Hangs[index].Down, row.Sample.Name == wettest))],
        };
    }

    /// <summary>The rounds of the samples, and the forecast from the last one on. A gap stays a gap.</summary>
    public static DryingCurveDrawing? Curve(Charge charge, ChargeRun run, DateTime now)
    {
        var rounds = Rounds(charge);
        if (rounds.Count < 2)
            return null;

        var ahead = run.Forecast is Outcome<KilnForecast>.Done(var forecast)
            ? forecast.Curve.Select(point => new MoisturePoint(run.ClockFrom.AddHours(point.Hours), point.P10.Percent, point.P50.Percent, point.P90.Percent)).ToList()
            : [];
        var air = charge.Settings.Select((setting, index) => (setting.At, To: index + 1 < charge.Settings.Count ? charge.Settings[index + 1].At : ahead.Count > 0 ? ahead[^1].At : now, Emc: ChargeRun.EmcOf(setting.DryBulb, setting.WetBulb)))
            .Where(held => held.Emc is not null).SelectMany(held => new[] { (held.At, held.Emc!.Value.Percent), (held.To, held.Emc!.Value.Percent) });
        return new($"charge {charge.Tag}", charge.LoadedAt, ahead.Count > 0 ? ahead[^1].At : now.AddDays(2), now)
        {
            Past = [.. Runs(charge, rounds)],
            Ahead = ahead,
            Air = [.. air],
            AirWords = "what the kiln’s air holds",
            AheadWords = "ahead",
            TargetPercent = charge.Target.Percent,
            Readings = [.. rounds.Select(round => new Drawings.MoistureReading(round.At, round.Likely))],
        };
    }

    private static List<MoisturePoint> Rounds(Charge charge)
    {
        var sound = charge.Samples.Where(sample => !sample.Retired && sample.Weighings.Count > 0).ToList();
        return [.. sound.SelectMany(sample => sample.Weighings.Where(weighing => !weighing.AfterDamage)).GroupBy(weighing => weighing.At.Date).Where(round => round.Count() >= sound.Count).OrderBy(round => round.Key)
            .Select(round => new MoisturePoint(round.Max(weighing => weighing.At), round.Min(weighing => weighing.Moisture.Percent), round.Average(weighing => weighing.Moisture.Percent), round.Max(weighing => weighing.Moisture.Percent)))];
    }

    private static List<List<MoisturePoint>> Runs(Charge charge, List<MoisturePoint> rounds)
    {
        var runs = new List<List<MoisturePoint>> { new() };
        foreach (var round in rounds)
        {
            if (runs[^1].Count > 0 && charge.Gaps.Any(gap => gap.From > runs[^1][^1].At && gap.From < round.At))
                runs.Add([]);
            runs[^1].Add(round);
        }

        return runs;
    }
}
