using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.Lineage;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>One kind of cost in an account.</summary>
public sealed record CostLine(string What, double Money);

/// <summary>What wood has cost so far, by kind, and what is not on record.</summary>
/// <param name="Lines">Kinds in the order they first came.</param>
/// <param name="Missing">What could not be counted, in words; empty when the account is whole.</param>
public sealed record CostAccount(IReadOnlyList<CostLine> Lines, IReadOnlyList<string> Missing)
{
    public static CostAccount None { get; } = new([], []);

    public double Money => Lines.Sum(line => line.Money);

    internal CostAccount Plus(string what, double money) => Plus(new([new(what, money)], []));

    internal CostAccount Plus(CostAccount other) => new(
        [.. Lines.Concat(other.Lines).GroupBy(line => line.What).Select(group => new CostLine(group.Key, group.Sum(line => line.Money)))], [.. Missing.Union(other.Missing)]);

    internal CostAccount Part(double part) => new([.. Lines.Select(line => line with { Money = line.Money * part })], Missing);

    internal CostAccount Lacks(string what) => this with { Missing = [.. Missing.Append(what).Distinct()] };
}

/// <summary>Follows the way of the wood and adds what each step cost. Wood of a customer has a cost too: what was done to it.</summary>
public sealed class WoodCost(YardState state, WoodWay way, CostRates rates)
{
    private readonly Dictionary<string, CostAccount> known = new(StringComparer.Ordinal);

    /// <summary>What all the wood of a step has cost by the time it became that, and since.</summary>
    public CostAccount Of(string key)
    {
        if (known.TryGetValue(key, out var account))
            return account;
        var step = way.Steps[key];
        var before = way.Into(key).Aggregate(CostAccount.None, (sum, flow) => sum.Plus(Carried(flow)));
        return known[key] = step.Form switch
        {
            WoodForm.Log => Log(state.Logs[step.Tag], step.Bf),
            WoodForm.Stack => Stacked(step, before),
            WoodForm.FromKiln or WoodForm.InKiln => Dried(step, before),
            WoodForm.Dressed => before.Plus("planing", CostRules.Planing(rates, way.Into(key).Sum(flow => flow.Bf))),
            WoodForm.Pack => before.Plus("tally, packing, storage", step.Bf * rates.PackingMoneyPerBf),
            WoodForm.Shipped => before.Plus("tally, packing, storage", way.Into(key).Where(flow => way.Steps[flow.From].Form != WoodForm.Pack).Sum(flow => flow.Bf) * rates.PackingMoneyPerBf),
            _ => before,
        };
    }

    // The part of the step before that went this way, and interest for the days it lay there.
    private CostAccount Carried(WoodFlow flow)
    {
        var (from, to) = (way.Steps[flow.From], way.Steps[flow.To]);
        var part = Of(flow.From).Part(flow.Share);
        return part.Plus("interest", CostRules.Interest(rates, part.Money, Math.Max((to.At - from.At).TotalDays, 0.0)));
    }

    private CostAccount Log(Log log, double sawnBf)
    {
        var account = CostAccount.None.Plus("logs", (double)(log.PaidMoney ?? 0m)).Plus("log yard and loader", sawnBf * rates.LogYardMoneyPerBf);
        if (log.PaidMoney is null && log.Owner == "mill")
            account = account.Lacks($"price paid for {log.Tag}");
        if (log.EndCoated)
            account = account.Plus("end coating", sawnBf * rates.EndCoatMoneyPerBf);
        var own = log.History.Select(number => state.Entry(number).Fact).OfType<BladeStruck>().Where(strike => strike.ChargedTo is null).Sum(strike => (double)strike.CostMoney);
        account = own > 0.0 ? account.Plus("metal strikes", own) : account;
        return log.IsSawn ? account.Plus("sawing", CostRules.Sawing(rates, sawnBf, log.MillHours)) : account;
    }

    private CostAccount Stacked(WoodStep step, CostAccount before)
    {
        // A stack that grew after boards left it goes on as another step: only what came is stickered then.
        var stickered = way.Into(step.Key).Where(flow => way.Steps[flow.From] is { Form: WoodForm.Stack } from && from.Tag == step.Tag).Sum(flow => flow.Bf);
        var account = before.Plus("stickering", CostRules.Stickering(rates, step.Bf - stickered));
        var logged = way.Into(step.Key).Sum(flow => flow.Bf);
        return logged + 0.5 < step.Bf ? account.Lacks($"logs of {step.Bf - logged:0} bf of {step.Tag}") : account;
    }

    private CostAccount Dried(WoodStep step, CostAccount before)
    {
        var flow = way.Into(step.Key).Single();
        var run = KilnRun.Of(state, way.Steps[flow.From], step, flow.Bf);
        var kiln = run.Kiln.Installed;
        var account = before
            .Plus("kiln days", CostRules.KilnDays((double)kiln.FixedPerDayMoney, run.Days, run.Share))
            .Plus("kiln loading", CostRules.KilnLoading(rates, kiln.LoadHours, step.Form == WoodForm.FromKiln ? kiln.UnloadHours : 0.0, run.Share))
            .Plus("kiln electricity", kiln.FansKw * 24.0 * run.Days * run.Share * rates.ElectricityMoneyPerKwh);
        if (run.HeatKwh is not { } heat)
            return account.Lacks($"heat of {step.Tag} in {step.Charge}: moisture or settings not on record");
        if (run.IsRadioFrequency)
            return account.Plus("kiln electricity", CostRules.RadioFrequencyKwh(rates, heat) * rates.ElectricityMoneyPerKwh);
        return account.Plus("kiln heat", CostRules.BoilerHeat(rates, heat));
    }
}
