using Boardwright.Drying;
using Boardwright.Drying.Heat;
using Boardwright.Drying.Schedules;
using Boardwright.Quantities;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>How long a charge takes in a kiln.</summary>
public static class DryKiln
{
    private static readonly KilnEquipment[] Kinds = [KilnEquipment.Conventional, KilnEquipment.Dehumidification];

    public static Command Command { get; } = Command.Of("dry", "kiln", "Hours a charge needs in a kiln, with a band, step by step", Run) with
    {
        Options =
        [
            Option.Required("species", "S", "species, such as \"sugar maple\""),
            Option.Required("thickness", "L", "rough thickness, such as 4/4"),
            Option.Required("from", "MC", "mean moisture content of the charge"),
            Option.Required("to", "MC", "mean moisture content wanted"),
            Option.Optional("kiln", "NAME", "conventional (default), dehumidification, or a kiln of the book that --data or --yard names, else K1 or K2 of the demonstration"),
            Option.Optional("schedule", "FILE|NAME", $"a schedule of the house's own instead of the listed one: a table as of kiln own, or the name of one kept in the book that --data or --yard names"),
            Option.Optional("outside", "T", "air outside, at 75 % humidity, for the heat it takes (default 50F)"),
            Option.Optional("steps-by", "wettest-half|mean", "which samples lead through the schedule: the wettest half (default, Dry Kiln Operator's Manual) or the mean of all (FPL-GTR-57)"),
            .. BookPlace.Options,
        ],
        Examples = ["dry kiln --species \"sugar maple\" --thickness 4/4 --from 22.4% --to 8%", "dry kiln --species \"northern red oak\" --thickness 4/4 --from 75% --to 7% --kiln K1 --json", "dry kiln --species \"white ash\" --thickness 4/4 --from 45% --to 7% --schedule demo/examples/schedule-by-hours.csv"],
    };

    /// <summary>A step as it is gone through; of one that goes by the clock no moisture content ends it.</summary>
    public sealed record Step(double? McAbovePct, double DryBulbC, double WetBulbC, double EmcPct, double Hours);

    /// <summary>Boards that a step would dry faster than is safe, the worst of them, and air that keeps them.</summary>
    public sealed record Over(int Step, double DryBulbC, double WetBulbC, double SharePct, double Times, double LossPctPerDay, double SafePctPerDay, double BoardMcPct, double BoardThicknessMm, double GentlerDryBulbC, double GentlerWetBulbC, string Words);

    public sealed record Answer(
        double HoursP10, double HoursP50, double HoursP90, IReadOnlyList<Step> Steps, double WaterKgPerM3, double? HeatKwhPerM3, double? KwhPerKgWater, string? Code, string Schedule, IReadOnlyList<KilnOwn.Step> Finish, IReadOnlyList<Over>? OverSafeRate, string SafeRateSays, string Origin, string Mark, IReadOnlyList<string> Notes);

    public static Outcome<Answer> Run(Ask ask)
    {
        ArgumentNullException.ThrowIfNull(ask);
        var species = ask.Species("species");
        var thickness = ask.Length("thickness");
        var from = ask.Moisture("from");
        var to = ask.Moisture("to");
        var steps = ask.Choice("steps-by", "wettest-half", "wettest-half", "mean") == "mean" ? StepRule.MeanOfAll : StepRule.WettestHalf;
        var kiln = Kiln(ask);
        var outside = new OutsideAir(ask.Temperature("outside", Temperature.FromFahrenheit(50.0)), RelativeHumidity.FromPercent(75.0));
        var schedule = ask.Has("schedule") ? Schedule(ask) : null;
        return ask.Refuses
            ? ask.Refused<Answer>()
            : ask.Named(KilnDrying.Forecast(new KilnDryingInput { Species = species!, Thickness = thickness, From = from, To = to, Kiln = kiln!, StepsBy = steps, Schedule = schedule })).Then<Answer>(forecast =>
            {
                var risk = StepRisk.Of([new(species!.CommonName, species, thickness, from)], forecast.Schedule, 0, steps);
                var heat = KilnRunHeat.Of(forecast, KilnLoad.Of(species, Volume.FromCubicMetres(1.0), from, outside.Temperature), outside) is Outcome<KilnRunHeat>.Done(var run) ? (run.WarmUp + run.Drying).KilowattHours : (double?)null;
                return new Answer(
                    forecast.HoursP10, forecast.HoursP50, forecast.HoursP90, [.. forecast.Steps.Select(Show)], forecast.WaterKilogramsPerCubicMetre, heat, heat / forecast.WaterKilogramsPerCubicMetre,
                    forecast.Schedule.Code?.ToString(), forecast.Schedule.Name, Finish(forecast.Schedule), (risk as Outcome<StepRisk>.Done)?.Value.Steps.SelectMany(Show).ToList(),
                    risk switch { Outcome<StepRisk>.Done(var done) => done.Says, Outcome<StepRisk>.NoAnswer(var why) => why, _ => "" }, forecast.Origin, forecast.Mark, forecast.Notes);
            });
    }

