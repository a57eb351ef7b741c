using System.Globalization;
using Boardwright.Drying.Board;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>What each way through short days costs.</summary>
internal sealed class HeatReckoning(YardState state, PlanFigures figures, IReadOnlyList<HeatDay> shorts, IReadOnlyList<HeatUse> uses)
{
    private const double HoursADay = 24.0;
    private const double WarmingDays = 0.5; // half a day to be hot again
    private const double DriftMostKelvins = 10.0; // cooler still and it is another schedule: common practice, no source

    private readonly HeatDay worst = shorts.MaxBy(day => day.ShortKw)!;

    public double MissingKwh => shorts.Sum(day => day.ShortKw) * HoursADay;

    private double ShopKwPerKelvin => YardHeat.Shop(state).KilowattsPerKelvin;

    public HeatChoice? ShopCooler()
    {
        if (ShopKwPerKelvin <= 0.0)
            return null;
        var kelvins = worst.ShortKw / ShopKwPerKelvin;
        if (kelvins <= figures.ShopGivesWayKelvins)
            return new(Words($"Turn shop and house down by {kelvins:0.0} °C"), 0.0, (decimal)MissingKwh * figures.ShopMoneyPerKwh, true, Words($"{MissingKwh:0} kWh, each counted {figures.ShopMoneyPerKwh:0.00} in the house"), []);
        var most = figures.ShopGivesWayKelvins * ShopKwPerKelvin;
        return new(
            Words($"Turn shop and house down by {figures.ShopGivesWayKelvins:0.#} °C"), 0.0, (decimal)(shorts.Sum(day => Math.Min(day.ShortKw, most)) * HoursADay) * figures.ShopMoneyPerKwh, false,
            Words($"{most:0.0} of {worst.ShortKw:0.0} kW: the house gives way no further"), []);
    }

    /// <summary>Every kiln that is hot a little cooler: the drying slows as its coefficient falls with temperature.</summary>
    public HeatChoice? SlowDown()
    {
        var cooler = shorts.Select(day => (day.Date, Kelvins: PerKelvin(day) is > 0.0 and var one ? day.ShortKw / one : double.PositiveInfinity)).ToList();
        var most = cooler.Max(day => day.Kelvins);
        if (double.IsInfinity(most))
            return null;
        var (lost, late, money) = (0.0, new List<string>(), 0m);
        foreach (var use in uses)
        {
            var days = cooler.Where(day => use.IsIn(day.Date)).Sum(day => Slower(use, Math.Min(day.Kelvins, DriftMostKelvins)));
            lost += days;
            money += Money(use) * (decimal)days + Lateness(use, days, late);
        }

        return most <= DriftMostKelvins
            ? new(Words($"Let all hot kilns drift {most:0.0} °C cooler on those days"), lost, money, true, Words($"{PerKelvin(worst):0.00} kW for each degree; cooler wood dries slower"), late)
            : new(Words($"Let all hot kilns drift {DriftMostKelvins:0} °C cooler on those days"), lost, money, false, Words($"{PerKelvin(worst):0.00} kW for each degree: {PerKelvin(worst) * DriftMostKelvins:0.0} of {worst.ShortKw:0.0} kW; cooler still is another schedule"), late);
    }

    /// <summary>One kiln shut and coasting on the short days, with one charge in it on all of them: the smallest that is enough, else the largest.</summary>
    public HeatChoice? Hold()
    {
        var found = MayRest()
            .Select(one => (one.Kiln, one.Use, one.Kw, Still: Rest(one.Kiln.Name, DateOnly.MinValue)))
            .OrderBy(one => one.Still.WorstKw > 0.0).ThenBy(one => one.Use is not null).ThenBy(one => one.Still.WorstKw > 0.0 ? -one.Kw : one.Kw).ToList();
        if (found is not [var (kiln, use, kw, rest), ..])
            return null;
        if (use is null)
            return WithShop($"Leave {kiln.Name} cold: nothing is planned in it then", 0.0, 0m, rest, Words($"saves {kw:0.0} kW on the worst day"), []);
        var days = shorts.Count + WarmingDays;
        var late = new List<string>();
        var money = Money(use) * (decimal)days + Lateness(use, days, late);
        return WithShop($"Hold {use.Name} in {kiln.Name}: vents shut, it coasts", days, money, rest, Words($"saves {kw:0.0} kW on the worst day; {shorts.Count} {(shorts.Count == 1 ? "day" : "days")} and half a day to be hot again, at {Money(use):0} a day"), late);
    }

