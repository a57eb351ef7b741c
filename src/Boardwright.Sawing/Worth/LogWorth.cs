using Boardwright.Quantities;

namespace Boardwright.Sawing;

/// <summary>What a log is worth to the mill before profit: dry lumber sold, less what each board foot costs, less hauling and metal.</summary>
/// <remarks>
/// Worth = share x scale x (price - costs) - haul - strikes x cost of a strike; share = dry board feet sold per board foot of International scale, from the mill's own record.
/// A figure to walk away at, not an appraisal: diameter read one inch wrong moves it by more than any term.
/// </remarks>
/// <method page="docs/methods/log-worth.md"/>
/// <param name="Scale">International 1/4 in footage, not rounded.</param>
/// <param name="SoldPerScale">Dry board feet sold per board foot scaled.</param>
/// <param name="PriceMoneyPerBf">What a dry board foot brings.</param>
/// <param name="CostMoneyPerBf">Sawing, drying, handling and selling of a board foot.</param>
/// <param name="HaulMoney">Bringing the log in; 0 when it lies in the yard.</param>
/// <param name="StrikesExpected">Metal strikes expected in such a log.</param>
/// <param name="StrikeMoney">Blade and time of one strike.</param>
public sealed record LogWorth(BoardFeet Scale, double SoldPerScale, double PriceMoneyPerBf, double CostMoneyPerBf, double HaulMoney, double StrikesExpected, double StrikeMoney)
{
    /// <summary>Dry board feet that will be sold.</summary>
    public BoardFeet Sold => BoardFeet.From(Scale.Count * SoldPerScale);

    /// <summary>Expected cost of metal.</summary>
    public double MetalMoney => StrikesExpected * StrikeMoney;

    /// <summary>What the dry lumber brings.</summary>
    public double SalesMoney => Sold.Count * PriceMoneyPerBf;

    /// <summary>Worth before profit; below zero the log costs more than it brings.</summary>
    public double Money => (Sold.Count * (PriceMoneyPerBf - CostMoneyPerBf)) - HaulMoney - MetalMoney;

    /// <summary>The highest price that still leaves the wanted margin; below zero no price does.</summary>
    /// <param name="margin">Share of what the dry lumber brings.</param>
    public double MostToPay(Share margin) => Money - (margin.Fraction * SalesMoney);
}
