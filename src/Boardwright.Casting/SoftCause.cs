namespace Boardwright.Casting;

/// <summary>One reason a casting may be soft, with how to find out and what to do.</summary>
/// <param name="Cause">In words.</param>
/// <param name="Test">How to tell it from the others.</param>
/// <param name="Remedy">What to do.</param>
/// <param name="CanBeSaved">Heat and time can still mend it.</param>
public sealed record SoftCause(string Cause, string Test, string Remedy, bool CanBeSaved);
