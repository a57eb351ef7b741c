using System.Globalization;
using Boardwright.Drying;
using Boardwright.Drying.Schedules;
using Boardwright.Quantities;
using Boardwright.Wood;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>The run sheet of an air kiln's charge: where in its schedule it is, what is set, what to set next and when, and when it is dry.</summary>
public sealed record ChargeRun
{
    /// <summary>The gentlest schedule of its woods, or the house's own it was given, in this kiln.</summary>
    public required KilnSchedule Schedule { get; init; }

    /// <summary>Mean of the samples that lead by the rule of the house, the wettest half of them or all; before one is cut, the wettest stack as it was read.</summary>
    public required MoistureContent Controlling { get; init; }

    /// <summary>Mean of the samples; before one is cut, of the stacks by their footage.</summary>
    public required MoistureContent Mean { get; init; }

    /// <summary>The driest sample, or the driest stack as it was read.</summary>
    public required MoistureContent Driest { get; init; }

    /// <summary>The wettest.</summary>
    public required MoistureContent Wettest { get; init; }

    /// <summary>True when samples tell; false when the readings before loading stand in for them.</summary>
    public required bool BySamples { get; init; }

    /// <summary>The step now in force, from 0.</summary>
    public required int StepNow { get; init; }

    /// <summary>Where it stands in a schedule that goes by the clock; null in one that goes by moisture alone.</summary>
    public StepClock? Clock { get; init; }

    /// <summary>What is set; null before the first setting is written.</summary>
    public Setting? Set { get; init; }

    /// <summary>The setting before; null for the first.</summary>
    public Setting? Was { get; init; }

    /// <summary>Equilibrium of the set air.</summary>
    public MoistureContent? EmcSet { get; init; }

    /// <summary>The next change; while <see cref="Frozen"/> says why, only what it would be.</summary>
    public required ChargeChange Next { get; init; }

    /// <summary>Why no change is proposed: the wet bulb is not to be believed. Null while it is.</summary>
    public string? Frozen { get; init; }

    /// <summary>How it has dried against its wood; no answer while nothing can be learned.</summary>
    public required Outcome<KilnRate> Rate { get; init; }

    /// <summary>What earlier charges taught of its rate, and which; null where it was begun with the printed rate of its wood.</summary>
    public required (DryingRate Rate, IReadOnlyList<RateFound> From)? Begun { get; init; }

    /// <summary>From the samples and the set air on; no answer where this air cannot bring it there.</summary>
    public required Outcome<KilnForecast> Forecast { get; init; }

    /// <summary>By the air the schedule lists, set now: told where the air that is set does not bring it to the target; null elsewhere.</summary>
    public Outcome<KilnForecast>? Listed { get; init; }

    /// <summary>When the samples were last weighed.</summary>
    public required DateTime WeighedAt { get; init; }

    /// <summary>Time it stood since then, up to now: its clock stood with it.</summary>
    public required Elapsed StoodSince { get; init; }

    /// <summary>Where the hours of the forecast are counted from.</summary>
    public DateTime ClockFrom => WeighedAt.AddHours(StoodSince.Hours);

    /// <summary>How its samples come to the target; null before its last step, without samples or a setting, and where no rule is printed for the target.</summary>
    public ChargeEqualizing? Equalizing { get; init; }

    /// <summary>Loss a day that does not check this wood, and the wood; no answer where none is printed.</summary>
    public required Outcome<SafeRate> Safe { get; init; }

    /// <summary>Fastest loss of a sample.</summary>
    public SampleRow? Fastest { get; init; }

    /// <summary>True where checks still form: above fiber saturation.</summary>
    public bool SafeRateGuards => Controlling > GuardedAbove;

    private static readonly MoistureContent GuardedAbove = MoistureContent.FromPercent(30.0);

    /// <summary>True when the next change asks for the air that is set already, to the whole degrees a controller takes.</summary>
    public bool NextIsAsSet => Set is { } set && ChargeFigures.Bulbs(set.DryBulb, set.WetBulb) == ChargeFigures.Bulbs(Next.DryBulb, Next.WetBulb);

    /// <summary>How the set air stands to the step in force: ", milder and slower than step 8 of the schedule: 165 / 116 °F"; empty where it is that step's.</summary>
    /// <remarks>A setting off the schedule is the operator's choice: what is listed stands beside it, so that the two do not contradict each other.</remarks>
    public string BesideSchedule => Set is not { } set || Math.Abs(StepListed.DryBulb.Fahrenheit - set.DryBulb.Fahrenheit) < BesideFahrenheit ? ""
        : $", {BesideWords} than step {StepNow + 1} of the schedule: {ListedWords} °F";

    /// <summary>"milder and slower", or "hotter".</summary>
    public string BesideWords => Set is { } set && set.DryBulb > StepListed.DryBulb ? "hotter" : "milder and slower";

