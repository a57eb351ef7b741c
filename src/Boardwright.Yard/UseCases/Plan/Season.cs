using System.Globalization;
using Boardwright.Planning;
using Boardwright.Yard.Book;
using BookState = Boardwright.Yard.Book.State;
namespace Boardwright.Yard.UseCases;

/// <summary>A charge of the season for a person.</summary>
public sealed record SeasonCharge(string Kiln, string? Tag, IReadOnlyList<BookState.Stack> Stacks, double VolumeBf, DateTime In, DateTime Out, DateTime OutLate, double? WarmUpH, IReadOnlyList<string> Serves)
{
    /// <summary>"Load K2 on Mon 2 Nov at 08:00."; of today, whether the hour is still ahead.</summary>
    /// <param name="now">The time in the yard.</param>
    public string LoadWords(DateTime now) => In.Date != now.Date || In >= now ? string.Create(CultureInfo.InvariantCulture, $"Load {Kiln} on {In:ddd d MMM} at {In:HH:mm}.")
        : string.Create(CultureInfo.InvariantCulture, $"Load {Kiln} today still, or on the next working day: planned for {In:HH:mm}.");
}

/// <summary>Heat of a day: outside, what each use wants in the order of <see cref="SeasonSheet.HeatUses"/>, what the boilers give, and what they give if all goes well.</summary>
public sealed record SeasonHeat(DateOnly Day, double OutsideC, IReadOnlyList<double> KilowattsByUse, double GivenKw, double PerhapsKw)
{
    /// <summary>What all uses want.</summary>
    public double WantedKw => KilowattsByUse.Sum();

    /// <summary>What is missing; zero when it is enough.</summary>
    public double ShortKw => Math.Max(0.0, WantedKw - GivenKw);

    /// <summary>True when it is enough if the boiler that is awaited comes back on its day.</summary>
    public bool OnlyIfLate => ShortKw > 0.0 && WantedKw <= PerhapsKw;
}

/// <summary>How an order stands.</summary>
public enum PromiseStanding
{
    Safe,
    AtRisk,
    Late,
    Cannot,
}

/// <summary>An order's promise for a person.</summary>
public sealed record SeasonPromise(
    PlannedLine Line, DateOnly Due, DateOnly? Early, DateOnly? Likely, DateOnly? Late, int LateDays, int LateDaysMost, int ChanceOfTen, double? SpareBf, PromiseStanding Standing, string? Reason, IReadOnlyList<string> Stacks);

