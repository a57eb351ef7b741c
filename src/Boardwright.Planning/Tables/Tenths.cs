namespace Boardwright.Planning;

/// <summary>Whole tenths of a unit; what is asked is rounded up, what is offered is rounded down, so that no plan asks too much.</summary>
internal static class Tenths
{
    private const double Forgiven = 1e-6; // so that 0.3 kept as 0.30000000000000004 does not count as 0.4

    public static int Up(double value) => (int)Math.Ceiling(value * 10.0 - Forgiven);

    public static int Down(double value) => (int)Math.Floor(value * 10.0 + Forgiven);
}
