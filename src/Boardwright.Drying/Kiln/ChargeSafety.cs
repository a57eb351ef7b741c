using Boardwright.Drying.Board;
using Boardwright.Drying.Schedules;
using Boardwright.Quantities;
using Boardwright.Wood;

namespace Boardwright.Drying;

/// <summary>Boards of one stack in a charge, to be held against their safe rate.</summary>
/// <param name="Name">The stack, or its wood.</param>
/// <param name="Species">The wood.</param>
/// <param name="Thickness">Rough thickness.</param>
/// <param name="From">Mean moisture content.</param>
/// <param name="Rate">How fast this charge has dried so far; null where nothing was learned.</param>
public sealed record SafetyBoards(string Name, Species Species, Length Thickness, MoistureContent From, KilnRate? Rate = null);

/// <summary>Boards of a stack that would lose more in a step than is safe.</summary>
/// <param name="Name">The stack.</param>
/// <param name="Share">Share of its boards.</param>
/// <param name="Times">The worst board's loss over what is safe for it.</param>
/// <param name="LossPercent">The worst board's loss, percent of moisture content a day.</param>
/// <param name="SafePercent">What is safe for it.</param>
/// <param name="Moisture">Its moisture content then.</param>
/// <param name="MoistureLeast">The driest board that is over; all wetter ones are too.</param>
/// <param name="Thickness">Its thickness.</param>
public sealed record BoardsOver(string Name, double Share, double Times, double LossPercent, double SafePercent, MoistureContent Moisture, MoistureContent MoistureLeast, Length Thickness);

/// <summary>A step of a schedule held against the safe rates of a charge.</summary>
/// <param name="Step">Index of the step in the schedule.</param>
/// <param name="Held">The step.</param>
/// <param name="Over">Stacks of which boards are over, the worst first; empty where none is.</param>
/// <param name="Gentler">Air that keeps them all: the same dry bulb with a wetter wet bulb, or the listed step where no wet bulb is wet enough; null where none is over.</param>
public sealed record StepSafety(int Step, KilnStep Held, IReadOnlyList<BoardsOver> Over, KilnStep? Gentler);

/// <summary>Which steps of a schedule dry a charge faster than is safe, which boards of it, and by how much.</summary>
/// <remarks>
/// <para>All boards of the charge, 101 of each stack, scattered in thickness, moisture and rate as in <see cref="KilnDrying"/>, go through one schedule; the moisture that leads is that of the wettest half of all of them, or
/// their mean by the rule of the house.</para>
/// <para>Anchor: a board of the listed thickness in the air its own listed schedule holds, when its stack's leading moisture is what it is now, loses its safe rate (common practice: that is what the listed schedule is made
/// for, and with it the printed kiln times are met). Other air pulls harder or softer: P = p(T)(0.30 - E), p the pressure of saturated vapour, E the equilibrium of the air, the law of the wet surface in the board model. A board thicker
/// than listed loses less by 1/h and may lose less by h^-1.33. No board loses more than its own diffusion lets through.</para>
/// <para>Counted as over: more than 5 % over its safe rate while it is above 30 %. Below that new checks hardly form.</para>
/// </remarks>
/// <source id="conners-for-128" locator="table 9"/>
/// <method page="docs/methods/safe-rate.md"/>
public static class ChargeSafety
{
    private const int Members = 101;
    private const double GuardedAboveFraction = 0.30;
    private const double Tolerance = 1.05;
    private const double DaysMost = 120.0;
    private const double MoistestPercent = 24.0;

    /// <summary>Every step that is gone through while a board is above 30 %.</summary>
    /// <param name="stacks">The charge, at least one stack.</param>
    /// <param name="schedule">The schedule it is dried by, in its kiln.</param>
    /// <param name="stepsBy">Which boards lead it through.</param>
    /// <param name="seed">Seed of the ensemble.</param>
    /// <returns>The steps; no answer where no stack has both a listed schedule and a printed safe rate.</returns>
    public static Outcome<IReadOnlyList<StepSafety>> Of(IReadOnlyList<SafetyBoards> stacks, KilnSchedule schedule, StepRule stepsBy = StepRule.WettestHalf, ulong seed = 1)
    {
        ArgumentNullException.ThrowIfNull(stacks);
        ArgumentNullException.ThrowIfNull(schedule);
        var known = stacks.Where(stack => Listed(stack) is not null && Safe(stack.Species, stack.Thickness) is not null).ToList();
        return known.Count == 0
            ? new Outcome<IReadOnlyList<StepSafety>>.NoAnswer($"Nothing to hold it against: no safe rate, or no schedule to go with it, is printed for {string.Join(", ", stacks.Select(stack => stack.Species.CommonName).Distinct())} this thick.")
            : new Outcome<IReadOnlyList<StepSafety>>.Done(new Run([.. known.Select((stack, index) => new Boards(stack, Members, seed + (ulong)index))], schedule, stepsBy).Steps());
    }

