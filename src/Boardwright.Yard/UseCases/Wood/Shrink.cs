using Boardwright.Quantities;
using Boardwright.Wood;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>Width of a board at another moisture content.</summary>
public static class WoodShrink
{
    public static Command Command { get; } = Command.Of("wood", "shrink", "Width of a board at another moisture content", Run) with
    {
        Options =
        [
            Option.Required("species", "S", "common or scientific name"),
            Option.Required("size", "L", "width of the face at the first moisture content, such as 10in or 254mm"),
            Option.Required("from", "MC", "moisture content when measured, such as 80%"),
            Option.Required("to", "MC", "moisture content asked for, such as 8%"),
            GrainOption.Option,
        ],
        Examples =
        [
            "wood shrink --species \"northern red oak\" --size 10in --from 80% --to 8%",
            "wood shrink --species \"white ash\" --size 610mm --from 7.6% --to 5.4% --grain quarter",
            "wood shrink --species \"sugar maple\" --size 8in --from 12% --to 7% --grain 45deg",
        ],
    };

    public sealed record Answer(double SizeInMm, double SizeOutMm, double ChangeMm, double ChangePct);

    public static Outcome<Answer> Run(Ask ask)
    {
        ArgumentNullException.ThrowIfNull(ask);
        var species = ask.Species("species");
        var size = ask.Length("size");
        var from = ask.Moisture("from");
        var to = ask.Moisture("to");
        var ringsToFace = GrainOption.Of(ask);
        return ask.Refuses
            ? ask.Refused<Answer>()
            : Shrinkage.TotalOfWidth(species!, ringsToFace).Then<Answer>(total =>
            {
                var change = Shrinkage.Ratio(total, species!.ShrinkageStart, from, to) - 1.0;
                return new Answer(size.Millimetres, Shrinkage.Size(size, total, species.ShrinkageStart, from, to).Millimetres, size.Millimetres * change, 100.0 * change);
            });
    }
}
