using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Sawing;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>One step on the way from what a log brings to what may be paid for it, in whole money, so that the column adds up as it is printed.</summary>
/// <param name="Words">Why.</param>
/// <param name="ChangeMoney">Added or taken off; null for a sum.</param>
/// <param name="LeftMoney">Left after it.</param>
public sealed record ReckonedStep(string Words, double? ChangeMoney, double LeftMoney);

/// <summary>What to pay for a log, step by step from its boards on paper to the highest price that leaves the wanted margin.</summary>
/// <param name="Steps">From the first sum to the last.</param>
/// <param name="MostToPay">The highest price that leaves the margin: likely, and of the log that yields as one in ten less and more.</param>
/// <param name="AsSlabs">Worth before profit if every slab of the plan were sold as one; null where the plan is of boards.</param>
/// <method page="docs/methods/log-worth.md"/>
public sealed record LogReckoning(IReadOnlyList<ReckonedStep> Steps, Share Margin, (double Likely, double Low, double High) MostToPay, double? AsSlabs)
{
    /// <summary>Wanted of what a log's lumber brings where the house set nothing, per cent: invented, each house has its own.</summary>
    public const double UsualMarginPct = 15.0;

    /// <summary>Wanted of what a log's lumber brings, before it is paid (setting <c>log_margin</c>).</summary>
    public static Share MarginOf(YardState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return Share.FromPercent(state.Setting("log_margin") is { } set and >= 0.0 and < 100.0 ? set : UsualMarginPct);
    }

    /// <summary>Of a log that lies here; no answer where it has no worth.</summary>
    /// <param name="state">The yard.</param>
    /// <param name="log">The log.</param>
    /// <param name="cutting">Its plan; null where it has none.</param>
    public static Outcome<LogReckoning> Of(YardState state, Log log, LogCutting? cutting)
    {
        ArgumentNullException.ThrowIfNull(log);
        return YardLog.Worth(state, log).Then<LogReckoning>(worth =>
        {
            var (sold, green) = (LogYield.SoldPerScale(state, log.Species.CommonName), worth.Scale.Count * LogYield.Next(state, log.Species.CommonName).Ratio);
            var slabs = cutting?.Plan.Boards.Count > 0 && cutting.Plan.Boards.All(board => board.Edge != BoardEdge.Square);
            var way = new Way();
            if (cutting is { Plan: { Boards.Count: > 0 } plan })
                way.FromPaper(plan, slabs, worth.PriceMoneyPerBf);
            way.ToWorth(state, worth, green, "bringing it here is not counted");
            return way.Done(MarginOf(state), worth, worth with { SoldPerScale = sold.Low }, worth with { SoldPerScale = sold.High },
                slabs ? (worth with { PriceMoneyPerBf = cutting!.Plan.ValueMoney / cutting.Plan.Footage.Count }).Money : null);
        });
    }

    /// <summary>Of a tree on the telephone, at three sizes.</summary>
    public static LogReckoning Of(YardState state, LogOffer offer)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(offer);
        var (low, likely, high) = (offer.Worth[0], offer.Worth[1], offer.Worth[2]);
        var way = new Way();
        way.ToWorth(state, likely, likely.Scale.Count * LogYield.Next(state, offer.Species.CommonName).Ratio, "the way is not counted");
        return way.Done(MarginOf(state), likely, low, high, null);
    }

    // Sums are kept whole and each change is the difference of two printed sums.
    private sealed class Way
    {
        private readonly List<ReckonedStep> steps = [];

        private double Left => steps[^1].LeftMoney;

        public void FromPaper(CuttingPlan plan, bool slabs, double price)
        {
            var (bf, mean) = (plan.Footage.Count, plan.ValueMoney / plan.Footage.Count);
            Begin(Text($"On paper: {bf:0.0} bf in {plan.Boards.Count} {(slabs ? "slabs" : "boards")} at {mean:0.00}{(slabs ? "" : ", their mean price over all grades")}"), plan.ValueMoney);
            To(Text($"Counted as dry 4/4, No. 1 Common and better, at {price:0.00}{(slabs ? ": what it surely sells as, for a slab has to find its buyer" : "")}"), bf * price);
        }

        public void ToWorth(YardState state, LogWorth worth, double green, string noHaul)
        {
            var price = worth.PriceMoneyPerBf;
            var words = Text($"{green:0.0} bf come off the saw from such a log: {green / worth.Scale.Count:0.00} of its scale of {worth.Scale.Count:0.0} bf International");
            if (steps.Count > 0)
                To(words + ". The plan sees neither knots nor slips of the saw", green * price);
            else
                Begin(words + Text($", at {price:0.00}"), green * price);
            To(Text($"{worth.Sold.Count:0.0} bf of them are sold dry as No. 1 Common and better; the rest shrinks, is cut away or is of lower grade, which is not counted"), worth.SalesMoney);
            To(Text($"Costs of {worth.CostMoneyPerBf:0.00} a bf sold: {string.Join(" + ", YardLog.Costs(state).Where(cost => cost.Money != 0.0).Select(cost => Text($"{cost.Money:0.00} {cost.What}")))}"), worth.SalesMoney - (worth.Sold.Count * worth.CostMoneyPerBf));
            if (worth.HaulMoney > 0.0)
                To("Haul", worth.Money + worth.MetalMoney);
            To(Text($"Metal: {worth.StrikesExpected:0.00} strikes expected at {worth.StrikeMoney:0}"), worth.Money);
            Sum(worth.HaulMoney > 0.0 ? "Walk away above, before profit" : $"Walk away above, before profit; {noHaul}");
        }

        public LogReckoning Done(Share margin, LogWorth worth, LogWorth low, LogWorth high, double? asSlabs)
        {
            To(Text($"Wanted margin, {margin.Percent:0.#} % of the {worth.SalesMoney:#,0} its lumber brings"), worth.MostToPay(margin));
            Sum(Left > 0.0 ? "Offer at most" : "Nothing to pay: the margin is not in it");
            return new(steps, margin, (worth.MostToPay(margin), low.MostToPay(margin), high.MostToPay(margin)), asSlabs);
        }

        private void Begin(string words, double money) => steps.Add(new(words, null, Math.Round(money)));

        private void To(string words, double money) => steps.Add(new(words, Math.Round(money) - Left, Math.Round(money)));

        private void Sum(string words) => steps.Add(new(words, null, Left));
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
