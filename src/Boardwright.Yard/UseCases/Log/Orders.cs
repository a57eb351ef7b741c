using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Sawing;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;
using LogState = Boardwright.Yard.Book.State.Log;

namespace Boardwright.Yard.UseCases;

/// <summary>Which open order lines a cutting plan sees.</summary>
public enum OrdersWanted
{
    /// <summary>What is missing beyond the stacks kept for them.</summary>
    Missing,

    /// <summary>All that is open, as if no stack were kept for it.</summary>
    Whole,

    /// <summary>None: list prices alone.</summary>
    None,
}

/// <summary>An order line that a log's boards can fill.</summary>
/// <param name="Order">The order.</param>
/// <param name="Asked">The line.</param>
/// <param name="DryBf">Wanted, dry.</param>
/// <param name="Open">Wanted off the saw, green.</param>
public sealed record WantedLine(Order Order, OrderLine Asked, double DryBf, OpenLine Open);

/// <summary>Order lines as a cutting plan takes them: a board that fills one is worth its price until the line is full.</summary>
public static class LogOrders
{
    private const double UsualPremiumPct = 10.0;
    private const double Enough = 1.0;
    private static readonly Length Narrowest = Length.FromInches(3.0);
    private static readonly Length Shortest = Length.FromFeet(4.0);

    /// <summary>Lines that want wood of a log, the first due first.</summary>
    public static IReadOnlyList<WantedLine> Of(YardState state, LogState log, OrdersWanted wanted)
    {
        ArgumentNullException.ThrowIfNull(log);
        return log is { Proven: true, Owner: "mill" } && log.PlannedFor != "hold" ? [.. All(state, wanted).Where(line => line.Asked.Species == log.Species.CommonName)] : [];
    }

    /// <summary>Every line counted in board feet of a wood and a thickness.</summary>
    public static IReadOnlyList<WantedLine> All(YardState state, OrdersWanted wanted)
    {
        ArgumentNullException.ThrowIfNull(state);
        if (wanted == OrdersWanted.None)
            return [];
        return
        [
            .. from order in state.Orders.Values
               where order.IsOpen
               from line in order.Lines
               where !line.IsFilled && line.Asked is { CustomerWood: false, Species: not null, ThicknessQuarters: not null }
               let dry = wanted == OrdersWanted.Missing ? LogTurns.Missing(state, order, line.Asked) : Math.Max(0.0, ((WoodWorth.FootageOf(line.Asked) ?? 0.0) * (1.0 - (line.Shipped / line.Asked.Quantity))))
               where dry >= Enough
               orderby line.Asked.DueOn, order.Tag, line.Asked.Line
               select new WantedLine(order, line.Asked, dry, new OpenLine(order.Lines.Count > 1 ? string.Create(CultureInfo.InvariantCulture, $"{order.Tag}, line {line.Asked.Line}") : order.Tag, BoardFeet.From(dry * GreenPerDry(state)))),
        ];
    }

    /// <summary>Green board feet off the saw for one dry board foot delivered: shrinkage, falldown and what is not good enough, the house's chain of factors.</summary>
    public static double GreenPerDry(YardState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return LogYield.Prior(state).Ratio / (state.Setting("dry_sold_per_international") is { } sold and > 0.0 ? sold : LogYield.Prior(state).Ratio);
    }

    /// <summary>What a board sold is worth over one laid by, where its order states no price: setting order_premium, else 10 % (common practice).</summary>
    public static double PremiumPct(YardState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state.Setting("order_premium") ?? UsualPremiumPct;
    }

    /// <summary>What the line pays for boards of a log: its own price where it states one, else so much over the list, as a board sold is worth more than one laid by.</summary>
    internal static IEnumerable<BoardPrice> Rows(YardState state, WantedLine line, IEnumerable<BoardPrice> list, (double Fas, double Common, double Second, double Below) shares)
    {
        var premium = 1.0 + (PremiumPct(state) / 100.0);
        var shortest = line.Asked.PieceLengthMinM is { } asked ? Length.FromMetres(asked) : Shortest;
        foreach (var row in list.Where(row => row.Edge == BoardEdge.Square && (line.Asked.Grain == Grain.Quarter ? row.Grain == BoardGrain.Quartered : row.Grain is null)))
        {
            // A stated price is for what is good enough; the rest of the board's foot goes to the list.
            var money = line.Asked.PriceMoneyPerBf is { } stated ? ((shares.Fas + shares.Common) * (double)stated) + Lesser(state, line, shares) : row.MoneyPerBoardFoot * premium;
            yield return row with
            {
                Grade = $"{line.Open.Name}, {row.Grade}",
                MoneyPerBoardFoot = Math.Max(0.0, money),
                Order = line.Open.Name,
                WidthMin = row.WidthMin > Narrowest ? row.WidthMin : Narrowest,
                LengthMin = row.LengthMin > shortest ? row.LengthMin : shortest,
            };
        }
    }

    // What of a board's foot is sold below No. 1 Common, at its share.
    private static double Lesser(YardState state, WantedLine line, (double Fas, double Common, double Second, double Below) shares) =>
        (shares.Second * (double)(state.Prices.GetValueOrDefault(line.Asked.Species!)?.Dry2aMoney ?? 0m)) + (shares.Below * (state.Setting("below_2a") ?? 0.0));
}
