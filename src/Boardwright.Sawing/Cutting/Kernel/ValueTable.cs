using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Boardwright.Sawing;

/// <summary>Value of every board size that may come off the saw, looked up by wane class, thickness, grain, trim steps and width units.</summary>
/// <remarks>
/// A strip may be edged to one board or, where a row has a greatest width, ripped into several: R(w) = max( R(w - 1), max over widths b of value(b) + R(w - b - kerf) ),
/// in units of a sixteenth of the width step. Without such a row value grows more than in proportion to width, so one board is best and a unit is the width step.
/// </remarks>
internal sealed class ValueTable
{
    private const int UnitsPerStepRipped = 16;

    private readonly double[] values;
    private readonly double[] ceilings;
    private readonly int unitsPerStep;
    private readonly int kerfUnits;
    private readonly int units;
    private readonly double perUnit;
    private readonly bool cutsAcross;
    private readonly int lengths;
    private readonly int grains;

    public ValueTable(SawingRules rules, IReadOnlyList<BoardPrice> prices, double widestMm, int longestSteps)
    {
        WidthStepMm = rules.WidthStep.Millimetres;
        LengthStepMm = rules.LengthStep.Millimetres;
        Thicknesses = [.. rules.Settings.Where(setting => prices.Any(price => price.Thickness == setting.Nominal)).OrderBy(setting => setting.Green)];
        GreenMm = [.. Thicknesses.Select(setting => setting.Green.Millimetres)];
        Boards = [.. prices.Where(price => price.Edge == BoardEdge.Square && Thicknesses.Any(setting => setting.Nominal == price.Thickness))];
        Slabs = Of(prices, BoardEdge.Live);
        Boules = Of(prices, BoardEdge.Boule);
        HasSlabs = Slabs.Any(rows => rows.Length > 0);
        HasGrain = Boards.Any(price => price.Grain is not null);
        NarrowestMm = Boards.Length > 0 ? Boards.Min(price => price.WidthMin.Millimetres) : double.PositiveInfinity;
        WaneShares = [.. Boards.Select(price => price.Wane.Fraction).Append(0.0).Distinct().Order()];
        HasRips = Boards.Any(price => price.WidthMax is not null);
        (unitsPerStep, grains, lengths) = (HasRips ? UnitsPerStepRipped : 1, HasGrain ? 2 : 1, longestSteps + 1);
        UnitMm = WidthStepMm / unitsPerStep;
        (perUnit, cutsAcross) = (1.0 / UnitMm, rules.CutsAcross);
        kerfUnits = (int)Math.Ceiling((rules.Kerf.Millimetres / UnitMm) - 1e-9);
        units = (((int)(widestMm / WidthStepMm) + 2) * unitsPerStep) + 1;
        Quantum = QuantumOf(prices, widestMm, longestSteps * LengthStepMm);
        values = new double[WaneShares.Length * Thicknesses.Count * grains * lengths * units];
        foreach (var row in Boards)
            Enter(row);
        for (var from = 0; from < values.Length; from += units)
            Spread(values.AsSpan(from, units), from / units / lengths % grains == 0);
        ceilings = new double[Thicknesses.Count * units];
        for (var t = 0; t < Thicknesses.Count; t++)
            FillCeilings(t);
    }

    public BoardPrice[] Boards { get; }

    /// <summary>Rows of single slabs, by thickness.</summary>
    public BoardPrice[][] Slabs { get; }

    /// <summary>Rows of boules, by thickness.</summary>
    public BoardPrice[][] Boules { get; }

    public IReadOnlyList<GreenSetting> Thicknesses { get; }

    public double[] GreenMm { get; }

    public double WidthStepMm { get; }

    public double LengthStepMm { get; }

    /// <summary>Step of a strip's width.</summary>
    public double UnitMm { get; }

    /// <summary>Narrowest board of any row: nothing narrower is worth looking at.</summary>
    public double NarrowestMm { get; }

    /// <summary>Some row asks for a grain.</summary>
    public bool HasGrain { get; }

    /// <summary>Some row has a greatest width.</summary>
    public bool HasRips { get; }

    public bool HasSlabs { get; }

    /// <summary>Shares of the thickness that rows allow to be missing at the edges, from none up.</summary>
    public double[] WaneShares { get; }

    /// <summary>Money is counted in whole quanta, each about a 2^48th of what a log can bring: sums are then exact in any order, so ceilings and ties are.</summary>
    public double Quantum { get; }

