using Boardwright.Quantities;
using Boardwright.Sawing;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>Whether a saw holds its setting, board by board.</summary>
public static class SawChartCommand
{
    public static Command Command { get; } = Command.Of("saw", "chart", "Whether a saw holds its setting: a control chart of thickness, board by board", Run) with
    {
        Argument = new("FILE", $"a table with the header {ThicknessFile.Header}, boards in the order of sawing"),
        Examples = ["saw chart demo/examples/thickness-readings.csv"],
    };

    public sealed record Point(string Board, double MeanMm, double SpreadMm, IReadOnlyList<string> Signals);

    public sealed record Answer(double CentreMm, double LowerLimitMm, double UpperLimitMm, double SigmaMm, double SpreadCentreMm, double SpreadLowerMm, double SpreadUpperMm, int SignalCount, IReadOnlyList<Point> Boards, string Note);

    /// <summary>A signal in words.</summary>
    public static string Words(ChartSignal signal) => signal switch
    {
        ChartSignal.BeyondThree => "beyond three deviations",
        ChartSignal.TwoOfThreeBeyondTwo => "two of three beyond two deviations",
        ChartSignal.FourOfFiveBeyondOne => "four of five beyond one deviation",
        ChartSignal.EightOnOneSide => "eight in a row on one side",
        _ => "scatter within the board out of limits",
    };

    public static Outcome<Answer> Run(Ask ask)
    {
        ArgumentNullException.ThrowIfNull(ask);
        var text = ask.ArgumentFile();
        return ask.Refuses ? ask.Refused<Answer>() : ThicknessFile.Read(ask, text).Then(ThicknessChart.Of).Then<Answer>(Show);
    }

    private static Outcome<Answer> Show(ThicknessChart chart) => new Answer(
        chart.Centre.Millimetres, chart.Limits.Low.Millimetres, chart.Limits.High.Millimetres, chart.Sigma.Millimetres, chart.SpreadCentre.Millimetres, chart.SpreadLow.Millimetres, chart.SpreadHigh.Millimetres,
        chart.Points.Count(point => point.Signals.Count > 0), [.. chart.Points.Select(point => new Point(point.Board, point.Mean.Millimetres, point.Spread.Millimetres, [.. point.Signals.Select(Words)]))],
        "A signal says look at the setworks (means) or at blade, guides and feed (scatter); fewer than 20 boards give rough limits.");
}
