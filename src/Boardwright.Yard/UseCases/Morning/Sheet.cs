using System.Globalization;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>One thing to do today.</summary>
/// <param name="At">The hour, place, tag or machine it is about.</param>
/// <param name="Do">A sentence that begins with a verb.</param>
/// <param name="Why">What stands to lose.</param>
/// <param name="Much">The deciding number with its unit.</param>
/// <param name="MuchBasis">What the number is.</param>
/// <param name="Path">Where to do it.</param>
/// <param name="StakeMoney">Money at risk if it is left until tomorrow, as far as the book knows it.</param>
/// <param name="For">Who is meant; null for everybody.</param>
public sealed record Task(string At, string Do, string Why, string Much, string MuchBasis, string Path, decimal StakeMoney, string? For);

/// <summary>What to do today, what stands to lose most first.</summary>
public static class MorningSheet
{
    // Shares of a charge's value that a day without watching puts at risk. Common practice, no source; meant for the order of the sheet only.
    private const decimal UnwatchedShare = 0.02m;
    private const decimal ValuePerBf = 3m;

    /// <summary>Tasks for one person, or for everybody.</summary>
    public static IReadOnlyList<Task> For(YardState state, string? person)
    {
        ArgumentNullException.ThrowIfNull(state);
        var tasks = Charges(state).Concat(Heat(state)).Concat(Packs(state)).Concat(Orders(state)).Concat(Pours(state)).Concat(Readings(state)).Concat(Tags(state)).Concat(Logs(state));
        return [.. tasks.Where(task => person is null || task.For is null || task.For == person).OrderByDescending(task => task.StakeMoney)];
    }

    private static IEnumerable<Task> Charges(YardState state)
    {
        foreach (var charge in state.Charges.Values.Where(charge => charge.IsRunning))
        {
            var value = (decimal)charge.FootageIn.Count * ValuePerBf;
            var wettest = charge.Wettest;
            if (charge.SoundSamples.Any())
            {
                yield return new(charge.Kiln, $"Weigh the {charge.SoundSamples.Count()} samples of {charge.Tag}, then see the setting.",
                    wettest is null ? "" : $"Wettest is sample {wettest.Name}.", Text(wettest?.Moisture.Percent, "0.0") + " %", $"wettest; {Text(charge.Target.Percent, "0")} wanted",
                    $"/charges/{charge.Tag}", value * UnwatchedShare, "Pell");
            }
            else
            {
                yield return new(charge.Kiln, $"Read the gauge of {charge.Tag} and write it down.", "No samples can be weighed inside.", Text(charge.FootageIn.Count, "#,0") + " bf",
                    charge.ExpectedOutOn is { } day ? $"out about {day:d MMM}" : "in the kiln", $"/charges/{charge.Tag}", value * UnwatchedShare, "Pell");
            }

            if (charge.ExpectedOutOn is { } due && due <= state.Today)
            {
                yield return new(charge.Kiln, $"Check whether {charge.Tag} may come out.", "Its day is here; a full kiln earns nothing once the wood is dry.",
                    Text(charge.FootageIn.Count, "#,0") + " bf", $"expected out {due:d MMM}", $"/charges/{charge.Tag}", 100m, "Pell");
            }
        }
    }

    private static IEnumerable<Task> Heat(YardState state)
    {
        foreach (var day in BoilerSheet.Days(state, 14).Where(day => day.ShortKw > 0.0).Take(1))
        {
            yield return new(day.Date.ToString("d MMM", CultureInfo.InvariantCulture), "Plan for a heat shortage.",
                string.Create(CultureInfo.InvariantCulture, $"{day.OutsideC:0} °C outside: shop {day.ShopKw:0.0} kW and the kilns {day.KilnsKw:0.0} kW want more than the boilers give."),
                Text(day.ShortKw, "0.0") + " kW", "short", "/boiler", 60m, null);
        }

        foreach (var boiler in state.Boilers.Values.Where(boiler => boiler.Down is null && boiler.Installed.StokedEveryHours is not null))
        {
            yield return new("06, 14, 22", $"Stoke {boiler.Name}.", $"Every {boiler.Installed.StokedEveryHours:0} hours.", Text(boiler.Installed.SteadyOutputKw, "0") + " kW", "steady output", "/boiler", 40m, "Pell");
        }
    }