    /// <summary>More than any log brings.</summary>
    public double Limit => Quantum * (1L << 48);

    /// <summary>Money in whole quanta.</summary>
    public double Whole(double money) => Math.Round(money / Quantum) * Quantum;

    /// <summary>Longest board in trim steps.</summary>
    public int Longest => lengths - 1;

    public int Units(double widthMm) => Math.Min(units - 1, (int)((widthMm * perUnit) + 1e-9));

    public double At(int wane, int thickness, int grain, int lengthSteps, int widthUnits) => values[Index(wane, thickness, grain, lengthSteps, widthUnits)];

    /// <summary>Values of four strips of one length, without grain.</summary>
    public Vector256<double> At(int wane, int thickness, int lengthSteps, Vector256<double> widthMm) => Four(values, Index(wane, thickness, 0, lengthSteps, 0), widthMm);

    /// <summary>Ceilings of four widths.</summary>
    public Vector256<double> Ceiling(int thickness, Vector256<double> widthMm) => Four(ceilings, thickness * units, widthMm);

    private Vector256<double> Four(double[] table, int first, Vector256<double> widthMm)
    {
        var at = Vector256.Min(Vector256.Max((widthMm * Vector256.Create(perUnit)) + Vector256.Create(1e-9), Vector256<double>.Zero), Vector256.Create(units - 1.0));
        ref var row = ref Unsafe.Add(ref MemoryMarshal.GetArrayDataReference(table), first);
        return Vector256.Create(Unsafe.Add(ref row, (int)at[0]), Unsafe.Add(ref row, (int)at[1]), Unsafe.Add(ref row, (int)at[2]), Unsafe.Add(ref row, (int)at[3]));
    }

    /// <summary>The best of both grains.</summary>
    public double Best(int wane, int thickness, int lengthSteps, int widthUnits) => HasGrain
        ? Math.Max(At(wane, thickness, 0, lengthSteps, widthUnits), At(wane, thickness, 1, lengthSteps, widthUnits))
        : At(wane, thickness, 0, lengthSteps, widthUnits);

    /// <summary>No flitch of a width, edged and trimmed in any way, is worth more.</summary>
    public double Ceiling(int thickness, double widthMm) => ceilings[(thickness * units) + Units(widthMm)];

    /// <summary>Board feet: width x length x nominal thickness.</summary>
    public double Footage(int thickness, double widthMm, double lengthMm) => Thicknesses[thickness].Nominal.Inches * (widthMm / 25.4) * (lengthMm / 304.8) / 12.0;

    /// <summary>The best paid row a board of this size meets; null where none takes it.</summary>
    public BoardPrice? Row(int wane, int thickness, BoardGrain grain, int lengthSteps, int widthSteps)
    {
        BoardPrice? best = null;
        foreach (var price in Boards)
        {
            if (price.Thickness == Thicknesses[thickness].Nominal && (price.Grain is null || price.Grain == grain) && price.Wane.Fraction >= WaneShares[wane]
                && widthSteps * WidthStepMm >= price.WidthMin.Millimetres - 1e-6 && lengthSteps * LengthStepMm >= price.LengthMin.Millimetres - 1e-6
                && widthSteps * WidthStepMm <= (price.WidthMax?.Millimetres ?? double.PositiveInfinity) + 1e-6 && lengthSteps * LengthStepMm <= (price.LengthMax?.Millimetres ?? double.PositiveInfinity) + 1e-6
                && (best is null || price.MoneyPerBoardFoot > best.MoneyPerBoardFoot))
                best = price;
        }

        return best;
    }

    /// <summary>Widths, in width steps, of the boards a strip is best ripped into.</summary>
    public IEnumerable<int> Rips(int wane, int thickness, BoardGrain grain, int lengthSteps, int widthUnits)
    {
        var plane = HasGrain ? (int)grain : 0;
        var (left, rips) = (widthUnits, HasRips && plane == 0);
        while (left > 0 && At(wane, thickness, plane, lengthSteps, left) is > 0.0 and var value)
        {
            // The narrowest strip of this worth, then the board that leaves the rest it was worked out with.
            while (At(wane, thickness, plane, lengthSteps, left - 1) == value)
                left--;
            var width = Enumerable.Range(1, left / unitsPerStep).Reverse().First(steps => Row(wane, thickness, grain, lengthSteps, steps) is { } row && Math.Abs(
                (row.MoneyPerBoardFoot * Footage(thickness, steps * WidthStepMm, lengthSteps * LengthStepMm)) + (rips ? At(wane, thickness, plane, lengthSteps, After(left, steps)) : 0.0) - value) <= (1e-9 * value) + Quantum);
            yield return width;
            left = rips ? After(left, width) : 0;
        }
    }

