using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Sawing;
using Boardwright.Wood;
using Boardwright.Yard.Book;

namespace Boardwright.Yard.UseCases;

/// <summary>What lifts a green log with its bark, and how many of it the trailer carries. Single logs differ by a tenth from the species' average: the heavy one decides.</summary>
/// <param name="Kg">With bark; where the species' bark is not known a fifth of the wood is taken for it.</param>
/// <param name="HeavyKg">A tenth more.</param>
/// <param name="Words">For a person.</param>
/// <method page="docs/methods/log-volume-and-weight.md"/>
public sealed record LogLift(double Kg, double HeavyKg, string Words)
{
    private const double LoaderKg = 2300.0;
    private const double Heavier = 1.1;
    private const double BarkUnknown = 0.2;

    /// <summary>Of a log.</summary>
    /// <param name="state">The yard: loader, trailer, bed.</param>
    /// <param name="species">Its wood.</param>
    /// <param name="wood">Green wood without bark.</param>
    /// <param name="volume">Its volume inside bark.</param>
    /// <param name="length">Whole length.</param>
    public static LogLift Of(YardState state, Species species, Mass wood, Volume volume, Length length)
    {
        ArgumentNullException.ThrowIfNull(state);
        var bark = LogWeight.OfBark(species, volume) is Outcome<Mass>.Done(var known) ? known.Kilograms : BarkUnknown * wood.Kilograms;
        var (kg, loader) = (wood.Kilograms + bark, state.Setting("log_loader_lift") ?? LoaderKg);
        var heavy = kg * Heavier;
        var lift = heavy <= loader ? "the loader lifts it" : kg <= loader ? Text($"close to the loader’s {loader:#,0} kg: lift one end first") : Text($"more than the loader’s {loader:#,0} kg");
        var trailer = state.Setting("trailer_payload") is not { } payload ? ""
            : state.Setting("trailer_bed") is { } bed && length.Feet > bed ? Text($"; {length.Feet:0.#} ft is longer than the trailer’s {bed:0.#} ft bed")
            : Math.Floor(payload / heavy) is >= 1.0 and var count ? Text($"; the trailer takes {count:0} such") : Text($"; more than the trailer’s {payload:#,0} kg");
        return new(kg, heavy, Text($"with bark about {kg:#,0}: {lift}{trailer}"));
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
