using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>What the newest reading of a stack did to its forecast: the same forecast without that reading, beside it.</summary>
/// <param name="Reading">The reading.</param>
/// <param name="Without">This evening's moisture, likely, without it.</param>
/// <param name="With">The same with it.</param>
/// <param name="ReadyWithout">When it would be dry enough without it.</param>
/// <param name="ReadyWith">The same with it.</param>
/// <param name="Promises">Promises of its wood that the plan since has on another day.</param>
public sealed record LastReading(MoistureReading Reading, MoistureContent Without, MoistureContent With, string ReadyWithout, string ReadyWith, IReadOnlyList<PromiseMoved> Promises)
{
    private const int DaysTold = 2;
    private const double PointsSeen = 0.05;

    /// <summary>The effect; null for a reading of days ago, for one that has no figure the forecast takes, and for wood that does not dry outdoors.</summary>
    /// <param name="state">The yard.</param>
    /// <param name="drying">The stack's forecast with all readings.</param>
    /// <param name="season">The season's plan, for the promises that moved.</param>
    public static LastReading? Of(YardState state, StackForecast drying, SeasonNow season)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(drying);
        ArgumentNullException.ThrowIfNull(season);
        var stack = drying.Stack;
        if (stack.Readings.LastOrDefault() is not { } last || last.At.Day() < state.Today.AddDays(1 - DaysTold) || ReadingError.For(last) is null)
        {
            return null;
        }

        var before = state with { Stacks = state.Stacks.SetItem(stack.Tag, stack with { Readings = stack.Readings.RemoveAt(stack.Readings.Count - 1) }) };
        return StackForecast.Of(before, stack.Tag, drying.Target.Percent.ToString("R", CultureInfo.InvariantCulture) + "%") is Outcome<StackForecast>.Done(var without)
            ? new(last, without.Now.P50, drying.Now.P50, without.ReadyWords, drying.ReadyWords, [.. (season.Changes?.Promises ?? []).Where(promise => promise.WoodNow.Concat(promise.WoodWas).Contains(stack.Tag))])
            : null;
    }

    /// <summary>In a sentence or two.</summary>
    public string Words
    {
        get
        {
            var moisture = Math.Abs(With.Percent - Without.Percent) < PointsSeen
                ? Text($"{With.Percent:0.0} % is likely this evening, as without it")
                : Text($"{With.Percent:0.0} % is likely this evening, {Without.Percent:0.0} % without it");
            var ready = ReadyWith == ReadyWithout ? $"dry enough {ReadyWith} either way" : $"dry enough {ReadyWith}, {ReadyWithout} without it";
            return Text($"The reading of {Reading.At:d MMM HH:mm}, {Reading.Mean!.Value.Percent:0.0} %: {moisture}; {ready}.");
        }
    }

    private static string Text(FormattableString words) => FormattableString.Invariant(words);
}
