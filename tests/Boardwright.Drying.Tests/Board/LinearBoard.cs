using Boardwright.Drying.Board;

namespace Boardwright.Drying.Tests.Board;

/// <summary>The problem with a series solution: a board of constant coefficient from 1 towards 0.</summary>
internal static class LinearBoard
{
    /// <summary>One board in the linear problem: from 1 towards 0, with Bi and Fo on the half thickness.</summary>
    public static BoardEnsemble After(double biot, double fourier, int steps, int cells)
    {
        var board = new BoardEnsemble(1, cells, DiffusionLaw.Constant);
        board.SetUniform([1.0]);
        board.DiffusionNumber.Fill(fourier / steps);
        board.SurfaceNumber.Fill(double.IsInfinity(biot) ? double.PositiveInfinity : biot * fourier / steps);
        for (var step = 0; step < steps; step++)
        {
            board.Step();
        }

        return board;
    }

    /// <summary>Value at a place: even parabola at the centre, the surface itself, three-point interpolation between.</summary>
    public static double At(BoardEnsemble board, double x)
    {
        var centres = board.Centres;
        if (x == 1.0)
            return board.Surface[0];

        if (x == 0.0)
        {
            var (one, two) = (centres[0] * centres[0], centres[1] * centres[1]);
            return board.Cell(0)[0] - (board.Cell(1)[0] - board.Cell(0)[0]) * one / (two - one);
        }

        var middle = 1;
        while (centres[middle + 1] < x)
        {
            middle++;
        }

        var sum = 0.0;
        for (var i = middle - 1; i <= middle + 1; i++)
        {
            var weight = 1.0;
            for (var j = middle - 1; j <= middle + 1; j++)
            {
                if (j != i)
                    weight *= (x - centres[j]) / (centres[i] - centres[j]);
            }

            sum += weight * board.Cell(i)[0];
        }

        return sum;
    }
}
