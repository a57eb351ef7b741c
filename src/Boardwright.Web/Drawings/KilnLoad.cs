namespace Boardwright.Web.Drawings;

/// <summary>One pack in a kiln, end on.</summary>
public sealed record KilnLoad(string Stack, string Species, int Courses, double ThicknessInches, double WidthInches = 48);
