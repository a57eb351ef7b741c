namespace Boardwright.Bench.Drying;

/// <summary>The same equation and scheme as one would first write them: board after board, cell after cell, no vectors. Baseline of the measurement only.</summary>
internal sealed class PlainBoards
{
    private const double Slope = 8.5;
    private const double Saturation = 0.30;
    private const int CellsMax = 16;
    private static readonly double[][] Widths = [.. Enumerable.Range(0, CellsMax + 1).Select(cells => Enumerable.Range(0, cells).Select(cell => Face(cell + 1, cells) - Face(cell, cells)).ToArray())];
    private static readonly double[][] Centres = [.. Enumerable.Range(0, CellsMax + 1).Select(cells => Enumerable.Range(0, cells).Select(cell => 0.5 * (Face(cell, cells) + Face(cell + 1, cells))).ToArray())];
    private readonly double[][] moisture;
    private readonly double[] skin;
    private readonly double diffusion;
    private readonly double surface;
    private readonly double equilibrium;

    public PlainBoards(int boards, int cells, double start, double diffusion, double surface, double equilibrium)
    {
        moisture = [.. Enumerable.Range(0, boards).Select(m => Enumerable.Repeat(start + 1e-4 * m, cells).ToArray())];
        skin = [.. moisture.Select(board => board[0])];
        (this.diffusion, this.surface, this.equilibrium) = (diffusion, surface, equilibrium);
    }

    public int Boards => moisture.Length;

    public static double Width(int cell, int cells) => Widths[cells][cell];

    public void Step()
    {
        for (var board = 0; board < moisture.Length; board++)
        {
            Step(moisture[board], ref skin[board]);
        }
    }

    /// <summary>Change of every cell in an hour, for an explicit solver.</summary>
    public static double[] Rates(double[] m, double diffusion, double surface, double equilibrium)
    {
        var cells = m.Length;
        var rates = new double[cells];
        var inward = 0.0;
        for (var cell = 0; cell < cells; cell++)
        {
            var outward = cell + 1 < cells
                ? diffusion * Mean(m[cell], m[cell + 1]) / (Centre(cell + 1, cells) - Centre(cell, cells)) * (m[cell] - m[cell + 1])
                : (Math.Min(m[cell], Saturation) - equilibrium) / ((1.0 - Centre(cell, cells)) / (diffusion * Mean(m[cell], equilibrium)) + 1.0 / surface);
            rates[cell] = (inward - outward) / Width(cell, cells);
            inward = outward;
        }

        return rates;
    }

    private void Step(double[] m, ref double skinMoisture)
    {
        var cells = m.Length;
        var (ratio, value) = (new double[cells], new double[cells]);
        var inward = 0.0;
        for (var cell = 0; cell < cells; cell++)
        {
            double outward;
            var right = Width(cell, cells) * m[cell];
            if (cell + 1 < cells)
            {
                outward = diffusion * Mean(m[cell], m[cell + 1]) / (Centre(cell + 1, cells) - Centre(cell, cells));
            }
            else
            {
                var factor = skinMoisture > equilibrium ? (Math.Min(skinMoisture, Saturation) - equilibrium) / (skinMoisture - equilibrium) : 1.0;
                var inside = (1.0 - Centre(cell, cells)) / (diffusion * Mean(m[cell], skinMoisture));
                outward = 1.0 / (inside + 1.0 / (surface * factor));
                skinMoisture = m[cell] - (m[cell] - equilibrium) * inside * outward;
                right += outward * equilibrium;
            }

            var (behindRatio, behindValue) = cell > 0 ? (ratio[cell - 1], value[cell - 1]) : (0.0, 0.0);
            var pivot = Width(cell, cells) + outward + inward * (1.0 - behindRatio);
            value[cell] = (right + inward * behindValue) / pivot;
            ratio[cell] = outward / pivot;
            inward = outward;
        }

        m[^1] = value[^1];
        for (var cell = cells - 2; cell >= 0; cell--)
        {
            m[cell] = value[cell] + ratio[cell] * m[cell + 1];
        }
    }

    private static double Mean(double one, double other)
    {
        var difference = other - one;
        return Math.Abs(difference) < 1e-5 ? 0.5 * (Coefficient(one) + Coefficient(other)) : (Potential(other) - Potential(one)) / difference;
    }

    private static double Coefficient(double m) => Math.Exp(Slope * (Math.Min(m, Saturation) - Saturation));

    private static double Potential(double m) => Coefficient(m) / Slope + Math.Max(m - Saturation, 0.0);

    private static double Centre(int cell, int cells) => Centres[cells][cell];

    private static double Face(int index, int cells) => 1.0 - Math.Pow(1.0 - (double)index / cells, 1.6);
}
