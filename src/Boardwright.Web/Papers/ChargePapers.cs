using System.Globalization;
using Boardwright.Documents;
using Boardwright.Documents.Kilns;
using Boardwright.Drying;
using Boardwright.Drying.Schedules;
using Boardwright.Drying.Vacuum;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;
using Boardwright.Yard.UseCases;

namespace Boardwright.Web.Papers;

/// <summary>The run sheet of a charge for the kiln's door, as a PDF.</summary>
public static class ChargePapers
{
    /// <summary>The sheet.</summary>
    /// <returns>The PDF; a refusal of an unknown charge; no answer for one that is out, or without a setting or gauge.</returns>
    public static Outcome<byte[]> RunSheet(YardState state, string tag, DateTime now, Paper paper) =>
        ChargeSheet.Of(state, tag, now).Then(sheet => Content(state, sheet, now)).Then<byte[]>(content => KilnRunSheet.Render(content, paper));

    private static Outcome<KilnRunSheetContent> Content(YardState state, ChargeSheet sheet, DateTime now)
    {
        var charge = sheet.Charge;
        if (!charge.IsRunning)
            return new Outcome<KilnRunSheetContent>.NoAnswer($"{charge.Tag} is out of the kiln since {charge.UnloadedAt:d MMM yyyy}: there is nothing to run.");

        var run = (sheet.Run as Outcome<ChargeRun>.Done)?.Value;
        if (Now(charge, sheet) is not { } setting)
            return new Outcome<KilnRunSheetContent>.NoAnswer($"No setting of {charge.Tag} is on record: write it first.");

        var finish = ChargeFinish.Of(state, charge);
        var days = sheet.Samples.SelectMany(row => row.Sample.Weighings).Select(weighing => DateOnly.FromDateTime(weighing.At)).Distinct().Order().ToList();
        return new KilnRunSheetContent
        {
            Yard = state.Yard?.Name ?? "Boardwright",
            Kiln = charge.Kiln,
            Charge = charge.Tag,
            Load = string.Join("; ", charge.Stacks.Select(stack => state.Stacks[stack]).Select(stack => $"{stack.Tag} {stack.Species.CommonName} {stack.Thickness}")) + string.Create(CultureInfo.InvariantCulture, $", {charge.FootageIn.Count:#,0} bf"),
            Target = charge.Target,
            Started = DateOnly.FromDateTime(charge.LoadedAt),
            At = now,
            Now = setting,
            NowSince = charge.Settings.LastOrDefault() is { } last ? $"since {last.At.ToString("d MMM HH:mm", CultureInfo.InvariantCulture)}" : $"since {charge.LoadedAt.ToString("d MMM HH:mm", CultureInfo.InvariantCulture)}",
            Next = run is null or { Frozen: not null } or { NextIsAsSet: true } ? null : new KilnSetting.Air(run.Next.DryBulb, run.Next.WetBulb),
            NextWhen = run is null or { Frozen: not null } ? null : $"{(run.NextIsAsSet ? $"{(run.Next.Kind == ChangeKind.Equalize ? "equalizing" : run.Next.Kind == ChangeKind.Condition ? "conditioning" : "the next step")} begins " : "")}when {run.Next.CallsWords}",
            WeighingDays = days,
            Samples = [.. sheet.Samples.Where(row => !row.Sample.Retired).Select(row => Sample(row, days, charge))],
            SafeDailyLoss = run?.Safe is Outcome<SafeRate>.Done(var safe) ? Share.FromPercent(safe.DailyLossPercent) : null,
            SafeDailyLossBasis = "green wood; no longer the limit below 30 %",
            LastDailyLoss = run?.Fastest?.DailyLossPct is > 0.0 and var loss ? Share.FromPercent(loss) : null,
            ScheduleCode = run?.Schedule.Name,
            ScheduleSource = run is null ? null : run.Schedule.Code is null ? $"{run.Schedule.Source}; hours are counted from the setting, stops left out" : $"{run.Schedule.Source} ({SourceMark.Words(run.Schedule.Mark)}), wet bulb at least 90 °F",
            Steps = run is null ? [] : [.. run.Schedule.Steps.Select(Step)],
            StepNow = run?.StepNow,
            StepSet = run is { Set: { } set } && run.Schedule.Steps.ToList().FindIndex(step => ChargeFigures.Bulbs(step.DryBulb, step.AirFloored90.WetBulb!.Value) == ChargeFigures.Bulbs(set.DryBulb, set.WetBulb)) is >= 0 and var at ? at : null,
            Warnings = sheet.Minds,
            EqualizeEmc = finish?.EqualizeEmc,
            ConditionEmc = finish?.ConditionEmc,
        };
    }

    private static KilnSetting? Now(Charge charge, ChargeSheet sheet) => charge.Settings.LastOrDefault() is { } set ? new KilnSetting.Air(set.DryBulb, set.WetBulb)
        : sheet.Vacuum is Outcome<ChargeVacuum>.Done(var vacuum) ? new KilnSetting.Vacuum(charge.Gauges.LastOrDefault(gauge => gauge.Core is not null)?.Core ?? BoilingPoint.At(vacuum.Chamber), vacuum.Chamber) // wood that gives off water is about as warm as it boils there
        : null;

    private static KilnSample Sample(SampleRow row, List<DateOnly> days, Charge charge) => new(
        charge.Stacks.Count > 1 && row.Sample.Stack is { } stack ? $"{row.Sample.Name}, {stack}" : row.Sample.Name,
        row.Sample.CalculatedDry,
        [.. days.Select(day => row.Sample.Weighings.LastOrDefault(weighing => DateOnly.FromDateTime(weighing.At) == day) is { } weighed ? new SampleWeighing(weighed.Weight, weighed.Moisture) : null)],
        row.Sample.Name == charge.Wettest?.Name ? "wettest" : row.Sample.Name == charge.Driest?.Name ? "driest" : "");

    private static ScheduleStep Step(KilnStep step) => new(step.Above, step.DryBulb, step.AirFloored90.WetBulb!.Value, step.AirFloored90.Emc!.Value, step.AirFloored90.Humidity) { Lasts = step.Lasts };
}
