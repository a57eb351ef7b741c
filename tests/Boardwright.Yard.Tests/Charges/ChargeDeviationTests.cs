using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Charges;

/// <summary>The air found beside a load against the air that is set.</summary>
public sealed class ChargeDeviationTests
{
    private static readonly DateTime Afternoon = new(2026, 11, 2, 15, 0, 0);

    [Fact]
    public void Bulb_off_its_setting_is_named_with_what_the_air_holds_instead()
    {
        // C-61 is set to 150/112 °F.
        var found = Read(150.0, 120.0);

        Assert.Equal(("Air found", "150 / 120"), (found.Label, found.Value));
        Assert.Contains("wet bulb 8 °F over what was set: holds ", found.Basis, StringComparison.Ordinal);
        Assert.EndsWith("instead of 5.0 %", found.Basis, StringComparison.Ordinal);
    }

    [Fact]
    public void Air_within_two_degrees_is_as_set() => Assert.EndsWith("as set", Read(151.0, 113.5).Basis, StringComparison.Ordinal);

    [Fact]
    public void Charge_whose_air_nobody_read_says_nothing_of_it() => Assert.Null(ChargeDeviation.Of(DemonstrationBook.Yard.Charges["C-61"]));

    private static Traced Read(double dry, double wet)
    {
        var book = DemonstrationBook.Open();
        Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(book.Write("Pell", new GaugeRead("C-61", Temperature.FromFahrenheit(dry).Celsius, Temperature.FromFahrenheit(wet).Celsius), Afternoon));
        return ChargeDeviation.Of(book.State.Charges["C-61"])!;
    }
}
