using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.Tests.Book;

/// <summary>Accidents of a real yard that are a matter of the book.</summary>
public sealed class AccidentTests
{
    private readonly SmallYard yard = SmallYard.WithKiln();

    [Fact]
    public void Lost_tag_makes_a_log_unproven_until_it_is_proven_and_keeps_its_history()
    {
        yard.Done(SmallYard.Log("L-033", "northern red oak"), SmallYard.Log("L-034", "white oak"), new TagLost("L-033", ["L-034"]));
        Assert.Equal((false, 2), (Log("L-033").Proven, Log("L-033").History.Count));
        Assert.Equal(["L-034"], Log("L-033").ConfusedWith);

        yard.Done(SmallYard.Noon, new TagProven("L-033", "end grain: large open pores"));

        Assert.Equal((true, 3), (Log("L-033").Proven, Log("L-033").History.Count));
    }

    [Fact]
    public void Pin_reading_in_the_cold_is_kept_raw_and_corrected_beside_it()
    {
        // 1 % for each 20 F below 70 F: 12.9 % at 28 F is 15.0 %.
        yard.Done(SmallYard.Stack("S-07", "black cherry"), new MoistureRead("S-07", MoistureMethod.Pin, RawPct: 12.9, SpeciesSetting: "black cherry", WoodC: (28.0 - 32.0) / 1.8));

        var reading = Stack("S-07").Moisture!;

        Assert.Equal(12.9, reading.Raw!.Value.Percent, 9);
        Assert.Equal(15.0, reading.Mean!.Value.Percent, 9);
        Assert.False(reading.SpeciesUnknown);
    }

    [Fact]
    public void Pin_reading_without_wood_temperature_is_refused()
    {
        yard.Done(SmallYard.Stack("S-07", "black cherry"));

        Assert.Equal("wood_c", yard.Refused(new MoistureRead("S-07", MoistureMethod.Pin, RawPct: 12.9)).What);
    }

    [Fact]
    public void Species_corrected_keeps_the_raw_reading_and_doubts_its_species()
    {
        yard.Done(SmallYard.Stack("S-16", "American elm"), new MoistureRead("S-16", MoistureMethod.Pin, RawPct: 15.5, SpeciesSetting: "American elm", WoodC: (42.0 - 32.0) / 1.8));

        yard.Done(SmallYard.Noon, new SpeciesCorrected("S-16", "hackberry", "end grain"));

        Assert.Equal("hackberry", Stack("S-16").Species.CommonName);
        Assert.Equal(15.5, Stack("S-16").Moisture!.Raw!.Value.Percent, 9);
        Assert.True(Stack("S-16").Moisture!.SpeciesUnknown);
    }

    [Fact]
    public void Dropped_sample_scales_its_dry_weight_and_shows_no_jump()
    {
        // Kiln sample arithmetic: sections 119.9/96.3 and 122.5/98.5 g, 3540 g; 42 g of wood lost at 3263 g.
        yard.Done(
            SmallYard.Stack("S-10"), new ChargeLoaded("C-61", "K1", ["S-10"], 7.0), new SampleCut("C-61", "4", [new(119.9, 96.3), new(122.5, 98.5)], 3540.0),
            new SampleWeighed("C-61", "4", 3263.0), new SampleDamaged("C-61", "4", 3263.0, 3221.0), new SampleWeighed("C-61", "4", 3158.0));

        var sample = yard.Book.State.Charges["C-61"].Samples[0];

        Assert.Equal(2808.2, sample.CalculatedDry.Grams, 0.1);
        Assert.Equal([24.44, 14.70, 14.70, 12.46], sample.Weighings.Select(w => Math.Round(w.Moisture.Percent, 2)));
        Assert.True(sample.Weighings[2].AfterDamage);
    }

    [Fact]
    public void Sample_without_a_weight_after_damage_is_retired()
    {
        yard.Done(
            SmallYard.Stack("S-10"), new ChargeLoaded("C-61", "K1", ["S-10"], 7.0), new SampleCut("C-61", "4", [new(119.9, 96.3)], 3540.0),
            new SampleCut("C-61", "5", [new(109.7, 90.6)], 3097.0), new SampleDamaged("C-61", "4", 3263.0, null));

        Assert.Equal(["5"], yard.Book.State.Charges["C-61"].SoundSamples.Select(s => s.Name));
        Assert.Equal("sample", yard.Refused(new SampleWeighed("C-61", "4", 3200.0)).What);
    }

