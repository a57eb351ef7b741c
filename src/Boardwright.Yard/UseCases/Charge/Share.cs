using System.Globalization;
using Boardwright.Drying;
using Boardwright.Drying.Schedules;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>One rule of sharing a charge, held against the stacks.</summary>
/// <param name="Rule">What it is about.</param>
/// <param name="Found">What these stacks have.</param>
/// <param name="Limit">What the house allows, with the name of its setting.</param>
/// <param name="Holds">Whether they keep it.</param>
public sealed record SharingRule(string Rule, string Found, string Limit, bool Holds);

/// <summary>A stack as it dries alone and as it dries in the shared charge, drying and finish.</summary>
/// <param name="Stack">The stack.</param>
/// <param name="Alone">By its own schedule to its own target; null where no schedule or no moisture tells.</param>
/// <param name="Together">By the shared schedule to the shared target; null where it is not shared or cannot get there.</param>
public sealed record ShareMember(Stack Stack, TimeBand? Alone, TimeBand? Together);

/// <summary>May these stacks share a charge: yes or no, the rule that decides, the schedule they would have, and what mixing them costs.</summary>
public sealed record ChargeShare
{
    private const double WetPercent = 25.0;

    public required bool May { get; init; }

    /// <summary>The answer with the rule that decides, in a sentence.</summary>
    public required string Says { get; init; }

    public required IReadOnlyList<SharingRule> Rules { get; init; }

    public required IReadOnlyList<ShareMember> Stacks { get; init; }

    /// <summary>The mildest members' schedule; null where one is not listed.</summary>
    public KilnSchedule? Schedule { get; init; }

    /// <summary>The kiln reckoned with; null where none takes them.</summary>
    public Kiln? Kiln { get; init; }

    public required MoistureContent Target { get; init; }

    /// <summary>Time, money and room, each with what it rests on; empty where times are not known.</summary>
    public IReadOnlyList<Traced> Figures { get; init; } = [];

    /// <summary>Whether one load pays against one after the other, in money; null where times are not known.</summary>
    public string? Pays { get; init; }

    /// <summary>What is given up by mixing; empty when nothing is.</summary>
    public required IReadOnlyList<string> GivenUp { get; init; }

    /// <summary>The answer for two stacks or more.</summary>
    /// <param name="state">The yard.</param>
    /// <param name="tags">Their tags.</param>
    /// <param name="ownersAgree">True when owners agree; else the house's setting tells.</param>
    public static Outcome<ChargeShare> Of(YardState state, IReadOnlyList<string> tags, bool ownersAgree = false)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(tags);
        var unknown = tags.Where(tag => !state.Stacks.ContainsKey(tag)).Select(tag => new Refusal("Stacks", tag, $"a stack of the book: {NearestNames.Of(tag, [.. state.Stacks.Keys])}")).ToList();
        if (unknown.Count > 0)
            return new Outcome<ChargeShare>.Refused(unknown);
        if (tags.Distinct(StringComparer.Ordinal).Count() < 2)
            return new Refusal("Stacks", tags.Count == 0 ? "none" : string.Join(", ", tags.Distinct()), "two stacks or more");

