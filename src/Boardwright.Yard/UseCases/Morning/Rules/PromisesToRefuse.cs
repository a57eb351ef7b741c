using Boardwright.Drying;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>Orders not answered whose wood cannot be dry by the day in any kiln of this kind: an early no with choices keeps a customer.</summary>
internal static class PromisesToRefuse
{
    private const double WorthForecastingPercent = 30.0;
    private const decimal GoodWillShare = 0.1m;

    public static IEnumerable<DayTask> Of(YardState state, SeasonNow season)
    {
        foreach (var order in state.Orders.Values.Where(order => order.IsOpen))
        {
            foreach (var line in order.Lines.Where(line => line is { IsFilled: false, Answer: null, Asked.NeverKiln: false }))
            {
                // What the season's plan does meet is not refused: late or at risk, another rule names it.
                if (season.Of(order.Tag, line.Asked.Line) is { Standing: not PromiseStanding.Cannot })
                    continue;
                if (Wettest(state, line.Asked) is not { Moisture: { Mean: { } mean } reading } stack || mean.Percent < WorthForecastingPercent)
                    continue;
                var target = MoistureContent.FromPercent(line.Asked.McHighPct ?? 8.0);
                if (KilnDrying.Forecast(new KilnDryingInput { Species = stack.Species, Thickness = stack.Thickness.Length, From = mean, To = target, Kiln = KilnEquipment.Conventional }) is not Outcome<KilnForecast>.Done(var kiln))
                    continue;
                var free = FreeOn(state, season);
                var left = line.Asked.DueOn.DayNumber - free.DayNumber;
                if (kiln.HoursP10 / 24.0 <= left)
                    continue;
                var worth = WoodWorth.Of(state, line.Asked);
                var overdue = DateOnly.FromDateTime(order.TakenAt).AddDays(SheetSettings.AnswerDays).DayNumber - state.Today.DayNumber;
                yield return new(order.Tag, $"Say no to {order.Customer} today, with choices.",
                    $"{line.Asked.Goods}: {stack.Tag} stands at {mean.Percent:0} % ({DayWords.Of(reading.At, state.Today)}). Offer other stock, thinner stock, part now, or a later day.",
                    new("Kiln days", $"{kiln.HoursP10 / 24.0:0}", "days", $"at least; {Math.Max(0, left)} left once a kiln is free, {DayWords.Of(free, state.Today)}")
                    {
                        Method = "kiln-time",
                        Source = kiln.Origin,
                        Inputs = [("from", $"{mean.Percent:0.0} %"), ("to", $"{target.Percent:0.#} %"), ("wood", $"{stack.Species.CommonName} {stack.Thickness}"), ("early, likely, late", $"{kiln.HoursP10 / 24.0:0}, {kiln.HoursP50 / 24.0:0}, {kiln.HoursP90 / 24.0:0} days")],
                    },
                    new((worth?.Money ?? order.LatePerDayMoney) * GoodWillShare, Math.Max(1, overdue), $"a tenth of {worth?.Basis ?? "a day late"}, the good will of somebody told late: common practice"), Duties.Office, $"/promises/{order.Tag}", $"Open {order.Tag}")
                { Standing = "cannot" };
            }
        }
    }

    // The first day on which one of the heated kilns has nothing running or planned in it any more.
    private static DateOnly FreeOn(YardState state, SeasonNow season) => season.Sheet is { } sheet
        ? sheet.Kilns.Where(row => state.Kilns[row.Kiln].Installed.HeatAtWaterC is not null).Select(row => row.Charges.Select(charge => charge.Out.Day()).Append(state.Today).Max()).DefaultIfEmpty(state.Today).Min()
        : state.Kilns.Values.Where(kiln => kiln.Installed.HeatAtWaterC is not null).Select(kiln =>
        state.Charges.Values.Where(charge => charge.IsRunning && charge.Kiln == kiln.Name).Select(charge => ChargeEnd.OutDay(state, charge) ?? state.Today)
            .Concat(state.PlannedCharges.Values.Where(planned => planned.Kiln == kiln.Name && !state.Charges.ContainsKey(planned.Tag)).Select(planned => planned.OutOn))
            .Append(state.Today).Max()).DefaultIfEmpty(state.Today).Min();

    private static Stack? Wettest(YardState state, OrderLine line) =>
        line.Stacks.Select(tag => state.Stacks.GetValueOrDefault(tag)).OfType<Stack>().Where(stack => stack.Stage == StackStage.AirDrying).MaxBy(stack => stack.Moisture?.Mean?.Fraction ?? 0.0);
}
