using System.Globalization;
using Boardwright.Drying.Board;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;
using Interruption = Boardwright.Planning.Interruption;

namespace Boardwright.Yard.UseCases;

/// <summary>One way through days on which heat is short.</summary>
/// <param name="Way">What is done.</param>
/// <param name="DaysLost">Drying days lost by the charges concerned; 0 where none is.</param>
/// <param name="Money">What it costs, orders late included.</param>
/// <param name="Enough">True when it covers the worst day.</param>
/// <param name="Basis">How it is reckoned.</param>
/// <param name="Late">Orders that come late by it, with days; empty when none does.</param>
public sealed record HeatChoice(string Way, double DaysLost, decimal Money, bool Enough, string Basis, IReadOnlyList<string> Late);

/// <summary>The ways through a shortage of heat, compared in days and money: the cheapest that is enough first.</summary>
/// <param name="ShortDays">Days on which heat is short, should what is down come back on its late day.</param>
/// <param name="WorstKw">Most that is missing.</param>
/// <param name="MissingKwh">All that is missing.</param>
/// <param name="Choices">The ways.</param>
public sealed record HeatChoices(IReadOnlyList<HeatDay> ShortDays, double WorstKw, double MissingKwh, IReadOnlyList<HeatChoice> Choices)
{
    /// <summary>The comparison over some days ahead.</summary>
    public static HeatChoices Of(YardState state, int days, IReadOnlyList<Interruption>? without = null)
    {
        ArgumentNullException.ThrowIfNull(state);
        var worst = AtWorst(state);
        var shorts = BoilerSheet.DaysOf(worst, days, without).Where(day => day.ShortKw > 0.0).ToList();
        if (shorts.Count == 0)
            return new([], 0.0, 0.0, []);

        var reckoning = new Reckoning(state, PlanFigures.Of(state), shorts);
        IReadOnlyList<HeatChoice?> all = [reckoning.ShopCooler(), reckoning.SlowDown(), reckoning.Hold(), reckoning.Postpone(), reckoning.Electric()];
        return new(shorts, shorts.Max(day => day.ShortKw), reckoning.MissingKwh, [.. all.OfType<HeatChoice>().OrderByDescending(choice => choice.Enough).ThenBy(choice => choice.Money)]);
    }

    /// <summary>The yard where all that is down comes back on its late day.</summary>
    private static YardState AtWorst(YardState state) => state with
    {
        Boilers = state.Boilers.SetItems(state.Boilers.Values.Where(boiler => boiler.Down is { BackLateOn: not null }).Select(boiler =>
            KeyValuePair.Create(boiler.Name, boiler with { Outages = boiler.Outages.Replace(boiler.Down!, boiler.Down! with { BackExpectedOn = boiler.Down!.BackLateOn }) }))),
    };

    private sealed class Reckoning(YardState state, PlanFigures figures, IReadOnlyList<HeatDay> shorts)
    {
        private const double HoursADay = 24.0;
        private const double WarmingDays = 0.5; // half a day to be hot again

        private readonly double worst = shorts.Max(day => day.ShortKw);

        public double MissingKwh => shorts.Sum(day => day.ShortKw) * HoursADay;

