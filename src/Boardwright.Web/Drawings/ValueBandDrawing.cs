namespace Boardwright.Web.Drawings;

/// <summary>A value's band and likely place on a scale, against a fixed mark.</summary>
/// <param name="What">What is measured, for the words.</param>
/// <param name="Unit">bf, kg, money.</param>
public sealed record ValueBandDrawing(string What, string Unit, double Low, double Likely, double High)
{
    /// <summary>A fixed amount to compare with, such as what is sold; null for none.</summary>
    public double? Mark { get; init; }

    public string MarkWords { get; init; } = "sold";
}
