namespace Boardwright.Web.Drawings;

/// <summary>The day on which heat falls short. The label names day, cause and amount.</summary>
public sealed record HeatShortage(DateOnly Day, string Label, string ShortLabel);
