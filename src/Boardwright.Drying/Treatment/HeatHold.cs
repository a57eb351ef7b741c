using Boardwright.Quantities;

namespace Boardwright.Drying.Treatment;

/// <summary>What wood is heated against.</summary>
public enum HeatAgainst
{
    /// <summary>Pests of trade in wood, as international rules ask.</summary>
    Pests,

    /// <summary>Powderpost beetles of dry sapwood.</summary>
    PowderpostBeetles,

    /// <summary>Fungi in moist wood.</summary>
    Fungi,
}

/// <summary>How long a core must be held at its temperature: the printed sterilization tables.</summary>
/// <remarks>A row holds from its temperature up, and for wood up to its thickness; of those that hold the shortest is taken. Under the lowest row no hold is known. Heat kills what is inside and keeps nothing out.</remarks>
/// <param name="Time">To be held without a break.</param>
/// <param name="Source">Where it is printed.</param>
/// <param name="Mark">P printed source seen, M from memory of the source.</param>
/// <source id="ispm-15" locator="treatment HT"/>
/// <source id="fpl-wood-handbook-2010" locator="ch. 14"/>
/// <source id="chidester-1937"/>
/// <source id="ah-188"/>
/// <method page="docs/methods/heat-treatment.md"/>
public sealed record HeatHold(Elapsed Time, string Source, string Mark)
{
    private const double RoundingKelvins = 0.15; // 133 F are 56.1 C: both are printed for the same rule.

    /// <summary>The printed rows: against what, from which core temperature, for boards up to which thickness.</summary>
    public static IReadOnlyList<(HeatAgainst Against, Temperature Core, Length? ThicknessMax, HeatHold Hold)> Printed { get; } =
    [
        .. DryingData.Read("heat-holds.csv").Select(row => (
            Enum.Parse<HeatAgainst>(row.Text("against")), Temperature.FromFahrenheit(row.Needed("core_f")), row.Text("thickness_max_in").Length > 0 ? Length.FromInches(row.Needed("thickness_max_in")) : (Length?)null,
            new HeatHold(Elapsed.FromMinutes(row.Needed("hold_min")), row.Text("source"), row.Text("mark")))),
    ];

    /// <summary>The hold; null where none is known at this temperature and thickness.</summary>
    public static HeatHold? For(HeatAgainst against, Temperature core, Length thickness) =>
        Printed.Where(row => row.Against == against && core.Kelvins >= row.Core.Kelvins - RoundingKelvins && !(thickness > row.ThicknessMax)).Select(row => row.Hold).MinBy(hold => hold.Time.Seconds);
}
