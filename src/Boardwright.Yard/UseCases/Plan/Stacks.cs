using Boardwright.Drying;
using Boardwright.Drying.Heat;
using Boardwright.Drying.Vacuum;
using Boardwright.Planning;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using BookState = Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>Stacks and running charges as the planner sees them: times by load day, heat, yield, worth.</summary>
internal sealed class PlanStacks(YardState state, PlanFigures figures, int days, WeatherSeries weather, PlanTargets targets)
{
    private const int EveryDays = 7; // times are forecast for one load day a week and joined by straight lines
    private const double LongestInPlan = 1.25; // a kiln that takes longer than this many plans is closed to the stack
    private static readonly Elapsed LeastLeft = Elapsed.FromHours(6.0);

    private OutsideAir Outside => new(
        Temperature.FromCelsius(weather.Days.Average(day => day.MeanCelsius)),
        RelativeHumidity.FromPercent(weather.Days.Average(day => day.HumidityPercent)));

    /// <summary>A stack for the plan; refused with the reason it cannot be planned.</summary>
    public Outcome<Planning.Stack> Of(BookState.Stack stack)
    {
        if (!stack.Proven)
        {
            return new Refusal(stack.Tag, "unproven species", "wood whose species is proven");
        }

        if (stack.Stage is BookState.StackStage.InKiln or BookState.StackStage.KilnDried or BookState.StackStage.Dressed)
        {
            return Planned(stack, StackYield.Of(state, stack, targets)?.From ?? targets.Of(stack), [], new(1, 1));
        }

        return stack.Moisture is { } reading
            ? Waiting(stack, PlanMoisture.Of(state, stack, reading))
            : new Refusal(stack.Tag, "no reading", "a stack that was read: moisture decides its time");
    }

    /// <summary>A charge in its kiln: how long it still takes.</summary>
    public Outcome<StartedCharge> Of(BookState.Charge charge)
    {
        var kiln = state.Kilns[charge.Kiln];
        var midnight = state.Today.ToDateTime(TimeOnly.MinValue);
        var stacks = charge.StacksInside.Select(tag => state.Stacks[tag]).ToList();
        return Longest(stacks.Select(stack => PlanTimes.IsVacuum(kiln) ? InVacuum(charge, kiln, stack) : InAir(charge, kiln, stack))).Then<StartedCharge>(left =>
        {
            var (cold, coldMost) = NoHeat.Stands(state, kiln);
            var half = Later(left.Since - midnight, left.Band.Half) + cold;
            var most = Later(left.Since - midnight, left.Band.Most) + coldMost;
            return new StartedCharge(charge.Tag, charge.Kiln, [.. stacks.Select(stack => stack.Tag)], half, most < half ? half : most, left.Running);
        });
    }

    /// <summary>Board feet a stack gives once dry, likely, with the low and high of the mill's own record of falldown.</summary>
    public (double Low, double Likely, double High) Yield(BookState.Stack stack) =>
        StackYield.Of(state, stack, targets) is { } known ? (known.Low, known.Likely, known.High) : (stack.Footage.Count, stack.Footage.Count, stack.Footage.Count);

    private Planning.Stack Waiting(BookState.Stack stack, PlanMoisture moisture)
    {
        var times = stack.NeverKiln ? [] : state.Kilns.Values.Select(kiln => Time(kiln, stack, moisture)).OfType<(DryingTime Time, ScheduleMildness Mildness)>().ToList();
        return Planned(stack, moisture.On(0).Likely, [.. times.Select(time => time.Time)], times.Count > 0 ? times[0].Mildness : new(1, 1));
    }

