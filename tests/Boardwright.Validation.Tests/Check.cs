using Boardwright.Testing;

namespace Boardwright.Validation.Tests;

/// <summary>One published value beside ours.</summary>
internal sealed record Check(PublishedRow Row, Ours Ours)
{
    // Numbers equal but for the last bits of their arithmetic are equal.
    private const double Noise = 1e-9;

    public Printed Printed { get; } = Printed.Read(Row.Expected);

    /// <summary>Ours less the printed value, or less the nearer end of a printed range where ours lies outside it; of several ours the worst. Null for words.</summary>
    public double? Difference => Printed.IsNumber && Ours.Numbers.Count > 0 ? Ours.Numbers.Select(Outside).MaxBy(Math.Abs) : null;

    public bool Agrees => Printed.IsNumber ? Ours.Numbers.Count > 0 && Ours.Numbers.All(Holds) : Ours.Word == Printed.Word;

    /// <summary>One number of ours lies in the printed value, within the tolerance.</summary>
    public bool Holds(double number) => Math.Abs(Outside(number)) <= Row.Tolerance + Noise * Math.Max(1.0, Math.Abs(Printed.Low));

    private double Outside(double number) => number < Printed.Low ? number - Printed.Low : number > Printed.High ? number - Printed.High : 0.0;

    /// <summary>The tolerance is wider than half a unit of the last digit printed.</summary>
    public bool IsWide => Printed.IsNumber && Row.Tolerance > 1.0001 * Printed.Rounding(Row.Expected);

    /// <summary>An error of one percent of ours would be seen.</summary>
    public bool NoticesOnePercent => Printed.Low == Printed.High && Math.Abs(Printed.Low) * 0.01 > Row.Tolerance;
}
