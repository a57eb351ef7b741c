using Boardwright.Quantities;
using Boardwright.Sawing;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>A pack from its tally, and where a second tally of it differs.</summary>
public static class PackTallyCommand
{
    private static readonly MoistureContent KilnDried = MoistureContent.FromPercent(8.0);

    public static Command Command { get; } = Command.Of("pack", "tally", "Footage, volume, averages and weight of a pack from its tally", Run) with
    {
        Argument = new("FILE", $"a table with the header {TallyFile.Header}, in the order tallied"),
        Options =
        [
            BoardMeasureCommand.RuleOption,
            Option.Optional("mc", "MC", "moisture content for the weight (default 8%); weight needs the column species"),
            Option.Optional("against", "FILE", "a second tally of the same pack: which boards differ or are missing"),
        ],
        Examples = ["pack tally demo/examples/pack-p118.csv", "pack tally demo/examples/pack-p118.csv --against demo/examples/pack-p118-second.csv"],
    };

    public sealed record OfLength(int LengthFt, int Pieces, double BoardFeet, double VolumeM3);

    public sealed record Difference(int? Board, int? BoardInSecond, string First, string Second);

    public sealed record Answer(
        int Pieces, double BoardFeet, double VolumeM3, double AverageWidthMm, double AverageLengthM, IReadOnlyList<OfLength> ByLength, double? WeightKg, double? WeightMcPct, string Rule,
        double ExactBoardFeet, double? SecondBoardFeet, IReadOnlyList<Difference>? Differences);

    public static Outcome<Answer> Run(Ask ask)
    {
        ArgumentNullException.ThrowIfNull(ask);
        var text = ask.ArgumentFile();
        var rule = BoardMeasureCommand.Rule(ask);
        var moisture = ask.Moisture("mc", KilnDried);
        var other = ask.Has("against") ? ask.File("against") : null;
        if (ask.Refuses)
            return ask.Refused<Answer>();

        return TallyFile.Read("FILE", text).Then(boards => other is null
            ? Show(boards, null, rule, moisture)
            : TallyFile.Read("--against", other).Then(second => Show(boards, second, rule, moisture)));
    }

    private static Outcome<Answer> Show(IReadOnlyList<TalliedBoard> boards, IReadOnlyList<TalliedBoard>? second, BoardRule rule, MoistureContent moisture)
    {
        var pack = PackTally.Of(boards, rule);
        var weight = pack.WeightAt(moisture);
        return new Answer(
            pack.Pieces, pack.BoardFeet.Count, pack.Volume.CubicMetres, pack.AverageWidth.Millimetres, pack.AverageLength.Metres,
            [.. pack.ByLength.Select(group => new OfLength(group.LengthFt, group.Pieces, group.BoardFeet.Count, group.Volume.CubicMetres))],
            weight?.Kilograms, weight is null ? null : moisture.Percent, BoardMeasureCommand.Name(rule), PackTally.Of(boards, BoardRule.Exact).BoardFeet.Count,
            second is null ? null : PackTally.Of(second, rule).BoardFeet.Count,
            second is null ? null : [.. TallyComparison.Of(boards, second).Select(one => new Difference(one.FirstNumber, one.SecondNumber, Words(one.First), Words(one.Second)))]);
    }

    private static string Words(TalliedBoard? board) => board is null
        ? "missing"
        : FormattableString.Invariant($"{board.Thickness} {board.Width.Inches:0.##} in x {board.Length.Feet:0.##} ft{(board.Species is { } species ? " " + species.CommonName : "")}{(board.Grade is { } grade ? " " + grade : "")}");
}