    private Planning.Stack Planned(BookState.Stack stack, MoistureContent moisture, IReadOnlyList<DryingTime> times, ScheduleMildness mildness)
    {
        var yield = BoardFeet.From(Yield(stack).Likely);
        var mayGain = times.Count > 0;
        return new(
            stack.Tag, stack.Species.StainGroup == "softwood" ? "softwood" : "hardwood", stack.Thickness.Length, stack.LongestPiece ?? Length.FromFeet(0.1), stack.Footage,
            KilnRoom.AsFourQuarter(stack.Footage, stack.Thickness), yield, moisture, mildness, stack.Owner, stack.Owner == "mill" || figures.CustomersShareCharges,
            stack.NeverKiln, null, state.Today, targets.HeatedTo(stack), times, mayGain ? PlanWorth.Gain(state, stack, yield) : 0m,
            mayGain ? PlanWorth.WaitingPerDay(state, stack, yield, figures.InterestPercentPerYear) : 0m)
        {
            Weight = SawnWood.Weight(state, stack, stack.Footage, moisture),
        };
    }

    private (DryingTime Time, ScheduleMildness Mildness)? Time(BookState.Kiln kiln, BookState.Stack stack, PlanMoisture moisture) =>
        PlanTimes.IsVacuum(kiln) ? VacuumTime(kiln, stack, moisture) : KilnTime(kiln, stack, moisture);

    private (DryingTime, ScheduleMildness)? KilnTime(BookState.Kiln kiln, BookState.Stack stack, PlanMoisture moisture)
    {
        var times = PlanTimes.InKiln(kiln, stack.Species, stack.Thickness.Length, targets.Of(stack), figures.StepsBy);
        var load = new KilnLoad(OvenDry(stack), moisture.On(0).Likely, Outside.Temperature);
        if (ByDay(day => times.From(moisture.On(day).Likely, moisture.On(day).ErrorPoints).Then<TimeBand>(band => band.Plus(Finish(stack)))) is not { } bands
            || times.ForecastNear(moisture.On(0).Likely) is not Outcome<KilnForecast>.Done(var forecast)
            || KilnRunHeat.Of(forecast, load, Outside) is not Outcome<KilnRunHeat>.Done(var heat))
        {
            return null;
        }

        return (new(kiln.Name, [.. bands.Select(band => band.Half)], [.. bands.Select(band => band.Most)], heat.WarmUp, heat.Running, heat.Drying),
            forecast.Schedule.Code is { } code ? new(code.TemperatureRow, code.DepressionNumber) : new(1, 1));
    }

    private (DryingTime, ScheduleMildness)? VacuumTime(BookState.Kiln kiln, BookState.Stack stack, PlanMoisture moisture)
    {
        if (ByDay(day => Vacuum(kiln, stack, moisture.On(day).Likely).Then(forecast => (Outcome<TimeBand>)Band(forecast).Plus(Finish(stack)))) is not { } bands
            || Vacuum(kiln, stack, moisture.On(0).Likely) is not Outcome<VacuumForecast>.Done(var first)
            || PlanTimes.ClosedToVacuum(stack, first))
        {
            return null;
        }

        var electricity = Energy.FromKilowattHours(first.MainsKilowattHours + first.PumpKilowattHours);
        return (new(kiln.Name, [.. bands.Select(band => band.Half)], [.. bands.Select(band => band.Most)], default, default, electricity), new(1, 1));
    }

    private Outcome<VacuumForecast> Vacuum(BookState.Kiln kiln, BookState.Stack stack, MoistureContent from) =>
        PlanTimes.InVacuum(kiln, stack, PlanTimes.AtLeastHalfAPoint(from, targets.Of(stack)), targets.Of(stack), figures);

    private List<TimeBand>? ByDay(Func<int, Outcome<TimeBand>> at)
    {
        var known = new List<TimeBand>();
        for (var day = 0; day < days + EveryDays; day += EveryDays)
        {
            if (at(day) is not Outcome<TimeBand>.Done(var band))
            {
                return null;
            }

            known.Add(band);
        }

        return known[0].Half.Days > LongestInPlan * days ? null
            : [.. Enumerable.Range(0, days).Select(day => known[day / EveryDays].Towards(known[day / EveryDays + 1 < known.Count ? day / EveryDays + 1 : day / EveryDays], day % EveryDays / (double)EveryDays))];
    }

