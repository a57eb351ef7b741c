namespace Boardwright.Web.Drawings;

/// <summary>One kiln's charges.</summary>
public sealed record KilnRow(string Kiln, IReadOnlyList<ChargeBar> Charges);
