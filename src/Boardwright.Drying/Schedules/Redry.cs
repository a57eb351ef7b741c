using System.Globalization;
using Boardwright.Quantities;

namespace Boardwright.Drying.Schedules;

/// <summary>One step of drying again.</summary>
/// <param name="DryBulb">Dry bulb taken, within the printed range and the kiln's limit.</param>
/// <param name="WetBulb">Wet bulb that holds the equilibrium at it.</param>
/// <param name="Emc">Equilibrium held.</param>
public sealed record RedryStep(Temperature DryBulb, Temperature WetBulb, MoistureContent Emc);

/// <summary>How dry stock that regained moisture in store is dried again: in two steps.</summary>
/// <remarks>
/// <para>First 18 to 24 h at 125 to 140 °F with the equilibrium halfway between the moisture it has and the one wanted; then 150 to 160 °F with the equilibrium 2 % below the one wanted, until the wood is there.
/// No spray while it warms up. Oak that checks easily is opened by it: only with care.</para>
/// <para>Validity: wood that was dry once, now 1 point or more over the target and at most 20 %; targets 5 to 12 %. Wetter wood is dried as air-dried stock, by its schedule.</para>
/// </remarks>
/// <source id="wengert-fdmc-redry" locator="redrying after a storm"/>
/// <method page="docs/methods/redry.md"/>
public sealed record Redry
{
    private const double FirstFahrenheit = 130.0;
    private const double SecondFahrenheit = 155.0;
    private const double SecondBelowTargetPercent = 2.0;
    private const double WettestPercent = 20.0;
    private const double NotWorthPercent = 1.0;
    private const double EmcReachPercent = 0.5;

    /// <summary>First step at least: 18 h.</summary>
    public static Elapsed FirstLeast { get; } = Elapsed.FromHours(18.0);

    /// <summary>First step at most: 24 h.</summary>
    public static Elapsed FirstMost { get; } = Elapsed.FromHours(24.0);

    /// <summary>Halfway to the target, for 18 to 24 h.</summary>
    public required RedryStep First { get; init; }

    /// <summary>Under the target, until the wood is there.</summary>
    public required RedryStep Second { get; init; }

    /// <summary>Moisture content the likely charge has at the end of the first step.</summary>
    public required MoistureContent AfterFirst { get; init; }

    /// <summary>The second step: early, likely and late.</summary>
    public required KilnForecast SecondForecast { get; init; }

    /// <summary>Both steps, likely.</summary>
    public Elapsed Likely => FirstMost + Elapsed.FromHours(SecondForecast.HoursP50);

    /// <summary>Both steps, nine times in ten enough.</summary>
    public Elapsed Late => FirstMost + Elapsed.FromHours(SecondForecast.HoursP90);

    /// <summary>Both steps, one time in ten enough.</summary>
    public Elapsed Early => FirstLeast + Elapsed.FromHours(SecondForecast.HoursP10);

    /// <summary>True for wood that checks easily, oak above all: the source warns.</summary>
    public required bool ChecksEasily { get; init; }

    /// <summary>The two steps as a schedule, the first ending at the moisture reached in it.</summary>
    public KilnSchedule AsSchedule(KilnSchedule listed)
    {
        ArgumentNullException.ThrowIfNull(listed);
        return listed with
        {
            Name = "Redry, two steps",
            Steps = [Step(First, AfterFirst), Step(Second, MoistureContent.OvenDry)],
            Source = "wengert-fdmc-redry",
            Mark = "P",
            Note = "18 to 24 h in the first step; no spray while it warms up",
        };
    }

    /// <summary>The two steps for a lot that regained.</summary>
    /// <returns>The steps; a refusal of now or target; no answer within a point of the target, or where the kiln cannot get there.</returns>
    public static Outcome<Redry> For(KilnDryingInput lot)
    {
        ArgumentNullException.ThrowIfNull(lot);
        var (now, target) = (lot.From.Percent, lot.To.Percent);
        if (now > WettestPercent)
            return new Refusal("now", Text(now), $"up to {WettestPercent:0}%: wetter wood is dried by its schedule as air-dried stock");
        if (target is < 5.0 - 1e-9 or > 12.0 + 1e-9)
            return new Refusal("target", Text(target), "5% to 12%");
        if (now < target + NotWorthPercent)
            return new Outcome<Redry>.NoAnswer($"{Text(now)} is within {NotWorthPercent:0} point of {Text(target)}: leave it, wrapped or in a heated store.");

        return Stepped(lot, FirstFahrenheit, (now + target) / 2.0).Then(first => Stepped(lot, SecondFahrenheit, target - SecondBelowTargetPercent).Then(second =>
            After(lot, first).Then(after => KilnDrying.Forecast(lot with { From = after, Schedule = One(lot, second) }).Then<Redry>(forecast => new Redry
            {
                First = first,
                Second = second,
                AfterFirst = after,
                SecondForecast = forecast,
                ChecksEasily = StopRisk.ChecksEasily(lot.Species),
            }))));
    }

    private static Outcome<RedryStep> Stepped(KilnDryingInput lot, double fahrenheit, double emcPercent)
    {
        var (dryBulb, emc) = (Temperature.FromFahrenheit(Math.Min(fahrenheit, lot.Kiln.DryBulbMax.Fahrenheit)), MoistureContent.FromPercent(emcPercent));
        return KilnFinish.WetBulbFor(dryBulb, emc) is { } wetBulb ? new RedryStep(dryBulb, wetBulb, emc)
            : new Outcome<RedryStep>.NoAnswer($"No air at {dryBulb.Fahrenheit:0} °F holds wood at {Text(emcPercent)}.");
    }

    // Where the likely charge is after a day in the first air; it does not pass the equilibrium of it.
    private static Outcome<MoistureContent> After(KilnDryingInput lot, RedryStep first)
    {
        var end = MoistureContent.FromPercent(first.Emc.Percent + EmcReachPercent);
        return end >= lot.From ? lot.From
            : KilnDrying.Forecast(lot with { To = end, Schedule = One(lot, first) }).Then<MoistureContent>(forecast => forecast.MoistureAt(FirstMost.Hours));
    }

    private static KilnSchedule One(KilnDryingInput lot, RedryStep step) => KilnSchedule.Assemble(new KilnCode(1, 'A', 1)) with { Steps = [Step(step, MoistureContent.OvenDry)], Name = $"redry of {lot.Species.CommonName}" };

    private static KilnStep Step(RedryStep step, MoistureContent above) => new() { Above = above, DryBulbFahrenheit = step.DryBulb.Fahrenheit, DepressionFahrenheit = (step.DryBulb - step.WetBulb).FahrenheitDegrees };

    private static string Text(double percent) => percent.ToString("0.#", CultureInfo.InvariantCulture) + "%";
}
