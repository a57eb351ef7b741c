using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Wood;

namespace Boardwright.Sawing.Tests;

/// <summary>Short ways to what a test expects: an answer, a refusal, a species, a row's quantities.</summary>
internal static class Expect
{
    public static T Done<T>(Outcome<T> outcome) => outcome is Outcome<T>.Done(var value) ? value : throw new Xunit.Sdk.XunitException($"Not done: {Why(outcome)}");

    public static Refusal Refused<T>(Outcome<T> outcome) => Assert.Single(Assert.IsType<Outcome<T>.Refused>(outcome).Reasons);

    public static string NoAnswer<T>(Outcome<T> outcome) => Assert.IsType<Outcome<T>.NoAnswer>(outcome).Why;

    public static Species Species(string name) => Done(SpeciesTable.Find("species", name));

    public static void Agrees(this PublishedRow row, double value) => Assert.InRange(value, row.Low, row.High);

    // A table with tolerances wider than its values would pass whatever we compute.
    public static void NoticesOnePercent(string table, params string[] quantities)
    {
        foreach (var quantity in quantities)
        {
            Assert.Contains(
                PublishedTable.Rows(table).Where(row => row.Quantity == quantity),
                row => Math.Abs(row.ExpectedNumber) * 0.01 > row.Tolerance);
        }
    }

    public static Length Inches(double inches) => Length.FromInches(inches);

    public static Length Feet(double feet) => Length.FromFeet(feet);

    private static string Why<T>(Outcome<T> outcome) => outcome switch
    {
        Outcome<T>.Refused(var reasons) => string.Join("; ", reasons),
        Outcome<T>.NoAnswer(var why) => why,
        _ => "",
    };
}
