namespace Boardwright.Sawing;

/// <summary>The widest clear strips of all flitches of a block of heights, by wane class, thickness and length: no strip of that length of any trim place and height of the block reaches beyond. Millimetres.</summary>
internal sealed class StripHull
{
    // The widest strips are kept a hair wider than they are.
    public const double Hair = 1e-6;

    private readonly int thicknesses;
    private readonly int lengths;
    private readonly int stride;

    public StripHull(ValueTable values, int blocks)
    {
        (thicknesses, lengths) = (values.GreenMm.Length, values.Longest + 1);
        stride = (blocks + FlitchField.Lanes - 1) / FlitchField.Lanes * FlitchField.Lanes;
        var size = values.WaneShares.Length * thicknesses * lengths * stride;
        (Low, High) = (new double[size], new double[size]);
        (CommonLow, CommonHigh) = values.HasGrain ? (new double[size], new double[size]) : ([], []);
        Array.Fill(Low, double.PositiveInfinity);
        Array.Fill(High, double.NegativeInfinity);
        Array.Fill(CommonLow, double.NegativeInfinity);
        Array.Fill(CommonHigh, double.PositiveInfinity);
    }

    public double[] Low { get; }

    public double[] High { get; }

    /// <summary>What all strips have in common, where grain counts.</summary>
    public double[] CommonLow { get; }

    public double[] CommonHigh { get; }

    /// <summary>Place of the first block.</summary>
    public int At(int wane, int thickness, int steps) => ((((wane * thicknesses) + thickness) * lengths) + steps) * stride;

    /// <summary>Takes a strip in.</summary>
    public void Widen(int at, double low, double high)
    {
        Low[at] = Math.Min(Low[at], low - Hair);
        High[at] = Math.Max(High[at], high + Hair);
    }

    /// <summary>Takes in what is common to strips.</summary>
    public void Narrow(int at, double low, double high)
    {
        CommonLow[at] = Math.Max(CommonLow[at], low + Hair);
        CommonHigh[at] = Math.Min(CommonHigh[at], high - Hair);
    }
}
