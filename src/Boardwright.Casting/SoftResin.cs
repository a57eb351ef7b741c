using Boardwright.Casting.Cure;

namespace Boardwright.Casting;

/// <summary>Ranked causes of a soft casting from its weighings, its cure forecast and where it is soft.</summary>
/// <remarks>A ratio off by more than 5 % decides alone: such resin never cures, and more hardener does not speed it up.</remarks>
/// <method page="docs/methods/resin-cure.md"/>
public static class SoftResin
{
    private const double WarmRoomCelsius = 28.0;

    /// <summary>Causes, the likeliest first; at least one.</summary>
    /// <param name="resin">As mixed.</param>
    /// <param name="mix">The weighings against the ratio; null when nothing was weighed.</param>
    /// <param name="place">Where it is soft.</param>
    /// <param name="forecast">The pour under the temperatures it really had; null when not known.</param>
    /// <param name="hour">Now, in hours after the pour.</param>
    public static IReadOnlyList<SoftCause> Causes(Resin resin, MixCheck? mix, SoftPlace place, PourForecast? forecast, double hour)
    {
        ArgumentNullException.ThrowIfNull(resin);
        if (mix is { Verdict: MixVerdict.Wrong })
        {
            return [WrongRatio(mix)];
        }

        var causes = new List<SoftCause>();
        if (forecast is not null && IsUncured(forecast, hour))
        {
            causes.Add(Cold(forecast, hour));
        }

        var badMixing = new SoftCause(
            "Not mixed through: sides and bottom of the bucket were not scraped", "Hard and sticky lie side by side; a second bucket of the same pour is hard",
            "Cut out the sticky parts and fill again; time and heat do not mend them", false);
        if (place == SoftPlace.Patches)
        {
            causes.Insert(0, badMixing);
        }
        else if (mix is null)
        {
            causes.Add(new("Ratio unknown", "Weigh what is left in both cans against what went in", "If it is off by more than 5 %, scrape out and pour again", false));
        }

        if (causes.Count == 0)
        {
            causes.Add(new("Old or wet part B, or wood wetter than 8 to 12 % against the resin", "A small cup of the same lot, weighed and kept at 23 C for three days", "If the cup stays soft, the lot is bad: scrape out and pour again", false));
        }

        return causes;
    }

    private static bool IsUncured(PourForecast forecast, double hour) =>
        (forecast.Edge ?? forecast.Centre).At(hour).LeastConversion < forecast.Section.Resin.DemouldConversion;

    private static SoftCause WrongRatio(MixCheck mix) => new(
        $"Ratio off: {mix.OffShare * 100.0:+0.0;-0.0} % part B", "The weighings themselves",
        "It will not cure. Scrape it out and pour again; heat and more hardener do not mend it", false);

    private static SoftCause Cold(PourForecast forecast, double hour)
    {
        var now = (forecast.Edge ?? forecast.Centre).At(hour);
        var warm = forecast.Section.Shop.Then(Quantities.Elapsed.FromHours(hour), Quantities.Temperature.FromCelsius(WarmRoomCelsius));
        var needed = forecast.EdgeUnder(warm).DemouldLastHour is { } hard ? $"about {Math.Max(0.0, hard - hour):0} h" : "more than 30 days";
        return new(
            $"Cold and thin: conversion {now.LeastConversion:0.00} where it is slowest, {forecast.Section.Resin.DemouldConversion:0.00} is hard",
            "Warm one corner to 28 C for some hours: it hardens", $"A day at {WarmRoomCelsius:0} C ({needed}), then test again; do not scrape", true);
    }
}
