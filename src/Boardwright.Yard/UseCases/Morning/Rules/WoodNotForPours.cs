using Boardwright.Casting;
using Boardwright.Quantities;
using Boardwright.Yard.Book;

namespace Boardwright.Yard.UseCases;

/// <summary>Planned tables whose wood is too wet and was not signed for, or whose pour is deeper than the label allows.</summary>
internal static class WoodNotForPours
{
    public static IEnumerable<DayTask> Of(YardState state)
    {
        foreach (var pour in state.Pours.Values.Where(pour => pour.PouredAt is null))
        {
            var wettest = pour.Plan.Pieces.MaxBy(piece => piece.McPct);
            var wet = wettest is not null && !PourSign.MayGoOn(pour) && WoodForPour.Of(MoistureContent.FromPercent(wettest.McPct)) is { IsTooWet: true };
            var deep = state.Resins.TryGetValue(pour.Plan.Resin, out var resin) && pour.Plan.DepthMm > resin.Label.DepthMaxMm;
            if (!wet && !deep)
                continue;
            var left = Math.Max(1, pour.PourOn.DayNumber - state.Today.DayNumber);
            yield return new(pour.Tag, $"Tell {pour.Plan.Owner ?? "the student"} that {pour.Tag} cannot be poured like this.",
                $"{(wet ? $"{wettest!.Species} at {wettest.McPct:0.0} % shrinks away from resin indoors; 6 to 8 % is wanted. " : "")}{(deep ? $"{pour.Plan.DepthMm:0} mm in one pour; the label allows {resin!.Label.DepthMaxMm:0}." : "")}",
                wet ? new("Moisture", $"{wettest!.McPct:0.0}", "%", "12 % at most in any guide") { Method = "resin-volume", Source = "casting guides differ: 6 to 8 % and 8 to 12 %", Inputs = [("wood", wettest.Species), ("depth", $"{pour.Plan.DepthMm:0} mm")] }
                    : new("Depth", $"{pour.Plan.DepthMm:0}", "mm", $"{resin!.Label.DepthMaxMm:0} mm in one pour") { Method = "resin-cure", Source = "the resin’s label" },
                new(PoursToMind.Seat(state, pour), left, "the seat"), Duties.Casting, $"/pours/{pour.Tag}", $"Open {pour.Tag}");
        }
    }
}
