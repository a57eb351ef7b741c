using Boardwright.Quantities;
using Boardwright.Wood;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>Moisture of a sample board by its weight today; also after a piece of it was lost.</summary>
public static class MoistureSample
{
    public static Command Command { get; } = Command.Of("moisture", "sample", "Moisture of a sample board by its weight today", Run) with
    {
        Options =
        [
            Option.Required("calculated-dry", "W", "calculated dry weight of the sample, such as 2844.8g"),
            Option.Required("current", "W", "weight today, such as 3158g"),
            Option.Optional("before-loss", "W", "where wood was lost: weight just before; needs --after-loss"),
            Option.Optional("after-loss", "W", "where wood was lost: weight just after; needs --before-loss"),
        ],
        Examples =
        [
            "moisture sample --calculated-dry 2844.8g --current 3263g",
            "moisture sample --calculated-dry 2844.8g --current 3158g --before-loss 3263g --after-loss 3221g",
        ],
    };

    public sealed record Answer(double CurrentMcPct, double CalculatedDryWeightG);

    public static Outcome<Answer> Run(Ask ask)
    {
        ArgumentNullException.ThrowIfNull(ask);
        var calculated = ask.Mass("calculated-dry");
        var current = ask.Mass("current");
        if (ask.Has("before-loss") != ask.Has("after-loss"))
        {
            ask.Refuse(ask.Has("before-loss") ? "after-loss" : "before-loss", "nothing", "the weights just before and just after the loss, both or neither");
            return ask.Refused<Answer>();
        }

        var (before, after) = ask.Has("before-loss") ? (ask.Mass("before-loss"), ask.Mass("after-loss")) : (current, current);
        return ask.Refuses
            ? ask.Refused<Answer>()
            : ask.Named(Dry(ask, calculated, before, after).Then(dry => SampleBoard.Current(dry, current).Then<Answer>(moisture => new Answer(moisture.Percent, dry.Grams))));
    }

    private static Outcome<Mass> Dry(Ask ask, Mass calculated, Mass before, Mass after) =>
        ask.Has("before-loss") ? SampleBoard.AfterLoss(calculated, before, after) : calculated;
}
