using Boardwright.Quantities;
using Boardwright.Sawing;
using Boardwright.Testing;
using Boardwright.Wood;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Scenario;

public sealed class X01_09_WoodAndMoisture
{
    private static IReadOnlyList<Log> Forty { get; } = [.. Expected.Yard.Logs.Values.Where(log => log.Tag.StartsWith("L-", StringComparison.Ordinal))];

    // Doyle (D - 4)^2 L/16 and International 1/4 by 4-ft sections, from memory of the handbooks (M): 6300 and 6873 bf, 6880 with each log to the nearest 5.
    // Smalian on the actual length: 30.00 m3. Green wood by mean of heart and sap moisture, 26.9 t: 10 %, as moisture of logs varies.
    [Fact]
    public void X_01_forty_logs_gross()
    {
        Assert.Equal(40, Forty.Count);
        Assert.Equal(6300.0, Forty.Sum(log => Scaled(log, LogRule.Doyle, log.ScaleLength).GrossUnrounded!.Value), 1.0);
        Assert.Equal(6873.0, Forty.Sum(log => Scaled(log, LogRule.InternationalQuarter, log.ScaleLength).GrossUnrounded!.Value), 2.0);
        Assert.Equal(6880.0, Forty.Sum(log => Scaled(log, LogRule.InternationalQuarter, log.ScaleLength).Gross!.Value.Count), 1e-9);
        Assert.Equal(30.00, Forty.Sum(Solid), 0.01);
        Assert.Equal(26_900.0, Forty.Sum(log => Expected.Done(LogWeight.OfWood(log.Species, Volume.FromCubicMetres(Solid(log)))).Kilograms), 2690.0);
    }

    // 20 in: 137.3 bf (M), within 0.5. 51 in would be 980 bf: the throat is 36 in, so the book asks whether centimetres were meant.
    [Fact]
    public void X_02_a_log_typed_in_centimetres_is_not_taken_as_inches()
    {
        var log = Expected.Yard.Logs["L-037"];
        var received = (LogReceived)Expected.Yard.Entry(log.History[0]).Fact;

        Assert.Equal(137.3, Scaled(log, LogRule.InternationalQuarter, log.ScaleLength).GrossUnrounded!.Value, 0.5);
        Assert.Equal(980.0, InternationalRule.BoardFeet(51.0, 8.0, InternationalRule.QuarterInchKerf), 1.0);
        var refusal = DemonstrationBook.Open().Check([new NewEntry("Tam", received with { Log = "L-041", SmallEndAMm = 51 * 25.4, SmallEndBMm = 51 * 25.4, LargeEndMm = 54 * 25.4 })])[0];
        Assert.Equal("small_end_a_mm", refusal!.What);
        Assert.Contains("did you mean 51 cm (20 in)", refusal.Accepted, StringComparison.Ordinal);
    }

    // 13.6 % read at 42 F is 15.0 %: one percent for each 20 F below 70 F (rule of thumb, Wengert, P); within 0.7.
    [Fact]
    public void X_03_cherry_read_cool()
    {
        var reading = Expected.Yard.Stacks["S-07"].Moisture!;

        Assert.Equal((13.6, 42.0), (Math.Round(reading.Raw!.Value.Percent, 9), Math.Round(reading.Wood!.Value.Fahrenheit, 6)));
        Assert.Equal(15.0, reading.Mean!.Value.Percent, 0.7);
    }

    // 12.9 % read at 28 F is 15.0 % too: nothing dried in four days. Same rule and tolerance.
    [Fact]
    public void X_04_cherry_read_in_frost()
    {
        var reading = Expected.On(11, 3).Stacks["S-07"].Readings.Last(r => r.Raw is not null);

        Assert.Equal((12.9, 28.0), (Math.Round(reading.Raw!.Value.Percent, 9), Math.Round(reading.Wood!.Value.Fahrenheit, 4)));
        Assert.Equal(15.0, reading.Mean!.Value.Percent, 0.7);
    }

