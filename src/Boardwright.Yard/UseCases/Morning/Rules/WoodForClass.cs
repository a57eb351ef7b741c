using Boardwright.Casting;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>Tables planned of wood that no kiln has dry by their day: by the worked plan, else by the owner's own loads.</summary>
internal static class WoodForClass
{
    private const int DaysBefore = 1; // faces are sealed the day before

    public static IEnumerable<DayTask> Of(YardState state, SeasonNow season)
    {
        if (season.Sheet is null && season.Why is not null)
            yield break; // told once the plan is there
        foreach (var day in state.Pours.Values.Where(pour => pour.PouredAt is null && pour.PourOn >= state.Today).GroupBy(pour => pour.PourOn).OrderBy(day => day.Key))
        {
            var late = day.SelectMany(pour => pour.Plan.Pieces.Select(piece => piece.Stack).OfType<string>().Distinct().Select(tag => (Pour: pour, Tag: tag))).GroupBy(one => one.Tag)
                .Where(wood => state.Stacks.GetValueOrDefault(wood.Key) is { } stack && IsLate(state, season, stack, day.Key)).ToList();
            if (late.Count == 0)
                continue;
            var tables = late.SelectMany(wood => wood.Select(one => one.Pour)).Distinct().ToList();
            yield return new(DayWords.Of(day.Key, state.Today), $"Find dry wood for the pour of {DayWords.Weekday(day.Key, state.Today)}: {string.Join(", ", late.Select(wood => wood.Key))} {(late.Count == 1 ? "is" : "are")} not dry by then.",
                $"{string.Join(" ", late.Select(wood => $"{wood.Key} for {string.Join(", ", wood.Select(one => one.Pour.Tag))}: {When(state, season, wood.Key)}."))} Load it sooner, take other wood, or move the day.",
                new("Tables without dry wood", $"{tables.Count}", $"of {day.Count()}", $"poured {DayWords.Of(day.Key, state.Today)}") { Method = "resin-volume", Source = "the pieces of each table and where their stacks go", Inputs = [.. late.Select(wood => (wood.Key, When(state, season, wood.Key)))] },
                new(tables.Sum(pour => PoursToMind.Seat(state, pour)), Math.Max(1, day.Key.DayNumber - state.Today.DayNumber), "the seats of those tables"), Duties.Casting | Duties.Kilns, "/pours", "See the pours");
        }
    }

    // Wood that is to be dried yet and is out of its kiln too late, or goes into none.
    private static bool IsLate(YardState state, SeasonNow season, Stack stack, DateOnly day) =>
        stack.Stage is StackStage.AirDrying or StackStage.InKiln
        && (stack.Moisture?.Mean is not { } mean || WoodForPour.Of(MoistureContent.FromPercent(mean.Percent)) is { IsTooWet: true })
        && !(OutOn(state, season, stack.Tag) is { } on && on.AddDays(DaysBefore) <= day);

    private static DateOnly? OutOn(YardState state, SeasonNow season, string tag) => season.Sheet is not null ? season.ChargeOf(tag)?.Out.Day()
        : state.Charges.Values.LastOrDefault(charge => charge.IsRunning && charge.Stacks.Contains(tag)) is { } running ? ChargeEnd.OutDay(state, running) : Own(state, tag)?.OutOn;

    private static string When(YardState state, SeasonNow season, string tag)
    {
        var own = Own(state, tag) is { } load && LoadInTheWay.Of(state, load) is null ? $"; by your load {load.Tag} on {DayWords.Of(load.OutOn, state.Today)}" : "";
        return OutOn(state, season, tag) is { } on ? $"out on {DayWords.Of(on, state.Today)}{(season.Sheet is null ? "" : $" by {char.ToLowerInvariant(season.Name[0])}{season.Name[1..]}{own}")}" : $"in no kiln{own}";
    }

    private static PlannedCharge? Own(YardState state, string tag) => state.PlannedCharges.Values.FirstOrDefault(load => load.Stacks.Contains(tag) && !state.Charges.ContainsKey(load.Tag));
}
