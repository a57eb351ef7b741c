using Boardwright.Quantities;
using Boardwright.Sawing;
using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.LogCommands;

/// <summary>Logs of the demonstration yard, all of it invented, under the house's settings.</summary>
public sealed class YardLogTests
{
    private static readonly YardState Yard = DemonstrationBook.Yard;

    // The International cells come from the statute's formula; prices, costs, haul and strikes are invented settings.
    [Theory]
    [InlineData(24, 203.0, 44)]
    [InlineData(26, 240.7, 99)]
    [InlineData(28, 281.5, 158)]
    public void A_tree_on_the_telephone_is_worth_what_the_house_works_out(double smallEndIn, double scaleBf, double money)
    {
        var worth = Assert.IsType<Outcome<LogWorth>.Done>(YardLog.Offered(Yard, "northern red oak", Length.FromInches(smallEndIn), Length.FromFeet(8), 22, 1.5, "strikes_fence_line")).Value;

        Assert.Equal(scaleBf, worth.Scale.Count, 0.5);
        Assert.Equal(222.0, worth.HaulMoney, 1e-9);
        Assert.Equal(27.0, worth.MetalMoney, 1e-9);
        Assert.Equal(money, worth.Money, 1.0);
        Assert.Equal(money, Answers.Json(FormattableString.Invariant($"log worth --small-end {smallEndIn}in --length 8ft --price 3.40 --cost 1.70 --haul 222 --strikes 0.6 --strike-cost 45")).Number("value_money"), 1.0);
    }

    //
    [Fact]
    public void Price_by_source_is_what_was_paid_for_every_log()
    {
        var logs = Yard.Logs.Values.Where(log => log.Tag.StartsWith("L-", StringComparison.Ordinal)).ToList();

        Assert.Equal(40, logs.Count);
        Assert.All(logs, log => Assert.Equal(log.PaidMoney, YardLog.PriceBySource(Yard, log)));
        Assert.Equal(1117.25m, logs.Sum(log => YardLog.PriceBySource(Yard, log)));
    }

    [Fact]
    public void Every_proven_waiting_log_has_a_plan_that_passes_the_check()
    {
        foreach (var log in Yard.Logs.Values.Where(log => log is { IsSawn: false, Proven: true }).Where((_, i) => i % 5 == 0))
        {
            var cutting = Assert.IsType<Outcome<LogCutting>.Done>(LogCutting.Of(Yard, log)).Value;
            Assert.Empty(PlanCheck.Faults(cutting.Shape, cutting.Rules, cutting.Plan));
        }
    }

    [Fact]
    public void A_quartersawn_plan_in_words_is_quartersawn()
    {
        var plan = Assert.IsType<Outcome<LogCutting>.Done>(LogCutting.Of(Yard, Yard.Logs["L-012"])).Value;

        Assert.Equal(SawPattern.Quarter, plan.Plan.Pattern);
        Assert.All(plan.Plan.Boards, board => Assert.Equal(5, board.Thickness.Quarters));
    }

    [Fact]
    public void A_log_is_written_in_the_units_beside_its_fields()
    {
        var book = DemonstrationBook.Open();
        var typed = Typed();

        Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(LogReceive.Write(book, typed));

        var log = book.State.Logs["L-041"];
        Assert.Equal((16.0, 18.0, 20.0), (Math.Round(log.SmallEndA.Inches, 9), Math.Round(log.SmallEndB.Inches, 9), Math.Round(log.LargeEnd.Inches, 9)));
        Assert.Equal(101.0, log.ActualLength.Inches, 1e-9);
    }

    [Theory]
    [InlineData("SmallEndA", "51")]
    [InlineData("LargeEnd", "12")]
    [InlineData("ActualLength", "7")]
    [InlineData("Species", "plastic")]
    [InlineData("Tag", "")]
    public void A_wrong_field_is_refused_under_its_name_and_nothing_is_written(string field, string given)
    {
        var book = DemonstrationBook.Open();
        var before = book.State.Entries.Count;
        var typed = Typed();
        typed = field switch
        {
            "SmallEndA" => typed with { SmallEndA = given, SmallEndB = given, LargeEnd = "55" },
            "LargeEnd" => typed with { LargeEnd = given },
            "ActualLength" => typed with { ActualLength = given },
            "Species" => typed with { Species = given },
            _ => typed with { Tag = given },
        };

        var refusal = Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(LogReceive.Write(book, typed)).Reasons[0];

        Assert.Equal((field, given), (refusal.What, refusal.Given));
        Assert.Equal(before, book.State.Entries.Count);
    }

    [Theory]
    [InlineData("")]
    [InlineData("Nobody")]
    public void A_log_is_signed_by_a_person_of_the_house_like_every_other_form(string by)
    {
        var refusal = Assert.Single(Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(LogReceive.Write(DemonstrationBook.Open(), Typed() with { By = by })).Reasons);

        Assert.Equal(("Who", by), (refusal.What, refusal.Given));
        Assert.Contains("Pell", refusal.Accepted, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("8.6", "8ft6in or 8.60")]
    [InlineData("10.3", "10ft3in or 10.30")]
    public void A_length_that_may_be_feet_and_inches_is_asked_about_at_the_intake_too(string typed, string ways)
    {
        var book = DemonstrationBook.Open();

        var refused = Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(LogReceive.Write(book, Typed() with { ScaleLength = "8", ActualLength = typed })).Reasons[0];

        Assert.Equal((nameof(LogEntry.ActualLength), typed), (refused.What, refused.Given));
        Assert.Contains(ways, refused.Accepted, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("8ft6in", 102.0, "8ft6in")]
    [InlineData("8.60", 103.2, "8.60 ft")]
    [InlineData("8.5", 102.0, "8.5 ft")]
    [InlineData("2.6m", 102.3622, "2.6m")]
    [InlineData("2.6 = 2.6m", 102.3622, "2.6 = 2.6m")]
    public void A_length_that_says_what_it_is_is_taken_and_kept_as_typed(string typed, double inches, string kept)
    {
        var book = DemonstrationBook.Open();

        var entry = Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(LogReceive.Write(book, Typed() with { ActualLength = typed })).Value[0];

        Assert.Equal(inches, book.State.Logs["L-041"].ActualLength.Inches, 1e-4);
        Assert.Equal(kept, entry.Typed("actual_length_m"));
    }

    private static LogEntry Typed() => new()
    {
        Tag = "L-041",
        Species = "sugar maple",
        SmallEndA = "16",
        SmallEndB = "18in",
        LargeEnd = "50.8cm",
        ScaleLength = "8",
        ActualLength = "8ft5in",
        Source = "T-23",
        Scan = "Clear",
        By = "Bram",
    };

    [Theory]
    [InlineData(SawPattern.Cant)]
    [InlineData(SawPattern.Quarter)]
    [InlineData(SawPattern.Boule)]
    public void Log_planned_as_slabs_can_be_tried_in_every_pattern(SawPattern pattern)
    {
        var log = Yard.Logs.Values.First(one => one is { IsSawn: false, Proven: true } && one.PlannedFor?.Contains("slab", StringComparison.OrdinalIgnoreCase) == true);

        var cutting = Assert.IsType<Outcome<LogCutting>.Done>(LogCutting.Of(Yard, log, pattern: pattern, wanted: OrdersWanted.None)).Value;

        Assert.Equal(pattern, cutting.Plan.Pattern);
        Assert.NotEmpty(cutting.Plan.Boards);
        Assert.Empty(PlanCheck.Faults(cutting.Shape, cutting.Rules, cutting.Plan));
    }
}
