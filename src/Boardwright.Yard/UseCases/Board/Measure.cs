using Boardwright.Quantities;
using Boardwright.Sawing;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>Footage of one board.</summary>
public static class BoardMeasureCommand
{
    /// <summary>How footage is counted, for every command that counts it.</summary>
    internal static Option RuleOption { get; } = Option.Optional("rule", "RULE", "nhla (default: whole feet of length, whole surface measure, under 1 in as 1 in) or exact");

    public static Command Command { get; } = Command.Of("board", "measure", "Surface measure and board feet of one board", Run) with
    {
        Options =
        [
            Option.Required("thickness", "L", "nominal thickness, such as 4/4 or 8/4"),
            Option.Required("width", "L", "width, fractions kept, such as 6-1/4in"),
            Option.Required("length", "L", "length, such as 8ft6in"),
            RuleOption,
        ],
        Examples = ["board measure --thickness 8/4 --width 6-1/4in --length 8ft", "board measure --thickness 5/4 --width 180mm --length 2.5m --rule exact"],
    };

    public sealed record Answer(double SurfaceMeasure, double BoardFeet, double VolumeM3, string Rule);

    public static Outcome<Answer> Run(Ask ask)
    {
        ArgumentNullException.ThrowIfNull(ask);
        var thickness = Above(ask, "thickness");
        var width = Above(ask, "width");
        var length = Above(ask, "length");
        var rule = Rule(ask);
        if (ask.Refuses)
            return ask.Refused<Answer>();

        var board = BoardMeasure.Of(thickness, width, length, rule);
        return new Answer(board.SurfaceMeasure, board.BoardFeet.Count, board.Volume.CubicMetres, Name(rule));
    }

    internal static BoardRule Rule(Ask ask) => ask.Choice("rule", "nhla", "nhla", "exact") == "exact" ? BoardRule.Exact : BoardRule.Nhla;

    internal static string Name(BoardRule rule) => rule == BoardRule.Exact ? "exact" : "nhla";

    private static Length Above(Ask ask, string option)
    {
        var size = ask.Length(option);
        if (!ask.Refuses && size.Metres <= 0.0)
            ask.Refuse(option, ask.Text(option), "a size above zero");
        return size;
    }
}
