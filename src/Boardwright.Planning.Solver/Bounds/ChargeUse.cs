namespace Boardwright.Planning.Solver;

/// <summary>Where the solutions of the relaxed yard put orders and units, on a moving average: what is undecided there is what to decide next.</summary>
internal sealed class ChargeUse(ChargeYard yard)
{
    private const double Rate = 0.05;

    /// <summary>How much has been seen, up to 1.</summary>
    public double Weight { get; private set; }

    public double[] Late { get; } = new double[yard.Asked.Length];

    public double[] LateSquare { get; } = new double[yard.Asked.Length];

    /// <summary>By unit and kiln: how often it is loaded, and the sums of its days and their squares.</summary>
    public double[] Often { get; } = new double[yard.Units.Length * yard.Tables.Kilns.Length];

    public double[] Day { get; } = new double[yard.Units.Length];

    public double[] DaySquare { get; } = new double[yard.Units.Length];

    public void Fade()
    {
        Weight += Rate * (1.0 - Weight);
        foreach (var sums in new[] { Late, LateSquare, Often, Day, DaySquare })
        {
            for (var i = 0; i < sums.Length; i++)
            {
                sums[i] *= 1.0 - Rate;
            }
        }
    }

    public void IsLate(int asked, int days)
    {
        Late[asked] += Rate * days;
        LateSquare[asked] += Rate * days * days;
    }

    public void IsLoaded(int unit, int kiln, int day)
    {
        Often[unit * yard.Tables.Kilns.Length + kiln] += Rate;
        Day[unit] += Rate * day;
        DaySquare[unit] += Rate * day * day;
    }
}
