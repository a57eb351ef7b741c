using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Plan;

/// <summary>One plan, one story: the morning sheet, stacks, kilns and the write list say what the season says, and name the owner's own plan where it differs.</summary>
public sealed class OneStoryTests
{
    private static readonly YardState Yard = DemonstrationBook.Yard;
    private static readonly SeasonNow Season = SeasonNow.Of(Yard, DemonstrationPlan.Made());
    private static readonly MorningSheet Sheet = MorningSheet.For(Yard, null, Season);

    [Fact]
    public void Sheet_names_each_line_the_season_has_late_or_at_risk_once()
    {
        var found = Season.Sheet!.Promises.Where(promise => promise.Standing != PromiseStanding.Safe).ToList();

        Assert.Contains(found, promise => promise.Standing == PromiseStanding.Late);
        Assert.All(found, promise => Assert.Single(Sheet.Tasks, task => task.At == promise.Line.Order.Tag && task.Standing is "late" or "at risk" or "cannot" && task.At == promise.Line.Order.Tag));
    }

    [Fact]
    public void Late_line_tells_how_late_why_and_what_to_offer()
    {
        var late = Season.Sheet!.Promises.First(promise => promise.Standing == PromiseStanding.Late);
        var task = Sheet.Tasks.Single(one => one.At == late.Line.Order.Tag && one.Standing == "late");

        Assert.Contains($"{late.LateDays} day", task.Why, StringComparison.Ordinal);
        Assert.Contains(late.Reason!, task.Why, StringComparison.Ordinal);
        Assert.Contains("Way out: offer", task.Why, StringComparison.Ordinal);
        Assert.Equal($"/promises/{late.Line.Order.Tag}", task.Path);
        Assert.Equal(late.Line.Order.LatePerDayMoney * late.LateDays, task.Stake.Money);
    }

    [Fact]
    public void Wood_that_falls_short_keeps_its_own_line()
    {
        Assert.Contains("S-06", Assert.Single(Sheet.Tasks, task => task.At == "O-303" && task.Standing is not null).Do, StringComparison.Ordinal);
    }

    [Fact]
    public void Order_of_the_sheet_stays_money_at_stake_for_each_day_left() =>
        Assert.Equal(Sheet.Tasks.OrderByDescending(task => task.Stake.PerDay).Select(task => task.Stake.PerDay), Sheet.Tasks.Select(task => task.Stake.PerDay));

    [Fact]
    public void Sheet_says_while_the_season_is_still_being_worked_out()
    {
        Assert.Contains("still being worked", MorningSheet.For(Yard, null, SeasonNow.StillWorked).SeasonWords, StringComparison.Ordinal);
        Assert.Null(Sheet.SeasonWords);
        Assert.Null(MorningSheet.For(YardState.Of([], new(2026, 11, 2)), null, SeasonNow.StillWorked).SeasonWords);
    }

    [Fact]
    public void Heat_on_the_sheet_is_that_of_the_season()
    {
        var worst = Season.Sheet!.ShortDays.Where(day => day.OnlyIfLate).MaxBy(day => day.ShortKw)!;
        var ring = Assert.Single(Sheet.Tasks, task => task.At == "B1");

        Assert.Equal($"{worst.ShortKw:0.0}", ring.Much.Value);
        Assert.Contains($"{worst.Day:d MMM}", ring.Much.Basis, StringComparison.Ordinal);
    }

    [Fact]
    public void Worst_shortage_is_named_and_not_the_first()
    {
        var sheet = Season.Sheet!;

        Assert.True(sheet.ShortDays.Count > 1);
        Assert.Equal(sheet.ShortDays.Max(day => day.ShortKw), sheet.Shortage!.ShortKw);
        Assert.NotEqual(sheet.ShortDays[0].Day, sheet.Shortage.Day);
    }

    [Fact]
    public void Owners_load_that_the_season_has_otherwise_is_told_with_both_on_sheet_stack_kiln_and_write_list()
    {
        var own = Yard.PlannedCharges["D-41"];
        var beside = OwnLoad.Beside(Yard, own, Season)!;

        Assert.StartsWith("Your plan: K2 on 3 Nov. Worked plan: ", beside, StringComparison.Ordinal);
        Assert.Equal(beside, Assert.Single(Sheet.Tasks, task => task.At == "K2").Beside);
        Assert.Equal(beside, ChargeList.Of(Yard, Yard.Today.ToDateTime(TimeOnly.MinValue), Season).Kilns.Single(kiln => kiln.Kiln.Name == "K2").Beside);
        Assert.Equal(beside, YardForm.All(Yard, Season).SelectMany(form => form.Links).Single(link => link.Tag == "D-41").Words + ".");
        var stack = Assert.IsType<Outcome<StackSheet>.Done>(StackSheet.Of(Yard, "S-04", null, Season)).Value.Next;
        Assert.StartsWith("Your plan: K1 on 14 Nov.", OwnLoad.Beside(Yard, Yard.PlannedCharges["C-62"], Season), StringComparison.Ordinal);
        Assert.Contains("Your load C-62, K1 on 14 Nov, is the worse one for promises", stack.Why, StringComparison.Ordinal);
        Assert.Equal("/season/take", stack.Path);
        Assert.Contains("goes in before air alone has it dry enough", Assert.IsType<Outcome<StackSheet>.Done>(StackSheet.Of(Yard, "S-04", null, SeasonNow.NotAsked)).Value.Next.Why, StringComparison.Ordinal);
    }

