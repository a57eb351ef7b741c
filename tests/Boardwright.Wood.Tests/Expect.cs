using Boardwright.Quantities;
using Boardwright.Testing;

namespace Boardwright.Wood.Tests;

/// <summary>Short ways to what a test expects: an answer, a refusal, a species, a row's quantities.</summary>
internal static class Expect
{
    public static T Done<T>(Outcome<T> outcome) => Assert.IsType<Outcome<T>.Done>(outcome).Value;

    public static Refusal Refused<T>(Outcome<T> outcome) => Assert.Single(Assert.IsType<Outcome<T>.Refused>(outcome).Reasons);

    public static Species Species(string name) => Done(SpeciesTable.Find("species", name));

    public static Temperature Temperature(this PublishedRow row, string name) => row.Has(name + "_f")
        ? Quantities.Temperature.FromFahrenheit(row[name + "_f"])
        : Quantities.Temperature.FromCelsius(row[name + "_c"]);

    public static MoistureContent Moisture(this PublishedRow row, string name) => MoistureContent.FromPercent(row[name]);

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
}
