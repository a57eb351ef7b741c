using Boardwright.Documents.Weeks;
using Boardwright.Yard.Book;
using Boardwright.Yard.UseCases;

namespace Boardwright.Web.Plans;

/// <summary>The plan as events by day and hour: kilns to load and unload, promises due, tables to pour and to take out of their moulds.</summary>
internal static class SeasonEvents
{
    /// <summary>The events, the first first.</summary>
    public static IReadOnlyList<CalendarEvent> Of(YardState state, SeasonSheet sheet) =>
    [
        .. sheet.Kilns.SelectMany(row => row.Charges).SelectMany(charge => OfCharge(state, charge))
            .Concat(sheet.Promises.Select(Due))
            .Concat(Pours(state))
            .OrderBy(one => one.From).ThenBy(one => one.Id, StringComparer.Ordinal),
    ];

    /// <summary>What is known while the plan is being worked: the owner's loads, what is expected out, promises and pours, each for its whole day.</summary>
    public static IReadOnlyList<CalendarEvent> Known(YardState state)
    {
        var known = KnownSeason.Of(state);
        return
        [
            .. known.Loads.Where(load => !load.Runs).Select(load => Whole($"load-{load.Tag}", load.In, $"Load {load.Kiln}, {load.Tag}", string.Join(", ", load.Stacks)))
                .Concat(known.Loads.Where(load => load.Out is not null).Select(load => Whole($"unload-{load.Tag}", load.Out!.Value, $"Unload {load.Kiln}, {load.Tag}", string.Join(", ", load.Stacks))))
                .Concat(known.Promises.Select(promise => Whole($"due-{promise.Order}", promise.Due, $"{promise.Order} due", $"{promise.Customer}: {promise.Goods}")))
                .Concat(Pours(state))
                .OrderBy(one => one.From).ThenBy(one => one.Id, StringComparer.Ordinal),
        ];
    }

    /// <summary>The same as lines of a week sheet.</summary>
    public static IReadOnlyList<WeekLine> Lines(IReadOnlyList<CalendarEvent> events) =>
        [.. events.Select(one => new WeekLine(DateOnly.FromDateTime(one.From), one.To is null ? null : TimeOnly.FromDateTime(one.From), one.Summary, one.Details ?? ""))];

    private static IEnumerable<CalendarEvent> OfCharge(YardState state, SeasonCharge charge)
    {
        var installed = state.Kilns[charge.Kiln].Installed;
        var id = charge.Tag ?? $"{charge.Kiln}-{charge.Stacks.Select(stack => stack.Tag).Order(StringComparer.Ordinal).First()}";
        var wood = $"{string.Join(", ", charge.Stacks.Select(stack => $"{stack.Tag} {stack.Species.CommonName} {stack.Thickness}"))}; {charge.VolumeBf:#,0} bf; for {(charge.Serves.Count > 0 ? string.Join(", ", charge.Serves) : "stock")}";
        if (charge.Tag is null)
        {
            yield return new($"load-{id}", charge.In, charge.In.AddHours(installed.LoadHours), $"Load {charge.Kiln}", wood);
        }

        yield return new($"unload-{id}", charge.Out.AddHours(-installed.UnloadHours), charge.Out, $"Unload {charge.Kiln}{(charge.Tag is { } tag ? $", {tag}" : "")}", wood);
    }

    private static IEnumerable<CalendarEvent> Pours(YardState state) =>
        state.Pours.Values.Where(pour => pour.PouredAt is null).Select(pour => Whole($"pour-{pour.Tag}", pour.PourOn, $"Pour {pour.Tag}"))
            .Concat(state.Pours.Values.Where(pour => pour.DemouldedAt is null).Select(pour => Whole($"demould-{pour.Tag}", pour.DemouldOn, $"Take {pour.Tag} out of its mould")));

    private static CalendarEvent Due(SeasonPromise promise) => Whole(
        $"due-{promise.Line.Id}", promise.Due, $"{promise.Line.Id} due",
        $"{promise.Line.Order.Customer}: {promise.Line.Asked.Goods}; {(promise.Likely is { } likely ? $"likely ready {likely:d MMM}, ready by its day {promise.ChanceOfTen} times in 10" : "not in the plan")}");

    private static CalendarEvent Whole(string id, DateOnly day, string summary, string? details = null) => new(id, day.ToDateTime(TimeOnly.MinValue), null, summary, details);
}