    [Theory]
    [InlineData(7.1)]
    [InlineData(7100.0)]
    [InlineData(2500.0)]
    public void Weight_out_of_trend_is_asked_about(double grams)
    {
        yard.Done(SmallYard.Stack("S-10"), new ChargeLoaded("C-61", "K1", ["S-10"], 7.0), new SampleCut("C-61", "4", [new(119.9, 96.3)], 3540.0));

        Assert.Equal("weight_g", yard.Refused(new SampleWeighed("C-61", "4", grams)).What);
    }

    [Fact]
    public void Pounds_taken_for_grams_are_named()
    {
        yard.Done(SmallYard.Stack("S-10"), new ChargeLoaded("C-61", "K1", ["S-10"], 7.0), new SampleCut("C-61", "4", [new(119.9, 96.3)], 3540.0));

        Assert.Contains("pounds", yard.Refused(new SampleWeighed("C-61", "4", 7.5 * 1000.0)).Accepted, StringComparison.Ordinal);
    }

    [Fact]
    public void Pack_tallied_twice_keeps_both_and_is_not_labelled_until_one_is_chosen()
    {
        TallyBoard[] one = [new(7.25, 8.0), new(5.5, 10.0)], two = [new(7.25, 8.0)];
        yard.Done(SmallYard.Stack("S-07", "black cherry"));
        var tallies = yard.Done(SmallYard.Noon.AddHours(-1.0), Tally(one, 10.0), Tally(two, 5.0));
        Assert.True(Pack.IsDisputed);
        Assert.Equal("pack", yard.Refused(new PackLabelled("P-118")).What);

        yard.Done(SmallYard.Noon.AddHours(1.0), new TallyChosen("P-118", tallies[0].Number, "third look: board 2 is there"), new PackLabelled("P-118"));

        Assert.Equal((2, 10.0), (Pack.Tallies.Count, Pack.Agreed!.Footage.Count));
        Assert.NotNull(Pack.LabelledAt);
    }

    [Fact]
    public void Two_equal_tallies_agree()
    {
        TallyBoard[] boards = [new(7.25, 8.0), new(5.5, 10.0)];
        yard.Done(SmallYard.Stack("S-07", "black cherry"), Tally(boards, 10.0), Tally([.. boards], 10.0));

        Assert.False(Pack.IsDisputed);
    }

    [Fact]
    public void Stack_partly_taken_is_about_until_it_is_counted()
    {
        yard.Done(SmallYard.Stack("S-01"), new StackTakenFrom("S-01", 60.0));
        Assert.Equal((440.0, false), (Stack("S-01").Footage.Count, Stack("S-01").FootageSure));
        Assert.Equal("bf", yard.Refused(new StackTakenFrom("S-01", 500.0)).What);

        yard.Done(SmallYard.Noon, new StackCounted("S-01", 431.0));

        Assert.Equal((431.0, true), (Stack("S-01").Footage.Count, Stack("S-01").FootageSure));
    }

    [Fact]
    public void Stack_marked_never_kiln_cannot_be_loaded()
    {
        yard.Done(SmallYard.Stack("S-02", "white ash") with { NeverKiln = true, ReservedFor = "O-307" });

        Assert.Contains("never kiln", yard.Refused(new ChargeLoaded("D-41", "K1", ["S-02"], 8.0)).Accepted, StringComparison.Ordinal);
    }