    /// <summary>Bulbs the schedule lists for the step in force.</summary>
    public string ListedWords => ChargeFigures.Bulbs(StepListed.DryBulb, StepListed.AirFloored90.WetBulb!.Value);

    /// <summary>Said where the set air does not bring the driest sample to where equalizing begins.</summary>
    internal string TooMoistWords => $"In the air that is set, which holds {EmcSet!.Value.Percent.ToString("0.0", CultureInfo.InvariantCulture)} %, it does not come there: the schedule lists {ListedWords} °F.";

    private KilnStep StepListed => Schedule.Steps[StepNow];

    private const double BesideFahrenheit = 5.0;

    /// <summary>Day by which it is dry, early, likely or late.</summary>
    public DateTime? DryAt(Func<KilnForecast, double> hours)
    {
        ArgumentNullException.ThrowIfNull(hours);
        return Forecast is Outcome<KilnForecast>.Done(var found) ? ClockFrom.AddHours(hours(found)) : null;
    }

    /// <summary>The run of a charge in a kiln that dries with air.</summary>
    /// <returns>The run; no answer for a vacuum kiln, without samples or readings, or where no schedule is listed for its wood.</returns>
    public static Outcome<ChargeRun> Of(YardState state, Charge charge, DateTime now)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(charge);
        if (state.Kilns[charge.Kiln].Installed is not { Type: not Book.Facts.KilnType.RadioFrequencyVacuum } kiln)
            return new Outcome<ChargeRun>.NoAnswer("No schedule of air: this kiln dries under vacuum.");
        if ((charge.SampleMean ?? ReadMean(state, charge)) is not { } mean)
            return new Outcome<ChargeRun>.NoAnswer("No sample board and no reading is on record: nothing says how wet it is now.");