        public HeatChoice? ShopCooler()
        {
            var perKelvin = YardHeat.Shop(state).KilowattsPerKelvin;
            if (perKelvin <= 0.0)
                return null;
            var kelvins = worst / perKelvin;
            var enough = kelvins <= figures.ShopGivesWayKelvins;
            return new(Words($"Turn shop and house down by {kelvins:0.0} K"), 0.0, (decimal)MissingKwh * figures.ShopMoneyPerKwh, enough,
                Words($"{MissingKwh:0} kWh at {figures.ShopMoneyPerKwh:0.00} (setting shop_gives_way_money){(enough ? "" : Words($"; the house gives way by {figures.ShopGivesWayKelvins:0.#} K only"))}"), []);
        }

        // Every kiln on the boilers a little cooler: the drying slows as its coefficient falls with temperature.
        public HeatChoice? SlowDown()
        {
            var kilns = Heated();
            var perKelvin = kilns.Sum(kiln => YardHeat.Holding(kiln)!.KilowattsAt(Temperature.FromCelsius(0.0)) - YardHeat.Holding(kiln)!.KilowattsAt(Temperature.FromCelsius(1.0)));
            if (kilns.Count == 0 || perKelvin <= 0.0)
                return null;
            var (lost, late, money) = (0.0, new List<string>(), 0m);
            foreach (var kiln in kilns.Where(kiln => kiln.Charge is not null))
            {
                var charge = state.Charges[kiln.Charge!];
                var dryBulb = charge.Settings.LastOrDefault()?.DryBulb ?? YardHeat.Holding(kiln)!.Inside;
                var days = shorts.Sum(day => 1.0 - BoardPhysics.DiffusionFactor(dryBulb.Celsius - day.ShortKw / perKelvin) / BoardPhysics.DiffusionFactor(dryBulb.Celsius));
                lost += days;
                money += KilnMoney(kiln, charge.FootageIn.Count) * (decimal)days + Lateness(charge.Stacks, DryOn(charge), days, late);
            }

            var cooler = worst / perKelvin;
            return new(Words($"Let all kilns drift {cooler:0.0} K cooler on those days"), lost, money, true, Words($"{perKelvin:0.00} kW for each kelvin; drying slows with temperature as exp(-5280/T)"), late);
        }

        public HeatChoice? Hold()
        {
            // The smallest kiln whose holding heat covers the worst day coasts shut.
            if (Heated().Where(kiln => KilnKw(kiln) >= worst).OrderBy(kiln => kiln.Charge is not null).ThenBy(KilnKw).FirstOrDefault() is not { } kiln)
                return null;
            var days = shorts.Count + WarmingDays;
            var late = new List<string>();
            if (kiln.Charge is not { } tag)
                return new($"Leave {kiln.Name} cold: it is empty", 0.0, 0m, true, Words($"saves {KilnKw(kiln):0.0} kW on the worst day; load it after it"), late);
            var charge = state.Charges[tag];
            return new($"Hold {tag} in {kiln.Name}: vents shut, it coasts", days, KilnMoney(kiln, charge.FootageIn.Count) * (decimal)days + Lateness(charge.Stacks, DryOn(charge), days, late), true,
                Words($"{shorts.Count} days and half a day to be hot again, at {KilnMoney(kiln, charge.FootageIn.Count):0} a day"), late);
        }

        public HeatChoice? Postpone()
        {
            var last = shorts[^1].Date;
            if (state.PlannedCharges.Values.Where(planned => planned.InOn <= last && state.Kilns[planned.Kiln].Installed.HeatAtWaterC is not null && !state.Charges.ContainsKey(planned.Tag)).MaxBy(planned => planned.InOn) is not { } next)
                return null;
            var days = last.DayNumber + 1 - next.InOn.DayNumber;
            var kiln = state.Kilns[next.Kiln];
            var bf = next.Stacks.Sum(tag => state.Stacks[tag].Footage.Count);
            var late = new List<string>();
            return new(Words($"Postpone {next.Tag} in {next.Kiln} from {next.InOn:d MMM} to {last.AddDays(1):d MMM}"), days, KilnMoney(kiln, bf) * days + Lateness(next.Stacks, next.OutOn, days, late), KilnKw(kiln) >= worst,
                Words($"{days} days of {kiln.Name} empty at {KilnMoney(kiln, bf):0}; warming up would want several times {KilnKw(kiln):0.0} kW"), late);
        }

        public HeatChoice Electric() => new(
            Words($"Electric heat, {worst:0.0} kW"), 0.0, (decimal)(MissingKwh * figures.ElectricityMoneyPerKwh), true, Words($"{MissingKwh:0} kWh at {figures.ElectricityMoneyPerKwh:0.00} (setting electricity), if wiring and heaters are there and the local code allows them"), []);

        private List<Kiln> Heated() => [.. state.Kilns.Values.Where(kiln => kiln.Down is null && YardHeat.Holding(kiln) is not null)];

        private double KilnKw(Kiln kiln) => shorts.MaxBy(day => day.ShortKw)!.KilnsHoldKw.Where(one => one.Kiln == kiln.Name).Sum(one => one.Kw);

        private decimal KilnMoney(Kiln kiln, double bf) => kiln.Installed.FixedPerDayMoney + (decimal)((state.Setting("kiln_day_margin") ?? 0.0) * bf / 1000.0);

        private DateOnly? DryOn(Charge charge) => ChargeRun.Of(state, charge, state.Today.ToDateTime(TimeOnly.MinValue)) is Outcome<ChargeRun>.Done(var run) ? run.DryAt(forecast => forecast.HoursP50)?.Day() ?? charge.ExpectedOutOn : charge.ExpectedOutOn;

        // An order is late by what the loss goes beyond its slack.
        private decimal Lateness(IEnumerable<string> stacks, DateOnly? dry, double lost, List<string> late)
        {
            var money = 0m;
            foreach (var order in stacks.Select(tag => state.Stacks[tag].ReservedFor).OfType<string>().Distinct().Select(tag => state.Orders.GetValueOrDefault(tag)).OfType<Order>().Where(order => order.IsOpen))
            {
                var slack = dry is { } day ? order.DueOn.DayNumber - day.DayNumber : 0;
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
}
