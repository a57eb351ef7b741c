namespace Boardwright.Browser.Tests;

/// <summary>Every page on a desktop.</summary>
public sealed class EveryPageOnDesktopTests(ServedProgram served) : EveryPageTests(served, Screen.Desktop);
