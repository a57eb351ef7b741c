using Boardwright.Quantities;
using Boardwright.Sawing;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>What a log is worth before profit.</summary>
public static class LogWorthCommand
{
    public static Command Command { get; } = Command.Of("log", "worth", "What a log is worth before profit, and so where to walk away", Run) with
    {
        Options =
        [
            Option.Required("small-end", "D", "small-end diameter inside bark, such as 26in"),
            Option.Required("length", "L", "length without trim, such as 8ft"),
            Option.Required("price", "MONEY", "what a dry board foot brings"),
            Option.Required("cost", "MONEY", "sawing, drying, handling and selling of a board foot together"),
            Option.Optional("sold", "P", "dry board feet sold per board foot of International scale (default 85%)"),
            Option.Optional("haul", "MONEY", "bringing the log in (default 0)"),
            Option.Optional("strikes", "N", "metal strikes expected in such a log (default 0)"),
            Option.Optional("strike-cost", "MONEY", "blade and time of one strike (default 0)"),
            Option.Optional("margin", "P", "wanted of what the dry lumber brings (default 15%)"),
        ],
        Examples = ["log worth --small-end 26in --length 8ft --price 3.40 --cost 1.70 --haul 222 --strikes 0.6 --strike-cost 45"],
    };

    public sealed record Answer(double ValueMoney, double InternationalBf, double SoldBf, double LumberMoney, double HaulMoney, double MetalMoney, double MostToPayMoney, double InchLessMoney, double InchMoreMoney, string Note);

    public static Outcome<Answer> Run(Ask ask)
    {
        ArgumentNullException.ThrowIfNull(ask);
        var (smallEnd, length) = (ask.Length("small-end"), ask.Length("length"));
        var worth = new LogWorth(default, ask.Share("sold", Share.FromPercent(85.0)).Fraction, Money(ask, "price"), Money(ask, "cost"), Money(ask, "haul", 0.0), Money(ask, "strikes", 0.0), Money(ask, "strike-cost", 0.0));
        var margin = ask.Share("margin", Share.FromPercent(LogReckoning.UsualMarginPct));
        if (ask.Refuses)
            return ask.Refused<Answer>();

        return ask.Named(At(worth, smallEnd, length)).Then<Answer>(done => new Answer(
            done.Money, done.Scale.Count, done.Sold.Count, done.Sold.Count * (done.PriceMoneyPerBf - done.CostMoneyPerBf), done.HaulMoney, done.MetalMoney, done.MostToPay(margin),
            Near(worth, smallEnd.Inches - 1.0, length) ?? done.Money, Near(worth, smallEnd.Inches + 1.0, length) ?? done.Money,
            "Before profit. Get signed ownership, a warning of metal and who pays for blades in writing; felling is work for arborists."));
    }

    private static Outcome<LogWorth> At(LogWorth worth, Length smallEnd, Length length) =>
        LogScale.Of(LogRule.InternationalQuarter, new MeasuredLog(smallEnd, length)).Then<LogWorth>(log => worth with { Scale = BoardFeet.From(log.GrossUnrounded!.Value) });

    private static double? Near(LogWorth worth, double inches, Length length) =>
        inches >= 1.0 && At(worth, Length.FromInches(inches), length) is Outcome<LogWorth>.Done(var near) ? near.Money : null;

    private static double Money(Ask ask, string option, double? orElse = null)
    {
        var money = ask.Number(option, orElse);
        if (!ask.Refuses && money is not (>= 0.0 and <= 1e6))
            ask.Refuse(option, ask.Text(option), "0 to 1000000");
        return money;
    }
}