    private Mass OvenDry(BookState.Stack stack) =>
        KilnLoad.Of(stack.Species, SawnWood.Volume(state, stack, stack.Footage), MoistureContent.OvenDry, Outside.Temperature).OvenDry;

    private Elapsed Finish(BookState.Stack stack) => figures.FinishPerInch * stack.Thickness.Inches;

    private static TimeBand Band(VacuumForecast forecast) => new(Elapsed.FromHours(forecast.HoursP50), Elapsed.FromHours(forecast.HoursP90));

    // What its samples or its condensate tell, as on the charge's own page; without them the stack's reading.
    private Outcome<(DateTime Since, TimeBand Band, Power Running)> InAir(BookState.Charge charge, BookState.Kiln kiln, BookState.Stack stack)
    {
        if ((charge.SampleMean ?? stack.Moisture?.Mean) is not { } moisture)
        {
            return new Refusal(charge.Tag, "no sample and no reading", "a running charge of which the moisture is known");
        }

        var times = PlanTimes.InKiln(kiln, stack.Species, stack.Thickness.Length, charge.Target, figures.StepsBy);
        var running = times.ForecastNear(moisture).Then(near => KilnRunHeat.Of(near, new KilnLoad(OvenDry(stack), moisture, near.Steps[0].Step.DryBulb), Outside)) is Outcome<KilnRunHeat>.Done(var heat) ? heat.Running : default;
        return ChargeEnd.Of(state, charge, state.Today.ToDateTime(TimeOnly.MinValue)) is { } end
            ? (end.From, end.Left, running)
            : times.From(moisture).Then<(DateTime, TimeBand, Power)>(band => (ReadAt(charge, stack), band.Plus(Finish(stack)), running));
    }

    // Hours to go are counted from where the moisture was measured, not from the loading.
    private static DateTime ReadAt(BookState.Charge charge, BookState.Stack stack) =>
        charge.SoundSamples.Where(sample => sample.Weighings.Count > 0).Select(sample => sample.Weighings[^1].At).Append(charge.LoadedAt).Concat(charge.SampleMean is null && stack.Moisture?.At is { } at ? [at] : []).Max();

    private Outcome<(DateTime Since, TimeBand Band, Power Running)> InVacuum(BookState.Charge charge, BookState.Kiln kiln, BookState.Stack stack) =>
        ChargeEnd.Of(state, charge, state.Today.ToDateTime(TimeOnly.MinValue)) is { } end ? (end.From, end.Left, default(Power))
            : stack.Moisture?.Mean is { } moisture
            ? PlanTimes.InVacuum(kiln, stack, moisture, charge.Target, figures).Then<(DateTime, TimeBand, Power)>(forecast => (charge.LoadedAt, Band(forecast).Plus(Finish(stack)), default(Power)))
            : new Refusal(charge.Tag, $"no reading of {stack.Tag}", "a running charge of which the moisture is known");

    private static Outcome<(DateTime Since, TimeBand Band, Power Running)> Longest(IEnumerable<Outcome<(DateTime Since, TimeBand Band, Power Running)>> each)
    {
        (DateTime Since, TimeBand Band, Power Running)? longest = null;
        foreach (var one in each)
        {
            if (one is not Outcome<(DateTime Since, TimeBand Band, Power Running)>.Done(var left))
            {
                return one;
            }

            longest = longest is { } other ? ((left.Band.Half > other.Band.Half ? left : other) with { Running = Power.FromKilowatts(left.Running.Kilowatts + other.Running.Kilowatts) }) : left;
        }

        return longest is { } found ? found : new Outcome<(DateTime, TimeBand, Power)>.NoAnswer("The charge has no stack in it.");
    }

    // What is past its time may come out soon, not before.
    private static Elapsed Later(TimeSpan since, Elapsed band) => Elapsed.FromHours(Math.Max(LeastLeft.Hours, since.TotalHours + band.Hours));
}
