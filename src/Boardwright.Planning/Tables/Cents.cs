namespace Boardwright.Planning;

/// <summary>Money in whole cents, a half rounded away from zero.</summary>
internal static class Cents
{
    public static long Of(decimal money) => (long)Math.Round(money * 100m, MidpointRounding.AwayFromZero);

    public static decimal Money(long cents) => cents / 100m;
}
