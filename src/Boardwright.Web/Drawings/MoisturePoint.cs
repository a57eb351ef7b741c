namespace Boardwright.Web.Drawings;

/// <summary>A band and its likely value at one time, percent.</summary>
public readonly record struct MoisturePoint(DateTime At, double Low, double Likely, double High);