    private static KilnSchedule? Listed(SafetyBoards stack) => KilnSchedule.For(stack.Species, stack.Thickness) is Outcome<KilnSchedule>.Done(var listed) ? listed : null;

    private static double? Safe(Species species, Length thickness) => SafeRate.For(species, thickness) is Outcome<SafeRate>.Done(var safe) ? safe.DailyLossPercent : null;

    // How hard air pulls at a wet surface; the density of the wood falls out of every comparison.
    private static double Pull(KilnStep step) => SaturationPressure.Pascals(step.DryBulb.Celsius) * Math.Max(1e-3, DiffusionLaw.FiberSaturationFraction - step.AirFloored90.Emc!.Value.Fraction);

    private sealed class Boards
    {
        public Boards(SafetyBoards stack, int members, ulong seed)
        {
            Stack = stack;
            Listed = ChargeSafety.Listed(stack)!;
            var coefficients = DryingCoefficients.For(stack.Species);
            Set = new BoardSet(stack.Species, stack.Thickness, stack.From, coefficients.KilnM2PerS * (stack.Rate?.Factor ?? 1.0), stack.Rate?.Spread ?? coefficients.KilnSpread, members, seed);
            var named = Safe(stack.Species, stack.Thickness)!.Value;
            SafePercent = [.. Enumerable.Range(0, members).Select(m => named * Math.Pow(stack.Thickness.Metres / Set.ThicknessM(m), SafeRate.ThicknessExponent))];
            UsualPercent = [.. Enumerable.Range(0, members).Select(m => named * stack.Thickness.Metres / Set.ThicknessM(m))];
            IsOver = new bool[members];
        }

        public SafetyBoards Stack { get; }

        public KilnSchedule Listed { get; }

        public BoardSet Set { get; }

        /// <summary>Safe loss a day of each board at its own thickness.</summary>
        public double[] SafePercent { get; }

        /// <summary>Loss a day of each board in the air of its listed schedule.</summary>
        public double[] UsualPercent { get; }

        // Of the step that is run.
        public bool[] IsOver { get; }

        public BoardsOver? Worst { get; set; }

        public double LeastOver { get; set; }

        public double Leading(StepRule stepsBy) => ChargeSafety.Leading(Set.Boards.Average.ToArray(), stepsBy);
    }

    private static double Leading(double[] moisture, StepRule stepsBy) =>
        stepsBy == StepRule.MeanOfAll ? moisture.Average() : moisture.OrderDescending().Take((moisture.Length + 1) / 2).Average();

    private sealed class Run(IReadOnlyList<Boards> stacks, KilnSchedule schedule, StepRule stepsBy)
    {
        private readonly double hoursPerStep = KilnDrying.StepHours(schedule, Math.Max(0.5, Math.Pow(stacks.Min(stack => stack.Stack.Thickness.Inches), 2.0)));
        private readonly List<StepSafety> steps = [];
        private KilnStep? gentlest;
        private double softestPull = double.PositiveInfinity;

        public List<StepSafety> Steps()
        {
            var (step, hoursInStep) = (0, 0.0);
            for (var hours = 0.0; hours < 24.0 * DaysMost && stacks.Any(stack => Wettest(stack) > GuardedAboveFraction); hours += hoursPerStep)
            {
                var leading = Leading([.. stacks.SelectMany(stack => stack.Set.Boards.Average.ToArray())], stepsBy);
                while (step < schedule.Steps.Count - 1 && (schedule.Steps[step].Lasts is { } lasts ? hoursInStep >= lasts.Hours - 1e-6 : leading <= schedule.Steps[step].Above.Fraction))
                {
                    Close(step++);
                    hoursInStep = 0.0;
                }

                foreach (var stack in stacks)
                {
                    Dry(stack, schedule.Steps[step]);
                }

                hoursInStep += hoursPerStep;
            }

            Close(step);
            return steps;
        }

