namespace Boardwright.Yard.UseCases;

/// <summary>Heat of a day as it is shown, in tenths of a kilowatt: the parts add up to the whole as printed, so that no page shows a sum that its own row denies.</summary>
public static class HeatTenths
{
    /// <summary>Parts in whole tenths whose sum is the exact sum rounded: the tenths still missing go to the parts that were cut most.</summary>
    public static IReadOnlyList<double> Of(IReadOnlyList<double> kilowatts)
    {
        ArgumentNullException.ThrowIfNull(kilowatts);
        var cut = kilowatts.Select(part => Math.Floor((part * 10.0) + 1e-9)).ToArray();
        var missing = (int)(Math.Round(kilowatts.Sum() * 10.0, MidpointRounding.AwayFromZero) - cut.Sum());
        foreach (var index in Enumerable.Range(0, cut.Length).OrderByDescending(index => (kilowatts[index] * 10.0) - cut[index]).Take(missing))
            cut[index]++;
        return [.. cut.Select(tenths => tenths / 10.0)];
    }
}
