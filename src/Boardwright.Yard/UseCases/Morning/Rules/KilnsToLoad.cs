using Boardwright.Drying;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>Loads for today or tomorrow whose kiln is free: what to stage by the door. The owner's loads come first; the worked plan's stand where the owner planned none, and are asked about where they keep promises better.</summary>
internal static class KilnsToLoad
{
    private const int DaysAhead = 1;
    private const int DaysForgotten = 14;

    public static IEnumerable<DayTask> Of(YardState state, SeasonNow season)
    {
        var own = state.PlannedCharges.Values.Where(planned => planned.InOn.DayNumber - state.Today.DayNumber is <= DaysAhead and >= -DaysForgotten && !state.Charges.ContainsKey(planned.Tag)
            && IsFree(state, planned.Kiln) && OwnLoad.Waiting(state, planned).Count > 0).ToList();
        var worked = (season.Sheet?.Kilns ?? []).Select(row => row.Charges.FirstOrDefault(charge => charge.Tag is null)).OfType<SeasonCharge>()
            .Where(charge => charge.In.Day().DayNumber - state.Today.DayNumber <= DaysAhead && IsFree(state, charge.Kiln)).ToList();
        foreach (var planned in own)
        {
            var other = worked.FirstOrDefault(charge => charge.Kiln == planned.Kiln);
            yield return other is not null && season.Beside is { WorkedIsBetter: true } && !OwnLoad.Agrees(state, planned, season) ? ToSettle(state, planned, other, season) : Own(state, planned, season);
        }

        // A load of the owner's for a later day gives way only to a plan that is better by its own comparison.
        foreach (var charge in worked.Where(charge => own.All(planned => planned.Kiln != charge.Kiln) && season.Beside is null or { WorkedIsBetter: true }))
            yield return Worked(state, charge, season);
    }

    private static DayTask Own(YardState state, PlannedCharge planned, SeasonNow season)
    {
        var note = state.Kilns[planned.Kiln].Installed.Note is { } told ? $"{told}. " : "";
        return Load(state, planned.Kiln, Stacks(state, planned), planned.InOn, planned.Stacks,
            $"{note}They load {(planned.InOn <= state.Today ? "today" : planned.InOn.ToString("ddd d MMM"))} as {planned.Tag}{(planned.Serves is { } serves ? $", for {serves}" : "")}.", $"/charges/new?plan={Uri.EscapeDataString(planned.Tag)}")
            with
        { Beside = OwnLoad.Beside(state, planned, season) };
    }

    private static DayTask ToSettle(YardState state, PlannedCharge planned, SeasonCharge other, SeasonNow season)
    {
        var task = Own(state, planned, season) with
        {
            Do = $"Settle which load goes into {planned.Kiln}: yours {On(state, planned.InOn)}, or the worked plan’s {On(state, other.In.Day())}.",
            Why = $"{planned.Tag}: {Named(OwnLoad.Waiting(state, planned))}. Worked: {Named([.. other.Stacks.Select(stack => stack.Tag)])}{(other.Serves.Count > 0 ? $", for {string.Join(", ", other.Serves)}" : "")}.",
            Path = "/season/take",
            Key = "See both",
        };
        if (season.Beside is not { Own: var own, Worked: var worked })
            return task;
        var much = new Traced("Orders late", $"{own.LateDays} or {worked.LateDays}", "days", "by yours, by the worked plan")
        {
            Method = "kiln-plan",
            Source = "both plans under the same forecasts and rules",
            Inputs = [("lateness by yours", $"{own.LateMoney:#,0} money"), ("by the worked plan", $"{worked.LateMoney:#,0} money")],
        };
        return own.LateMoney > worked.LateMoney
            ? task with { Much = much, Stake = new(own.LateMoney - worked.LateMoney, 1, $"{own.LateMoney:#,0} of lateness by yours, {worked.LateMoney:#,0} by the worked plan") }
            : task with { Much = much };
    }

    private static DayTask Worked(YardState state, SeasonCharge charge, SeasonNow season) => Load(state, charge.Kiln, charge.Stacks, charge.In.Day(), [.. charge.Stacks.Select(stack => stack.Tag)],
        $"{season.Name}, the worked one{(charge.Serves.Count > 0 ? $", for {string.Join(", ", charge.Serves)}" : ", for stock")}{(charge.WarmUpH is { } hours ? $"; warm up over {hours:0} h" : "")}.",
        $"/charges/new?kiln={Uri.EscapeDataString(charge.Kiln)}&stacks={Uri.EscapeDataString(string.Join(',', charge.Stacks.Select(stack => stack.Tag)))}");

    private static DayTask Load(YardState state, string kiln, IReadOnlyList<Stack> stacks, DateOnly on, IReadOnlyList<string> tags, string why, string path)
    {
        var today = on <= state.Today;
        var load = stacks.Sum(stack => KilnRoom.AsFourQuarter(stack.Footage, stack.Thickness).Count);
        var margin = (decimal)((state.Setting("kiln_day_margin") ?? 0.0) * stacks.Sum(stack => stack.Footage.Count) / 1000.0);
        return new(kiln, $"{(today ? "Load" : "Stage")} {Named(tags)} {(today ? "into" : "by the door of")} {kiln}.", why,
            new("Load", $"{load:#,0}", "bf", $"of {state.Kilns[kiln].Installed.CapacityBf:#,0} in 4/4")
            {
                Method = "kiln-plan",
                Source = "room of thicker boards on 3/4 in stickers, (t/(t+0.75)) / (1/1.75)",
                Inputs = [.. stacks.Select(stack => (stack.Tag, $"{stack.Footage.Count:#,0} bf {stack.Thickness} = {KilnRoom.AsFourQuarter(stack.Footage, stack.Thickness).Count:#,0} bf of 4/4"))],
            },
            new(margin, 1, "a day of the kiln standing empty, at the kiln-day margin"), Duties.Kilns, path, $"Load {kiln}");
    }

    private static List<Stack> Stacks(YardState state, PlannedCharge planned) => [.. OwnLoad.Waiting(state, planned).Select(tag => state.Stacks[tag])];

    private static bool IsFree(YardState state, string kiln) => state.Kilns.TryGetValue(kiln, out var known) && known.Charge is null && known.Down is null;

    private static string On(YardState state, DateOnly day) => day <= state.Today ? "of today" : $"of {day:ddd d MMM}";

    internal static string With(IEnumerable<string> tags) => tags.ToList() is { Count: > 0 } others ? $" with {Named(others)}" : "";

    internal static string Named(IReadOnlyList<string> tags) => tags.Count < 2 ? string.Concat(tags) : $"{string.Join(", ", tags.Take(tags.Count - 1))} and {tags[^1]}";
}