        private static double Wettest(Boards stack)
        {
            var wettest = 0.0;
            foreach (var moisture in stack.Set.Boards.Average)
            {
                wettest = Math.Max(wettest, moisture);
            }

            return wettest;
        }

        private void Dry(Boards stack, KilnStep held)
        {
            var listed = stack.Listed.StepAt(MoistureContent.FromFraction(stack.Leading(stepsBy)));
            var ratio = Pull(held) / Pull(listed);
            var boards = stack.Set.Boards;
            var before = boards.Average.ToArray();
            var (diffusion, surface, emc) = (BoardPhysics.DiffusionFactor(held.DryBulb.Celsius), stack.Set.SurfaceFactor(held.DryBulb.Celsius), held.AirFloored90.Emc!.Value.Fraction);
            for (var m = 0; m < boards.Members; m++)
            {
                stack.Set.SetStep(m, diffusion, KilnDrying.SurfaceMetresPerSecond, surface, emc, hoursPerStep * 3600.0);
                boards.LossLimit[m] = before[m] > GuardedAboveFraction ? ratio * stack.UsualPercent[m] / 100.0 * hoursPerStep / 24.0 : double.PositiveInfinity;
            }

            boards.Step();
            for (var m = 0; m < boards.Members; m++)
            {
                // The step meets its limit by passes, not to the last digit: what it overshoots is no loss of the board.
                var lossPercent = Math.Min(100.0 * (before[m] - boards.Average[m]) * 24.0 / hoursPerStep, ratio * stack.UsualPercent[m]);
                if (before[m] > GuardedAboveFraction && lossPercent > Tolerance * stack.SafePercent[m])
                    Note(stack, m, before[m], lossPercent, listed);
            }
        }

        private void Note(Boards stack, int m, double moisture, double lossPercent, KilnStep listed)
        {
            stack.LeastOver = stack.IsOver.Contains(true) ? Math.Min(stack.LeastOver, moisture) : moisture;
            stack.IsOver[m] = true;
            var times = lossPercent / stack.SafePercent[m];
            if (!(times <= stack.Worst?.Times))
                stack.Worst = new(stack.Stack.Name, 0.0, times, lossPercent, stack.SafePercent[m], MoistureContent.FromFraction(moisture), default, Length.FromMetres(stack.Set.ThicknessM(m)));
            if (Pull(listed) < softestPull)
                (gentlest, softestPull) = (listed, Pull(listed));
        }

        private void Close(int step)
        {
            var held = schedule.Steps[step];
            var over = stacks.Where(stack => stack.Worst is not null).OrderByDescending(stack => stack.Worst!.Times)
                .Select(stack => stack.Worst! with { Share = stack.IsOver.Count(one => one) / (double)stack.IsOver.Length, MoistureLeast = MoistureContent.FromFraction(stack.LeastOver) }).ToList();
            steps.Add(new(step, held, over, gentlest is { } listed ? Gentler(held, listed) : null));
            foreach (var stack in stacks)
            {
                stack.Worst = null;
                Array.Clear(stack.IsOver);
            }

            (gentlest, softestPull) = (null, double.PositiveInfinity);
        }

        // The wet bulb, in whole degrees, at which the air of this dry bulb pulls no harder than the listed air; the listed air itself where that would be all but saturated.
        private static KilnStep Gentler(KilnStep held, KilnStep listed)
        {
            var emc = 100.0 * (DiffusionLaw.FiberSaturationFraction - Pull(listed) / SaturationPressure.Pascals(held.DryBulb.Celsius));
            return emc < MoistestPercent && emc > held.AirFloored90.Emc!.Value.Percent && KilnFinish.WetBulbFor(held.DryBulb, MoistureContent.FromPercent(emc)) is { } wet && Math.Ceiling(wet.Fahrenheit - 1e-6) is var whole && whole < held.DryBulbFahrenheit
                ? held with { DepressionFahrenheit = held.DryBulbFahrenheit - whole }
                : held with { DryBulbFahrenheit = listed.DryBulbFahrenheit, DepressionFahrenheit = listed.DryBulbFahrenheit - listed.WetBulbFloored90Fahrenheit };
        }
    }
}
