using System.Globalization;
using Boardwright.Planning;
using Boardwright.Quantities;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>Which stacks share which kiln and when, what may be promised, and whether the heat suffices.</summary>
public static class PlanMake
{
    private const double SecondsMax = 3600.0;

    public static Command Command { get; } = Command.Of("plan", "", "Which stacks share which kiln and when, what may be promised, and whether the heat suffices", Run) with
    {
        Options =
        [
            .. BookPlace.Options.Select(option => option.Name == "data" ? option with { Help = option.Help.Replace("default ./data", "default ./data, and the demonstration yard where there is none", StringComparison.Ordinal) } : option),
            Option.Optional("days", "N", "days planned, 7 to 140 (default: two weeks beyond the last open order)"),
            Option.Optional("seconds", "N", "search this long by the clock (default: a set amount of work, which gives the same plan each time)"),
            Option.Optional("gap", "N", "end once lateness is proven to be within N % of the least, at most the seconds given; by the clock"),
            Option.Many("without", "EQUIPMENT:FROM..TO", "a kiln or boiler that cannot be used, such as B1:2026-11-16..2026-11-22"),
        ],
        Examples = ["plan", "plan --without B1:2026-11-16..2026-11-22 --json"],
    };

    /// <summary>One level of the plan's aim; none is given up for a later one.</summary>
    public sealed record Level(string Name, double ValueMoney, double BoundMoney, double GapPct, bool Proven);

    /// <summary>A charge: in the kiln from start to end; dry as often as not and nine times in ten by.</summary>
    public sealed record ChargeLine(
        string Kiln, DateTime Start, DateTime End, IReadOnlyList<string> Stacks, double VolumeBf, string? Charge, double? WarmUpH, DateTime DryP50, DateTime DryP90, IReadOnlyList<string> Serves);

    /// <summary>A promise: the days, how sure they are, and why not sooner.</summary>
    public sealed record OrderLine(
        string Order, DateOnly Due, DateOnly? PromisedP50, DateOnly? PromisedP90, int LateDays, string? Reason, DateOnly? PromisedP10, int ChanceOfTen, double? SpareBf, IReadOnlyList<string> Stacks);

    /// <summary>Heat of a day: the kilns' demand against what the boilers give after shop and house.</summary>
    public sealed record HeatLine(DateOnly Date, double DemandKw, double CapacityKw, double ShopKw, double BoilersKw, double OutsideC);

    public sealed record Answer(
        double Objective, double Bound, double GapPct, IReadOnlyList<ChargeLine> Charges, IReadOnlyList<OrderLine> Orders, IReadOnlyList<HeatLine> Heat,
        IReadOnlyList<Level> Levels, DateOnly From, int Days, IReadOnlyList<string> Without, IReadOnlyList<NotPlanned> NotPlanned, IReadOnlyList<string> Notes);

    public static Outcome<Answer> Run(Ask ask)
    {
        ArgumentNullException.ThrowIfNull(ask);
        var days = ask.Has("days") ? Whole(ask, "days", PlanYard.DaysMin, PlanYard.DaysMax) : (int?)null;
        var seconds = ask.Has("seconds") ? ask.Number("seconds") : (double?)null;
        if (!ask.Refuses && seconds is not (null or (> 0.0 and <= SecondsMax)))
        {
            ask.Refuse("seconds", ask.Text("seconds"), $"more than 0, at most {SecondsMax:0}");
        }

        var gap = ask.Has("gap") ? ask.Number("gap") : (double?)null;
        if (!ask.Refuses && gap is not (null or (>= 0.0 and < 100.0)))
        {
            ask.Refuse("gap", ask.Text("gap"), "0 to less than 100");
        }

        var without = ask.Texts("without").Select(text => ask.Take("--without", Interruption.Read("--without", text))).OfType<Interruption>().ToList();
        var state = ask.YardOrDemonstration();
        return ask.Refuses || state is null
            ? ask.Refused<Answer>()
            : ask.Named(Equipment(PlanMade.Of(state, new(days, seconds, without, GapPercent: gap)))).Then<Answer>(made => Show(made, without));
    }

