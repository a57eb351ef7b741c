using Boardwright.Casting;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>A table that left its mould soft: the weighings, the likeliest cause, and what to do.</summary>
/// <param name="Check">The weighings against the label; null when nothing was weighed.</param>
/// <param name="Causes">The likeliest first.</param>
/// <param name="Hour">Hours from the pour to when it was seen.</param>
public sealed record PourSoft(MixCheck? Check, IReadOnlyList<SoftCause> Causes, double Hour)
{
    private static readonly string[] Everywhere = ["all over", "everywhere", "whole"];
    private static readonly string[] Patches = ["patch", "streak", "spot"];

    /// <summary>Null when it was not seen soft.</summary>
    public static PourSoft? Of(YardState state, Pour pour, PourCure cure)
    {
        ArgumentNullException.ThrowIfNull(pour);
        ArgumentNullException.ThrowIfNull(cure);
        if (!SoftCastings.IsSoft(pour.Seen) || pour is not { PouredAt: { } poured, DemouldedAt: { } seen })
            return null;
        var check = CheckOf(cure.Resin, pour);
        var hour = (seen - poured).TotalHours;
        var place = Holds(pour.Seen!, Everywhere) ? SoftPlace.Everywhere : Holds(pour.Seen!, Patches) ? SoftPlace.Patches : SoftPlace.ThinEdge;
        return new(check, SoftResin.Causes(cure.Resin, check, place, cure.Model, hour), hour);
    }

    /// <summary>All weighings of a pour against the label's ratio; null when nothing was weighed.</summary>
    public static MixCheck? CheckOf(Casting.Resin resin, Pour pour)
    {
        ArgumentNullException.ThrowIfNull(pour);
        return pour.Mixes.Count > 0 && MixCheck.Of(resin, Mass.FromKilograms(pour.Mixes.Sum(mix => mix.PartA.Kilograms)), Mass.FromKilograms(pour.Mixes.Sum(mix => mix.PartB.Kilograms))) is Outcome<MixCheck>.Done(var check) ? check : null;
    }

    /// <summary>Whether the ratio as weighed says that it never gets hard: no hours are forecast for it then.</summary>
    public static bool WillNotCure(Casting.Resin resin, Pour pour) => CheckOf(resin, pour) is { Verdict: MixVerdict.Wrong };

    private static bool Holds(string text, string[] words) => words.Any(word => text.Contains(word, StringComparison.OrdinalIgnoreCase));
}
