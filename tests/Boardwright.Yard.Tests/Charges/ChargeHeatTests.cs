using Boardwright.Drying.Treatment;
using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Charges;

/// <summary>A charge whose order asks for a heat-treatment record: plan, probe and verdict (ISPM 15: core at 56 °C for 30 min; Wood Handbook, table 20-4).</summary>
public sealed class ChargeHeatTests
{
    private static readonly DateTime Morning = new(2026, 11, 2, 8, 0, 0);

    [Fact]
    public void Charge_of_an_order_with_a_record_has_a_plan_in_air_its_kiln_can_hold()
    {
        // O-310 asks for the maple S-03 with a record.
        var book = Loaded(73.9);
        var heat = Sheet(book).Heat!;
        var plan = Assert.IsType<Outcome<HeatPlan>.Done>(heat.Planned).Value;

        Assert.Equal(["O-310"], heat.Orders);
        Assert.True(plan.DryBulb.Celsius <= book.State.Kilns["K9"].Installed.DryBulbMaxC + 1e-9);
        Assert.True(plan.WetBulb.Celsius > 56.0 && (plan.DryBulb - plan.WetBulb).FahrenheitDegrees <= 12.0 + 1e-9);
        var again = Assert.IsType<Outcome<HeatTreatment>.Done>(HeatTreatment.For(book.State.Stacks["S-03"].Species, plan.Thickness, null, plan.Initial, HeatTreatment.CoreMin, plan.DryBulb, plan.DryBulb - plan.WetBulb)).Value;
        Assert.Equal(again.HeatingUpper, plan.Treatment.HeatingUpper);
        Assert.Equal(["Core at 56 °C by plan", "The probe", "Heat treatment"], heat.Figures.Select(figure => figure.Label));
        Assert.Equal("not proven", heat.Figures[^1].Value);
        Assert.Contains("accredited", ChargeHeat.Caution.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void Kiln_that_is_not_hot_enough_has_no_printed_time_and_says_so()
    {
        // At most 140 °F: its moist air of 140 over 130 °F is under the 133 °F the core must reach.
        var book = Loaded(60.0);
        var plan = Sheet(book).Heat!.Planned;

        Assert.Contains("probe", Assert.IsType<Outcome<HeatPlan>.NoAnswer>(plan).Why, StringComparison.Ordinal);
    }

    [Fact]
    public void Probe_is_shown_and_only_a_written_hold_proves()
    {
        var book = Loaded(73.9);
        Done(book.Write("Pell", new GaugeRead("X-1", CoreC: 58.5), Morning.AddHours(1.0)));
        var read = Sheet(book).Heat!;
        Assert.Equal("58.5", read.Figures.Single(figure => figure.Label == "The probe").Value);
        Assert.Equal("not proven", read.Figures[^1].Value);

        Done(book.Write("Pell", new HeatTreated("X-1", 56.4, 29.0), Morning.AddHours(2.0)));
        Assert.Equal("not proven", Sheet(book).Heat!.Figures[^1].Value);
        Done(book.Write("Pell", new HeatTreated("X-1", 56.4, 35.0), Morning.AddHours(3.0)));
        Assert.Equal("proven", Sheet(book).Heat!.Figures[^1].Value);
    }

    [Fact]
    public void Charge_nobody_asks_a_record_of_has_none() => Assert.Null(Sheet(DemonstrationBook.Open(), "C-61").Heat);

    // The demonstration's running charges stay; the maple goes into an empty kiln of its own.
    private static YardBook Loaded(double hottestC)
    {
        var book = DemonstrationBook.Open();
        Done(book.Write("Oda", book.State.Kilns["K1"].Installed with { Kiln = "K9", DryBulbMaxC = hottestC }));
        Done(book.Write("Pell", new ChargeLoaded("X-1", "K9", ["S-03"], 8.0), Morning));
        return book;
    }

    private static ChargeSheet Sheet(YardBook book, string charge = "X-1") => Assert.IsType<Outcome<ChargeSheet>.Done>(ChargeSheet.Of(book.State, charge, Morning.AddHours(4.0))).Value;

    private static void Done(Outcome<IReadOnlyList<Entry>> outcome) => Assert.True(outcome is Outcome<IReadOnlyList<Entry>>.Done, outcome is Outcome<IReadOnlyList<Entry>>.Refused(var reasons) ? string.Join("; ", reasons) : "");
}
