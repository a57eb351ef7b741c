namespace Boardwright.Web.Drawings;

/// <summary>One charge in the plan.</summary>
/// <param name="Charge">C-61.</param>
/// <param name="Amount">Its size, such as "3,150 bf".</param>
/// <param name="Wood">What it is, in a few words.</param>
/// <param name="Species">Decides the pattern of the bar.</param>
/// <param name="In">Loaded.</param>
/// <param name="Out">Likely out.</param>
/// <param name="OutLate">It may take this long: the hatched end.</param>
public sealed record ChargeBar(string Charge, string Amount, string Wood, string Species, DateOnly In, DateOnly Out, DateOnly OutLate)
{
    /// <summary>In the kiln now: heavy frame.</summary>
    public bool Running { get; init; }

    /// <summary>Page of the charge; null for a planned one without a page.</summary>
    public string? Address { get; init; }
}