    // What a strip leaves beside a board and its kerf.
    private int After(int widthUnits, int boardSteps) => Math.Max(0, widthUnits - (boardSteps * unitsPerStep) - kerfUnits);

    private double QuantumOf(IReadOnlyList<BoardPrice> prices, double widestMm, double longestMm)
    {
        var thick = Thicknesses.Select(setting => Math.Max(1.0, setting.Nominal.Inches / setting.Green.Inches)).DefaultIfEmpty(1.0).Max();
        var most = prices.Select(price => price.MoneyPerBoardFoot).DefaultIfEmpty(0.0).Max() * thick * (widestMm / 25.4) * (widestMm / 25.4) * ((longestMm + LengthStepMm) / 304.8) / 12.0;
        return Math.ScaleB(1.0, (most > 0.0 ? (int)Math.Ceiling(Math.Log2(most)) : 0) - 48);
    }

    private BoardPrice[][] Of(IReadOnlyList<BoardPrice> prices, BoardEdge edge) => [.. Thicknesses.Select(setting => prices.Where(price => price.Edge == edge && price.Thickness == setting.Nominal).ToArray())];

    private void Enter(BoardPrice row)
    {
        var shortest = Math.Max(1, (int)Math.Ceiling((row.LengthMin.Millimetres / LengthStepMm) - 1e-6));
        var longest = Math.Min(Longest, (int)Math.Floor(((row.LengthMax?.Millimetres ?? (Longest * LengthStepMm)) / LengthStepMm) + 1e-6));
        var narrowest = Math.Max(1, (int)Math.Ceiling((row.WidthMin.Millimetres / WidthStepMm) - 1e-6));
        var widest = Math.Min((units - 1) / unitsPerStep, (int)Math.Floor(((row.WidthMax?.Millimetres ?? (units * UnitMm)) / WidthStepMm) + 1e-6));
        for (var wane = 0; wane < WaneShares.Length && WaneShares[wane] <= row.Wane.Fraction; wane++)
        {
            for (var t = 0; t < Thicknesses.Count; t++)
            {
                for (var grain = 0; grain < grains && Thicknesses[t].Nominal == row.Thickness; grain++)
                {
                    if (row.Grain is { } asked && (int)asked != grain)
                        continue;
                    for (var steps = shortest; steps <= longest; steps++)
                    {
                        for (var width = narrowest; width <= widest; width++)
                        {
                            ref var at = ref values[Index(wane, t, grain, steps, width * unitsPerStep)];
                            at = Math.Max(at, Whole(row.MoneyPerBoardFoot * Footage(t, width * WidthStepMm, steps * LengthStepMm)));
                        }
                    }
                }
            }
        }
    }

    // A wider strip is edged down; parts of a quartered strip may lie flat, so only a strip that counts as flat is ripped.
    private void Spread(Span<double> strip, bool rips)
    {
        for (var unit = 1; unit < strip.Length; unit++)
        {
            var best = strip[unit - 1];
            if (HasRips && rips)
            {
                for (var width = unitsPerStep; width <= unit; width += unitsPerStep)
                    best = Math.Max(best, strip[width] + strip[Math.Max(0, unit - width - kerfUnits)]);
            }

            strip[unit] = Math.Max(best, strip[unit]);
        }
    }

    private void FillCeilings(int thickness)
    {
        var byLength = new double[lengths];
        for (var unit = 1; unit < units; unit++)
        {
            for (var steps = 1; steps < lengths; steps++)
            {
                byLength[steps] = byLength[steps - 1];
                for (var wane = 0; wane < WaneShares.Length; wane++)
                    byLength[steps] = Math.Max(byLength[steps], Best(wane, thickness, steps, unit));
                for (var part = 1; part <= steps / 2 && cutsAcross; part++)
                    byLength[steps] = Math.Max(byLength[steps], byLength[part] + byLength[steps - part]);
            }

            ceilings[(thickness * units) + unit] = byLength[Longest];
        }
    }

    private int Index(int wane, int thickness, int grain, int lengthSteps, int widthUnits) => (((((((wane * Thicknesses.Count) + thickness) * grains) + grain) * lengths) + lengthSteps) * units) + widthUnits;
}
