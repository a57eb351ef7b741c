namespace Boardwright.Planning;

/// <summary>A stack in one kiln, in whole numbers: steps by load day, tenths of a kilowatt by warm-up choice, cents of heat.</summary>
internal sealed record KilnUse(int[] Half, int[] Most, int[] WarmTenths, int RunTenths, long HeatCents);