    private static IEnumerable<Over> Show(StepSafety step) => step.Over.Select(over => new Over(
        step.Step + 1, step.Held.DryBulb.Celsius, step.Held.AirFloored90.WetBulb!.Value.Celsius, 100.0 * over.Share, over.Times, over.LossPercent, over.SafePercent, over.Moisture.Percent, over.Thickness.Millimetres,
        step.Gentler!.DryBulb.Celsius, step.Gentler.Air.WetBulb!.Value.Celsius, $"{StepRisk.Which(over)}: {StepRisk.HowMuch(over)}"));

    // A name of the book where it has one; else a file.
    private static KilnSchedule? Schedule(Ask ask)
    {
        var given = ask.Text("schedule");
        if ((ask.Has("data") || ask.Has("yard")) && ask.Book()?.State is { } yard && yard.Schedules.GetValueOrDefault(given) is { } kept)
            return kept;
        var text = ask.File("schedule");
        return ask.Refuses ? null : ask.Take("--schedule", KilnOwn.Read(given, text));
    }

    private static List<KilnOwn.Step> Finish(KilnSchedule schedule) =>
        [.. new[] { ("equalize", schedule.Equalize), ("condition", schedule.Condition) }.Where(one => one.Item2 is not null).Select(one => KilnOwn.Show(one.Item1, one.Item2!))];

    private static KilnEquipment? Kiln(Ask ask)
    {
        var name = ask.TextOrNull("kiln") ?? KilnEquipment.Conventional.Name;
        if (Kinds.FirstOrDefault(kind => string.Equals(kind.Name, name, StringComparison.OrdinalIgnoreCase)) is { } kind)
            return kind;
        if ((ask.Has("data") || ask.Has("yard") ? ask.Book()?.State : DemonstrationYard.State) is not { } yard)
            return null;

        var kiln = yard.Kilns.Values.FirstOrDefault(own => string.Equals(own.Name, name, StringComparison.OrdinalIgnoreCase));
        if (kiln is { Installed.Type: not KilnType.RadioFrequencyVacuum })
            return new KilnEquipment(kiln.Name, Temperature.FromCelsius(kiln.Installed.DryBulbMaxC));

        var heated = yard.Kilns.Values.Where(own => own.Installed.Type != KilnType.RadioFrequencyVacuum).Select(own => own.Name);
        ask.Refuse("kiln", kiln is null ? name : $"{name}, a vacuum kiln", $"{string.Join(", ", [.. Kinds.Select(one => one.Name), .. heated])}{(kiln is null ? "" : "; for a vacuum kiln see dry vacuum")}");
        return null;
    }

    private static Step Show(KilnStepTime time)
    {
        var air = time.Step.AirFloored90;
        return new Step(time.Step.Lasts is null ? time.Step.Above.Percent : null, air.DryBulb.Celsius, air.WetBulb!.Value.Celsius, air.Emc!.Value.Percent, time.Hours);
    }
}
