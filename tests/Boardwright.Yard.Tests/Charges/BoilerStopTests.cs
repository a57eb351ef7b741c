using Boardwright.Planning;
using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Charges;

/// <summary>Accident 8: boiler out, pump dead. Question 4: what slips, and which way through is the cheapest.</summary>
public sealed class BoilerStopTests
{
    [Fact]
    public void Charges_in_danger_are_told_in_hours_and_what_to_shut_first()
    {
        var card = BoilerStop.Of(DemonstrationBook.Yard);
        var oak = Assert.Single(card.Charges);

        // 3150 bf of oak at 12 % in a kiln that holds 60 °C with 9 kW at -14 °C cools over days, not hours.
        Assert.Equal("C-61", oak.Charge.Tag);
        Assert.InRange(oak.TimeConstant.Hours, 12.0, 60.0);
        Assert.Null(oak.Stain);
        Assert.NotNull(oak.Regain);
        Assert.Null(oak.Frost); // 1 °C at the coldest in three days
        Assert.Contains("gains moisture after", oak.Says, StringComparison.Ordinal);
        Assert.StartsWith("Fire:", card.Shut[0].Do, StringComparison.Ordinal);
        Assert.Contains("Never cold water", card.Shut[0].Why, StringComparison.Ordinal);
        Assert.Contains(card.Shut, step => step.Do.Contains("Vents and spray shut", StringComparison.Ordinal) && step.Do.Contains("K1", StringComparison.Ordinal));
    }

    [Fact]
    public void Pale_green_wood_stains_and_comes_first()
    {
        var book = DemonstrationBook.Open();
        Done(ChargeLoad.Write(book, new("T-1", "K2", ["S-18"], "7", "Pell"), PostedKey.None));
        Done(ChargeSet.Write(book, "T-1", new("130", "123", null, "Pell"), PostedKey.None));

        var card = BoilerStop.Of(book.State);

        Assert.Equal("T-1", card.Charges[0].Charge.Tag);
        Assert.NotNull(card.Charges[0].Stain);
        Assert.Contains(card.Shut, step => step.Do.StartsWith("Fans run on in K2", StringComparison.Ordinal));
    }

    [Fact]
    public void Coil_may_freeze_once_it_freezes_outside()
    {
        // 18 to 20 November of the forecast: down to -14 °C.
        var state = DemonstrationBook.On(new(2026, 11, 18));
        var card = BoilerStop.Of(state);

        Assert.Equal(-14.0, card.Outside.Celsius, 1e-6);
        Assert.All(card.Charges, one => Assert.True(one.Frost is { } frost && frost.Hours > 0.0));
    }

    [Fact]
    public void Ways_through_the_cold_day_are_compared_in_days_and_money()
    {
        // X-14, E-16: 20 November, 13.5 kW left against 14 kW holding: half a kilowatt short for a day.
        var choices = HeatChoices.Of(DemonstrationBook.Yard, 42);

        Assert.Equal(new DateOnly(2026, 11, 20), Assert.Single(choices.ShortDays).Date);
        Assert.Equal(0.5, choices.WorstKw, 0.1);
        Assert.Equal(12.0, choices.MissingKwh, 2.5);
        Assert.Equal(choices.Choices.OrderByDescending(choice => choice.Enough).ThenBy(choice => choice.Money), choices.Choices);
        var shop = choices.Choices.Single(choice => choice.Way.StartsWith("Turn shop", StringComparison.Ordinal));
        Assert.Equal(choices.MissingKwh, (double)shop.Money, 0.01); // one money a kWh unless the house says otherwise
        Assert.Contains(FormattableString.Invariant($"by {choices.WorstKw / 0.55:0.0} °C"), shop.Way, StringComparison.Ordinal); // 0.55 kW for each degree
        Assert.DoesNotContain(choices.Choices, choice => choice.Way.StartsWith("Electric", StringComparison.Ordinal)); // the house has no heaters
        var heaters = HeatChoices.Of(DemonstrationBook.Yard with { Settings = DemonstrationBook.Yard.Settings.SetItem("electric_heaters", DemonstrationBook.Yard.Settings["electricity"] with { Value = 5.0 }) }, 42);
        Assert.Equal(choices.MissingKwh * 0.16, (double)heaters.Choices.Single(choice => choice.Way.StartsWith("Electric", StringComparison.Ordinal)).Money, 0.01);
        Assert.Contains(choices.Choices, choice => choice.Way.StartsWith("Let all hot kilns drift", StringComparison.Ordinal) && choice.DaysLost is > 0.0 and < 1.0);
        Assert.Contains(choices.Choices, choice => choice.Way.Contains("K2", StringComparison.Ordinal));
    }

    [Fact]
    public void Longer_outage_costs_more_and_moves_orders()
    {
        var out14 = HeatChoices.Of(DemonstrationBook.Yard, 42, [new Interruption("B2", new(2026, 11, 3), new(2026, 11, 20))]);
        var none = HeatChoices.Of(DemonstrationBook.Yard, 42);

        Assert.True(out14.ShortDays.Count > 10 && out14.MissingKwh > none.MissingKwh);
        var hold = out14.Choices.FirstOrDefault(choice => choice.Way.StartsWith("Hold C-61", StringComparison.Ordinal));
        Assert.True(hold is null || hold.Late.Any(late => late.StartsWith("O-303", StringComparison.Ordinal)));
        Assert.Contains(out14.Choices, choice => choice is { Enough: false } && choice.Way.StartsWith("Turn shop", StringComparison.Ordinal));
        Assert.Contains(out14.Choices, choice => choice.Late.Count > 0);
    }

    [Fact]
    public void Enough_heat_needs_no_way_out()
    {
        Assert.Empty(HeatChoices.Of(DemonstrationBook.Yard, 5).Choices);
        Assert.Empty(HeatChoices.Of(YardState.Of([], new(2026, 11, 2)), 5).Choices);
        Assert.Empty(BoilerStop.Of(YardState.Of([], new(2026, 11, 2))).Charges);
    }

    private static T Done<T>(Outcome<T> outcome) => outcome is Outcome<T>.Done(var value) ? value : throw new InvalidOperationException(
        outcome is Outcome<T>.Refused(var reasons) ? string.Join("; ", reasons) : $"{outcome}");
}
