using Boardwright.Drying.Board;
using Boardwright.Numerics;

namespace Boardwright.Drying.Tests.Board;

public class BoardEnsembleTests
{
    private const int Fine = 64;

    [Fact]
    public void Order_of_accuracy_in_space_is_two_against_the_series()
    {
        // Series: centre, Bi 5, Fo 0.3. The steps shrink with the square of the cells so that the first-order error in time falls as fast.
        const double exact = 0.7363275207;
        double Error(int cells) => Math.Abs(LinearBoard.At(LinearBoard.After(5.0, 0.3, cells * cells * 4, cells), 0.0) - exact);

        AssertOrderTwo(Error(8), Error(16), Error(32));
    }

    [Fact]
    public void Order_of_accuracy_is_two_for_a_coefficient_that_depends_on_moisture() =>
        AssertOrderTwo(ManufacturedError(8), ManufacturedError(16), ManufacturedError(32));

    [Fact]
    public void Order_of_accuracy_in_time_is_one()
    {
        double Mean(int steps) => LinearBoard.After(5.0, 0.3, steps, Fine).Average[0];
        var (coarse, middle, fine) = (Mean(50), Mean(100), Mean(200));

        Assert.InRange(Math.Log2((coarse - middle) / (middle - fine)), 0.9, 1.1);
    }

    [Fact]
    public void Water_that_leaves_the_surface_is_what_the_cells_lose()
    {
        var board = RandomBoards(37, new DiffusionLaw(13.4, 0.30), out var start);
        var random = new RandomSequence(5);
        for (var step = 0; step < 500; step++)
        {
            for (var m = 0; m < board.Members; m++)
            {
                board.DiffusionNumber[m] = 0.5 * random.NextUniform();
                board.SurfaceNumber[m] = 2.0 * random.NextUniform();
                board.Equilibrium[m] = 0.25 * random.NextUniform();
                board.LossLimit[m] = random.NextUniform() < 0.5 ? double.PositiveInfinity : 0.01;
            }

            board.Step();
        }

        for (var m = 0; m < board.Members; m++)
        {
            Assert.Equal(start[m] - board.Average[m], board.Loss[m], 1e-12);
        }
    }

    [Fact]
    public void Moisture_stays_between_the_start_and_the_air_for_any_step()
    {
        var board = RandomBoards(16, new DiffusionLaw(13.4, 0.30), out _);
        board.DiffusionNumber.Fill(1e4);
        board.SurfaceNumber.Fill(1e3);
        board.Equilibrium.Fill(0.08);
        for (var step = 0; step < 5; step++)
        {
            board.Step();
            for (var cell = 0; cell < board.Cells; cell++)
            {
                foreach (var moisture in board.Cell(cell))
                    Assert.InRange(moisture, 0.08 - 1e-12, 1.2);
            }
        }
    }

    [Fact]
    public void Dry_wood_in_damp_air_gains_and_never_passes_the_air()
    {
        var board = new BoardEnsemble(1, 12, new DiffusionLaw(13.4, 0.30));
        board.SetUniform([0.08]);
        board.DiffusionNumber.Fill(0.02);
        board.SurfaceNumber.Fill(0.2);
        board.Equilibrium.Fill(0.16);
        var last = board.Average[0];
        for (var step = 0; step < 5000; step++)
        {
            board.Step();
            Assert.InRange(board.Average[0], last - 1e-12, 0.16 + 1e-12);
            last = board.Average[0];
        }

        Assert.Equal(0.16, last, 1e-3);
        Assert.True(board.Loss[0] < 0.0);
    }

    [Fact]
    public void Loss_in_a_step_keeps_to_its_limit()
    {
        var board = new BoardEnsemble(2, 12, new DiffusionLaw(13.4, 0.30));
        board.SetUniform([0.8, 0.8]);
        board.DiffusionNumber.Fill(0.05);
        board.SurfaceNumber.Fill(1.0);
        board.Equilibrium.Fill(0.05);
        board.LossLimit[0] = 0.001;
        for (var step = 0; step < 100; step++)
        {
            var (limited, free) = (board.Average[0], board.Average[1]);
            board.Step();
            Assert.InRange(limited - board.Average[0], 0.0009, 0.0010001);
            Assert.True(free - board.Average[1] > 0.001);
            if (board.Average[1] < 0.3)
                break;
        }
    }

