namespace Boardwright.Sawing;

/// <summary>How one flitch is trimmed and edged best: from which station to which, and the clear strips beside rot or heart.</summary>
/// <param name="From">Station nearest the small end.</param>
/// <param name="Steps">Length in trim steps.</param>
/// <param name="LeftLow">Left strip from; empty when not above its other edge.</param>
/// <param name="LeftHigh">Left strip to.</param>
/// <param name="RightLow">Right strip from; the right strip is empty in sound wood.</param>
/// <param name="RightHigh">Right strip to.</param>
/// <param name="LeftGrain">Grain of the left strip.</param>
/// <param name="RightGrain">Grain of the right strip.</param>
internal readonly record struct FlitchWindow(int From, int Steps, double LeftLow, double LeftHigh, double RightLow, double RightHigh, int LeftGrain, int RightGrain);
