using System.Globalization;
using Boardwright.Drying;
using Boardwright.Drying.Schedules;
using Boardwright.Quantities;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>What a change of the setting is.</summary>
public enum ChangeKind
{
    /// <summary>The next step of the schedule.</summary>
    NextStep,

    /// <summary>Bring dry and wet boards together.</summary>
    Equalize,

    /// <summary>Free the stress of drying.</summary>
    Condition,
}

/// <summary>The next change of a kiln's setting: to what, at which moisture, and about when.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="DryBulb">Dry bulb to set.</param>
/// <param name="WetBulb">Wet bulb to set.</param>
/// <param name="At">Moisture content that calls for it.</param>
/// <param name="Emc">Equilibrium it holds.</param>
/// <param name="DueAt">About when; null where the forecast does not reach it.</param>
/// <param name="IsDue">True when the moisture is there already.</param>
public sealed record ChargeChange(ChangeKind Kind, Temperature DryBulb, Temperature WetBulb, MoistureContent At, MoistureContent Emc, DateTime? DueAt, bool IsDue)
{
    /// <summary>Which samples lead through the schedule.</summary>
    public StepRule StepsBy { get; init; }

    /// <summary>The step by the clock that has to be run out first; null where samples call for the change.</summary>
    public StepClock? After { get; init; }

    /// <summary>Which samples call for it.</summary>
    public string Calls => Kind switch { ChangeKind.NextStep => HouseRules.Words(StepsBy), ChangeKind.Equalize => "the driest sample", _ => "the wettest sample" };

    /// <summary>What calls for it: "the wettest half is at 30 %", "the 36 h of this step are run, 11.5 so far".</summary>
    public string CallsWords => After switch
    {
        { Run: { } run, Left: { } left } => string.Create(CultureInfo.InvariantCulture, $"the {run.Hours + left.Hours:0.#} h of this step are run, {run.Hours:0.#} so far"),
        { } => "the hours of the step before are run",
        null => string.Create(CultureInfo.InvariantCulture, $"{Calls} is at {At.Percent:0.#} %"),
    };

    internal static ChargeChange Of(
        KilnFinish? finish, ChargeEqualizing? equalizing, MoistureContent target, KilnSchedule schedule, int stepNow, StepClock? clock, DateTime clockNow, MoistureContent controlling, MoistureContent? atSetting, MoistureContent mean, MoistureContent driest, MoistureContent wettest, Setting? set, DateTime weighed,
        Outcome<KilnForecast> forecast, bool neverInThisAir)
    {
        var now = schedule.Steps[stepNow];
        if (set is null)
            return new(ChangeKind.NextStep, now.DryBulb, now.AirFloored90.WetBulb!.Value, controlling, now.AirFloored90.Emc!.Value, weighed, true);

        // The step before has been run for its hours, or its moisture is reached, and this one's air is not set yet.
        if (clock is { IsDue: true })
            return new(ChangeKind.NextStep, now.DryBulb, now.AirFloored90.WetBulb!.Value, stepNow > 0 && schedule.Steps[stepNow - 1].Lasts is null ? schedule.Steps[stepNow - 1].Above : controlling, now.AirFloored90.Emc!.Value, weighed, true)
            {
                After = stepNow > 0 && schedule.Steps[stepNow - 1].Lasts is not null ? clock with { Run = null, Left = null } : null,
            };

        // The samples that lead have passed into this step since the setting was made: it is due. A setting made in it already, off the schedule, is the operator's choice.
        if (clock is null && IsPassed(schedule, controlling, atSetting, set))
            return new(ChangeKind.NextStep, now.DryBulb, now.AirFloored90.WetBulb!.Value, schedule.Steps.TakeWhile(step => step != now).Last().Above, now.AirFloored90.Emc!.Value, weighed, true);

        // Milder by choice is well, but not where the wood never comes to its target in it.
        if (neverInThisAir && equalizing is not { IsOn: true })
            return new(ChangeKind.NextStep, now.DryBulb, now.AirFloored90.WetBulb!.Value, controlling, now.AirFloored90.Emc!.Value, weighed, true);

        var next = schedule.Steps.ElementAtOrDefault(stepNow + 1);
        if (next is not null && clock?.Left is { } left)
        {
            return new(ChangeKind.NextStep, next.DryBulb, next.AirFloored90.WetBulb!.Value, controlling, next.AirFloored90.Emc!.Value, clockNow.AddHours(left.Hours), false) { After = clock };
        }

        if (next is not null)
        {
            // The mean when the samples that lead are at the end of the step, their distance unchanged.
            return new(ChangeKind.NextStep, next.DryBulb, next.AirFloored90.WetBulb!.Value, now.Above, next.AirFloored90.Emc!.Value, Due(Lower(mean, controlling, now.Above)), false);
        }

        // In the air of equalizing nothing is left to set until the wettest sample is at the target, nor where it comes there before the driest is low; else the driest calls.
        var equalized = finish is not null && (wettest <= finish.EqualizeUntilWettest || equalizing is { IsOn: true } or { WettestComesFirst: true });
        var (kind, emc, at, from) = equalized
            ? (ChangeKind.Condition, finish!.ConditionEmc, finish.EqualizeUntilWettest, wettest)
            : (ChangeKind.Equalize, finish?.EqualizeEmc ?? target, finish?.EqualizeFromDriest ?? target, driest);
        var due = from <= at ? weighed : equalizing is null ? Due(Lower(mean, from, at)) : (equalized ? equalizing.WettestThere?.Half : equalizing.DriestThere) is { } hours ? weighed.AddHours(hours.Hours) : (DateTime?)null;
        var own = kind == ChangeKind.Equalize ? schedule.Equalize : schedule.Condition;
        var dryBulb = own?.DryBulb ?? set.DryBulb;

        // Hours that stand at the last step are the least it is held.
        var held = clock is { Left: { Hours: > 0.0 } stays } && kind == ChangeKind.Equalize ? clockNow.AddHours(stays.Hours) : (DateTime?)null;
        return new(kind, dryBulb, own?.Air.WetBulb ?? KilnFinish.WetBulbFor(dryBulb, emc) ?? set.WetBulb, at, emc, held > due ? held : due, held is null && from <= at)
        {
            After = held is not null && from <= at ? clock : null,
        };

        DateTime? Due(MoistureContent atMean) =>
            forecast is Outcome<KilnForecast>.Done(var known) && known.HoursTo(atMean) is { } hours ? weighed.AddHours(hours) : null;
    }

    /// <summary>True where the wettest half has passed into another step since the setting was made, and the air that is set is not that step's.</summary>
    internal static bool IsPassed(KilnSchedule schedule, MoistureContent controlling, MoistureContent? atSetting, Setting? set) => schedule.StepAt(controlling) is var now
        && set is not null && atSetting is { } before && schedule.StepAt(before) is var then && then != now && then.Above > now.Above && ChargeFigures.Bulbs(set.DryBulb, set.WetBulb) != ChargeFigures.Bulbs(now.DryBulb, now.AirFloored90.WetBulb!.Value);

    private static MoistureContent Lower(MoistureContent mean, MoistureContent from, MoistureContent to) =>
        MoistureContent.FromFraction(Math.Max(0.0, mean.Fraction - from.Fraction + to.Fraction));
}
