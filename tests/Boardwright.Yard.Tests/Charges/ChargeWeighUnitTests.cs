using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Charges;

/// <summary>A weight that fits the trend in another unit is offered in it, and both what was typed and what was meant are kept.</summary>
public sealed class ChargeWeighUnitTests
{
    private readonly YardBook book = DemonstrationBook.Open();

    [Theory]
    [InlineData(453.59237, "0.000", "", "lb")]
    [InlineData(453.59237, "0.000", "g", "lb")]
    [InlineData(453.59237, "0.000", " kg", "lb")]
    [InlineData(1000.0, "0.000", "", "kg")]
    [InlineData(1000.0, "0.000", "lb", "kg")]
    [InlineData(1.0, "0", "kg", "g")]
    [InlineData(1.0, "0", " lb", "g")]
    public void Weight_that_fits_in_another_unit_is_offered_in_it_whichever_it_was_typed_in(double gramsPerUnit, string form, string typedUnit, string meantUnit)
    {
        var row = SampleRow.Of(book.State.Charges["C-61"], book.Now).Single(one => one.Sample.Name == "2");
        var number = ((row.LowG + row.HighG) / 2.0 / gramsPerUnit).ToString(form, CultureInfo.InvariantCulture);

        var asked = Assert.Single(Refused(number + typedUnit));
        var meant = Assert.Single(asked.Meant);
        Assert.Contains(meant.Words, asked.Accepted, StringComparison.Ordinal);
        Assert.Equal($"{number}{typedUnit} = {double.Parse(number, CultureInfo.InvariantCulture).ToString("0.###", CultureInfo.InvariantCulture)}{meantUnit}", meant.Typed);

        var entry = Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(Write(meant.Typed)).Value[0];
        Assert.Equal(meant.Typed, entry.Typed("weight_g"));
        Assert.Equal((row.LowG + row.HighG) / 2.0, book.State.Charges["C-61"].Samples.Single(one => one.Name == "2").Weighings[^1].Weight.Grams, 1.0);
    }

    [Fact]
    public void Weight_that_fits_in_no_unit_is_only_asked_about() => Assert.Empty(Assert.Single(Refused("2000")).Meant);

    private Outcome<IReadOnlyList<Entry>> Write(string weight) => ChargeWeigh.Write(book, "C-61", new(new Dictionary<string, string?> { ["2"] = weight }, null, null, null, "Pell"), PostedKey.None);

    private IReadOnlyList<Refusal> Refused(string weight)
    {
        var reasons = Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(Write(weight)).Reasons;
        Assert.True(Question.Asks(reasons));
        return reasons;
    }
}
