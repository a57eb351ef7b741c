using Boardwright.Drying;
using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Wood;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Stacks;

public sealed class StackWeighTests
{
    private const string Tag = "S-07";

    [Fact]
    public void Weight_of_a_stack_is_a_reading_of_its_moisture()
    {
        var book = DemonstrationBook.Open();

        Write(book, $"{Kilograms(book, 25.0) + 40.0:0.000}", "40");

        var reading = book.State.Stacks[Tag].Readings[^1];
        Assert.Equal(MoistureMethod.PackWeight, reading.Method);
        Assert.Equal(25.0, reading.Mean!.Value.Percent, 0.01);
        Assert.Equal(ReadingKind.PackWeight, ReadingError.For(reading)!.Value.Kind);
        // 5 % of the dry weight at 25 % moisture, nearly all of it shared by every weighing.
        Assert.Equal(0.05 * 125.0, ReadingError.For(reading)!.Value.TotalErrorPercent, 0.05);
    }

    [Fact]
    public void Another_wood_makes_another_moisture_of_the_same_weight()
    {
        var book = DemonstrationBook.Open();
        var weight = Kilograms(book, 40.0);
        Write(book, $"{weight:0.000}", "");
        var before = book.State.Stacks[Tag].Readings[^1].Mean!.Value;

        Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(book.Write("Pell", new SpeciesCorrected(Tag, "sugar maple", "end grain looked at again")));

        var after = book.State.Stacks[Tag].Readings[^1];
        Assert.True(after.Mean < before, $"{after.Mean} {before}");
        Assert.Equal(weight, after.Weighed!.Value.Wood.Kilograms, 1e-3);
    }

    [Theory]
    [InlineData("20", "", "weight")]
    [InlineData("heavy", "", "Weight on the scale")]
    [InlineData("1500", "1550", "tare_kg")]
    public void Weight_no_such_wood_can_have_is_refused(string weight, string tare, string what) =>
        Assert.Equal(what, Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(StackWeigh.Write(DemonstrationBook.Open(), Tag, new(weight, tare, "Pell"), PostedKey.None)).Reasons[0].What);

    private static double Kilograms(YardBook book, double percent)
    {
        var stack = book.State.Stacks[Tag];
        var green = stack.Footage.NominalVolume * ((stack.SawnThickness ?? stack.Thickness.Length + Length.FromInches(0.125)).Metres / stack.Thickness.Length.Metres);
        return WoodWeight.OfGreenVolume(stack.Species, MoistureContent.FromPercent(percent), green).Kilograms;
    }

    private static void Write(YardBook book, string weight, string tare) => Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(StackWeigh.Write(book, Tag, new(weight, tare, "Pell"), PostedKey.None));
}
