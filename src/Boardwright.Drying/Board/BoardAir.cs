namespace Boardwright.Drying.Board;

/// <summary>What the next step asks of each board, and what its surface answered: one value a board.</summary>
internal sealed class BoardAir
{
    public BoardAir(int boards)
    {
        double[] Row() => new double[boards];
        (DiffusionNumber, SurfaceNumber, Equilibrium, LossLimit) = (Row(), Row(), Row(), Row());
        (Conductance, Surface, Loss) = (Row(), Row(), Row());
        LossLimit.AsSpan().Fill(double.PositiveInfinity);
    }

    public double[] DiffusionNumber { get; }

    public double[] SurfaceNumber { get; }

    public double[] Equilibrium { get; }

    public double[] LossLimit { get; }

    /// <summary>From the last cell to the air, half a cell of wood and the surface in series, times the step.</summary>
    public double[] Conductance { get; }

    public double[] Surface { get; }

    public double[] Loss { get; }
}