    /// <summary>The last load before the end of the short days is put in after them.</summary>
    public HeatChoice? Postpone()
    {
        var last = shorts[^1].Date;
        if (uses.Where(use => !use.Runs && use.In >= state.Today && use.In <= last).MaxBy(use => use.In) is not { } next)
            return null;
        var days = last.DayNumber + 1 - next.In.DayNumber;
        var late = new List<string>();
        var money = Money(next) * days + Lateness(next, days, late);
        return WithShop(Words($"Load {next.Name} in {next.Kiln.Name} on {DayWords.Of(last.AddDays(1), state.Today)} instead of {DayWords.Of(next.In, state.Today)}"), days, money, Rest(next.Kiln.Name, next.In),
            Words($"{days} {(days == 1 ? "day" : "days")} of {next.Kiln.Name} empty at {Money(next):0}; saves {Draws(next.Kiln.Name, worst):0.0} kW on the worst day"), late);
    }

    /// <summary>Electric heaters the house has written in, as far as they go; null where it has none.</summary>
    public HeatChoice? Electric()
    {
        if (ElectricKw <= 0.0)
            return null;
        var kwh = shorts.Sum(day => Math.Min(day.ShortKw, ElectricKw)) * HoursADay;
        return new(
            Words($"Electric heat, {Math.Min(worst.ShortKw, ElectricKw):0.0} kW"), 0.0, (decimal)(kwh * figures.ElectricityMoneyPerKwh), worst.ShortKw <= ElectricKw,
            Words($"{kwh:0} kWh at {figures.ElectricityMoneyPerKwh:0.00} a kWh, of {ElectricKw:0.#} kW the house has, where wiring and the local code allow it"), []);
    }

    /// <summary>The cheapest two or three ways that together are enough; null where none are.</summary>
    public HeatChoice? Together()
    {
        var last = shorts[^1].Date;
        var remedies = MayRest().Select(one => new HeatRemedy(
            _ => one.Use is null ? $"leave {one.Kiln.Name} cold" : $"hold {one.Use.Name} in {one.Kiln.Name}, vents shut", Kilowatts((kiln, kw, _) => kiln == one.Kiln.Name ? kw : 0.0), Lost(use => use == one.Use ? shorts.Count + WarmingDays : 0.0))).ToList();
        if (uses.Where(use => !use.Runs && use.In >= state.Today && use.In <= last).MaxBy(use => use.In) is { } next)
            remedies.Add(new(_ => Words($"load {next.Name} in {next.Kiln.Name} on {DayWords.Of(last.AddDays(1), state.Today)} instead of {DayWords.Of(next.In, state.Today)}"),
                Kilowatts((kiln, kw, day) => kiln == next.Kiln.Name && day >= next.In ? kw : 0.0), Lost(use => use == next ? last.DayNumber + 1 - next.In.DayNumber : 0.0)));
        remedies.Add(new(_ => Words($"let all hot kilns drift {DriftMostKelvins:0} °C cooler"), Kilowatts((kiln, kw, _) => kw > 0.0 ? Math.Min(kw, KilnPerKelvin(kiln) * DriftMostKelvins) : 0.0),
            Lost(use => shorts.Count(day => use.IsIn(day.Date)) * Slower(use, DriftMostKelvins))));
        if (ShopKwPerKelvin > 0.0)
            remedies.Add(new(kw => Words($"turn shop and house down by {kw / ShopKwPerKelvin:0.0} °C"), Kilowatts((_, _, _) => 0.0), Lost(_ => 0.0), figures.ShopGivesWayKelvins * ShopKwPerKelvin, figures.ShopMoneyPerKwh));
        if (ElectricKw > 0.0)
            remedies.Add(new(kw => Words($"electric heat, {kw:0.0} kW"), Kilowatts((_, _, _) => 0.0), Lost(_ => 0.0), ElectricKw, (decimal)figures.ElectricityMoneyPerKwh));
        if (HeatTogether.Cheapest([.. shorts.Select(day => day.ShortKw)], remedies, lost => Priced(lost, [])) is not { } best)
            return null;
        var way = string.Join("; ", best.Parts.Select(part => part.Remedy.Way(part.PeakKw)));
        var late = new List<string>();
        Priced(best.DaysLost, late);
        return new($"Together: {way}", best.DaysLost.Sum(), best.Money, true, "None of these is enough alone; of two or three that are together, these cost least", late);
    }

    private double ElectricKw => figures.ElectricHeatersKw;

    private double[][] Kilowatts(Func<string, double, DateOnly, double> saved) => [.. shorts.Select(day => day.KilnsHoldKw.Select(one => saved(one.Kiln, one.Kw, day.Date)).ToArray())];

