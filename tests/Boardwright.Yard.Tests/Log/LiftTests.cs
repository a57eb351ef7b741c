using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Wood;
using Boardwright.Yard.Book;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.LogCommands;

/// <summary>What lifts and carries a log, with its bark (yard invented).</summary>
public sealed class LiftTests
{
    private static readonly YardState State = DemonstrationBook.Yard;

    // 20 ft³ of white ash weigh 1188.8 lb green with bark, by FIADB REF_SPECIES: 539.2 kg; the loader lifts 2,300 kg, the trailer carries 2,400.
    [Fact]
    public void Bark_counts_and_the_heavy_one_of_its_kind_decides()
    {
        var ash = Found("white ash");
        var volume = Volume.FromCubicMetres(20.0 * 0.028316846592);
        var wood = Assert.IsType<Outcome<Mass>.Done>(Boardwright.Sawing.LogWeight.OfWood(ash, volume)).Value;

        var lift = LogLift.Of(State, ash, wood, volume, Length.FromFeet(8));

        Assert.Equal(1188.8 * 0.45359237, lift.Kg, 0.005 * lift.Kg);
        Assert.Equal(1.1 * lift.Kg, lift.HeavyKg, 1e-9);
        Assert.EndsWith("the loader lifts it; the trailer takes 4 such", lift.Words, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(2000.0, 8.0, "close to the loader’s 2,300 kg: lift one end first; the trailer takes 1 such")]
    [InlineData(2300.0, 8.0, "more than the loader’s 2,300 kg; more than the trailer’s 2,400 kg")]
    [InlineData(500.0, 19.0, "the loader lifts it; 19 ft is longer than the trailer’s 18 ft bed")]
    public void Too_heavy_and_too_long_are_said(double woodKg, double feet, string words)
    {
        var lift = LogLift.Of(State, Found("northern red oak"), Mass.FromKilograms(woodKg), Volume.FromCubicMetres(0.5), Length.FromFeet(feet));

        Assert.EndsWith(words, lift.Words, StringComparison.Ordinal);
    }

    private static Species Found(string name) => Assert.IsType<Outcome<Species>.Done>(SpeciesTable.Find("species", name)).Value;
}