        var (bySamples, rule) = (charge.SampleMean is not null, HouseRules.Steps(state));
        var woods = Woods(state, charge);
        var limit = new KilnEquipment(charge.Kiln, Temperature.FromCelsius(kiln.DryBulbMaxC));
        return Schedules(state, charge, woods).Then<ChargeRun>(listed =>
        {
            var shared = listed.LimitedTo(limit.DryBulbMax);
            var controlling = SampleTrend.Controlling([.. charge.SoundSamples.Select(sample => sample.Moisture)], rule) ?? Read(state, charge).Max(stack => stack.Moisture);
            var schedule = charge.Schedule is not null ? shared : Redried(state, charge, mean) is { } redry ? redry.AsSchedule(shared) : AirDried(charge, shared, rule, controlling, woods.Max(wood => wood.Thickness));
            var set = charge.Settings.LastOrDefault();
            var slowest = woods.MaxBy(wood => wood.Thickness.Metres);
            var begun = LearnedKilnRates.Before(state, charge, slowest.Species);
            var rate = bySamples ? Learned(charge, slowest, mean, begun?.Rate) : new Outcome<KilnRate>.NoAnswer("No sample tells how fast it dries.");
            var atSetting = set is null ? null : ControllingAt(charge, set.At, rule);
            var weighed = bySamples ? charge.SoundSamples.Max(sample => sample.Weighings[^1].At) : charge.LoadedAt;
            var stood = SampleRow.Stood(charge, weighed, now);
            var clock = schedule.HasTimes ? ClockOf(charge, schedule, rule, controlling, now) : null;
            var stepNow = clock?.Step ?? schedule.IndexAt(controlling);
            var stepIsDue = clock is not null ? set is not null && clock.IsDue : ChargeChange.IsPassed(schedule, controlling, atSetting, set); // then it is forecast as it is asked to be set
            var asked = new KilnDryingInput
            {
                Species = slowest.Species,
                Thickness = slowest.Thickness,
                From = mean,
                To = charge.Target,
                Kiln = limit,
                Schedule = set is null ? schedule : stepIsDue ? (clock is null ? schedule : schedule with { Steps = [.. schedule.Steps.Skip(stepNow)] }) : Holding(schedule, set, stepNow, clock, now - weighed.AddHours(stood.Hours)),
                StepsBy = rule,
                Rate = (rate as Outcome<KilnRate>.Done)?.Value ?? (begun is { } taught ? new KilnRate(taught.Rate.Factor, taught.Rate.Spread, taught.Rate.Factor) : null),
            };
            var forecast = KilnDrying.Forecast(asked);
            var listedAir = set is not null && mean > charge.Target && forecast is Outcome<KilnForecast>.NoAnswer ? KilnDrying.Forecast(asked with { Schedule = schedule }) : null;
            var (driest, wettest) = bySamples ? (charge.Driest!.Moisture, charge.Wettest!.Moisture) : (Read(state, charge).Min(stack => stack.Moisture), controlling);
            var finish = ChargeFinish.Of(state, charge);
            var equalizing = bySamples && set is not null && finish is not null && stepNow == schedule.Steps.Count - 1 ? ChargeEqualizing.Of(finish, asked, set, driest, wettest) : null;
            return new ChargeRun
            {
                Schedule = schedule,
                Controlling = controlling,
                Mean = mean,
                Driest = driest,
                Wettest = wettest,
                BySamples = bySamples,
                StepNow = stepNow,
                Clock = clock,
                Set = set,
                Was = charge.Settings.Count > 1 ? charge.Settings[^2] : null,
                EmcSet = set is null ? null : EmcOf(set.DryBulb, set.WetBulb),
                Next = ChargeChange.Of(finish, equalizing, charge.Target, schedule, stepNow, clock, now, controlling, atSetting, mean, driest, wettest, set, weighed.AddHours(stood.Hours), forecast, listedAir is Outcome<KilnForecast>.Done) with { StepsBy = rule },
                Frozen = FrozenBy(charge),
                Rate = rate,
                Begun = begun,
                Forecast = forecast,
                Listed = listedAir,
                WeighedAt = weighed,
                StoodSince = stood,
                Equalizing = equalizing,
                Safe = SafeRate.For(slowest.Species, slowest.Thickness),
                Fastest = SampleRow.Of(charge, now).Where(row => !row.Sample.Retired).MaxBy(row => row.DailyLossPct ?? double.MinValue),
            };
        });
    }

    // The one the charge was given, else the gentlest of the listed ones of its woods.
    private static Outcome<KilnSchedule> Schedules(YardState state, Charge charge, IReadOnlyList<(Species Species, Length Thickness)> woods) =>
        charge.Schedule is { } own && state.Schedules.TryGetValue(own, out var kept) ? kept : All(woods.Select(wood => KilnSchedule.For(wood.Species, wood.Thickness))).Then<KilnSchedule>(listed => KilnSchedule.Shared(listed));

    // Air-dried stock begins in mild air, unless its first setting was another: the operator's choice.
    private static KilnSchedule AirDried(Charge charge, KilnSchedule listed, StepRule rule, MoistureContent controlling, Length thickness)
    {
        var first = SampleTrend.Controlling([.. charge.SoundSamples.Select(sample => sample.Weighings[0].Moisture)], rule) ?? controlling;
        return AirDriedStart.Step(listed, first, thickness) is { } mild && (charge.Settings.Count == 0 || ChargeFigures.Bulbs(charge.Settings[0].DryBulb, charge.Settings[0].WetBulb) == ChargeFigures.Bulbs(mild.DryBulb, Temperature.FromFahrenheit(mild.WetBulbFahrenheit)))
            ? AirDriedStart.On(listed, first, thickness) : listed;
    }

    // What is set is held on; of a step by the clock as long as it has still to run, reckoned from the weighing the forecast begins with.
    private static KilnSchedule Holding(KilnSchedule schedule, Setting set, int stepNow, StepClock? clock, TimeSpan sinceWeighed)
    {
        var held = schedule.Holding(set.DryBulb, set.WetBulb, stepNow);
        return clock?.Left is not { } left ? held : held with { Steps = [held.Steps[0] with { Lasts = left + Elapsed.FromHours(Math.Max(0.0, sinceWeighed.TotalHours)) }, .. held.Steps.Skip(1)] };
    }

    private static StepClock ClockOf(Charge charge, KilnSchedule schedule, StepRule rule, MoistureContent controlling, DateTime now)
    {
        var days = charge.SoundSamples.SelectMany(sample => sample.Weighings).Select(weighing => weighing.At).Where(at => at <= now).Distinct().Order();
        IReadOnlyList<LeadWeighed> weighed = [.. days.Select(at => (at, Lead: ControllingAt(charge, at, rule))).Where(one => one.Lead is not null).Select(one => new LeadWeighed(one.at, one.Lead!.Value))];
        return StepClock.At(schedule, [.. charge.Settings.Where(set => set.At <= now).Select(set => new AirSet(set.At, set.DryBulb, set.WetBulb))], weighed.Count > 0 ? weighed : [new(charge.LoadedAt, controlling)], now, (from, to) => SampleRow.Stood(charge, from, to));
    }

    // Of the samples that lead when a setting was made, by the weighings before it; null where there was none.
    private static MoistureContent? ControllingAt(Charge charge, DateTime at, StepRule rule) =>
        SampleTrend.Controlling([.. charge.SoundSamples.Select(sample => sample.Weighings.LastOrDefault(weighing => weighing.At <= at)).OfType<Weighing>().Select(weighing => weighing.Moisture)], rule);

    // Wood that was dry before is dried again in two steps, from the moisture it was loaded at.
    private static Redry? Redried(YardState state, Charge charge, MoistureContent mean)
    {
        if (!StackRedry.IsRedry(state, charge))
            return null;
        var first = charge.SoundSamples.Any() ? MoistureContent.FromFraction(charge.SoundSamples.Average(sample => sample.Weighings[0].Moisture.Fraction)) : mean;
        var slowest = charge.Stacks.Select(tag => state.Stacks[tag]).MaxBy(stack => stack.Thickness.Quarters)!;
        return Redry.For(StackRedry.Lot(slowest, first, charge.Target, state.Kilns[charge.Kiln])) is Outcome<Redry>.Done(var redry) ? redry : null;
    }

    /// <summary>Why a setting is not to be changed; null where both bulbs were read as they should be.</summary>
    public static string? FrozenBy(Charge charge)
    {
        ArgumentNullException.ThrowIfNull(charge);
        return charge.DoubtfulWick is { } wick ? string.Create(CultureInfo.InvariantCulture, $"the wet bulb read {wick.WetBulb!.Value.Fahrenheit:0} beside {wick.DryBulb!.Value.Fahrenheit:0} °F on {wick.At:d MMM HH:mm}: its wick is dry or off")
            : charge.Gaps.LastOrDefault(gap => gap is { Cause: Book.Facts.InterruptionCause.Sensor, To: null }) is { } gap ? string.Create(CultureInfo.InvariantCulture, $"a sensor is not to be believed since {gap.From:d MMM HH:mm}")
            : null;
    }

    /// <summary>Equilibrium moisture content of air by its bulbs; null where no such air exists.</summary>
    public static MoistureContent? EmcOf(Temperature dryBulb, Temperature wetBulb) =>
        AirState.FromWetBulb(dryBulb, wetBulb, AirState.StandardPressure) is Outcome<AirState>.Done(var air) ? air.Emc : null;

    /// <summary>The woods of a charge with their rough thickness.</summary>
    public static IReadOnlyList<(Species Species, Length Thickness)> Woods(YardState state, Charge charge)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(charge);
        return [.. charge.Stacks.Select(tag => state.Stacks[tag]).Select(stack => (stack.Species, stack.SawnThickness ?? stack.Thickness.Length)).Distinct()];
    }

    /// <summary>The thickest of them, which dries slowest; null for a charge of no stacks.</summary>
    internal static (Species Species, Length Thickness)? Slowest(YardState state, Charge charge) => Woods(state, charge) is { Count: > 0 } woods ? woods.MaxBy(wood => wood.Thickness.Metres) : null;

    private static MoistureContent? ReadMean(YardState state, Charge charge)
    {
        var read = Read(state, charge);
        return read.Count == 0 ? null : MoistureContent.FromFraction(read.Sum(stack => stack.Bf * stack.Moisture.Fraction) / read.Sum(stack => stack.Bf));
    }

    private static List<(double Bf, MoistureContent Moisture)> Read(YardState state, Charge charge) =>
        [.. charge.Stacks.Select(tag => state.Stacks[tag]).Where(stack => stack.Moisture?.Mean is not null).Select(stack => (Math.Max(stack.Footage.Count, 1.0), stack.Moisture!.Mean!.Value))];

    // The air held from the loading to the last weighing; before the first setting nothing dried.
    internal static Outcome<KilnRate> Learned(Charge charge, (Species Species, Length Thickness) wood, MoistureContent mean, DryingRate? begun)
    {
        var weighed = charge.SoundSamples.Max(sample => sample.Weighings[^1].At);
        var held = new List<KilnHold>();
        for (var i = 0; i < charge.Settings.Count; i++)
        {
            var (from, to) = (charge.Settings[i].At, i + 1 < charge.Settings.Count ? charge.Settings[i + 1].At : weighed);
            var until = to < weighed ? to : weighed;
            if (until > from)
                held.Add(new(Elapsed.FromSeconds((until - from).TotalSeconds) - (until == weighed ? SampleRow.StoodBetween(charge, from, until) : SampleRow.Stood(charge, from, until)), charge.Settings[i].DryBulb, charge.Settings[i].WetBulb));
        }

        var first = MoistureContent.FromFraction(charge.SoundSamples.Average(sample => sample.Weighings[0].Moisture.Fraction));
        return KilnRate.Learn(wood.Species, wood.Thickness, first, held, mean, begun);
    }

    private static Outcome<IReadOnlyList<KilnSchedule>> All(IEnumerable<Outcome<KilnSchedule>> outcomes)
    {
        var found = new List<KilnSchedule>();
        foreach (var outcome in outcomes)
        {
            if (outcome is not Outcome<KilnSchedule>.Done(var schedule))
                return outcome.Then<IReadOnlyList<KilnSchedule>>(_ => found);
            found.Add(schedule);
        }

        return found;
    }
}
