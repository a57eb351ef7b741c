namespace Boardwright.Planning;

/// <summary>Chooses which wood serves which order once the charges stand: what makes no order later, then what costs least.</summary>
/// <remarks>Orders choose one after the other, the one that loses most by a day late first; what one takes of a stack the next cannot have.</remarks>
internal sealed class WoodChoice
{
    private readonly PlanTables tables;
    private readonly int[] turn;
    private readonly int[] left;
    private readonly int[] chosen;
    private readonly List<(int Wood, int Late, long Extra)> offers = [];

    public WoodChoice(PlanTables tables)
    {
        this.tables = tables;
        turn = [.. Enumerable.Range(0, tables.Orders.Length).OrderByDescending(o => tables.Orders[o].CentsPerDay).ThenBy(o => tables.Orders[o].DueDay)];
        left = new int[tables.Stacks.Length];
        chosen = new int[tables.Orders.Length];
    }

    /// <summary>For each order the wood it draws from as bits, or -1 where it is not met. The array is used again by the next call.</summary>
    public int[] For(TimedCharge?[] chargeOfStack)
    {
        for (var s = 0; s < left.Length; s++)
        {
            left[s] = tables.Stacks[s].YieldTenths;
        }

        foreach (var order in turn)
        {
            chosen[order] = Choose(tables.Orders[order], chargeOfStack);
        }

        return chosen;
    }

    private int Choose(OrderTable order, TimedCharge?[] chargeOfStack)
    {
        offers.Clear();
        for (var w = 0; w < order.Wood.Length; w++)
        {
            var wood = order.Wood[w];
            var charge = chargeOfStack[wood.Stack];
            if (left[wood.Stack] > 0 && (wood.Kilned ? charge is not null && charge.Unload < tables.Calendar.Steps : charge is null))
            {
                var day = charge is null ? tables.Stacks[wood.Stack].AvailableDay : tables.Calendar.DayOf(charge.Unload);
                offers.Add((w, Math.Max(0, tables.ReadyDay(order.Order.PlanerRuns, day) - order.DueDay), wood.ExtraCents));
            }
        }

        offers.Sort((a, b) => a.Late != b.Late ? a.Late.CompareTo(b.Late) : a.Extra != b.Extra ? a.Extra.CompareTo(b.Extra) : a.Wood.CompareTo(b.Wood));
        var (bits, need, count) = (0, order.QuantityTenths, 0);
        for (; count < offers.Count && need > 0; count++)
        {
            need -= left[order.Wood[offers[count].Wood].Stack];
            bits |= 1 << offers[count].Wood;
        }

        if (need > 0 || offers[count - 1].Late >= order.UnmetDays && order.UnmetDays > 0)
        {
            return -1;
        }

        // What was taken on the way and is not needed: the dearest first.
        for (var i = count - 1; i >= 0; i--)
        {
            var has = left[order.Wood[offers[i].Wood].Stack];
            if (need + has <= 0)
            {
                need += has;
                bits &= ~(1 << offers[i].Wood);
            }
        }

        Draw(order, bits);
        return bits;
    }

    private void Draw(OrderTable order, int bits)
    {
        var need = order.QuantityTenths;
        for (var w = 0; w < order.Wood.Length; w++)
        {
            if ((bits >> w & 1) != 0)
            {
                var taken = Math.Min(need, left[order.Wood[w].Stack]);
                left[order.Wood[w].Stack] -= taken;
                need -= taken;
            }
        }
    }
}
