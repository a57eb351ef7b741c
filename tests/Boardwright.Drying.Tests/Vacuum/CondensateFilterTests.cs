using Boardwright.Drying.Vacuum;
using Boardwright.Numerics;
using Boardwright.Quantities;

namespace Boardwright.Drying.Tests.Vacuum;

public sealed class CondensateFilterTests
{
    private static readonly VacuumCharge Charge = new(
        Given.Species("black cherry"), Length.FromMillimetres(50.8), Length.FromMetres(2.4), Given.Moisture(25.0), Given.Moisture(8.0),
        Volume.FromCubicMetres(2.0), Pressure.FromPascals(6000.0), Power.FromKilowatts(6.0));

    private static readonly VacuumForecast Forecast = Given.Done(VacuumDrying.Forecast(Charge, RadioFrequency.Usual));
    private static readonly VacuumLoad Load = new(Charge, Mass.FromKilograms(2000.0 * Charge.Species.BasicSpecificGravity), 0.7);

    [Fact]
    public void Without_a_reading_the_standing_is_the_forecast()
    {
        var standing = Standing(0.0);

        Assert.Equal(1.0, standing.HoursP50 / Forecast.HoursP50, 0.05);
        Assert.True(standing.HoursP10 < 1.1 * Forecast.HoursP10 && standing.HoursP90 > 0.9 * Forecast.HoursP90);
        Assert.Equal(25.0, standing.Likely.Percent, 1e-6);
    }

    [Theory]
    [InlineData(0.6)]
    [InlineData(1.0)]
    [InlineData(1.6)]
    public void Rate_that_made_the_condensate_is_found_and_the_band_narrows(double rate)
    {
        var standing = Standing(80.0, [.. new[] { 20.0, 40.0, 60.0, 80.0 }.Select(hours => new CaughtWater(Elapsed.FromHours(hours), Caught(hours, rate)))]);

        Assert.Equal(rate, standing.Rate.Factor, 0.1 * rate);
        Assert.True(standing.Rate.Spread < 0.5 * CondensateFilter.UsualRate(Forecast).Spread);
        Assert.True(standing.HoursP90 / standing.HoursP10 < Forecast.HoursP90 / Forecast.HoursP10);
        Assert.InRange(Forecast.HoursP50 / rate, standing.HoursP10, standing.HoursP90);
    }

    [Fact]
    public void Condensate_never_makes_the_moisture_surer_than_its_start() =>
        Assert.True(Standing(80.0, [.. Enumerable.Range(1, 16).Select(i => new CaughtWater(Elapsed.FromHours(5.0 * i), Caught(5.0 * i, 1.0)))]) is var standing && standing.High.Percent - standing.Low.Percent > 1.7);

    [Fact]
    public void Reading_in_the_kiln_sees_the_start_which_condensate_does_not()
    {
        // The wood went in two points wetter than it was read, and dries as forecast.
        const double Wetter = 2.0;
        var course = VacuumDrying.Course(Charge, RadioFrequency.Usual);
        double MoisturePercent(double hours) => 100.0 * course.Last(point => point.Hours <= hours).Moisture + Wetter;
        var load = Load with { StartErrorPercent = 1.5 };
        CaughtWater[] caught = [.. new[] { 20.0, 40.0, 60.0, 80.0 }.Select(hours => new CaughtWater(Elapsed.FromHours(hours), Caught(hours, 1.0)))];
        VacuumStanding Of(params ReadInside[] read)
        {
            var part = load with { Read = read };
            return CondensateFilter.Of([part], part, Forecast, RadioFrequency.Usual, caught, Elapsed.FromHours(80.0));
        }

        var blind = Of();
        var read = Of([.. new[] { 40.0, 60.0, 80.0 }.Select(hours => new ReadInside(Elapsed.FromHours(hours), Given.Moisture(MoisturePercent(hours)), 0.5, 0.5))]);

        Assert.True(Math.Abs(read.Likely.Percent - MoisturePercent(80.0)) < 0.5 * Math.Abs(blind.Likely.Percent - MoisturePercent(80.0)));
        Assert.True(read.High.Percent - read.Low.Percent < 0.6 * (blind.High.Percent - blind.Low.Percent));
        Assert.True(read.HoursP90 / read.HoursP10 < blind.HoursP90 / blind.HoursP10);
        Assert.True(read.HoursP50 > blind.HoursP50);
    }

    [Fact]
    public void Reading_alone_finds_the_rate_and_what_a_meter_is_always_off_stays_unknown()
    {
        var course = VacuumDrying.Course(Charge, RadioFrequency.Usual);
        ReadInside Read(double hours, double shared) => new(Elapsed.FromHours(hours), MoistureContent.FromFraction(course.Last(point => point.Hours <= 1.4 * hours).Moisture), 0.5, shared);
        VacuumStanding Of(double shared)
        {
            var part = Load with { Read = [Read(30.0, shared), Read(45.0, shared), Read(60.0, shared)] };
            return CondensateFilter.Of([part], part, Forecast, RadioFrequency.Usual, [], Elapsed.FromHours(60.0));
        }

        Assert.Equal(1.4, Of(0.3).Rate.Factor, 0.1);
        Assert.True(Of(2.0).High.Percent - Of(2.0).Low.Percent > Of(0.3).High.Percent - Of(0.3).Low.Percent);
    }

    [Fact]
    public void Eight_charges_in_ten_end_within_the_band()
    {
        var chance = new RandomSequence(20261102, 3);
        var usual = CondensateFilter.UsualRate(Forecast).Spread;
        var held = 0;
        const int Charges = 200;
        for (var i = 0; i < Charges; i++)
        {
            var (rate, share, hold, start) = (Math.Exp(usual * chance.NextNormal()), 0.95 + 0.05 * chance.NextNormal(), Math.Max(0.0, 2.0 + 1.5 * chance.NextNormal()), 0.007 * chance.NextNormal());
            CaughtWater Read(double hours) => new(Elapsed.FromHours(hours), Mass.FromKilograms(Math.Max(0.0, share * Lost(hours, rate) - hold + chance.NextNormal())));
            var standing = Standing(60.0, [Read(20.0), Read(40.0), Read(60.0)]);
            var truth = HoursTo(Charge.To.Fraction - start) / rate;
            held += standing.HoursP10 <= truth && truth <= standing.HoursP90 ? 1 : 0;
        }

        // Three standard deviations of a count of 200 at 0.8.
        Assert.InRange(held / (double)Charges, 0.8 - 0.085, 0.8 + 0.085);
    }

    private static VacuumStanding Standing(double now, params CaughtWater[] caught) => CondensateFilter.Of([Load], Load, Forecast, RadioFrequency.Usual, caught, Elapsed.FromHours(now));

    private static Mass Caught(double hours, double rate) => Mass.FromKilograms(Math.Max(0.0, 0.95 * Lost(hours, rate) - 2.0));

    private static double Lost(double hours, double rate)
    {
        var course = VacuumDrying.Course(Charge, RadioFrequency.Usual);
        var after = course.LastOrDefault(point => point.Hours <= rate * hours, course[0]);
        return Load.OvenDry.Kilograms * (Charge.From.Fraction - after.Moisture);
    }

    private static double HoursTo(double moisture) => VacuumDrying.Course(Charge, RadioFrequency.Usual).First(point => point.Moisture <= moisture).Hours;
}
