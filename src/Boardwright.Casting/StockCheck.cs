using Boardwright.Quantities;

namespace Boardwright.Casting;

/// <summary>Whether the stock of both parts covers what is to be mixed.</summary>
/// <param name="NeedA">Part A for all pours.</param>
/// <param name="NeedB">Part B for all pours.</param>
/// <param name="ShortA">What is missing of part A; zero when it is enough.</param>
/// <param name="ShortB">What is missing of part B; zero when it is enough.</param>
public sealed record StockCheck(Mass NeedA, Mass NeedB, Mass ShortA, Mass ShortB)
{
    /// <summary>Both parts are enough.</summary>
    public bool IsEnough => ShortA.Kilograms == 0.0 && ShortB.Kilograms == 0.0;

    /// <summary>Adds up mixes and compares with stock.</summary>
    /// <param name="mixes">What is to be mixed.</param>
    /// <param name="stockA">Part A on hand.</param>
    /// <param name="stockB">Part B on hand.</param>
    public static StockCheck Of(IReadOnlyCollection<Mix> mixes, Mass stockA, Mass stockB)
    {
        ArgumentNullException.ThrowIfNull(mixes);
        var needA = mixes.Sum(mix => mix.PartA.Kilograms);
        var needB = mixes.Sum(mix => mix.PartB.Kilograms);
        return new(
            Mass.FromKilograms(needA), Mass.FromKilograms(needB),
            Mass.FromKilograms(Math.Max(0.0, needA - stockA.Kilograms)), Mass.FromKilograms(Math.Max(0.0, needB - stockB.Kilograms)));
    }
}
