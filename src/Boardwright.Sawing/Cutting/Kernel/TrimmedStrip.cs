namespace Boardwright.Sawing;

/// <summary>A clear strip of a flitch between two trim places, to be edged.</summary>
/// <param name="From">Station nearest the small end.</param>
/// <param name="Steps">Length in trim steps.</param>
/// <param name="Wane">Wane class its boards are taken by.</param>
/// <param name="Low">Left side.</param>
/// <param name="High">Right side.</param>
/// <param name="Grain">How the rings stand over its width.</param>
internal readonly record struct TrimmedStrip(int From, int Steps, int Wane, double Low, double High, int Grain);
