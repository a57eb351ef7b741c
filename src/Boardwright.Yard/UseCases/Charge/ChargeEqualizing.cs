using Boardwright.Drying;
using Boardwright.Drying.Schedules;
using Boardwright.Quantities;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>How the samples of a charge in the last step of its schedule come to its target: read by the change that is next, the verdict and the end of the charge.</summary>
/// <remarks>Equalizing begins when the driest sample stands the offset of the rule under the target, and holds air of just that equilibrium (ah-188, ch. 7). Wood nears the equilibrium
/// of its air and does not reach it in finite time: air that holds this already takes no sample down to it, nor under it, so that equalizing has begun in effect and ends by the wettest.</remarks>
/// <param name="Finish">The rule.</param>
/// <param name="IsOn">True while the air that is set is that of equalizing.</param>
/// <param name="DriestThere">Hours until the driest sample is where equalizing begins; null where it is there, and where the air that is set does not bring it there.</param>
/// <param name="WettestThere">Hours until the wettest is at the target: in the air that is set, then in that of equalizing. Null where it is there and where no air brings it there.</param>
public sealed record ChargeEqualizing(KilnFinish Finish, bool IsOn, Elapsed? DriestThere, TimeBand? WettestThere)
{
    /// <summary>True where the wettest is at the target before the driest is where equalizing would begin: nothing is left to equalize.</summary>
    public bool WettestComesFirst => DriestThere is { } driest && WettestThere is { } wettest && wettest.Half <= driest;

    private const double AirWithinPercent = 0.3; // as near as a forecast lets wood come to its air

    /// <summary>Of a charge in its last step.</summary>
    /// <param name="finish">The rule.</param>
    /// <param name="asked">Its forecast's question: wood, schedule with the air that is set, rate.</param>
    /// <param name="set">The air that is set.</param>
    /// <param name="driest">Its driest sample.</param>
    /// <param name="wettest">Its wettest.</param>
    internal static ChargeEqualizing Of(KilnFinish finish, KilnDryingInput asked, Setting set, MoistureContent driest, MoistureContent wettest)
    {
        var equalizing = Held(asked, set.DryBulb, KilnFinish.WetBulbFor(set.DryBulb, finish.EqualizeEmc));
        if (ChargeRun.EmcOf(set.DryBulb, set.WetBulb) is { } air && Math.Abs(air.Percent - finish.EqualizeEmc.Percent) <= AirWithinPercent)
            return new(finish, true, null, Band(Dried(equalizing, wettest, finish.EqualizeUntilWettest)));
        if (driest <= finish.EqualizeFromDriest)
            return new(finish, false, null, Band(Dried(equalizing, wettest, finish.EqualizeUntilWettest)));

        var there = Dried(asked, driest, finish.EqualizeFromDriest);
        var inThisAir = Dried(asked, wettest, finish.EqualizeUntilWettest);
        if (there is null || inThisAir is null || inThisAir.HoursP50 <= there.HoursP50)
            return new(finish, false, there is null ? null : Elapsed.FromHours(there.HoursP50), Band(inThisAir));

        var then = inThisAir.MoistureAt(there.HoursP50);
        return new(finish, false, Elapsed.FromHours(there.HoursP50), Band(Dried(equalizing, then, finish.EqualizeUntilWettest))?.Plus(Elapsed.FromHours(there.HoursP50)));
    }

    private static KilnDryingInput? Held(KilnDryingInput asked, Temperature dryBulb, Temperature? wetBulb) => wetBulb is not { } wet || asked.Schedule is not { } schedule ? null
        : asked with { Schedule = schedule with { Steps = [new() { Above = MoistureContent.OvenDry, DryBulbFahrenheit = dryBulb.Fahrenheit, DepressionFahrenheit = (dryBulb - wet).FahrenheitDegrees }] } };

    private static KilnForecast? Dried(KilnDryingInput? air, MoistureContent from, MoistureContent to) =>
        air is not null && from > to && KilnDrying.Forecast(air with { From = from, To = to }) is Outcome<KilnForecast>.Done(var forecast) ? forecast : null;

    private static TimeBand? Band(KilnForecast? forecast) => forecast is null ? null : new(Elapsed.FromHours(forecast.HoursP50), Elapsed.FromHours(forecast.HoursP90));
}
