namespace Boardwright.Planning.Solver;

/// <summary>What a yard's lateness is at least for given prices of its limits.</summary>
/// <remarks>
/// Orders pay for having wood by a day, units pay for being dried, periods for heat, days for loading. With prices in place of these limits, orders and kilns are
/// free of each other: each order takes its cheapest way, each kiln the row of charges that earns most, found exactly. The sum is true for any prices not below 0
/// (Lagrangian relaxation); it is worked out in whole numbers.
/// </remarks>
internal sealed class ChargePrices
{
    /// <summary>Parts of a cent in which prices are counted.</summary>
    public const int Parts = 1024;

    private const long Impossible = 1L << 52;

    private readonly ChargeYard yard;
    private readonly BestCharge best;
    private readonly long[] price;
    private readonly long[][] revenue; // by unit and day
    private readonly long[][] byLate; // by slot, all orders' after one another: what an order pays for having the wood by so many days late
    private readonly int[][] ranked; // by day: the units that earn something then, the most for its room first
    private readonly double[] keys;
    private readonly bool[] open;
    private readonly long[] income;
    private readonly (LoadDay? Load, int Window)[] choice;
    private readonly int[][] stacked;
    private readonly int[] stackedCount;

    public ChargePrices(ChargeYard yard)
    {
        this.yard = yard;
        best = new(yard);
        price = new long[yard.Prices];
        revenue = [.. yard.Units.Select(_ => new long[yard.Days])];
        byLate = [.. yard.Asked.SelectMany(asked => asked.Units.Select(_ => new long[asked.UnmetDays]))];
        ranked = new int[yard.Days][];
        keys = new double[yard.Units.Length];
        open = new bool[yard.Units.Length];
        var days = yard.Tables.Calendar.Days;
        income = new long[days + 1];
        choice = new (LoadDay?, int)[days + 1];
        stacked = [.. Enumerable.Range(0, days + 1).Select(_ => new int[yard.Units.Length])];
        stackedCount = new int[days + 1];
        Excess = new double[yard.Prices];
    }

    /// <summary>By price: how far the last solution goes beyond the limit; below 0 when it stays within.</summary>
    public double[] Excess { get; }

    /// <summary>Lateness, in parts of a cent, that no plan of a branch is below.</summary>
    public long Bound(double[] prices, Branch branch, ChargeUse use)
    {
        for (var i = 0; i < price.Length; i++)
        {
            price[i] = (long)Math.Round(prices[i] * Parts);
        }

        Array.Clear(Excess);
        use.Fade();
        Revenue();
        var sum = Limits() + Orders(branch, use);
        for (var kiln = 0; kiln < yard.Tables.Kilns.Length; kiln++)
        {
            sum -= Kiln(kiln, branch, use);
        }

        Later();
        return sum;
    }

    private void Revenue()
    {
        for (var u = 0; u < revenue.Length; u++)
        {
            Array.Fill(revenue[u], -price[yard.OncePrices + u]);
        }

        var index = 0;
        for (var a = 0; a < yard.Asked.Length; a++)
        {
            for (var slot = 0; slot < yard.Asked[a].Units.Length; slot++)
            {
                var (pays, at, late, income) = (byLate[index++], yard.LatePrices[a][slot], yard.LateOn[a], revenue[yard.Asked[a].Units[slot]]);
                long sum = 0;
                for (var days = pays.Length - 1; days >= 0; days--)
                {
                    pays[days] = sum += price[at + days];
                }

                for (var day = 0; day < yard.Days; day++)
                {
                    income[day] += late[day] < pays.Length ? pays[late[day]] : 0;
                }
            }
        }

        for (var day = 0; day < yard.Days; day++)
        {
            var units = Enumerable.Range(0, revenue.Length).Where(u => revenue[u][day] > 0).ToArray();
            var worth = Array.ConvertAll(units, u => -(double)revenue[u][day] / yard.Units[u].LoadTenths);
            Array.Sort(worth, units);
            ranked[day] = units;
        }
    }

    private long Limits()
    {
        long sum = 0;
        void Limit(int at, long most)
        {
            sum -= price[at] * most;
            Excess[at] -= most;
        }

        for (var u = 0; u < yard.Units.Length; u++)
        {
            Limit(yard.OncePrices + u, 1);
        }

        for (var period = 0; period < yard.HeatMost.Length; period++)
        {
            Limit(yard.HeatPrices + period, yard.HeatMost[period]);
        }

        for (var day = 0; day < yard.CrewMost.Length; day++)
        {
            Limit(yard.CrewPrices + day, yard.CrewMost[day]);
        }

        for (var row = 0; row < yard.Taken.Length; row++)
        {
            Limit(yard.TakenPrices + row, yard.Taken[row].Most);
        }

        return sum;
    }

