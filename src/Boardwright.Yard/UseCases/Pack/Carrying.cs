using Boardwright.Quantities;

namespace Boardwright.Yard.UseCases;

/// <summary>How many hands a piece takes.</summary>
/// <remarks>Slabs are carried in pairs: the next even number of mass over what one may carry. More than four is a job for the forks. Local rules on lifting decide.</remarks>
public static class Carrying
{
    /// <summary>Where hands end.</summary>
    public const int HandsMax = 4;

    /// <summary>Hands wanted; one person where the piece is light enough to lift alone.</summary>
    public static int People(Mass piece, Mass liftAlone, Mass carryEach) =>
        piece.Kilograms <= liftAlone.Kilograms ? 1 : 2 * (int)Math.Ceiling(piece.Kilograms / carryEach.Kilograms / 2.0);

    /// <summary>Trips that carry a load.</summary>
    public static int Trips(Mass load, Mass payload) => (int)Math.Ceiling(load.Kilograms / payload.Kilograms);

    /// <summary>In words.</summary>
    public static string Words(int people) => people > HandsMax ? "forks" : people == 1 ? "one person" : $"{people} people";
}
