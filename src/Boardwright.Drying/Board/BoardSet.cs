using Boardwright.Quantities;
using Boardwright.Wood;

namespace Boardwright.Drying.Board;

/// <summary>The boards of a forecast: an ensemble whose members differ in thickness, coefficient and starting moisture as stacks of one description do.</summary>
internal sealed class BoardSet
{
    // Printed drying times grow with thickness to the power 1.3 to 1.5 (wengert-drying-oak), pure diffusion with 2: the coefficient, fitted at 1 in,
    // is raised for thicker wood so that the power is 1.5.
    private const double CoefficientThicknessPower = 0.5;
    private const double ThicknessSpread = 0.02;
    private const double GreenSpread = 0.08;
    private const double DrySpread = 0.04;
    private const double SpinUpCelsius = 15.0;
    private const double SpinUpHumidity = 0.65;
    private const double SpinUpDays = 0.5;
    private const int SpinUpStepsMax = 4000;
    private const int UsualCells = 12;
    private const int UsualPasses = 3;
    private const double ReferenceSpecificGravity = 0.55;
    private const double SecondsPerDay = 86400.0;

    private readonly double[] coefficientM2PerS;
    private readonly double[] halfThicknessM;
    private readonly double[] start;
    private readonly double specificGravity;
    private readonly double thicknessFactor;

    public BoardSet(Species species, Length thickness, MoistureContent from, double coefficientM2PerS, double coefficientSpread, int members, ulong seed, int cells = UsualCells, int passes = UsualPasses)
    {
        specificGravity = species.BasicSpecificGravity;
        thicknessFactor = Math.Pow(thickness.Inches, CoefficientThicknessPower);
        Boards = new BoardEnsemble(members, cells, BoardPhysics.Law) { Passes = passes };
        this.coefficientM2PerS = Scattered(coefficientM2PerS * thicknessFactor, coefficientSpread, Scatter.Apart(members, seed, 1));
        halfThicknessM = Scattered(0.5 * thickness.Metres, ThicknessSpread, Scatter.Apart(members, seed, 2, 1));
        var spread = from.Fraction > DiffusionLaw.FiberSaturationFraction ? GreenSpread : DrySpread;
        start = Scattered(from.Fraction, spread, Scatter.Apart(members, seed, 3, 1, 2));
        Begin(GreenWood.Moisture(species).Fraction, from.Fraction);
    }

    public BoardEnsemble Boards { get; }

    public int Members => Boards.Members;

    public double ThicknessM(int member) => 2.0 * halfThicknessM[member];

    public double CoefficientM2PerS(int member) => coefficientM2PerS[member];

    public void ScaleCoefficient(int member, double factor) => coefficientM2PerS[member] *= factor;

    /// <summary>Sets the inputs of one member's next step.</summary>
    /// <param name="member">Which board.</param>
    /// <param name="diffusionFactor">Coefficient over the one at 20 C.</param>
    /// <param name="surfaceM2PerS">Surface coefficient, m/s, before temperature and density.</param>
    /// <param name="surfaceFactor">Factor for both.</param>
    /// <param name="equilibriumFraction">Equilibrium moisture content of the air.</param>
    /// <param name="seconds">Length of the step.</param>
    public void SetStep(int member, double diffusionFactor, double surfaceM2PerS, double surfaceFactor, double equilibriumFraction, double seconds)
    {
        var half = halfThicknessM[member];
        Boards.DiffusionNumber[member] = coefficientM2PerS[member] * diffusionFactor * seconds / (half * half);
        Boards.SurfaceNumber[member] = surfaceM2PerS * surfaceFactor * seconds / half;
        Boards.Equilibrium[member] = equilibriumFraction;
    }

    /// <summary>Sets the inputs of the next step of all members: the air of each season serves every so many members, each with its own departure.</summary>
    /// <param name="air">Air in the stack, by season.</param>
    /// <param name="climate">Departure of each member's air.</param>
    /// <param name="seconds">Length of the step.</param>
    public void SetAir(ReadOnlySpan<StackAir> air, StackClimate climate, double seconds)
    {
        var diffusion = Boards.DiffusionNumber;
        var surface = Boards.SurfaceNumber;
        var equilibrium = Boards.Equilibrium;
        var perDensity = ReferenceSpecificGravity / specificGravity * seconds;
        for (var first = 0; first < Members; first += air.Length)
        {
            for (var season = 0; season < air.Length; season++)
            {
                var m = first + season;
                var perHalf = 1.0 / halfThicknessM[m];
                diffusion[m] = coefficientM2PerS[m] * air[season].DiffusionFactor * seconds * perHalf * perHalf;
                surface[m] = air[season].SurfaceMetresPerSecond * perDensity * perHalf;
                equilibrium[m] = climate.Equilibrium(m, air[season].EquilibriumFraction);
            }
        }
    }

    /// <summary>How fast the boards dry against a usual coefficient: the median factor and its spread.</summary>
    public DryingRate Rate(double usualM2PerS)
    {
        var (sum, squares) = (0.0, 0.0);
        foreach (var coefficient in coefficientM2PerS)
        {
            var log = Math.Log(coefficient / (usualM2PerS * thicknessFactor));
            sum += log;
            squares += log * log;
        }

        var mean = sum / Members;
        return new DryingRate(Math.Exp(mean), Math.Sqrt(Math.Max(squares / Members - mean * mean, 0.0)));
    }

    public double SurfaceFactor(double celsius) => BoardPhysics.SurfaceFactor(celsius, specificGravity);

    // Wood drier than green has dried to where it is: its core is wetter than its shell. The profile is that of steady mild air.
    private void Begin(double green, double from)
    {
        var emc = Emc.Percent(SpinUpCelsius, SpinUpHumidity) / 100.0;
        if (from >= green || start.Min() <= emc + 0.01)
        {
            Boards.SetUniform(start);
            return;
        }

        var first = new double[Members];
        for (var m = 0; m < Members; m++)
        {
            first[m] = Math.Max(green, start[m]);
        }

        Boards.SetUniform(first);
        var (diffusion, surface) = (BoardPhysics.DiffusionFactor(SpinUpCelsius), SurfaceFactor(SpinUpCelsius));
        for (var step = 0; step < SpinUpStepsMax; step++)
        {
            var waiting = false;
            for (var m = 0; m < Members; m++)
            {
                var dries = Boards.Average[m] > start[m];
                waiting |= dries;
                SetStep(m, diffusion, StackPlace.Row.SurfaceMetresPerSecond, surface, emc, dries ? SpinUpDays * SecondsPerDay : 0.0);
            }

            if (!waiting)
                break;

            Boards.Step();
        }

        // The last step passed the start by a little; a small even shift puts every board on it.
        for (var cell = 0; cell < Boards.Cells; cell++)
        {
            var row = Boards.Cell(cell);
            for (var m = 0; m < Members; m++)
            {
                row[m] += start[m] - Boards.Average[m];
            }
        }

        Boards.Refresh();
    }

    private static double[] Scattered(double median, double spread, double[] normal)
    {
        for (var m = 0; m < normal.Length; m++)
        {
            normal[m] = median * Math.Exp(spread * normal[m]);
        }

        return normal;
    }
}