    // Oven arithmetic (wet - dry) / dry: 24.51, 24.37, mean 24.44 %, within 0.02; calculated dry weight 3540 / 1.2444 = 2844.8 g, within 0.3.
    [Fact]
    public void X_05_sample_4_from_its_sections()
    {
        var sample = Sample("4");
        var first = (SampleCut)Expected.Yard.Entry(sample.Weighings[0].Entry).Fact;

        var cut = Expected.Done(SampleBoard.Cut([.. first.Sections.Select(s => Mass.FromGrams(s.WetG))], [.. first.Sections.Select(s => Mass.FromGrams(s.DryG))], Mass.FromGrams(first.WeightG)));

        Assert.Equal(24.51, cut.Sections[0].Percent, 0.02);
        Assert.Equal(24.37, cut.Sections[1].Percent, 0.02);
        Assert.Equal(24.44, cut.Average.Percent, 0.02);
        Assert.Equal(2844.8, cut.CalculatedDry.Grams, 0.3);
    }

    // Dropped on 31 October, 3263 to 3221 g: dry weight 2808.2 g, so 3158 g on 2 November is 12.5 %, not 11.0 %; within 0.1.
    [Fact]
    public void X_06_sample_4_after_it_was_dropped()
    {
        var sample = Sample("4");
        var weighed = sample.Weighings[^1].Weight;

        Assert.Equal(11.0, Expected.Done(SampleBoard.Current(Mass.FromGrams(2844.8), weighed)).Percent, 0.1);
        Assert.Equal(12.5, sample.Moisture.Percent, 0.1);
        Assert.Equal(2808.2, sample.CalculatedDry.Grams, 0.3);
    }

    // Six samples on 2 November: mean 12.1, wettest 14.1 (2), driest 9.8 (5); within 0.1.
    [Fact]
    public void X_07_the_oak_charge()
    {
        var charge = Expected.Yard.Charges["C-61"];

        Assert.Equal(12.1, charge.SampleMean!.Value.Percent, 0.1);
        Assert.Equal((14.1, "2"), (Math.Round(charge.Wettest!.Moisture.Percent, 1), charge.Wettest.Name));
        Assert.Equal((9.8, "5"), (Math.Round(charge.Driest!.Moisture.Percent, 1), charge.Driest.Name));
    }

    // 218 against 214 bf, 36 against 35 boards; boards 9, 14 and 30 differ. Exact: surface measure to the whole foot, halves in turn (hardwood rule).
    [Fact]
    public void X_08_a_pack_tallied_twice()
    {
        var pack = PackSheet.Of(Expected.Yard, "P-118") is Outcome<PackSheet>.Done(var sheet) ? sheet : null;

        Assert.Equal([("Bram", 36, 218.0), ("Pell", 35, 214.0)], pack!.Counts.Select(count => (count.By, count.Measured.Pieces, count.Measured.BoardFeet.Count)));
        Assert.Equal([9, 14, 30], pack.Differences.Select(difference => difference.FirstNumber));
        Assert.Equal(217.92, pack.Counts[0].Exact.Count, 0.005);
        Assert.Equal(213.25, pack.Counts[1].Exact.Count, 0.005);
    }

    // 3150 bf at 24.06 % to 7 %: 2993 bf, less 3 % falldown 2903, against 2900 sold; within 3. Tangential 8.6 %, linear below 30 % (M).
    [Fact]
    public void X_09_what_is_left_of_the_oak()
    {
        var yard = Expected.Yard;
        var charge = yard.Charges["C-61"];
        var atLoading = Expected.Mc(charge.Samples.Average(sample => sample.Weighings[0].Moisture.Percent));
        var oak = yard.Stacks["S-10"];

        var net = Expected.Done(NetFootage.At(oak.Species, quartersawn: false, oak.Footage, atLoading, charge.Target));

        Assert.Equal(24.06, atLoading.Percent, 0.01);
        Assert.Equal(2993.0, net.Count, 3.0);
        Assert.Equal(2903.0, net.Count * (1.0 - yard.Prices[oak.Species.CommonName].FalldownBoardsPct.Likely / 100.0), 3.0);
        Assert.Equal(2900.0, yard.Orders["O-303"].Lines[0].Asked.Quantity);
    }

    private static Sample Sample(string name) => Expected.Yard.Charges["C-61"].Samples.Find(sample => sample.Name == name)!;

    private static ScaledLog Scaled(Log log, LogRule rule, Length length) =>
        Expected.Done(LogScale.Of(rule, new MeasuredLog(log.ScalingDiameter, length) { LargeEnd = log.LargeEnd }));

    private static double Solid(Log log) => CubicVolume.Smalian(log.ScalingDiameter.Metres, log.LargeEnd.Metres, log.ActualLength.Metres);
}