    private double[] Lost(Func<HeatUse, double> days) => [.. uses.Select(days)];

    private decimal Priced(IReadOnlyList<double> lost, List<string> late) => uses.Zip(lost).Where(one => one.Second > 0.0).Sum(one => Money(one.First) * (decimal)one.Second + Lateness(one.First, one.Second, late));

    // Kilns that may stand without heat on all short days: empty by the plan, or with one charge in them throughout.
    private IEnumerable<(Kiln Kiln, HeatUse? Use, double Kw)> MayRest() => shorts[0].KilnsHoldKw.Select(kiln => (Kiln: state.Kilns[kiln.Kiln], Use: uses.FirstOrDefault(use => use.Kiln.Name == kiln.Kiln && use.IsIn(worst.Date)), Kw: Draws(kiln.Kiln, worst)))
            .Where(one => one.Kw > 0.0 && one.Kiln.Down is null && (one.Use is null ? !uses.Any(use => use.Kiln == one.Kiln && use.In <= shorts[^1].Date && use.Dry >= shorts[0].Date) : one.Use.In < shorts[0].Date && one.Use.Dry >= shorts[^1].Date));

    // A little that is still missing is taken from the shop, as far as it gives way.
    private HeatChoice WithShop(string way, double days, decimal money, (double WorstKw, double Kwh) rest, string basis, List<string> late)
    {
        if (rest.WorstKw <= 0.0)
            return new(way, days, money, true, basis, late);
        var kelvins = ShopKwPerKelvin > 0.0 ? rest.WorstKw / ShopKwPerKelvin : double.PositiveInfinity;
        return kelvins <= figures.ShopGivesWayKelvins
            ? new(Words($"{way}; turn the shop down by {kelvins:0.0} °C"), days, money + (decimal)rest.Kwh * figures.ShopMoneyPerKwh, true, basis, late)
            : new(way, days, money, false, Words($"{basis}; still short {rest.WorstKw:0.0} kW at worst"), late);
    }

    // What is still missing with one kiln drawing nothing from a day on.
    private (double WorstKw, double Kwh) Rest(string kiln, DateOnly from)
    {
        var rest = shorts.Select(day => Math.Max(0.0, day.ShortKw - (day.Date >= from ? Draws(kiln, day) : 0.0))).ToList();
        return (rest.Max(), rest.Sum() * HoursADay);
    }

    private static double Draws(string kiln, HeatDay day) => day.KilnsHoldKw.Where(one => one.Kiln == kiln).Sum(one => one.Kw);

    private double PerKelvin(HeatDay day) => day.KilnsHoldKw.Where(one => one.Kw > 0.0).Sum(one => KilnPerKelvin(one.Kiln));

    private double KilnPerKelvin(string kiln) => YardHeat.Holding(state.Kilns[kiln])!.KilowattsAt(Temperature.FromCelsius(0.0)) - YardHeat.Holding(state.Kilns[kiln])!.KilowattsAt(Temperature.FromCelsius(1.0));

    // Share of a day lost by drying so much cooler.
    private double Slower(HeatUse use, double kelvins)
    {
        var dryBulb = (use.Runs ? state.Charges.GetValueOrDefault(use.Name)?.Settings.LastOrDefault()?.DryBulb : null) ?? YardHeat.Holding(use.Kiln)!.Inside;
        return 1.0 - BoardPhysics.DiffusionFactor(dryBulb.Celsius - kelvins) / BoardPhysics.DiffusionFactor(dryBulb.Celsius);
    }

    private decimal Money(HeatUse use) => use.Kiln.Installed.FixedPerDayMoney + (decimal)((state.Setting("kiln_day_margin") ?? 0.0) * use.Bf / 1000.0);

    // An order is late by what the loss goes beyond its slack.
    private decimal Lateness(HeatUse use, double lost, List<string> late)
    {
        var money = 0m;
        foreach (var order in use.Orders.Select(tag => state.Orders.GetValueOrDefault(tag)).OfType<Order>().Where(order => order.IsOpen))
        {
            var slack = use.Dry == DateOnly.MaxValue ? 0 : order.DueOn.DayNumber - use.Dry.DayNumber;
            var days = Math.Ceiling(lost - Math.Max(0, slack));
            if (days <= 0.0)
                continue;
            money += (decimal)days * order.LatePerDayMoney;
            late.Add(Words($"{order.Tag} by {days:0} {(days == 1.0 ? "day" : "days")}"));
        }

        return money;
    }

    private static string Words(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
