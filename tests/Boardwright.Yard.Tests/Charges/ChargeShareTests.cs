using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Charges;

/// <summary>Question 16: may these share a charge?</summary>
public sealed class ChargeShareTests
{
    [Fact]
    public void Cherry_ash_and_thin_maple_may_share_with_what_it_costs()
    {
        // D-41 of the hand plan. 5/4 over 4/4: 1.25 of 1.50 times; 15.0 to 15.8 %.
        var share = Of("S-07", "S-01", "S-05");

        Assert.True(share.May);
        Assert.Equal("Yes: every rule of the house is kept. Nearest its limit: thickness, 1.25 of 1.50 times.", share.Says);
        Assert.Equal("K2", share.Kiln!.Name);
        Assert.Equal(["Together", "Mixing costs", "One load saves", "Room left empty"], share.Figures.Select(figure => figure.Label));
        Assert.All(share.Stacks, one => Assert.True(one.Together!.Value.Half.Days > 0.5));
        // 1855 of 2000 bf.
        Assert.Equal("145", share.Figures[3].Value);
    }

    [Fact]
    public void Mildest_members_schedule_rules_and_waiting_for_it_is_costed()
    {
        var share = Of("S-06", "S-12");
        var alone = share.Stacks.ToDictionary(one => one.Stack.Tag, one => one.Alone!.Value.Half.Days);
        var together = share.Stacks.Max(one => one.Together!.Value.Half.Days);

        // Red oak 4/4 T4-D2 is the milder of the two (ah-188, index of schedules).
        Assert.Equal("T4-D2", share.Schedule!.Name);
        Assert.Contains(share.GivenUp, one => one.StartsWith("S-12 would run", StringComparison.Ordinal));
        Assert.True(together > alone["S-12"]);
        var cost = (together - alone["S-12"]) * 32.0 * 520.0 / 1000.0 + Math.Max(0.0, together - alone["S-06"]) * 32.0 * 760.0 / 1000.0;
        Assert.Equal(cost, double.Parse(share.Figures[1].Value, System.Globalization.CultureInfo.InvariantCulture), 0.51);
    }

    [Theory]
    [InlineData("S-07,S-02", "never kiln, S-02 must never see a kiln")]
    [InlineData("S-07,S-14", "thickness, thickest 2.00 times the thinnest; at most 1.50 times (setting share_charge_thickness_ratio)")]
    [InlineData("S-07,S-15", "moisture, wettest 29.0 points over the driest; read, and at most 12.0 points apart (setting share_charge_moisture_gap)")]
    [InlineData("S-07,S-10", "here, S-10 is in a kiln")]
    public void Rule_that_decides_is_named_with_its_setting(string tags, string why)
    {
        var share = Of(tags.Split(','));

        Assert.False(share.May);
        Assert.StartsWith($"No: {why}", share.Says, StringComparison.Ordinal);
        Assert.Equal(8, share.Rules.Count);
    }

    [Fact]
    public void Settings_of_the_house_move_the_limits()
    {
        var book = DemonstrationBook.Open();
        Done(book.Write("Oda", new SettingSet("share_charge_thickness_ratio", 2.0, "times")));
        Assert.True(Done(ChargeShare.Of(book.State, ["S-07", "S-14"])).May);

        Done(book.Write("Oda", new SettingSet("customers_share_charges", 0.0, "yes")));
        Assert.StartsWith("No: owners", Done(ChargeShare.Of(book.State, ["S-01", "S-24"])).Says, StringComparison.Ordinal);
        Assert.True(Done(ChargeShare.Of(book.State, ["S-01", "S-24"], ownersAgree: true)).May);
    }

    [Fact]
    public void Load_that_fits_no_air_kiln_is_refused_by_its_room()
    {
        var share = Of("S-01", "S-03", "S-04", "S-07", "S-06", "S-12", "S-13");

        Assert.False(share.May);
        Assert.False(share.Rules.Single(rule => rule.Rule == "Room").Holds);
        Assert.Empty(share.Figures);
    }

    [Fact]
    public void One_stack_and_unknown_stacks_are_refused()
    {
        Assert.IsType<Outcome<ChargeShare>.Refused>(ChargeShare.Of(DemonstrationBook.Yard, ["S-07", "S-07"]));
        Assert.IsType<Outcome<ChargeShare>.Refused>(ChargeShare.Of(DemonstrationBook.Yard, ["S-07", "S-99"]));
    }

    private static ChargeShare Of(params string[] tags) => Done(ChargeShare.Of(DemonstrationBook.Yard, tags));

    private static T Done<T>(Outcome<T> outcome) => outcome is Outcome<T>.Done(var value) ? value : throw new InvalidOperationException(
        outcome is Outcome<T>.Refused(var reasons) ? string.Join("; ", reasons) : $"{outcome}");
}