    [Fact]
    public void Season_is_planned_better_than_by_hand()
    {
        var beside = PlansBeside.Of(Yard, DemonstrationPlan.Made())!;

        Assert.True(beside.Worked.LateDays < beside.Own.LateDays, $"{beside.Worked.LateDays} against {beside.Own.LateDays}");
        Assert.True(beside.Worked.OnTime >= beside.Own.OnTime);
        Assert.Equal(["S-11"], beside.Left);
        Assert.False(beside.Agree);
        Assert.Equal(Yard.PlannedCharges.Count, beside.Loads.Count(load => load.Yours is not null));
    }

    [Fact]
    public void Order_that_loses_by_the_worked_plan_is_told_so_with_the_orders_that_gain()
    {
        var beside = Season.Beside!;
        var lost = beside.Promises.Where(one => one.WorkedDays > one.OwnDays).ToList();

        Assert.All(lost, one => Assert.All(beside.Promises.Where(other => other.WorkedDays < other.OwnDays), gain => Assert.Contains(gain.Order, beside.Trade(one.Order), StringComparison.Ordinal)));
        Assert.All(beside.Promises.Except(lost), one => Assert.Null(beside.Trade(one.Order)));
        Assert.All(lost.Where(one => Sheet.Tasks.Any(task => task.At == one.Order && task.Standing == "late")), one => Assert.Contains(beside.Trade(one.Order)!, Sheet.Tasks.Single(task => task.At == one.Order && task.Standing == "late").Why, StringComparison.Ordinal));
        Assert.Contains("the worked plan is the better one for promises", beside.Verdict, StringComparison.Ordinal);
        Assert.All(beside.Promises, one => Assert.Contains(one.Order, beside.Verdict, StringComparison.Ordinal));
    }

    [Fact]
    public void Stack_that_cannot_go_where_it_was_put_is_left_with_the_reason() =>
        Assert.Equal(["S-11 is white oak in long boards, which let no vapour through: the vacuum kiln K3 is closed to it."], Season.Beside!.LeftWhy);

    [Fact]
    public void Taken_over_plan_is_the_owners_and_the_old_loads_are_struck_through()
    {
        var book = DemonstrationBook.Open();
        var before = book.State.PlannedCharges;
        var loads = PlanTakeOver.Loads(Season);

        Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(PlanTakeOver.Write(book, Season, "Oda", PostedKey.None));

        var after = book.State.PlannedCharges;
        Assert.Equal(loads.Count, after.Count);
        Assert.Empty(after.Keys.Intersect(before.Keys));
        Assert.Equal(
            loads.Select(load => (load.Kiln, load.In.Day(), string.Join(' ', load.Stacks.Select(stack => stack.Tag)))).Order(),
            after.Values.Select(planned => (planned.Kiln, planned.InOn, string.Join(' ', planned.Stacks))).Order());
        Assert.True(PlansBeside.Of(book.State, DemonstrationPlan.Made())!.Agree);
        Assert.All(before.Values, old => Assert.Contains(book.State.Entries, entry => entry.Fact is Withdrawn && entry.Corrects == old.Entry));
        Assert.Empty(book.Verify());
    }

    [Fact]
    public void Taken_over_plan_says_what_replaced_what_and_can_be_given_back()
    {
        var book = DemonstrationBook.Open();
        var before = book.State.PlannedCharges;
        var replaced = PlanTakeOver.Replaced(book.State).Select(load => load.Tag).ToList();
        Assert.Null(PlanTakenOver.Last(book.State));
        PlanTakeOver.Write(book, Season, "Oda", PostedKey.None);

        var taken = PlanTakenOver.Last(book.State)!;
        Assert.Contains(taken.Entries.Max(entry => entry.HappenedAt).ToString("d MMM HH:mm", System.Globalization.CultureInfo.InvariantCulture), taken.Words, StringComparison.Ordinal); // a load struck through keeps the hour it was planned at
        Assert.StartsWith("Done: Oda", taken.Words, StringComparison.Ordinal);
        Assert.Equal(replaced.Order(), taken.Struck.Select(load => load.Charge).Order());
        Assert.Equal(PlanTakeOver.Loads(Season).Count, taken.Written.Count);

        Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(taken.TakeBack(book));
        Assert.Equal(before.Keys.Order(), book.State.PlannedCharges.Keys.Order());
        Assert.All(before, old => Assert.Equal((old.Value.Kiln, old.Value.InOn, old.Value.OutOn), (book.State.PlannedCharges[old.Key].Kiln, book.State.PlannedCharges[old.Key].InOn, book.State.PlannedCharges[old.Key].OutOn)));
        Assert.Null(PlanTakenOver.Last(book.State));
        Assert.Empty(book.Verify());
    }

    [Fact]
    public void Form_posted_twice_takes_over_once()
    {
        var book = DemonstrationBook.Open();
        var key = new PostedKey(Guid.CreateVersion7().ToString(), null);
        PlanTakeOver.Write(book, Season, "Oda", key);
        var entries = book.State.Entries.Count;

        Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(PlanTakeOver.Write(book, Season, "Oda", key));

        Assert.Equal(entries, book.State.Entries.Count);
    }

    [Fact]
    public void Plan_that_is_not_there_is_not_taken_over()
    {
        var book = DemonstrationBook.Open();
        var refused = Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(PlanTakeOver.Write(book, SeasonNow.StillWorked, "Nobody", PostedKey.None));

        Assert.Equal(["Who", "Worked plan"], refused.Reasons.Select(reason => reason.What));
        Assert.Equal(Yard.Entries.Count, book.State.Entries.Count);
    }
}
