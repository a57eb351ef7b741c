using Boardwright.Quantities;

namespace Boardwright.Sawing.Tests;

/// <summary>Limits of days are common practice without a printed source; what is tested is the rule that reads them.</summary>
public class DamageClockTests
{
    private static readonly DamageLimits Cold = new(120, null, 60);
    private static readonly DamageLimits Mild = new(35, 60, 25);
    private static readonly DamageLimits Warm = new(12, 25, 10);

    [Theory]
    [InlineData(3.9, 120)]
    [InlineData(4.0, 35)]
    [InlineData(15.0, 35)]
    [InlineData(15.1, 12)]
    public void Mean_temperature_picks_the_band(double celsius, int stainDays) =>
        Assert.Equal(stainDays, DamageClock.Band(Temperature.FromCelsius(celsius), Cold, Mild, Warm).StainDays);

    [Fact]
    public void End_checks_come_first_where_ends_are_bare_and_stain_where_they_are_coated()
    {
        Assert.Equal(new DamageClock(15, LogDamage.EndChecks), DamageClock.First(Mild, 10, endsCoated: false));
        Assert.Equal(new DamageClock(25, LogDamage.Stain), DamageClock.First(Mild, 10, endsCoated: true));
        Assert.Equal(new DamageClock(-5, LogDamage.Stain), DamageClock.First(Mild, 40, endsCoated: true));
    }

    [Fact]
    public void Nothing_expected_has_no_clock() => Assert.Null(DamageClock.First(new(null, null, 30), 3, endsCoated: true));
}
