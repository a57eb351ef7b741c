using Boardwright.Yard.Book;

namespace Boardwright.Yard.UseCases;

/// <summary>Trees offered by telephone yesterday or today.</summary>
internal static class CallsToAnswer
{
    public static IEnumerable<DayTask> Of(YardState state) =>
        state.Calls.Where(call => call.Fact.Tree is not null && state.Today.DayNumber - DateOnly.FromDateTime(call.At).DayNumber is 0 or 1).Select(call =>
        {
            var tree = call.Fact.Tree!;
            var haul = (decimal)(2.0 * (tree.RoadMiles ?? 0.0) * (state.Setting("haul_per_mile") ?? 0.0));
            return new DayTask($"{call.At:HH:mm}", $"Ring back about the {tree.Species}.", $"{call.Fact.Caller}: {call.Fact.Text}.{(tree.MetalNearby ? " Metal is likely; ask who pays for blades." : "")} Ask for signed ownership before any price.",
                new("Way there and back", $"{2.0 * (tree.RoadMiles ?? 0.0):0}", "miles", $"{haul:0} money in miles alone") { Source = $"call of {call.At:d MMM HH:mm}, entry {call.Entry}", Method = "log-scale", Inputs = [("girth", tree.GirthMm is { } girth ? $"{girth / 25.4:0} in" : "not said"), ("small end", tree is { SmallEndLowMm: { } low, SmallEndHighMm: { } high } ? $"{low / 25.4:0} to {high / 25.4:0} in" : "not said"), ("felled by", tree.FelledBy ?? "not said")] },
                new(haul, 1, "a wasted trip"), Duties.Office, $"/logs/offered?call={call.Entry}", "What it is worth");
        });
}
