using Boardwright.Documents.Weeks;

namespace Boardwright.Documents.Tests;

/// <summary>Weeks of an invented yard.</summary>
internal static class WeekExamples
{
    private static readonly DateOnly Monday = new(2026, 11, 2);

    public static WeekSheetContent Week { get; } = new("Ollenwhin Sawyard", Monday, new(2026, 11, 2, 6, 30, 0),
    [
        new(Monday.AddDays(1), new(8, 0), "Load K2", "S-07 black cherry 4/4, S-01 white ash 4/4; 1,745 bf; for O-301"),
        new(Monday.AddDays(4), new(7, 30), "Unload K3, V-19", "S-08 black cherry 10/4, S-09 hackberry 10/4; 575 bf; for stock"),
        new(Monday.AddDays(4), null, "O-308 due", "Stable of Three Grey Mules: planer shavings"),
        new(Monday.AddDays(9), null, "next week", "not on this sheet"),
    ]);

    public static WeekSheetContent Full { get; } = Week with
    {
        Yard = "The Very Long Name of a Sawyard by the Upper and the Lower Mill Pond",
        Lines = [.. Enumerable.Range(0, 40).Select(i => new WeekLine(
            Monday.AddDays(i % 7), new(7 + i / 7, 30), $"Load the kiln of number {i}", string.Join(", ", Enumerable.Range(1, 9).Select(stack => $"S-{stack:00} northern red oak 4/4")) + "; 3,150 bf; for O-303, O-310"))],
    };
}
