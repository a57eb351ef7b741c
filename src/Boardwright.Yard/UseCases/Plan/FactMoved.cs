using System.Globalization;
using Boardwright.Planning;
using Boardwright.Yard.Book;

namespace Boardwright.Yard.UseCases;

/// <summary>Something a plan is made from that is no longer as it was when an earlier plan was made.</summary>
/// <param name="About">The stack, charge, kiln, boiler or order; <see cref="Everything"/> for what concerns them all.</param>
/// <param name="Words">What it was and is, without a full stop.</param>
/// <param name="Because">The entry that says so; null where no entry does: weather, and the days that went by.</param>
public sealed record FactMoved(string About, string Words, Entry? Because)
{
    /// <summary>Weather, crew: what concerns every order.</summary>
    public const string Everything = "";

    private const double HoursSeen = 12.0;
    private const double HoursSeenInKiln = 4.0; // a few hours can be a day, for people unload by day
    private const double YieldShareSeen = 0.01;
    private const double CelsiusSeen = 1.0;
    private const int WeatherDays = 14; // further on there is no forecast, only the season's usual

    /// <summary>All that moved between two inputs of one yard; small changes of a forecast are left out.</summary>
    /// <param name="before">The yard as the earlier plan saw it.</param>
    /// <param name="then">The book then.</param>
    /// <param name="after">The yard as it is seen now.</param>
    /// <param name="now">The book now.</param>
    public static IReadOnlyList<FactMoved> Between(PlanYard before, YardState then, PlanYard after, YardState now)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(then);
        ArgumentNullException.ThrowIfNull(after);
        ArgumentNullException.ThrowIfNull(now);
        var newest = new Newest(then, now);
        return
        [
            .. Orders(before.Input, after.Input, newest), .. Charges(before.Input, after.Input, newest), .. Stacks(before.Input, after.Input, newest),
            .. Equipment(before.Input, after.Input, newest), .. Crew(before.Input, after.Input), .. Weather(before, after),
        ];
    }

    private static IEnumerable<FactMoved> Orders(PlanInput before, PlanInput after, Newest newest)
    {
        var old = before.Orders.ToDictionary(order => order.Id, StringComparer.Ordinal);
        foreach (var order in after.Orders)
        {
            if (!old.TryGetValue(order.Id, out var was))
            {
                yield return new(order.Id, $"{order.Id} is new", newest.Of(order.Id));
                continue;
            }

            if (was.Due != order.Due)
            {
                yield return new(order.Id, $"{order.Id} is due {Day(order.Due)}, not {Day(was.Due)}", newest.Of(order.Id));
            }

            if (Math.Abs(was.Quantity.Count - order.Quantity.Count) >= 0.5)
            {
                yield return new(order.Id, Text($"{order.Id} asks {order.Quantity.Count:0} bf, not {was.Quantity.Count:0}"), newest.Of(order.Id));
            }

            if (order.Wood.Select(wood => wood.Stack).Except(was.Wood.Select(wood => wood.Stack)).ToList() is { Count: > 0 } more)
            {
                yield return new(order.Id, $"{string.Join(", ", more)} may serve {order.Id} too", newest.Of([order.Id, .. more]));
            }

            if (was.Wood.Select(wood => wood.Stack).Except(order.Wood.Select(wood => wood.Stack)).ToList() is { Count: > 0 } less)
            {
                yield return new(order.Id, $"{string.Join(", ", less)} {(less.Count == 1 ? "is" : "are")} no longer there for {order.Id}", newest.Of([order.Id, .. less]));
            }
        }

        foreach (var gone in before.Orders.Where(order => after.Orders.All(one => one.Id != order.Id)))
        {
            yield return new(gone.Id, $"{gone.Id} is not waited for any more", newest.Of(gone.Id));
        }
    }

    private static IEnumerable<FactMoved> Charges(PlanInput before, PlanInput after, Newest newest)
    {
        foreach (var charge in after.Started)
        {
            if (before.Started.FirstOrDefault(one => one.Id == charge.Id) is not { } was)
            {
                yield return new(charge.Kiln, $"{charge.Id} was loaded into {charge.Kiln}: {string.Join(", ", charge.Stacks)}", newest.FirstOf(charge.Id));
            }
            else if (Hour(after, charge.DryHalf.Hours) is var dry && Hour(before, was.DryHalf.Hours) is var thought && Math.Abs((dry - thought).TotalHours) >= HoursSeenInKiln)
            {
                yield return new(charge.Kiln, dry.Day() == thought.Day() ? Text($"{charge.Id} is dry about {dry:d MMM} toward {dry:HH}:00, {thought:HH}:00 before") : Text($"{charge.Id} is dry about {dry:d MMM}, {thought:d MMM} before"), newest.Of(charge.Id));
            }
        }

        foreach (var gone in before.Started.Where(charge => after.Started.All(one => one.Id != charge.Id)))
        {
            yield return new(gone.Kiln, $"{gone.Id} is out of {gone.Kiln}", newest.Of(gone.Id));
        }
    }

    private static IEnumerable<FactMoved> Stacks(PlanInput before, PlanInput after, Newest newest)
    {
        var inKiln = after.Started.Concat(before.Started).SelectMany(charge => charge.Stacks).ToHashSet(StringComparer.Ordinal);
        var old = before.Stacks.ToDictionary(stack => stack.Id, StringComparer.Ordinal);
        foreach (var stack in after.Stacks.Where(stack => !inKiln.Contains(stack.Id)))
        {
            if (!old.TryGetValue(stack.Id, out var was))
            {
                yield return new(stack.Id, $"{stack.Id} is new", newest.Of(stack.Id));
                continue;
            }

            if (Slower(before, was, after, stack) is { } words)
            {
                yield return new(stack.Id, words, newest.Of(stack.Id));
            }

            if (Later(stack.AvailableFrom, after) != Later(was.AvailableFrom, after))
            {
                yield return new(stack.Id, $"{stack.Id} can be loaded from {Day(stack.AvailableFrom)}, not {Day(was.AvailableFrom)}", newest.Of(stack.Id));
            }

            if (Math.Abs(stack.Yield.Count - was.Yield.Count) > YieldShareSeen * was.Yield.Count)
            {
                yield return new(stack.Id, Text($"{stack.Id} gives about {stack.Yield.Count:0} bf, {was.Yield.Count:0} before"), newest.Of(stack.Id));
            }

            if (stack.NeverKiln != was.NeverKiln)
            {
                yield return new(stack.Id, stack.NeverKiln ? $"{stack.Id} is never to be kilned" : $"{stack.Id} may be kilned", newest.Of(stack.Id));
            }
        }

        foreach (var gone in before.Stacks.Where(stack => !inKiln.Contains(stack.Id) && after.Stacks.All(one => one.Id != stack.Id)))
        {
            yield return new(gone.Id, $"{gone.Id} is not in the yard any more", newest.Of(gone.Id));
        }
    }

    // The same day of loading in both, so that a day gone by is not taken for a change.
    private static string? Slower(PlanInput before, Stack was, PlanInput after, Stack stack)
    {
        foreach (var time in stack.DryingTimes)
        {
            if (was.DryingTimes.FirstOrDefault(one => one.KilnKind == time.KilnKind) is not { } old)
            {
                return $"{time.KilnKind} is open to {stack.Id} now";
            }

            var day = Math.Max(0, after.Calendar.DayNumber(stack.AvailableFrom));
            var (then, now) = (At(old.HalfByDay, before.Calendar.DayNumber(after.Calendar.DateOf(day))), At(time.HalfByDay, day));
            if (Math.Abs(now - then) >= HoursSeen)
            {
                return Text($"{stack.Id} takes {now / 24.0:0.0} days in {time.KilnKind}, {then / 24.0:0.0} before");
            }
        }

        return was.DryingTimes.FirstOrDefault(old => stack.DryingTimes.All(one => one.KilnKind != old.KilnKind)) is { } closed ? $"{closed.KilnKind} is closed to {stack.Id} now" : null;
    }

    private static IEnumerable<FactMoved> Equipment(PlanInput before, PlanInput after, Newest newest)
    {
        var now = after.Kilns.Select(kiln => (kiln.Id, kiln.Outages)).Concat(after.Heat.Boilers.Select(boiler => (boiler.Id, boiler.Outages)));
        var then = before.Kilns.Select(kiln => (kiln.Id, kiln.Outages)).Concat(before.Heat.Boilers.Select(boiler => (boiler.Id, boiler.Outages))).ToDictionary(one => one.Id, one => one.Outages, StringComparer.Ordinal);
        foreach (var (id, outages) in now)
        {
            var (last, was) = (LastOut(after, outages), then.TryGetValue(id, out var old) ? LastOut(before, old) : null);
            if (last != was && (last ?? was) >= after.Calendar.FirstDay)
            {
                yield return new(id, last is { } until ? $"{id} is out until {Day(until)}{(was is { } thought ? $", {Day(thought)} before" : "")}" : $"{id} runs again", newest.Of(id));
            }
        }
    }

    private static IEnumerable<FactMoved> Crew(PlanInput before, PlanInput after)
    {
        var (then, now) = (LoadingDays(before), LoadingDays(after));
        var last = Earlier(before.Calendar.DateOf(before.Calendar.Days), after.Calendar.DateOf(after.Calendar.Days));
        var less = then.Where(day => day >= after.Calendar.FirstDay && day < last && !now.Contains(day)).ToList();
        var more = now.Where(day => day < last && !then.Contains(day)).ToList();
        if (less.Count > 0)
        {
            yield return new(Everything, $"nobody loads kilns on {string.Join(", ", less.Select(Day))}", null);
        }

        if (more.Count > 0)
        {
            yield return new(Everything, $"kilns can be loaded on {string.Join(", ", more.Select(Day))} too", null);
        }
    }

    private static IEnumerable<FactMoved> Weather(PlanYard before, PlanYard after)
    {
        var shift = after.Input.Calendar.FirstDay.DayNumber - before.Input.Calendar.FirstDay.DayNumber;
        var days = Math.Min(WeatherDays, Math.Min(after.OutsideC.Count, before.OutsideC.Count - shift));
        var warmer = days <= 0 ? 0.0 : Enumerable.Range(0, days).Average(day => after.OutsideC[day] - before.OutsideC[day + shift]);
        if (Math.Abs(warmer) >= CelsiusSeen)
        {
            yield return new(Everything, Text($"the next {days} days are {Math.Abs(warmer):0.0} °C {(warmer > 0.0 ? "warmer" : "colder")} than was thought"), null);
        }
    }

    private static HashSet<DateOnly> LoadingDays(PlanInput input) => [.. input.Calendar.CrewWindows.Select(window => input.Calendar.DateOf(input.Calendar.DayOf(window.From)))];

    private static DateOnly? LastOut(PlanInput input, IReadOnlyList<StepRange> outages) => outages.Count == 0 ? null : input.Calendar.DateOf(input.Calendar.DayOf(outages.Max(outage => outage.To) - 1));

    private static DateTime Hour(PlanInput input, double hours) => input.Calendar.FirstDay.ToDateTime(TimeOnly.MinValue).AddHours(hours);

    private static double At(IReadOnlyList<Quantities.Elapsed> byDay, int day) => byDay[Math.Clamp(day, 0, byDay.Count - 1)].Hours;

    private static DateOnly Earlier(DateOnly a, DateOnly b) => a < b ? a : b;

    private static DateOnly Later(DateOnly day, PlanInput input) => day > input.Calendar.FirstDay ? day : input.Calendar.FirstDay;

    private static string Day(DateOnly day) => day.ToString("d MMM", CultureInfo.InvariantCulture);

    private static string Text(FormattableString words) => FormattableString.Invariant(words);

    /// <summary>Entries since the earlier plan that tell of a thing.</summary>
    private sealed class Newest(YardState then, YardState now)
    {
        public Entry? Of(string about) => Of([about]);

        public Entry? Of(IEnumerable<string> about) => Since(about).MaxBy(entry => entry.Number);

        public Entry? FirstOf(string about) => Since([about]).MinBy(entry => entry.Number);

        private IEnumerable<Entry> Since(IEnumerable<string> about) => about.SelectMany(History).Where(number => number > then.Entries.Count).Select(now.Entry);

        // A line of an order is named by its order's tag and, where there are several, a stroke and its number.
        private IEnumerable<long> History(string about) =>
        [
            .. now.Stacks.GetValueOrDefault(about)?.History ?? [], .. now.Charges.GetValueOrDefault(about)?.History ?? [], .. now.Kilns.GetValueOrDefault(about)?.History ?? [],
            .. now.Boilers.GetValueOrDefault(about)?.History ?? [], .. now.Orders.GetValueOrDefault(about.Split('/')[0])?.History ?? [],
        ];
    }
}