    [Fact]
    public void Kiln_with_a_charge_takes_no_other_until_the_last_stack_is_out()
    {
        yard.Done(SmallYard.Stack("S-05"), SmallYard.Stack("S-07"), SmallYard.Stack("S-09"), new ChargeLoaded("D-41", "K1", ["S-05", "S-07"], 7.0));
        yard.Done(SmallYard.Noon, new ChargeUnloaded("D-41", [new("S-07", 480.0, "shed A", 7.1)]));
        Assert.Equal("kiln", yard.Refused(new ChargeLoaded("D-42", "K1", ["S-09"], 7.0)).What);
        Assert.Equal(StackStage.InKiln, Stack("S-05").Stage);

        yard.Done(SmallYard.Noon.AddHours(1.0), new ChargeUnloaded("D-41", [new("S-05", 481.0, "shed A", 6.2)]));

        Assert.Null(yard.Book.State.Kilns["K1"].Charge);
        Assert.Equal((StackStage.KilnDried, 481.0), (Stack("S-05").Stage, Stack("S-05").Footage.Count));
    }

    [Fact]
    public void Walnut_in_the_bin_stops_the_stable_until_it_is_emptied()
    {
        yard.Done(
            new OrderTaken("O-308", "stable", [new(1, "planer shavings", 4.0, OrderUnit.M3Loose, new(2026, 11, 6), "no walnut", [], ForbiddenSpecies: ["black walnut"])], 1, 10m),
            new CustomPlaned("a walk-in", "black walnut", 60.0, 0.4));
        Assert.Contains("empty the shavings bin", yard.Refused(new Shipped("SH-1", "O-308", [], [], Quantity: 4.0)).Accepted, StringComparison.Ordinal);

        yard.Done(SmallYard.Noon, new ShavingsEmptied(), new Shipped("SH-1", "O-308", [], [], Quantity: 4.0));

        Assert.False(yard.Book.State.Orders["O-308"].IsOpen);
    }

    [Fact]
    public void Change_asked_for_changes_nothing_until_it_is_accepted()
    {
        yard.Done(
            new OrderTaken("O-301", "cabinet shop", [new(1, "black cherry 4/4", 620.0, OrderUnit.Bf, new(2026, 11, 13), "rough", [])], 3, 25m),
            new OrderChangeAsked("O-301", Quantity: 700.0));
        Assert.Equal(620.0, Asked);

        yard.Done(SmallYard.Noon, new OrderChangeSettled("O-301", ChangeOutcome.Withdrawn), new OrderChangeAsked("O-301", Quantity: 650.0), new OrderChangeSettled("O-301", ChangeOutcome.Accepted));

        Assert.Equal(650.0, Asked);
    }

    [Fact]
    public void Equipment_is_back_at_the_latest_not_before_it_is_expected()
    {
        Assert.Equal("back_late_on", yard.Refused(new EquipmentDown("B1", "tube leak", new(2026, 11, 16), new(2026, 11, 15))).What);
        Assert.Equal("back_expected_on", yard.Refused(new EquipmentDown("B1", "tube leak", new(2020, 1, 1))).What);
        yard.Done(new EquipmentDown("B1", "tube leak", new(2026, 11, 16), new(2026, 11, 16)));

        Assert.Equal("back_late_on", yard.Refused(new EquipmentPromised("B1", new(2026, 11, 23), new(2026, 11, 22))).What);
    }

    [Fact]
    public void Equipment_is_down_from_one_entry_to_another()
    {
        yard.Done(new EquipmentDown("B1", "tube leak", new(2026, 11, 16), new(2026, 11, 23)), new EquipmentPromised("B1", new(2026, 11, 23)));
        Assert.Equal(new DateOnly(2026, 11, 23), yard.Book.State.Boilers["B1"].Down!.BackExpectedOn);
        Assert.Equal("equipment", yard.Refused(new EquipmentDown("B1", "again")).What);

        yard.Done(SmallYard.Noon, new EquipmentBack("B1"));

        Assert.Null(yard.Book.State.Boilers["B1"].Down);
    }

    private Log Log(string tag) => yard.Book.State.Logs[tag];

    private Stack Stack(string tag) => yard.Book.State.Stacks[tag];

    private Pack Pack => yard.Book.State.Packs["P-118"];

    private double Asked => yard.Book.State.Orders["O-301"].Lines[0].Asked.Quantity;

    private static PackTallied Tally(TallyBoard[] boards, double bf) => new("P-118", "S-07", "black cherry", 4, bf, boards, McPct: 15.0);
}