    private static IEnumerable<Task> Packs(YardState state)
    {
        foreach (var pack in state.Packs.Values.Where(pack => pack is { IsDisputed: true, Shipment: null }))
        {
            yield return new(pack.Tag, "Look a third time at the boards that differ.",
                $"Tallied {pack.Tallies.Count} times: {string.Join(" and ", pack.Tallies.Select(tally => $"{tally.By} {tally.Footage.Count:0}"))} bf. Nothing is printed until one holds.",
                Text(pack.Tallies.Max(tally => tally.Footage.Count) - pack.Tallies.Min(tally => tally.Footage.Count), "0") + " bf", "between them", $"/tally/{pack.Tag}", 25m, null);
        }
    }

    private static IEnumerable<Task> Orders(YardState state)
    {
        foreach (var order in state.Orders.Values.Where(order => order.IsOpen))
        {
            var left = order.DueOn.DayNumber - state.Today.DayNumber;
            if (left > 21)
            {
                continue;
            }

            var words = left < 0 ? $"{-left} days late" : left == 0 ? "due today" : $"due in {left} days";
            yield return new(order.Tag, $"{(left <= 7 ? "Get ready" : "Watch")} {order.Lines[0].Asked.Goods} for {order.Customer}.",
                $"{words}; {order.LatePerDayMoney:0} a day when late.", Quantity(order.Lines[0].Asked), order.DueOn.ToString("d MMM", CultureInfo.InvariantCulture),
                $"/promises/{order.Tag}", order.LatePerDayMoney * (left <= 0 ? 2m : 7m / (left + 7m)), "Oda");
        }
    }

    private static IEnumerable<Task> Pours(YardState state)
    {
        foreach (var pour in state.Pours.Values.Where(pour => pour.PouredAt is null && pour.PourOn.DayNumber - state.Today.DayNumber is >= 0 and <= 3))
        {
            yield return new(pour.Tag, $"Prepare the mould of {pour.Tag}.", $"Pours on {pour.PourOn:d MMM}.", pour.PourOn.ToString("d MMM", CultureInfo.InvariantCulture), "pour day", $"/pours/{pour.Tag}", 30m, "Wren");
        }

        foreach (var pour in state.Pours.Values.Where(pour => pour is { PouredAt: not null, DemouldedAt: null } && pour.DemouldOn <= state.Today))
        {
            yield return new(pour.Tag, $"Test {pour.Tag} with a nail, then demould.", "Its day is here; the thin edge cures last.", pour.DemouldOn.ToString("d MMM", CultureInfo.InvariantCulture), "demould day", $"/pours/{pour.Tag}", 30m, "Wren");
        }
    }

    private static IEnumerable<Task> Readings(YardState state)
    {
        foreach (var stack in state.Stacks.Values.Where(stack => stack is { IsHere: true, Stage: StackStage.AirDrying }))
        {
            var days = stack.Moisture is { } reading ? state.Today.DayNumber - DateOnly.FromDateTime(reading.At).DayNumber : int.MaxValue;
            if (days >= 7)
            {
                yield return new(stack.Place, $"Read {stack.Tag}, and the wood’s own temperature.", stack.ReservedFor is { } order ? $"Reserved for {order}." : "", Text(stack.Footage.Count, "#,0") + " bf",
                    stack.Moisture is null ? "never read" : $"last read {days} days ago", $"/stacks/{stack.Tag}/read", stack.ReservedFor is null ? 4m : 10m, "Pell");
            }
        }
    }

    private static IEnumerable<Task> Tags(YardState state)
    {
        foreach (var log in state.Logs.Values.Where(log => log is { Proven: false, IsSawn: false }))
        {
            yield return new(log.Tag, "Look at the end grain and settle which log this is.", "Unproven: no price, no promise.", string.Join(" or ", log.ConfusedWith), "candidates", $"/logs/{log.Tag}", 20m, "Bram");
        }
    }

    private static IEnumerable<Task> Logs(YardState state)
    {
        foreach (var log in state.Logs.Values.Where(log => !log.IsSawn && log.MetalScan is MetalScan.NotScanned or MetalScan.FenceLineNotScanned or MetalScan.HitsNotDug))
        {
            yield return new(log.Tag, "Scan for metal before it goes on the mill.", $"{log.Species}, {log.Source}; a strike costs a blade.", Text(state.Setting("metal_strike"), "0"), "money a strike", $"/logs/{log.Tag}", 16m, "Bram");
        }
    }

    private static string Quantity(OrderLine line) => string.Create(CultureInfo.InvariantCulture, $"{line.Quantity:#,0.#} {line.Unit switch { OrderUnit.Bf => "bf", OrderUnit.M3 => "m³", OrderUnit.M3Loose => "m³ loose", OrderUnit.Slabs => "slabs", _ => "pieces" }}");

    private static string Text(double? value, string format) => value?.ToString(format, CultureInfo.InvariantCulture) ?? "-";
}
