using Boardwright.Drying;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>Charges planned for today or tomorrow whose kiln is free: what to stage by the door.</summary>
internal static class KilnsToLoad
{
    public static IEnumerable<DayTask> Of(YardState state, SeasonNow season)
    {
        foreach (var planned in state.PlannedCharges.Values.Where(planned => planned.InOn.DayNumber - state.Today.DayNumber is <= 1 and >= -14 && !state.Charges.ContainsKey(planned.Tag)))
        {
            var stacks = planned.Stacks.Select(tag => state.Stacks.GetValueOrDefault(tag)).OfType<Stack>().Where(stack => stack.Stage == StackStage.AirDrying).ToList();
            if (!state.Kilns.TryGetValue(planned.Kiln, out var kiln) || kiln.Charge is not null || kiln.Down is not null || stacks.Count == 0)
                continue;

            var load = stacks.Sum(stack => KilnRoom.AsFourQuarter(stack.Footage, stack.Thickness).Count);
            var today = planned.InOn <= state.Today;
            var margin = (decimal)((state.Setting("kiln_day_margin") ?? 0.0) * stacks.Sum(stack => stack.Footage.Count) / 1000.0);
            yield return new(planned.Kiln, $"{(today ? "Load" : "Stage")} {Named(planned.Stacks)} {(today ? "into" : "by the door of")} {planned.Kiln}.",
                $"{(kiln.Installed.Note is { } note ? $"{note}. " : "")}They load {(today ? "today" : planned.InOn.ToString("ddd d MMM"))} as {planned.Tag}{(planned.Serves is { } serves ? $", for {serves}" : "")}.",
                new("Load", $"{load:#,0}", "bf", $"of {kiln.Installed.CapacityBf:#,0} in 4/4")
                {
                    Method = "kiln-plan",
                    Source = "room of thicker boards on 3/4 in stickers, (t/(t+0.75)) / (1/1.75)",
                    Inputs = [.. stacks.Select(stack => (stack.Tag, $"{stack.Footage.Count:#,0} bf {stack.Thickness} = {KilnRoom.AsFourQuarter(stack.Footage, stack.Thickness).Count:#,0} bf of 4/4"))],
                },
                new(margin, 1, "a day of the kiln standing empty, at the kiln-day margin"), Duties.Kilns, $"/charges/new?plan={Uri.EscapeDataString(planned.Tag)}", $"Load {planned.Kiln}")
            { Beside = OwnLoad.Beside(state, planned, season) };
        }
    }

    internal static string With(IEnumerable<string> tags) => tags.ToList() is { Count: > 0 } others ? $" with {Named(others)}" : "";

    internal static string Named(IReadOnlyList<string> tags) => tags.Count < 2 ? string.Concat(tags) : $"{string.Join(", ", tags.Take(tags.Count - 1))} and {tags[^1]}";
}