    /// <summary>The answer as people and programs read it.</summary>
    public static Answer Show(PlanMade made, IReadOnlyList<Interruption> without)
    {
        ArgumentNullException.ThrowIfNull(made);
        ArgumentNullException.ThrowIfNull(without);
        var calendar = made.Input.Calendar;
        var levels = made.Answer.Levels.Select(level => new Level(level.Name, level.Cents / 100.0, level.BoundCents / 100.0, level.GapPercent, level.Proven)).ToList();
        return new(
            levels[0].ValueMoney, levels[0].BoundMoney, levels[0].GapPct, [.. made.Answer.Outlook.Charges.Select(charge => Show(made, charge)).OrderBy(charge => charge.Start).ThenBy(charge => charge.Kiln, StringComparer.Ordinal)],
            [.. Enumerable.Range(0, made.Input.Orders.Count).Select(order => Show(made, order))], [.. made.Answer.Outlook.Heat.Select((heat, day) => Show(made, heat, day))],
            levels, calendar.FirstDay, calendar.Days, [.. without.Select(one => one.ToString())], made.Yard.Left, made.Yard.Notes);
    }

    /// <summary>Why an order is late or not sure, in words; null when nothing is amiss.</summary>
    public static string? Reason(PlanMade made, int order)
    {
        ArgumentNullException.ThrowIfNull(made);
        var outlook = made.Answer.Outlook.Orders[order];
        var line = made.Yard.Lines[order];
        var words = new List<string>();
        if (made.Reasons.TryGetValue(line.Id, out var reason))
        {
            words.Add(reason.Words);
        }

        words.AddRange(line.Unusable);
        if (outlook is { Met: true, LateDays: 0, LateDaysMost: > 0 })
        {
            words.Add(string.Create(CultureInfo.InvariantCulture, $"may be {outlook.LateDaysMost} {(outlook.LateDaysMost == 1 ? "day" : "days")} late if drying goes slowly"));
        }

        if (made.SpareBf(order) is { } spare && made.Enough[order] < 0.85)
        {
            words.Add(string.Create(CultureInfo.InvariantCulture, $"{spare:0} bf to spare: enough {Math.Round(10.0 * made.Enough[order]):0} times in 10"));
        }

        return words.Count > 0 ? string.Join("; ", words) : null;
    }

    private static ChargeLine Show(PlanMade made, ChargeOutlook outlook)
    {
        var calendar = made.Input.Calendar;
        var charge = outlook.Charge;
        var warmUp = charge.Started is null && made.Input.Kilns.First(kiln => kiln.Id == charge.Kiln) is { Coil: not null } kiln ? kiln.WarmUps[charge.WarmUp].Hours : (double?)null;
        return new(
            charge.Kiln, calendar.TimeOf(charge.LoadStep), calendar.TimeOf(outlook.EmptyAt), charge.Stacks, made.Input.Stacks.Where(stack => charge.Stacks.Contains(stack.Id)).Sum(stack => stack.Volume.Count),
            charge.Started, warmUp, calendar.TimeOf(outlook.DryAt), calendar.TimeOf(outlook.DryAtMost),
            [.. made.Answer.Plan.Servings.Where(serving => charge.Stacks.Contains(serving.Stack) && serving.Quantity.Count > 0.0).Select(serving => serving.Order).Distinct()]);
    }

    private static OrderLine Show(PlanMade made, int order)
    {
        var outlook = made.Answer.Outlook.Orders[order];
        return new(
            outlook.Order, made.Input.Orders[order].Due, outlook.ReadyHalf, outlook.ReadyMost, outlook.LateDays, Reason(made, order), made.Promises[order].Early, made.ChanceOfTen(order), made.SpareBf(order), made.ServedBy(order));
    }

    private static HeatLine Show(PlanMade made, HeatOutlook heat, int day)
    {
        var shop = made.Input.Heat.Shop[day].Kilowatts;
        var boilers = made.Input.Heat.Boilers.Where(boiler => !boiler.Outages.Any(heat.Steps.Touches)).Sum(boiler => boiler.Output.Kilowatts);
        return new(made.Input.Calendar.DateOf(day), heat.Demand.Kilowatts, heat.Spare.Kilowatts, shop, boilers, made.Yard.OutsideC[day]);
    }

    private static int Whole(Ask ask, string option, int least, int most)
    {
        var number = ask.Number(option);
        if (number < least || number > most || number != Math.Floor(number))
        {
            ask.Refuse(option, ask.Text(option), $"a whole number, {least} to {most}");
            return least;
        }

        return (int)number;
    }

    private static Outcome<T> Equipment<T>(Outcome<T> made) => made is Outcome<T>.Refused(var reasons)
        ? new Outcome<T>.Refused([.. reasons.Select(reason => reason.What == "equipment" ? reason with { What = "without" } : reason)])
        : made;
}
