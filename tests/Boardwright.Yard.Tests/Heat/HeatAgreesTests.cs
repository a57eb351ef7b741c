using System.Globalization;
using Boardwright.Numerics;
using Boardwright.Testing;
using Boardwright.Yard.Tests.Plan;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Heat;

/// <summary>A row of heat adds up as it is printed, and every figure says in its own line what it holds for.</summary>
public sealed class HeatAgreesTests
{
    [Fact]
    public void Parts_in_tenths_add_up_to_the_rounded_whole_and_none_is_off_by_a_tenth()
    {
        var chance = new RandomSequence(7);
        for (var round = 0; round < 500; round++)
        {
            var exact = Enumerable.Range(0, 1 + round % 6).Select(_ => 30.0 * chance.NextUniform()).ToList();
            var shown = HeatTenths.Of(exact);

            Assert.Equal(Math.Round(exact.Sum(), 1, MidpointRounding.AwayFromZero), shown.Sum(), 1e-9);
            Assert.All(shown.Zip(exact), pair => Assert.InRange(pair.First - pair.Second, -0.1 - 1e-9, 0.1 + 1e-9));
        }
    }

    [Fact]
    public void Heat_given_less_heat_wanted_is_what_is_printed_as_left()
    {
        var season = SeasonSheet.Of(DemonstrationBook.Yard, DemonstrationPlan.Made());
        foreach (var day in season.HeatShown)
            Assert.Equal(Tenth(day.GivenKw - day.KilowattsByUse.Sum(Tenth)), Tenth(day.GivenKw - day.WantedKw));
        foreach (var day in BoilerSheet.Days(DemonstrationBook.Yard, 42))
            Assert.Equal(Tenth(day.CapacityKw - Tenth(day.ShopKw) - day.KilnsHoldKw.Sum(kiln => Tenth(kiln.Kw))), Tenth(day.SpareKw - day.KilnsKw));

        var choices = HeatChoices.Of(DemonstrationBook.Yard, season);
        Assert.Equal(24.0 * choices.ShortDays.Sum(day => Tenth(day.ShortKw)), choices.MissingKwh, 1e-6);

        static double Tenth(double kilowatts) => double.Parse(kilowatts.ToString("0.0", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
    }

    [Fact]
    public void Heat_on_the_sheet_says_whether_it_is_the_plans_or_that_of_all_kilns_hot()
    {
        var (before, after) = (Heat(SeasonNow.StillWorked), Heat(SeasonNow.Of(DemonstrationBook.Yard, DemonstrationPlan.Made())));

        Assert.True(before.Count > 1 && after.Count > 1);
        Assert.All(before, basis => Assert.Contains("all kilns held hot", basis, StringComparison.Ordinal));
        Assert.All(after, basis => Assert.Contains("plan", basis, StringComparison.Ordinal));

        List<string> Heat(SeasonNow season) => [.. MorningSheet.For(DemonstrationBook.Yard, null, season).Tasks.Where(task => task.Much is { Unit: "kW", Label: not "Output missing" }).Select(task => task.Much.Basis)];
    }
}