    private long Orders(Branch branch, ChargeUse use)
    {
        var (sum, firstSlot) = (0L, 0);
        for (var a = 0; a < yard.Asked.Length; a++)
        {
            var asked = yard.Asked[a];
            var cents = asked.Order.CentsPerDay * Parts;
            var (least, way, days) = branch.LateTo[a] >= asked.UnmetDays ? (cents * asked.UnmetDays, -1, asked.UnmetDays) : (Impossible, -1, branch.LateTo[a]);
            for (var w = 0; w < asked.Ways.Length; w++)
            {
                var one = asked.Ways[w];
                var taken = TakenPrice(a, w);
                for (var late = Math.Max(one.FirstLate, branch.LateFrom[a]); late < asked.UnmetDays && late <= branch.LateTo[a]; late++)
                {
                    var cost = taken + cents * late;
                    foreach (var slot in one.Slots)
                    {
                        cost += byLate[firstSlot + slot][late];
                    }

                    if (cost < least)
                    {
                        (least, way, days) = (cost, w, late);
                    }
                }
            }

            sum += least;
            use.IsLate(a, days);
            if (way >= 0)
            {
                foreach (var slot in asked.Ways[way].Slots)
                {
                    Excess[yard.LatePrices[a][slot] + days] += 1;
                }

                foreach (var row in yard.RowsOf[a][way])
                {
                    Excess[yard.TakenPrices + row] += 1;
                }
            }

            firstSlot += asked.Units.Length;
        }

        return sum;
    }

    private long TakenPrice(int asked, int way)
    {
        long sum = 0;
        foreach (var row in yard.RowsOf[asked][way])
        {
            sum += price[yard.TakenPrices + row];
        }

        return sum;
    }

    // The row of charges that earns most, from the last day to the first.
    private long Kiln(int kiln, Branch branch, ChargeUse use)
    {
        var days = yard.Tables.Calendar.Days;
        income[days] = 0;
        for (var day = days - 1; day >= 0; day--)
        {
            income[day] = income[day + 1];
            choice[day] = default;
            var loads = yard.Loads[kiln][day];
            if (loads.Length == 0)
            {
                continue;
            }

            var priced = loads.Length > 1 && HeatIsPriced(loads);
            for (var i = 0; i < loads.Length; i++)
            {
                if (loads[i].IsQuickest != priced)
                {
                    Load(kiln, loads[i], branch);
                }
            }
        }

        Trace(kiln, use);
        return income[0];
    }

    private bool HeatIsPriced(LoadDay[] loads)
    {
        foreach (var load in loads)
        {
            foreach (var drawn in load.Heat)
            {
                if (price[yard.HeatPrices + drawn.Period] > 0)
                {
                    return true;
                }
            }
        }

        return false;
    }

    private void Load(int kiln, LoadDay load, Branch branch)
    {
        for (var u = 0; u < open.Length; u++)
        {
            open[u] = load.Unload[u] < int.MaxValue && branch.LoadFrom[u] <= load.Day && load.Day <= branch.LoadTo[u] && (kiln > 63 || (branch.Kilns[u] >> kiln & 1) != 0);
        }

        var k = yard.Tables.Kilns[kiln];
        var crew = price[yard.CrewPrices + load.Day] * k.Loading;
        var heat = default(HeatPrice);
        var next = 0;
        for (var w = 0; w < load.Windows.Length; w++)
        {
            var dry = w == 0 ? load.FirstDry : load.Windows[w - 1].Unload + 1;
            for (; next < load.Heat.Length && load.Heat[next].Period * yard.Tables.PeriodSteps < dry; next++)
            {
                heat = heat.And(load.Heat[next].Kind, price[yard.HeatPrices + load.Heat[next].Period], k.HoldTenths[load.Heat[next].Period]);
            }

            var window = load.Windows[w];
            var fix = crew + heat.Holding + heat.WarmUp * k.StructureTenths[load.WarmUp] - income[window.NextDay];
            Offer(kiln, load, window, heat, branch);
            var above = income[load.Day] + fix;
            if (best.Count > 0 && best.Find(k.CapacityTenths, Math.Max(0, above)) is var worth && worth > above && best.BestCount > 0)
            {
                income[load.Day] = worth - fix;
                choice[load.Day] = (load, w);
                stackedCount[load.Day] = best.BestCount;
                Array.Copy(best.Best, stacked[load.Day], best.BestCount);
            }
        }
    }