        return Answer(state, PlanFigures.Of(state), [.. tags.Distinct(StringComparer.Ordinal).Select(tag => state.Stacks[tag])], ownersAgree);
    }

    private static ChargeShare Answer(YardState state, PlanFigures figures, IReadOnlyList<Stack> stacks, bool ownersAgree)
    {
        var rules = RulesFor(state, figures, stacks, ownersAgree).ToList();
        var broken = rules.FirstOrDefault(rule => !rule.Holds);
        var kiln = Fitting(state, stacks).FirstOrDefault();
        var targets = new PlanTargets(state, figures.HouseTarget);
        var target = stacks.Min(targets.Of);
        var schedule = kiln is null ? null : Shared(stacks, kiln);
        IReadOnlyList<ShareMember> times = [.. stacks.Select(stack => new ShareMember(stack, Time(kiln, figures, stack, targets.Of(stack), null), schedule is null ? null : Time(kiln, figures, stack, target, schedule)))];
        var cost = kiln is null || times.Any(one => one.Alone is null || one.Together is null) ? null : new ShareCost(state, kiln, times);
        return new()
        {
            May = broken is null,
            Says = broken is not null ? $"No: {Lower(broken.Rule)}, {broken.Found}; {broken.Limit}." : $"Yes: every rule of the house is kept. Nearest its limit: {Nearest(figures, stacks)}.",
            Rules = rules,
            Stacks = times,
            Schedule = schedule,
            Kiln = kiln,
            Target = target,
            Figures = cost?.Figures ?? [],
            Pays = cost?.Pays,
            GivenUp = [.. GivenUpBy(stacks, schedule, targets, target)],
        };
    }

    private static IEnumerable<SharingRule> RulesFor(YardState state, PlanFigures figures, IReadOnlyList<Stack> stacks, bool ownersAgree)
    {
        var inKiln = stacks.Where(stack => stack.Stage == StackStage.InKiln || !stack.IsHere).Select(stack => stack.Tag).ToList();
        yield return new("Here", inKiln.Count == 0 ? "all wait in the yard" : $"{string.Join(", ", inKiln)} is in a kiln or gone", "stacks that wait", inKiln.Count == 0);
        var never = stacks.Where(stack => stack.NeverKiln).Select(stack => stack.Tag).ToList();
        yield return new("Never kiln", never.Count == 0 ? "none is kept out" : $"{string.Join(", ", never)} must never see a kiln", "no stack marked never kiln", never.Count == 0);
        var unproven = stacks.Where(stack => !stack.Proven).Select(stack => stack.Tag).ToList();
        yield return new("Species", unproven.Count == 0 ? string.Join(", ", stacks.Select(stack => stack.Species.CommonName).Distinct()) : $"{string.Join(", ", unproven)} is unproven", "proven species: the schedule goes by them", unproven.Count == 0);
        var soft = stacks.Select(stack => stack.Species.StainGroup == "softwood").Distinct().Count() > 1;
        yield return new("Family", soft ? "softwood with hardwood" : "alike", "hardwood with hardwood, softwood with softwood", !soft);
        var ratio = Ratio(stacks);
        yield return new("Thickness", Words($"thickest {ratio:0.00} times the thinnest"), Words($"at most {figures.ThicknessRatioMost:0.00} times (setting share_charge_thickness_ratio)"), ratio <= figures.ThicknessRatioMost + 1e-9);
        var unread = stacks.Where(stack => stack.Moisture is null).Select(stack => stack.Tag).ToList();
        var gap = Gap(stacks);
        yield return new("Moisture", unread.Count > 0 ? $"{string.Join(", ", unread)} was never read" : Words($"wettest {gap:0.0} points over the driest"), Words($"read, and at most {figures.MoistureGapMostPercent:0.0} points apart (setting share_charge_moisture_gap)"), unread.Count == 0 && gap <= figures.MoistureGapMostPercent + 1e-9);
        var owners = stacks.Select(stack => stack.Owner).Distinct().ToList();
        yield return new("Owners", owners.Count == 1 ? $"all of {owners[0]}" : string.Join(", ", owners), owners.Count > 1 && ownersAgree ? "they agree, as ticked; packs stay apart" : "one owner, or owners who agree (setting customers_share_charges); packs stay apart", owners.Count == 1 || ownersAgree || figures.CustomersShareCharges);
        var weight = stacks.Sum(stack => SawnWood.Weight(state, stack, stack.Footage).Kilograms);
        var fits = Fitting(state, stacks).Select(kiln => kiln.Name).ToList();
        yield return new("Room", fits.Count > 0 ? $"fits {string.Join(", ", fits)}" : Words($"{Room(stacks):#,0} bf as 4/4, longest piece {stacks.Max(stack => stack.LongestPiece?.Feet ?? 0.0):0.#} ft, {weight:#,0} kg"), "an air kiln that takes their room, length and weight", fits.Count > 0);
    }

    private static IEnumerable<Kiln> Fitting(YardState state, IReadOnlyList<Stack> stacks) => state.Kilns.Values
        .Where(kiln => kiln.Installed.Type != KilnType.RadioFrequencyVacuum && Room(stacks) <= kiln.Installed.CapacityBf && !(stacks.Sum(stack => SawnWood.Weight(state, stack, stack.Footage).Kilograms) > kiln.Installed.LoadMaxKg) && stacks.All(stack => stack.LongestPiece is not { } longest || longest.Metres <= kiln.Installed.PieceLengthMaxM + 0.05))
        .OrderBy(kiln => kiln.Down is not null).ThenBy(kiln => kiln.Charge is not null).ThenBy(kiln => kiln.Installed.CapacityBf);

    private static KilnSchedule? Shared(IReadOnlyList<Stack> stacks, Kiln kiln)
    {
        var listed = stacks.Select(stack => KilnSchedule.For(stack.Species, Sawn(stack))).OfType<Outcome<KilnSchedule>.Done>().Select(done => done.Value).ToList();
        return listed.Count < stacks.Count ? null : KilnSchedule.Shared(listed).LimitedTo(Temperature.FromCelsius(kiln.Installed.DryBulbMaxC));
    }

    private static TimeBand? Time(Kiln? kiln, PlanFigures figures, Stack stack, MoistureContent target, KilnSchedule? schedule)
    {
        if (kiln is null || stack.Moisture?.Mean is not { } from)
            return null;
        var forecast = KilnDrying.Forecast(new()
        {
            Species = stack.Species,
            Thickness = Sawn(stack),
            From = from,
            To = target,
            Kiln = new(kiln.Name, Temperature.FromCelsius(kiln.Installed.DryBulbMaxC)),
            Schedule = schedule,
            StepsBy = figures.StepsBy,
        });
        return forecast is Outcome<KilnForecast>.Done(var found)
            ? new TimeBand(Elapsed.FromHours(found.HoursP50), Elapsed.FromHours(found.HoursP90)).Plus(figures.FinishPerInch * stack.Thickness.Inches) : null;
    }

    private static IEnumerable<string> GivenUpBy(IReadOnlyList<Stack> stacks, KilnSchedule? schedule, PlanTargets targets, MoistureContent target)
    {
        if (schedule is not null)
        {
            foreach (var stack in stacks)
            {
                if (KilnSchedule.For(stack.Species, Sawn(stack)) is Outcome<KilnSchedule>.Done(var own) && own.Code != schedule.Code)
                    yield return $"{stack.Tag} would run {own.Name}, here it runs {schedule.Name}.";
            }
        }

        if (stacks.Where(stack => stack.Moisture?.Mean?.Percent > WetPercent && StopRisk.Stains(stack.Species)).Select(stack => stack.Tag).ToList() is { Count: > 0 } pale)
            yield return $"Colour: {string.Join(", ", pale)} is pale and over 25 %; a milder start than its own may stain it.";
        foreach (var stack in stacks.Where(stack => targets.Of(stack) > target))
            yield return Words($"{stack.Tag} is wanted at {targets.Of(stack).Percent:0.#} % and dries to {target.Percent:0.#} with the rest.");
    }

    private static string Nearest(PlanFigures figures, IReadOnlyList<Stack> stacks) =>
        (Ratio(stacks) - 1.0) / (figures.ThicknessRatioMost - 1.0) > Gap(stacks) / figures.MoistureGapMostPercent
            ? Words($"thickness, {Ratio(stacks):0.00} of {figures.ThicknessRatioMost:0.00} times") : Words($"moisture, {Gap(stacks):0.0} of {figures.MoistureGapMostPercent:0.0} points");

    private static double Ratio(IReadOnlyList<Stack> stacks) => stacks.Max(stack => stack.Thickness.Inches) / stacks.Min(stack => stack.Thickness.Inches);

    private static double Gap(IReadOnlyList<Stack> stacks)
    {
        var read = stacks.Where(stack => stack.Moisture?.Mean is not null).Select(stack => stack.Moisture!.Mean!.Value.Percent).ToList();
        return read.Count == 0 ? 0.0 : read.Max() - read.Min();
    }

    private static double Room(IReadOnlyList<Stack> stacks) => stacks.Sum(stack => KilnRoom.AsFourQuarter(stack.Footage, stack.Thickness).Count);

    private static Length Sawn(Stack stack) => stack.SawnThickness ?? stack.Thickness.Length;

    private static string Lower(string text) => char.ToLowerInvariant(text[0]) + text[1..];

    private static string Words(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}

