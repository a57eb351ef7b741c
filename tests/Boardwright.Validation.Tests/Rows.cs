using Boardwright.Quantities;
using Boardwright.Testing;

namespace Boardwright.Validation.Tests;

/// <summary>Quantities of a row by the unit its input is named with.</summary>
internal static class Rows
{
    public static Temperature Temperature(this PublishedRow row, string name) => row.Has(name + "_f")
        ? Quantities.Temperature.FromFahrenheit(row[name + "_f"])
        : Quantities.Temperature.FromCelsius(row[name + "_c"]);

    public static MoistureContent Moisture(this PublishedRow row, string name) => MoistureContent.FromPercent(row[name]);

    public static Mass Mass(this PublishedRow row, string name) =>
        row.Has(name + "_g") ? Quantities.Mass.FromGrams(row[name + "_g"]) : Quantities.Mass.FromPounds(row[name + "_lb"]);

    public static Ours Unknown(this PublishedRow row) => throw new InvalidOperationException($"{row.Id}: nothing computes {row.Quantity}");
}