/// <summary>The season as the plan has it: kilns, heat, promises, and the days on which heat falls short.</summary>
public sealed record SeasonSheet(
    DateOnly From, DateOnly To, IReadOnlyList<(string Kiln, IReadOnlyList<SeasonCharge> Charges)> Kilns, IReadOnlyList<string> HeatUses, IReadOnlyList<SeasonHeat> Heat,
    IReadOnlyList<SeasonPromise> Promises, IReadOnlyList<NotPlanned> Left, IReadOnlyList<string> Notes)
{
    private const int DaysBefore = 3;
    private const int AtRiskBelow = 8;
    private const double LeastShortKw = 0.05; // less is not seen on a page

    /// <summary>Heat of the days the plan is shown for.</summary>
    public IReadOnlyList<SeasonHeat> HeatShown => [.. Heat.Where(day => day.Day < To)];

    /// <summary>The days on which heat falls short should what is down come back on its late day.</summary>
    public IReadOnlyList<SeasonHeat> ShortDays => [.. HeatShown.Where(day => day.ShortKw > LeastShortKw)];

    /// <summary>The day on which most heat is missing; null when it never falls short.</summary>
    public SeasonHeat? Shortage => ShortDays.MaxBy(day => day.ShortKw);

    /// <summary>Orders that are late or cannot be met.</summary>
    public int LateCount => Promises.Count(promise => promise.Standing is PromiseStanding.Late or PromiseStanding.Cannot);

    /// <summary>The sheet of a plan.</summary>
    public static SeasonSheet Of(YardState state, PlanMade made)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(made);
        var calendar = made.Input.Calendar;
        var coils = made.Input.Kilns.Where(kiln => kiln.Coil is not null).Select(kiln => kiln.Id).ToList();
        var byKiln = coils.Select(kiln => PlanOutlook.Of(made.Input, new([.. made.Answer.Plan.Charges.Where(charge => charge.Kiln == kiln)], [])).Heat).ToList();
        var charges = made.Answer.Outlook.Charges.Select(charge => ChargeOf(state, made, charge)).ToList();
        return new(
            state.Today.AddDays(-DaysBefore), Last(made, charges),
            [.. made.Input.Kilns.Select(kiln => (kiln.Id, (IReadOnlyList<SeasonCharge>)[.. charges.Where(charge => charge.Kiln == kiln.Id).OrderBy(charge => charge.In)]))],
            ["shop", .. coils],
            [.. Enumerable.Range(0, calendar.Days).Select(day => HeatOf(state, made, byKiln, day))],
            [.. Enumerable.Range(0, made.Input.Orders.Count).Select(order => PromiseOf(made, order)).OrderByDescending(promise => promise.Standing is PromiseStanding.Late).ThenByDescending(promise => promise.Standing is PromiseStanding.AtRisk).ThenByDescending(promise => promise.Standing is PromiseStanding.Cannot).ThenBy(promise => promise.ChanceOfTen).ThenBy(promise => promise.Due)],
            made.Yard.Left, made.Yard.Notes);
    }

    private static DateOnly Last(PlanMade made, List<SeasonCharge> charges)
    {
        var last = charges.Select(charge => charge.OutLate.Day()).Concat(made.Input.Orders.Select(order => order.Due)).DefaultIfEmpty(made.Input.Calendar.FirstDay).Max().AddDays(2);
        var end = made.Input.Calendar.DateOf(made.Input.Calendar.Days);
        return last < end ? last : end;
    }

    private static SeasonCharge ChargeOf(YardState state, PlanMade made, ChargeOutlook outlook)
    {
        var calendar = made.Input.Calendar;
        var charge = outlook.Charge;
        var kiln = made.Input.Kilns.First(one => one.Id == charge.Kiln);
        return new(
            charge.Kiln, charge.Started, [.. charge.Stacks.Select(tag => state.Stacks[tag])], charge.Stacks.Sum(tag => state.Stacks[tag].Footage.Count),
            charge.Started is { } tag ? state.Charges[tag].LoadedAt : calendar.TimeOf(charge.LoadStep), calendar.TimeOf(outlook.EmptyAt), calendar.TimeOf(Math.Max(outlook.EmptyAt, outlook.DryAtMost)),
            charge.Started is null && kiln.Coil is not null ? kiln.WarmUps[charge.WarmUp].Hours : null,
            [.. made.Answer.Plan.Servings.Where(serving => charge.Stacks.Contains(serving.Stack) && serving.Quantity.Count > 0.0).Select(serving => serving.Order).Distinct()]);
    }

    private static SeasonHeat HeatOf(YardState state, PlanMade made, List<IReadOnlyList<HeatOutlook>> byKiln, int day)
    {
        var date = made.Input.Calendar.DateOf(day);
        var steps = new StepRange(day * made.Input.Calendar.StepsPerDay, (day + 1) * made.Input.Calendar.StepsPerDay);
        var runs = made.Input.Heat.Boilers.Where(boiler => !boiler.Outages.Any(steps.Touches)).ToList();
        var sure = runs.Where(boiler => state.Boilers[boiler.Id].Down is not { BackLateOn: { } late } || date >= late).Sum(boiler => boiler.Output.Kilowatts);
        return new(date, made.Yard.OutsideC[day], HeatTenths.Of([made.Input.Heat.Shop[day].Kilowatts, .. byKiln.Select(heat => heat[day].Demand.Kilowatts)]), sure, runs.Sum(boiler => boiler.Output.Kilowatts));
    }

    private static SeasonPromise PromiseOf(PlanMade made, int order)
    {
        var outlook = made.Answer.Outlook.Orders[order];
        var promise = made.Promises[order];
        var chance = made.ChanceOfTen(order);
        var standing = !outlook.Met ? PromiseStanding.Cannot : outlook.LateDays > 0 ? PromiseStanding.Late : chance < AtRiskBelow ? PromiseStanding.AtRisk : PromiseStanding.Safe;
        return new(made.Yard.Lines[order], made.Input.Orders[order].Due, promise.Early, promise.Likely, promise.Late, outlook.LateDays, outlook.LateDaysMost, chance, made.SpareBf(order), standing, PlanMake.Reason(made, order), made.ServedBy(order));
    }
}
