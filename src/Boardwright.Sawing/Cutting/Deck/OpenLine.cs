using Boardwright.Quantities;

namespace Boardwright.Sawing;

/// <summary>An open order line that boards can fill; what it takes and pays are the price rows that name it.</summary>
/// <param name="Name">The order, as it is called.</param>
/// <param name="Open">Board feet still wanted; what lies beyond is worth its list price.</param>
public sealed record OpenLine(string Name, BoardFeet Open);

/// <summary>A log of a deck.</summary>
/// <param name="Shape">The log.</param>
/// <param name="Rules">How it is sawn.</param>
/// <param name="Prices">The list, and the rows of order lines, each naming its line: logs of another size or quality may be worth something else.</param>
public sealed record DeckLog(LogShape Shape, SawingRules Rules, IReadOnlyList<BoardPrice> Prices);

/// <summary>What of an order line a deck fills.</summary>
/// <param name="Line">The line.</param>
/// <param name="Filled">Board feet of it, at most what was open.</param>
/// <param name="PremiumMoney">What the line pays over the list for them.</param>
public sealed record LineFill(OpenLine Line, BoardFeet Filled, double PremiumMoney);

/// <summary>Logs with a plan each, and what of the order lines they fill.</summary>
/// <param name="Plans">In the order of the logs; null for a log that gives no board. A board names the line that takes it, and its worth is list price and what the line pays over it.</param>
/// <param name="Fills">In the order of the lines.</param>
/// <param name="ValueMoney">All boards at list price and what the lines pay over it.</param>
/// <param name="BoundMoney">No choice of plans under the model is worth more.</param>
public sealed record DeckPlan(IReadOnlyList<CuttingPlan?> Plans, IReadOnlyList<LineFill> Fills, double ValueMoney, double BoundMoney)
{
    /// <summary>What might be missed at most, of the bound.</summary>
    public Share Gap => Share.FromFraction(BoundMoney <= 0.0 ? 0.0 : Math.Max(0.0, 1.0 - (ValueMoney / BoundMoney)));
}
