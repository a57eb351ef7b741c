namespace Boardwright.Web.Drawings;

/// <summary>What the boilers give over some days.</summary>
/// <param name="From">First day.</param>
/// <param name="To">First day after.</param>
/// <param name="Kilowatts">Counted on.</param>
/// <param name="KilowattsPerhaps">Given if all goes well; equal to <paramref name="Kilowatts"/> when sure.</param>
/// <param name="Label">A few words on it; null for none.</param>
public sealed record BoilerSpan(DateOnly From, DateOnly To, double Kilowatts, double KilowattsPerhaps, string? Label = null);
