using Boardwright.Quantities;

namespace Boardwright.Casting.Tests;

/// <summary>Expected answers of the demonstration's class (invented inputs, closed-form answers).</summary>
public sealed class ClassTests
{
    private static readonly Mass StockA = Mass.FromKilograms(48.0);
    private static readonly Mass StockB = Mass.FromKilograms(14.2);

    public static TheoryData<int> Tables => [.. Enumerable.Range(0, ClassTables.All.Count)];

    [Theory, MemberData(nameof(Tables))]
    public void Each_table_takes_the_resin_expected(int index)
    {
        var table = ClassTables.All[index];

        Assert.Equal(table.ExpectedLitres, table.Volume.Volume.Litres, 0.006);
        Assert.Equal(table.ExpectedMixedKg, table.Mix.Total.Kilograms, 0.006);
    }

    [Theory, MemberData(nameof(Tables))]
    public void Each_piece_is_held_down_by_what_its_density_asks(int index)
    {
        var table = ClassTables.All[index];

        var need = table.Pieces.Select(piece => HoldDown.Of(piece, ResinTable.Class.DensityMixed, table.Depth).Need.Kilograms).ToArray();

        // The expected weights take shrinkage as estimated from specific gravity; the table's own is up to 2 % apart.
        Assert.Equal(table.ExpectedHoldDownKg.Length, need.Length);
        Assert.All(need.Zip(table.ExpectedHoldDownKg), pair => Assert.Equal(pair.Second, pair.First, 0.1));
    }

    [Fact]
    public void The_whole_class_takes_50_litres()
    {
        Assert.Equal(50.27, ClassTables.All.Sum(table => table.Volume.Volume.Litres), 0.05);
        Assert.Equal(59.42, ClassTables.All.Sum(table => table.Mix.Total.Kilograms), 0.05);
        Assert.Equal(43.05, ClassTables.All.Sum(table => table.Mix.PartA.Kilograms), 0.05);
        Assert.Equal(16.36, ClassTables.All.Sum(table => table.Mix.PartB.Kilograms), 0.05);
    }

    [Fact]
    public void Part_b_is_short_for_eight_tables_and_enough_for_seven()
    {
        var all = StockCheck.Of([.. ClassTables.All.Select(table => table.Mix)], StockA, StockB);
        var seven = StockCheck.Of([.. ClassTables.All.Take(7).Select(table => table.Mix)], StockA, StockB);

        Assert.False(all.IsEnough);
        Assert.Equal(0.0, all.ShortA.Kilograms);
        Assert.Equal(2.16, all.ShortB.Kilograms, 0.02);
        Assert.True(seven.IsEnough);
        Assert.Equal(13.58, seven.NeedB.Kilograms, 0.02);
    }

    [Fact]
    public void The_students_ash_is_too_wet_too_deep_and_does_not_float_in_a_first_pour()
    {
        var table = ClassTables.All[7];
        var piece = table.Pieces[0];
        var firstPour = ClassTables.Mm(30.0);

        Assert.True(WoodForPour.Of(MoistureContent.FromPercent(table.MoisturePercent)).IsTooWet);
        Assert.True(table.Depth > ResinTable.Class.Label.DeepestPour);
        Assert.Equal(38.4, piece.Mass.Kilograms / piece.MeanArea.SquareMetres, 0.3);
        Assert.Equal(32.8, ResinTable.Class.DensityMixed.KilogramsPerCubicMetre * firstPour.Metres, 0.05);
        Assert.Equal(0.0, HoldDown.Of(piece, ResinTable.Class.DensityMixed, firstPour).Need.Kilograms);
        Assert.True(HoldDown.Of(piece, ResinTable.Class.DensityMixed, firstPour).BuoyancyNewtons < 0.0);
    }

    [Fact]
    public void The_mixed_density_is_that_of_added_volumes() => Assert.Equal(1094.3, ResinTable.Class.DensityMixed.KilogramsPerCubicMetre, 0.05);

    [Theory]
    [InlineData(14.0, 1.52)]
    [InlineData(18.0, 1.15)]
    [InlineData(20.0, 1.00)]
    [InlineData(30.0, 0.50)]
    public void Times_stretch_by_the_label_rule(double celsius, double expected) =>
        Assert.Equal(expected, LabelRule.TimeStretch(ResinTable.Class.Label, Temperature.FromCelsius(celsius)), 0.005);
}
