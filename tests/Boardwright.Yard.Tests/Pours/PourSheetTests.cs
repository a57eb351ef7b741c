using Boardwright.Casting;
using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Pours;

/// <summary>The pours of the demonstration yard (all invented), against the answers expected of them.</summary>
public sealed class PourSheetTests
{
    private const string ClassNights = "20 19 15 14 18 20 18 15 14 18 20 18";
    private static readonly YardState Yard = DemonstrationBook.Yard;

    [Fact]
    public void All_tables_of_the_class_together_want_what_the_class_sheet_says()
    {
        var pours = Yard.Pours.Values.Where(pour => pour.PouredAt is null).ToList();

        Assert.Equal(8, pours.Count);
        Assert.Equal(50.27, pours.Sum(pour => Done(PourModel.Volume(pour)).Volume.Litres), 0.05);
        Assert.Equal(59.42, pours.Sum(pour => Done(PourModel.Mix(Yard, pour)).Total.Kilograms), 0.05);
        var stock = Done(PourModel.Stock(Yard, "slow casting"));
        Assert.Equal(43.05, stock.NeedA.Kilograms, 0.05);
        Assert.Equal(16.36, stock.NeedB.Kilograms, 0.05);
    }

    [Fact]
    public void Part_B_is_short_and_enough_without_the_wet_table()
    {
        var list = PourList.Of(Yard);

        Assert.Equal("2.16", Assert.Single(list.Totals, figure => figure.Label == "Part B short").Value);
        Assert.Contains("Without T-8 there is enough", list.NextWhy, StringComparison.Ordinal);
        Assert.Equal(13.58, Done(PourModel.Stock(Yard, "slow casting", "T-8")).NeedB.Kilograms, 0.02);
        Assert.True(Done(PourModel.Stock(Yard, "slow casting", "T-8")).IsEnough);
        Assert.Equal("cannot", Assert.Single(list.Days[0].Rows, row => row.Pour.Tag == "T-8").Standing);
        Assert.Equal(["soft", "soft"], list.Earlier[0].Rows.Select(row => row.Standing));
    }

    [Fact]
    public void A_volume_has_its_band()
    {
        var volume = Sheet("T-1").Volume;

        Assert.Equal(5.91, volume.Volume.Litres, 0.01);
        Assert.True(volume.Low < volume.Volume && volume.Volume < volume.High);
        Assert.True(volume.High.Litres > volume.Volume.Litres * 1.05);
    }

    [Fact]
    public void Wet_deep_wood_is_named_and_does_not_float_in_a_first_layer()
    {
        var faults = Sheet("T-8").Faults;

        Assert.Contains(faults, fault => fault.Contains("13.8 % is too wet", StringComparison.Ordinal));
        var deep = Assert.Single(faults, fault => fault.Contains("too deep", StringComparison.Ordinal));
        Assert.Contains("2 pours of 30 mm", deep, StringComparison.Ordinal);
        Assert.Contains("does not float", deep, StringComparison.Ordinal);
        Assert.Contains("32.8 kg/m² displaced", deep, StringComparison.Ordinal);
        Assert.Equal("Do not pour it like this.", Sheet("T-8").NextDo);
    }

    [Theory]
    [InlineData("T-4", 0, 4.42)]
    [InlineData("T-7", 1, 0.53)]
    public void Each_piece_has_its_hold_down(string tag, int piece, double kilograms) =>
        Assert.Equal(kilograms, Done(PourModel.HeldDown(Yard, Yard.Pours[tag]))[piece].Held.Need.Kilograms, 0.1);

    [Fact]
    public void A_cold_night_stretches_the_labels_hours()
    {
        var label = Sheet("T-5").Cure.Resin.Label;

        Assert.Equal(1.52, LabelRule.TimeStretch(label, Temperature.FromCelsius(14.0)), 0.01);
        Assert.Equal(1.15, LabelRule.TimeStretch(label, Temperature.FromCelsius(18.0)), 0.01);
    }

    [Fact]
    public void Label_and_model_are_shown_apart_for_the_shop_given()
    {
        var sheet = Done(PourSheet.Of(Yard, "T-5", ClassNights));

        Assert.Equal(71.6, sheet.Cure.LabelDemouldHour!.Value, 0.5);
        Assert.Equal(108.0, sheet.Cure.Model!.DemouldEdgeHour!.Value, 1.0);
        Assert.Equal(62.0, sheet.Cure.Model.Centre.DemouldCentreHour!.Value, 1.0);
        Assert.Equal(6.0, sheet.Cure.Model.EdgeDepth!.Value.Millimetres, 0.001);
        Assert.Equal(168.0, sheet.Cure.PlannedHour, 0.001);
        Assert.Equal("as given here, every six hours from the pour", sheet.Cure.Shop.Words);
    }

    [Fact]
    public void Without_a_forecast_the_shop_is_taken_as_it_was_last()
    {
        var shop = Done(PourShop.For(Yard, Yard.Pours["T-1"], null));

        Assert.Equal("as the shop was from 17 Oct to 20 Oct", shop.Words);
        Assert.False(shop.IsWritten);
        Assert.Equal(20.0, shop.Points[0].Celsius);
    }

    [Fact]
    public void A_cold_lip_is_warmed_for_a_day_and_not_scraped()
    {
        var sheet = Sheet("Q-3");

        Assert.Equal(72.0, sheet.Soft!.Hour, 0.001);
        Assert.Equal(52.9, sheet.Cure.Worth(72.0).Hours, 0.1);
        Assert.Equal(4.1, sheet.Cure.WarmHoursNeeded(72.0)!.Value, 0.1);
        Assert.Equal(0.64, sheet.Cure.Model!.Edge!.At(72.0).LeastConversion, 0.03);
        Assert.Equal(0.80, sheet.Cure.Model.Centre.At(72.0).CentreConversion, 0.03);
        Assert.Equal(-0.005, sheet.Soft.Check!.OffShare, 0.0005);
        Assert.Contains("28 C", sheet.NextDo, StringComparison.Ordinal);
        Assert.Contains("do not scrape", sheet.NextDo, StringComparison.Ordinal);
    }

    [Fact]
    public void A_mix_out_of_ratio_is_scraped_and_poured_again()
    {
        var sheet = Sheet("Q-4");

        Assert.Equal(0.187, sheet.Soft!.Check!.OffShare, 0.001);
        Assert.Contains("Scrape it out and pour again", sheet.NextDo, StringComparison.Ordinal);
        Assert.Contains(sheet.Figures, figure => figure.Label == "Ratio as weighed" && figure.Value == "+18.7");
    }

    [Theory]
    [InlineData("20 nineteen")]
    [InlineData("20 90")]
    public void Odd_shop_temperatures_are_refused(string shop) =>
        Assert.IsType<Outcome<PourSheet>.Refused>(PourSheet.Of(Yard, "T-1", shop));

    [Fact]
    public void An_unknown_pour_is_refused_with_the_ones_there_are()
    {
        var refused = Assert.IsType<Outcome<PourSheet>.Refused>(PourSheet.Of(Yard, "T-99", null));

        Assert.Contains("T-1", refused.Reasons[0].Accepted, StringComparison.Ordinal);
    }

    private static PourSheet Sheet(string tag) => Done(PourSheet.Of(Yard, tag, null));

    private static T Done<T>(Outcome<T> outcome) => Assert.IsType<Outcome<T>.Done>(outcome).Value;
}
