namespace Boardwright.Documents;

/// <summary>A point in millimetres; the owner says where zero is and which way the axes run.</summary>
public readonly record struct PointMm(double XMm, double YMm);
