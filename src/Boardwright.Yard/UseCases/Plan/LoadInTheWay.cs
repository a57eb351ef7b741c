using Boardwright.Drying.Vacuum;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>What stands in the way of a load the owner planned by hand, as far as the book knows it without a worked plan.</summary>
/// <method page="docs/methods/kiln-plan.md"/>
public static class LoadInTheWay
{
    /// <summary>The first thing that stands in its way, without a full stop; null where nothing does.</summary>
    public static string? Of(YardState state, PlannedCharge own)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(own);
        if (OwnLoad.Waiting(state, own) is not { Count: > 0 } waiting || !state.Kilns.TryGetValue(own.Kiln, out var kiln))
            return null;
        return waiting.Select(tag => Closed(state, kiln, state.Stacks[tag])).FirstOrDefault(words => words is not null)
            ?? (kiln.Charge is { } inside && ChargeEnd.OutDay(state, state.Charges[inside]) is { } outOn && outOn > own.InOn ? $"{inside} is in {kiln.Name} until about {DayWords.Of(outOn, state.Today)}" : null)
            ?? (kiln.Down is { } down && (down.BackExpectedOn is not { } back || back > own.InOn) ? $"{kiln.Name} is down ({down.Why}){(down.BackExpectedOn is { } day ? $", expected back {DayWords.Of(day, state.Today)}" : "")}" : null)
            ?? (own.InOn < state.Today ? "its day has gone by" : null);
    }

    /// <summary>Why a kiln is closed to a stack, whatever the day; null where it is not.</summary>
    internal static string? Closed(YardState state, Kiln kiln, Stack stack) =>
        stack.NeverKiln ? $"{stack.Tag} must stay out of every kiln"
        : PlanTimes.IsVacuum(kiln) && stack.Moisture?.Mean is { } now && NoVapour(state, kiln, stack, now) ? $"{stack.Tag} is {stack.Species.CommonName} in long boards, which let no vapour through: the vacuum kiln {kiln.Name} is closed to it"
        : null;

    private static bool NoVapour(YardState state, Kiln kiln, Stack stack, MoistureContent now)
    {
        var figures = PlanFigures.Of(state);
        var to = new PlanTargets(state, figures.HouseTarget).Of(stack);
        return PlanTimes.InVacuum(kiln, stack, PlanTimes.AtLeastHalfAPoint(now, to), to, figures) is Outcome<VacuumForecast>.Done(var forecast) && PlanTimes.ClosedToVacuum(stack, forecast);
    }
}
