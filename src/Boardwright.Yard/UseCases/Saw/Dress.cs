using Boardwright.Quantities;
using Boardwright.Quantities.Reading;
using Boardwright.Sawing;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>How thick dry lumber can be dressed, and what a wrong size costs.</summary>
public static class SawDress
{
    private static readonly string[] UsualFinished = ["15/16in", "23mm", "7/8in", "27/32in", "13/16in", "3/4in"];
    private static readonly Length UsualCut = Length.FromInches(1.0 / 32.0);

    public static Command Command { get; } = Command.Of("saw", "dress", "How thick dry lumber can be dressed: share that planes clean, shavings, and the money a wrong size loses", Run) with
    {
        Options =
        [
            Option.Required("green", "L", "mean green thickness as sawn, such as 1-1/8in"),
            Option.Required("species", "S", "common or scientific name"),
            Option.Required("final-mc", "MC", "moisture content when dressed, such as 7%"),
            Option.Required("within", "L", "standard deviation within boards (see saw variation)"),
            Option.Required("between", "L", "between-board variance component as a deviation"),
            Option.Many("finished", "L", $"finished thickness (default {string.Join(", ", UsualFinished)})"),
            Option.Optional("least-cut", "L", "least taken off both faces together for a clean board (default 1/32in)"),
            Option.Optional("places", "N", $"places along a board that scatter apart (default {Dressing.UsualPlaces})"),
            Option.Optional("target", "L", "green target (see saw target); left out: no loss by thick sawing is reckoned"),
            Option.Optional("footage", "N", "board feet of a year (default 1000)"),
            Option.Optional("price", "MONEY", "money per board foot (default 0: no money)"),
            Option.Optional("lesser-price", "MONEY", "money per board foot of what skips (default half the price)"),
            GrainOption.Option,
        ],
        Examples = ["saw dress --green 1-1/8in --species \"northern red oak\" --final-mc 7% --within 0.0139in --between 0.0168in --target 1.003in --footage 60000 --price 3.20 --lesser-price 2.40"],
    };

    public sealed record Size(double FinishedMm, double FinishedIn, double CleanUpPct, double ShavingsPct, double ShavingsM3PerMbf, double SkippedBf, double SkippedMoney);

    public sealed record Answer(double DryMm, double DryIn, IReadOnlyList<Size> Sizes, double ThickestCleanMm, double? OverTargetMm, double? TooThickLowMoney, double? TooThickHighMoney, string Note);

    public static Outcome<Answer> Run(Ask ask)
    {
        ArgumentNullException.ThrowIfNull(ask);
        var (green, species, final) = (ask.Length("green"), ask.Species("species"), ask.Moisture("final-mc"));
        var (within, between, cut) = (ask.Length("within"), ask.Length("between"), ask.Length("least-cut", UsualCut));
        var target = ask.LengthOrNull("target");
        var places = (int)Number(ask, "places", Dressing.UsualPlaces, 1.0, 100.0);
        var footage = Number(ask, "footage", 1000.0, 0.0, 1e9);
        var price = Number(ask, "price", 0.0, 0.0, 1e6);
        var lesser = Number(ask, "lesser-price", price / 2.0, 0.0, 1e6);
        var finished = (ask.Has("finished") ? ask.Texts("finished") : UsualFinished).Select(text => ask.Take("--finished", Read.Length("--finished", text))).ToList();
        var rings = GrainOption.Of(ask);
        ask.RefuseWetterThanWood("final-mc", species, final);
        if (green.Metres <= 0.0 && !ask.Refuses)
            ask.Refuse("green", ask.Text("green"), "a thickness above zero");
        if (ask.Refuses)
            return ask.Refused<Answer>();

        return ask.Named(Dressing.Of(green, within, between, species!, final, rings)).Then<Answer>(lumber =>
        {
            var over = target is { } wanted ? Length.FromMetres(Math.Max(0.0, green.Metres - wanted.Metres)) : (Length?)null;
            ThicknessLoss Loss(DressedSize size) => ThicknessLoss.Of(over ?? default, size.CleanUp, BoardFeet.From(footage), price, lesser);
            var sizes = finished.Select(size => lumber.To(size, cut, places)).ToList();
            var thick = sizes.Select(Loss).FirstOrDefault();
            return new Answer(
                lumber.Dry.Millimetres, lumber.Dry.Inches, [.. sizes.Select(size => Show(size, lumber, Loss(size)))], lumber.ThickestFor(Share.FromPercent(95.0), cut, places).Millimetres,
                over?.Millimetres, over is null ? null : thick?.TooThickLow, over is null ? null : thick?.TooThickHigh,
                "thickest_clean is where 95 of 100 boards plane clean. Cup, bow and twist ask for more than the scatter of the saw. too_thick is 2 to 3 % of the yield for each 1/32 in over the target. shavings_m3 is solid wood a thousand board feet of rough 4/4; loose it fills several times as much.");
        });
    }

    // A thousand board feet of one nominal inch stand for 92.903 m² of face.
    private static Size Show(DressedSize size, Dressing lumber, ThicknessLoss loss) => new(
        size.Finished.Millimetres, size.Finished.Inches, size.CleanUp.Percent, size.Shavings.Percent, Math.Max(0.0, lumber.Dry.Metres - size.Finished.Metres) * 1000.0 * 0.3048 * 0.3048, loss.SkippedFeet.Count, loss.Skipped);

    private static double Number(Ask ask, string option, double orElse, double least, double most)
    {
        if (ask.TextOrNull(option) is not { } text)
            return orElse;
        if (Read.Number("--" + option, text) is Outcome<double>.Done(var value) && value >= least && value <= most)
            return value;
        ask.Refuse(option, text, string.Create(System.Globalization.CultureInfo.InvariantCulture, $"a number from {least} to {most}"));
        return orElse;
    }
}