/// <summary>What mixing costs, and what it saves.</summary>
internal sealed class ShareCost
{
    /// <summary>Time, money and room, each with what it rests on.</summary>
    public IReadOnlyList<Traced> Figures { get; }

    /// <summary>"It pays: one load saves 820 money, mixing costs 310."</summary>
    public string Pays { get; }

    public ShareCost(YardState state, Kiln kiln, IReadOnlyList<ShareMember> stacks)
    {
        var margin = state.Setting("kiln_day_margin") ?? 0.0;
        var slowest = stacks.MaxBy(one => one.Together!.Value.Half.Hours)!;
        var (together, late) = (slowest.Together!.Value.Half.Days, slowest.Together!.Value.Most.Days);
        var waits = stacks.Select(one => (one.Stack, Days: together - one.Alone!.Value.Half.Days)).ToList();
        var cost = waits.Sum(one => Math.Max(0.0, one.Days) * margin * one.Stack.Footage.Count / 1000.0);
        var apart = stacks.Sum(one => one.Alone!.Value.Half.Days);
        var saved = (apart - together) * (double)kiln.Installed.FixedPerDayMoney;
        var empty = kiln.Installed.CapacityBf - stacks.Sum(one => KilnRoom.AsFourQuarter(one.Stack.Footage, one.Stack.Thickness).Count);
        Pays = margin <= 0.0 && kiln.Installed.FixedPerDayMoney <= 0m ? "Whether it pays is not known: neither a kiln’s day (setting kiln_day_margin) nor its upkeep has a price."
            : Words($"{(saved > cost ? "It pays" : saved < cost ? "It does not pay" : "It costs what it saves")}: one load saves {saved:#,0} money, mixing costs {cost:#,0}.");
        Figures =
        [
            new("Together", Words($"{together:0.0}"), "days", Words($"likely, {late:0.0} nine times in ten; {slowest.Stack.Tag} sets the pace in {kiln.Name}, finish counted"))
            {
                Method = "kiln-sharing", Source = "kiln forecast by the shared schedule",
                Inputs = [.. stacks.Select(one => (one.Stack.Tag, Words($"{one.Together!.Value.Half.Days:0.0} days here, {one.Alone!.Value.Half.Days:0.0} alone")))],
            },
            new("Mixing costs", Words($"{cost:0}"), "money", Words($"{waits.Where(one => one.Days > 0.0).Sum(one => one.Days):0.0} days of waiting for the slowest"))
            {
                Method = "kiln-sharing", Source = "setting kiln_day_margin",
                Inputs = [.. waits.Select(one => (one.Stack.Tag, Words($"{one.Days:0.0} days more on {one.Stack.Footage.Count:#,0} bf"))), ("a day of 1,000 bf", Words($"{margin:0} money"))],
            },
            new("One load saves", Words($"{saved:0}"), "money", Words($"{apart:0.0} days one after the other against {together:0.0} at once, at {kiln.Installed.FixedPerDayMoney:0} a day of {kiln.Name}"))
            {
                Method = "kiln-sharing", Source = $"what running {kiln.Name} takes a day",
                Inputs = [("one after the other", Words($"{apart:0.0} days")), ("at once", Words($"{together:0.0} days")), ("loading and unloading saved", Words($"{(stacks.Count - 1) * (kiln.Installed.LoadHours + kiln.Installed.UnloadHours):0.#} h of two people, not counted"))],
            },
            new("Room left empty", Words($"{empty:#,0}"), "bf of 4/4", Words($"{empty * margin / 1000.0:0} money a day of {kiln.Name} unused"))
            {
                Method = "kiln-sharing", Source = "capacity of the kiln less the load in 4/4", Inputs = [("capacity", Words($"{kiln.Installed.CapacityBf:#,0} bf"))],
            },
        ];
    }

    private static string Words(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
