using Boardwright.Quantities;
using Boardwright.Sawing;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>How thick to saw so that the dressed board comes out.</summary>
public static class SawTarget
{
    private static readonly Length MillStep = Length.FromInches(1.0 / 16.0);

    public static Command Command { get; } = Command.Of("saw", "target", "How thick to saw green so that the dressed board comes out", Run) with
    {
        Options =
        [
            Option.Required("dressed", "L", "finished thickness, such as 13/16in"),
            Option.Required("planing", "L", "planed off both faces together, such as 1/8in"),
            Option.Required("species", "S", "common or scientific name"),
            Option.Required("final-mc", "MC", "moisture content when dressed, such as 7%"),
            Option.Required("within", "L", "standard deviation within boards, such as 0.014in (see saw variation)"),
            Option.Required("between", "L", "between-board variance component as a deviation, such as 0.017in"),
            Option.Optional("undersize", "P", "share of boards that may be too thin (default 5%)"),
            Option.Optional("setting", "L", "step of the setworks (default 1/16in)"),
            GrainOption.Option,
        ],
        Examples = ["saw target --dressed 13/16in --planing 1/8in --species \"northern red oak\" --final-mc 7% --within 0.0139in --between 0.0168in"],
    };

    public sealed record Answer(
        double TargetGreenMm, double ShrinkageMm, double PlaningMm, double VariationMm, double TotalSdMm, double Z, double TargetGreenIn, double SettingMm, double SettingIn);

    public static Outcome<Answer> Run(Ask ask)
    {
        ArgumentNullException.ThrowIfNull(ask);
        var dressed = ask.Length("dressed");
        var planing = ask.Length("planing");
        var species = ask.Species("species");
        var final = ask.Moisture("final-mc");
        var within = ask.Length("within");
        var between = ask.Length("between");
        var undersize = ask.Share("undersize", GreenTarget.UsualUndersize);
        var step = ask.Length("setting", MillStep);
        var rings = GrainOption.Of(ask);
        ask.RefuseWetterThanWood("final-mc", species, final);
        if (step.Metres <= 0.0)
            ask.Refuse("setting", ask.TextOrNull("setting") ?? "", "a step above zero");
        return ask.Refuses
            ? ask.Refused<Answer>()
            : ask.Named(GreenTarget.Of(dressed, planing, species!, final, within, between, undersize, rings)).Then<Answer>(target => Show(target, step));
    }

    private static Outcome<Answer> Show(GreenTarget target, Length step)
    {
        var setting = GreenTarget.Setting(target.Target, step);
        return new Answer(
            target.Target.Millimetres, target.Shrinkage.Millimetres, target.Planing.Millimetres, target.Variation.Millimetres, target.TotalDeviation.Millimetres, target.Z,
            target.Target.Inches, setting.Millimetres, setting.Inches);
    }
}
