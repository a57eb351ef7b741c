namespace Boardwright.Yard.UseCases;

/// <summary>The arithmetic of what wood has cost so far: time, footage and heat into money at the yard's rates. Nothing else is in here.</summary>
/// <remarks>Money as plain numbers in the yard's own money; footage in board feet. Shares of a charge go by the footage loaded, not by the kiln's capacity.</remarks>
/// <method page="docs/methods/cost-so-far.md"/>
public static class CostRules
{
    /// <summary>Machine and two people for the hours noted, or for the usual output where none were; and the blade's share.</summary>
    public static double Sawing(CostRates rates, double bf, double? hours) =>
        (hours ?? bf / rates.MillBfPerHour) * (rates.MillHourMoney + CostRates.Crew * rates.PersonHourMoney) + bf * rates.BladeMoneyPerBf;

    /// <summary>Putting boards on stickers: hours of one person, and wear of the stickers.</summary>
    public static double Stickering(CostRates rates, double bf) => bf / rates.StickerBfPerPersonHour * rates.PersonHourMoney + bf * rates.StickersMoneyPerBf;

    /// <summary>Planing both faces: machine and two people for as long as the boards take.</summary>
    public static double Planing(CostRates rates, double bf) => bf / rates.PlanerBfPerHour * (rates.PlanerHourMoney + CostRates.Crew * rates.PersonHourMoney);

    /// <summary>A part of the days a kiln was taken up.</summary>
    public static double KilnDays(double fixedMoneyPerDay, double days, double shareOfCharge) => fixedMoneyPerDay * days * shareOfCharge;

    /// <summary>A part of loading and unloading, two people each.</summary>
    public static double KilnLoading(CostRates rates, double loadHours, double unloadHours, double shareOfCharge) =>
        (loadHours + unloadHours) * CostRates.Crew * rates.PersonHourMoney * shareOfCharge;

    /// <summary>Heat from the boiler: the wood burnt and the stoking.</summary>
    public static double BoilerHeat(CostRates rates, double kilowattHours) => kilowattHours * (rates.FuelMoneyPerKwh + rates.StokingMoneyPerKwh);

    /// <summary>Line power that puts this heat into the wood by radio frequency.</summary>
    public static double RadioFrequencyKwh(CostRates rates, double inWoodKilowattHours) => inWoodKilowattHours / (rates.LineToPlatenShare * rates.PlatenToWoodShare);

    /// <summary>Simple interest on what the wood had cost before these days.</summary>
    public static double Interest(CostRates rates, double money, double days) => money * rates.InterestShareADay * days;

    /// <summary>What one board foot has cost: all of it over what is left. Wood lost on the way makes the rest dearer.</summary>
    public static double? PerBoardFoot(double money, double bf) => bf > 0.0 ? money / bf : null;

    /// <summary>The same when the likely falldown still to come is taken off.</summary>
    public static double? PerBoardFootSold(double money, double bf, double falldownPct) => PerBoardFoot(money, bf * (1.0 - falldownPct / 100.0));
}
