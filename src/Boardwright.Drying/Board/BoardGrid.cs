namespace Boardwright.Drying.Board;

/// <summary>Cells across half a board, as shares of the half thickness from centre (0) to surface (1), finer towards the surface.</summary>
/// <remarks>Faces lie at 1 - (1 - j/n)^1.6, a smooth map, so that central differences stay of second order.</remarks>
internal sealed class BoardGrid
{
    private const double Grading = 1.6;

    public BoardGrid(int cells)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(cells, 3);
        Width = new double[cells];
        Centre = new double[cells];
        Distance = new double[cells];
        for (var cell = 0; cell < cells; cell++)
        {
            Width[cell] = Face(cell + 1, cells) - Face(cell, cells);
            Centre[cell] = 0.5 * (Face(cell, cells) + Face(cell + 1, cells));
        }

        for (var cell = 0; cell < cells; cell++)
        {
            Distance[cell] = (cell + 1 < cells ? Centre[cell + 1] : 1.0) - Centre[cell];
        }
    }

    public int Cells => Width.Length;

    /// <summary>Width of each cell; they add up to 1.</summary>
    public double[] Width { get; }

    /// <summary>Place of each cell's centre.</summary>
    public double[] Centre { get; }

    /// <summary>From each centre to the next; from the last to the surface.</summary>
    public double[] Distance { get; }

    private static double Face(int index, int cells) => 1.0 - Math.Pow(1.0 - (double)index / cells, Grading);
}
