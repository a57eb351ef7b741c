using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>How long a charge heated by water stands because every boiler is down: wood does not dry on in a kiln that cools.</summary>
internal static class NoHeat
{
    /// <summary>From today until the first boiler is expected back, and until it is back at the latest; none while one runs, for a kiln of its own heat, and where no day is named.</summary>
    public static (Elapsed Likely, Elapsed Late) Stands(YardState state, Kiln kiln)
    {
        var down = state.Boilers.Values.Select(boiler => boiler.Down).ToList();
        if (kiln.Installed.HeatAtWaterC is null || down.Count == 0 || down.Contains(null))
            return (default, default);
        var likely = Days(state, down.Select(outage => outage!.BackExpectedOn));
        var late = Days(state, down.Select(outage => outage!.BackLateOn ?? outage.BackExpectedOn));
        return (likely, late < likely ? likely : late);
    }

    private static Elapsed Days(YardState state, IEnumerable<DateOnly?> back) =>
        back.OfType<DateOnly>().DefaultIfEmpty(state.Today).Min() is var first && first > state.Today ? Elapsed.FromDays(first.DayNumber - state.Today.DayNumber) : default;
}
