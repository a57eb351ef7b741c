namespace Boardwright.Sawing;

/// <summary>Value of every board size that may come off the saw, looked up by thickness, grain, trim steps and width steps.</summary>
internal sealed class ValueTable
{
    private readonly double[] values;
    private readonly int widths;
    private readonly int lengths;

    public ValueTable(SawingRules rules, IReadOnlyList<BoardPrice> prices, double widestMm, int longestSteps)
    {
        Prices = prices;
        WidthStepMm = rules.WidthStep.Millimetres;
        LengthStepMm = rules.LengthStep.Millimetres;
        Thicknesses = [.. rules.Settings.Where(setting => prices.Any(price => price.Thickness == setting.Nominal)).OrderBy(setting => setting.Green)];
        GreenMm = [.. Thicknesses.Select(setting => setting.Green.Millimetres)];
        HasGrain = prices.Any(price => price.Grain is not null);
        NarrowestMm = prices.Min(price => price.WidthMin.Millimetres);
        (widths, lengths) = ((int)(widestMm / WidthStepMm) + 2, longestSteps + 1);
        values = new double[Thicknesses.Count * 2 * lengths * widths];
        for (var t = 0; t < Thicknesses.Count; t++)
        {
            for (var grain = 0; grain < 2; grain++)
            {
                for (var steps = 1; steps < lengths; steps++)
                {
                    for (var width = 1; width < widths; width++)
                        values[Index(t, grain, steps, width)] = Row(t, (BoardGrain)grain, steps, width) is { } row ? row.MoneyPerBoardFoot * Footage(t, steps, width) : 0.0;
                }
            }
        }
    }

    public IReadOnlyList<BoardPrice> Prices { get; }

    public IReadOnlyList<GreenSetting> Thicknesses { get; }

    public double[] GreenMm { get; }

    public double WidthStepMm { get; }

    public double LengthStepMm { get; }

    /// <summary>Narrowest board of any row: nothing narrower is worth looking at.</summary>
    public double NarrowestMm { get; }

    /// <summary>Some row asks for a grain.</summary>
    public bool HasGrain { get; }

    public int WidthSteps(double widthMm) => (int)((widthMm / WidthStepMm) + 1e-9);

    public double At(int thickness, int grain, int lengthSteps, int widthSteps) => values[Index(thickness, grain, lengthSteps, widthSteps)];

    /// <summary>The best of both grains at a width, which may be wider than the log.</summary>
    public double Ceiling(int thickness, int lengthSteps, double widthMm)
    {
        var steps = WidthSteps(Math.Min(widthMm, (widths - 1) * WidthStepMm));
        return HasGrain ? Math.Max(At(thickness, 0, lengthSteps, steps), At(thickness, 1, lengthSteps, steps)) : At(thickness, 0, lengthSteps, steps);
    }

    /// <summary>Board feet: width x length x nominal thickness.</summary>
    public double Footage(int thickness, int lengthSteps, int widthSteps) =>
        Thicknesses[thickness].Nominal.Inches * (widthSteps * WidthStepMm / 25.4) * (lengthSteps * LengthStepMm / 304.8) / 12.0;

    /// <summary>The best paid row a board of this size meets; null where none takes it.</summary>
    public BoardPrice? Row(int thickness, BoardGrain grain, int lengthSteps, int widthSteps)
    {
        BoardPrice? best = null;
        foreach (var price in Prices)
        {
            if (price.Thickness == Thicknesses[thickness].Nominal && (price.Grain is null || price.Grain == grain)
                && widthSteps * WidthStepMm >= price.WidthMin.Millimetres - 1e-6 && lengthSteps * LengthStepMm >= price.LengthMin.Millimetres - 1e-6
                && (best is null || price.MoneyPerBoardFoot > best.MoneyPerBoardFoot))
                best = price;
        }

        return best;
    }

    private int Index(int thickness, int grain, int lengthSteps, int widthSteps) => (((((thickness * 2) + grain) * lengths) + lengthSteps) * widths) + widthSteps;
}