    private void Offer(int kiln, LoadDay load, OutWindow window, HeatPrice heat, Branch branch)
    {
        var (count, sorted) = (0, true);
        foreach (var u in ranked[window.OutDay])
        {
            if (!open[u] || load.Unload[u] > window.Unload)
            {
                continue;
            }

            var ready = Math.Max(window.OutDay, load.Ready[u]);
            var worth = ready < yard.Days && ready <= branch.ReadyBy[u] ? revenue[u][ready] : 0;
            if (heat.IsPriced && worth > 0)
            {
                worth -= heat.Of(yard.Units[u], kiln, load.WarmUp);
            }

            if (worth <= 0)
            {
                continue;
            }

            best.Worth[u] = worth;
            keys[count] = -(double)worth / yard.Units[u].LoadTenths;
            sorted &= count == 0 || keys[count - 1] <= keys[count];
            best.Offered[count++] = u;
        }

        best.Count = count;
        if (!sorted)
        {
            Array.Sort(keys, best.Offered, 0, count);
        }
    }

    private void Trace(int kiln, ChargeUse use)
    {
        var k = yard.Tables.Kilns[kiln];
        for (var day = 0; day < yard.Tables.Calendar.Days;)
        {
            if (choice[day].Load is not { } load)
            {
                day++;
                continue;
            }

            var window = load.Windows[choice[day].Window];
            Excess[yard.CrewPrices + day] += k.Loading;
            var units = stacked[day].AsSpan(0, stackedCount[day]);
            foreach (var u in units)
            {
                Excess[yard.OncePrices + u] += 1;
                use.IsLoaded(u, kiln, day);
                foreach (var (asked, slot) in yard.Serves[u])
                {
                    var late = yard.LateOn[asked][Math.Max(window.OutDay, load.Ready[u])];
                    if (late < yard.Asked[asked].UnmetDays)
                    {
                        Excess[yard.LatePrices[asked][slot] + late] -= 1;
                    }
                }
            }

            var dry = choice[day].Window == 0 ? load.FirstDry : load.Windows[choice[day].Window - 1].Unload + 1;
            foreach (var (period, kind) in load.Heat)
            {
                if (period * yard.Tables.PeriodSteps < dry)
                {
                    var drawn = k.HoldTenths[period] + (kind == DrawnKind.WarmUp ? k.StructureTenths[load.WarmUp] : 0);
                    foreach (var u in units)
                    {
                        drawn += HeatPrice.Drawn(yard.Units[u], kiln, load.WarmUp, kind);
                    }

                    Excess[yard.HeatPrices + period] += drawn;
                }
            }

            day = window.NextDay;
        }
    }

    // Having the wood by a day is having it by all later days too.
    private void Later()
    {
        for (var a = 0; a < yard.Asked.Length; a++)
        {
            foreach (var at in yard.LatePrices[a])
            {
                for (var late = 1; late < yard.Asked[a].UnmetDays; late++)
                {
                    Excess[at + late] += Excess[at + late - 1];
                }
            }
        }
    }

    /// <summary>Prices of heat, summed over the periods of a charge.</summary>
    private readonly record struct HeatPrice(long WarmUp, long Either, long Drying, long Holding)
    {
        public bool IsPriced => (WarmUp | Either | Drying) != 0;

        public static int Drawn(DayUnit unit, int kiln, int warmUp, DrawnKind kind) => kind switch
        {
            DrawnKind.WarmUp => unit.WarmTenths(kiln, warmUp),
            DrawnKind.Drying => unit.RunTenths(kiln),
            _ => Math.Min(unit.WarmTenths(kiln, warmUp), unit.RunTenths(kiln)),
        };

        public HeatPrice And(DrawnKind kind, long price, int holding) => new(
            WarmUp + (kind == DrawnKind.WarmUp ? price : 0), Either + (kind == DrawnKind.Either ? price : 0), Drying + (kind == DrawnKind.Drying ? price : 0), Holding + price * holding);

        public long Of(DayUnit unit, int kiln, int warmUp) =>
            WarmUp * Drawn(unit, kiln, warmUp, DrawnKind.WarmUp) + Either * Drawn(unit, kiln, warmUp, DrawnKind.Either) + Drying * Drawn(unit, kiln, warmUp, DrawnKind.Drying);
    }
}