    [Fact]
    public void Wet_surface_evaporates_no_faster_than_one_at_saturation()
    {
        var board = new BoardEnsemble(2, 12, new DiffusionLaw(13.4, 0.30));
        board.SetUniform([1.0, 2.0]);
        board.DiffusionNumber.Fill(100.0);
        board.SurfaceNumber.Fill(0.01);
        board.Equilibrium.Fill(0.10);
        board.Step();

        Assert.Equal(0.01 * (0.30 - 0.10), board.Loss[0], 1e-4);
        Assert.Equal(board.Loss[0], board.Loss[1], 1e-4);
    }

    [Fact]
    public void Board_with_zero_numbers_stands_still()
    {
        var board = RandomBoards(5, new DiffusionLaw(13.4, 0.30), out var start);
        board.DiffusionNumber.Clear();
        board.SurfaceNumber.Clear();
        board.Step();

        for (var m = 0; m < board.Members; m++)
        {
            Assert.Equal(start[m], board.Average[m], 1e-12);
        }
    }

    [Fact]
    public void Members_do_not_depend_on_their_neighbours()
    {
        var together = RandomBoards(9, new DiffusionLaw(10.0, 0.30), out var start);
        Drive(together);
        for (var m = 0; m < together.Members; m++)
        {
            var alone = new BoardEnsemble(1, together.Cells, new DiffusionLaw(10.0, 0.30));
            alone.SetUniform([start[m]]);
            Drive(alone);
            Assert.Equal(together.Average[m], alone.Average[0], 1e-12);
        }

        static void Drive(BoardEnsemble board)
        {
            board.DiffusionNumber.Fill(0.01);
            board.SurfaceNumber.Fill(0.1);
            board.Equilibrium.Fill(0.12);
            for (var step = 0; step < 50; step++)
            {
                board.Step();
            }
        }
    }

    [Fact]
    public void Step_allocates_nothing()
    {
        var board = RandomBoards(128, new DiffusionLaw(13.4, 0.30), out _);
        board.DiffusionNumber.Fill(0.01);
        board.SurfaceNumber.Fill(0.1);
        board.Equilibrium.Fill(0.12);
        board.Step();
        var before = GC.GetAllocatedBytesForCurrentThread();
        for (var step = 0; step < 50; step++)
        {
            board.Step();
        }

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    // M = 0.2 + 0.06 cos(x) e^-t with D = exp(slope (M - 0.3)); the air and the source are made so that this is the solution.
    private static double ManufacturedError(int cells)
    {
        const double slope = 8.0;
        const double time = 0.5;
        const double biot = 4.0;
        var steps = cells * cells * 4;
        var step = time / steps;
        var board = new BoardEnsemble(1, cells, new DiffusionLaw(slope, 0.30));
        for (var cell = 0; cell < cells; cell++)
        {
            board.Cell(cell)[0] = Exact(board.Centres[cell], 0.0);
        }

        board.Refresh();
        board.DiffusionNumber.Fill(step);
        board.SurfaceNumber.Fill(biot * step);
        var source = new double[cells];
        for (var n = 1; n <= steps; n++)
        {
            var t = n * step;
            board.Equilibrium[0] = Exact(1.0, t) + D(1.0, t) * Slope(1.0, t) / biot;
            for (var cell = 0; cell < cells; cell++)
            {
                var x = board.Centres[cell];
                var gradient = Slope(x, t);
                var rate = -(Exact(x, t) - 0.2);
                source[cell] = step * (rate - D(x, t) * (slope * gradient * gradient - (Exact(x, t) - 0.2)));
            }

            board.Step(source);
        }

        var worst = 0.0;
        for (var cell = 0; cell < cells; cell++)
        {
            worst = Math.Max(worst, Math.Abs(board.Cell(cell)[0] - Exact(board.Centres[cell], time)));
        }

        return worst;

        static double Exact(double x, double t) => 0.2 + 0.06 * Math.Cos(x) * Math.Exp(-t);
        static double Slope(double x, double t) => -0.06 * Math.Sin(x) * Math.Exp(-t);
        static double D(double x, double t) => Math.Exp(slope * (Exact(x, t) - 0.30));
    }

    private static void AssertOrderTwo(double coarse, double middle, double fine)
    {
        Assert.InRange(Math.Log2(coarse / middle), 1.8, 2.3);
        Assert.InRange(Math.Log2(middle / fine), 1.9, 2.2);
    }

    private static BoardEnsemble RandomBoards(int members, DiffusionLaw law, out double[] start)
    {
        var random = new RandomSequence(11);
        start = [.. Enumerable.Range(0, members).Select(_ => 0.1 + random.NextUniform())];
        var board = new BoardEnsemble(members, 12, law);
        board.SetUniform(start);
        return board;
    }
}
