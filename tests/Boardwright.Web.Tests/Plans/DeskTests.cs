using Boardwright.Planning;
using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Web.Plans;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.UseCases;

namespace Boardwright.Web.Tests.Plans;

/// <summary>The desks that plan beside the requests, on a small yard (invented).</summary>
public sealed class DeskTests
{
    private const double Little = 0.02;

    [Fact]
    public async Task Season_is_told_once_it_is_worked_to_its_end_and_is_the_plan_that_is_shown()
    {
        using var desk = new PlanDesk(SmallBook.Open(), TimeProvider.System, Little);

        await desk.MadeAsync();

        Assert.Same(desk.Look().Plan, desk.Season().Made);
        Assert.Equal((2, false, "Plan 2"), (desk.Season().Number, desk.Season().Carried, desk.Season().Name));
        Assert.Null(desk.Season().Why);
        Assert.Same(desk.Season(), desk.Season());
    }

    [Fact]
    public async Task Entry_in_the_book_makes_another_season()
    {
        var book = SmallBook.Open();
        using var desk = new PlanDesk(book, TimeProvider.System, Little);
        await desk.MadeAsync();
        var before = desk.Season();

        Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(book.Write("Pell", new MoistureRead("S-07", MoistureMethod.OvenSections, MeanPct: 40.0, SdPct: 1.0, Boards: 12)));

        Assert.NotSame(before.Made, desk.Season().Made);
        await desk.MadeAsync();
        Assert.NotSame(before.Made, desk.Season().Made);
        Assert.NotNull(desk.Season().Sheet);
    }

    [Fact]
    public async Task Season_says_what_changed_since_the_plan_before_it_and_why()
    {
        var book = SmallBook.Open();
        using var desk = new PlanDesk(book, TimeProvider.System, Little);
        await desk.MadeAsync();
        Assert.Null(desk.Season().Changes);

        Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(book.Write("Pell", new MoistureRead("S-07", MoistureMethod.OvenSections, MeanPct: 55.0, SdPct: 1.0, Boards: 12)));
        await desk.MadeAsync();

        var changes = desk.Season().Changes;
        Assert.NotNull(changes);
        Assert.Contains(changes.Promises, promise => promise.Order == "O-301" && promise.Why.Any(fact => fact.Because == book.State.Entries[^1]));
    }

    [Fact]
    public async Task Plans_on_the_shelf_outlive_the_desk()
    {
        var (book, shelf) = (SmallBook.Open(), new MemoryPlanShelf());
        using (var first = new PlanDesk(book, TimeProvider.System, Little, shelf))
        {
            await first.MadeAsync();
        }

        book.Write("Pell", new MoistureRead("S-07", MoistureMethod.OvenSections, MeanPct: 55.0, SdPct: 1.0, Boards: 12));
        using var second = new PlanDesk(book, TimeProvider.System, Little, shelf);
        await second.MadeAsync();

        Assert.NotNull(second.Season().Changes);
        Assert.Equal(2, shelf.Read().Count);
    }

    [Fact]
    public async Task Search_ends_when_somebody_says_it_is_enough()
    {
        using var desk = new PlanDesk(SmallBook.Open(), TimeProvider.System, workShare: 10.0);
        for (var looks = 0; desk.Look() is { Trying: null, IsRunning: true } && looks < 400; looks++)
        {
            // Each look waits a moment for the first plan.
        }

        desk.Enough();
        await desk.MadeAsync().WaitAsync(TimeSpan.FromMinutes(1), TestContext.Current.CancellationToken);

        Assert.False(desk.Look().IsRunning);
        Assert.NotNull(desk.Season().Sheet);
    }

    /// <summary>Two pages opened seconds apart while a plan is worked tell the same one.</summary>
    [Fact]
    public async Task While_a_newer_plan_is_worked_every_page_goes_by_the_one_before()
    {
        var (book, shelf) = (SmallBook.Open(), new MemoryPlanShelf());
        using (var first = new PlanDesk(book, TimeProvider.System, Little, shelf))
        {
            await first.MadeAsync();
        }

        book.Write("Pell", new MoistureRead("S-07", MoistureMethod.OvenSections, MeanPct: 55.0, SdPct: 1.0, Boards: 12));
        using var held = new HeldShelf(shelf);
        using var desk = new PlanDesk(book, TimeProvider.System, Little, held);
        desk.Look();
        Assert.True(held.IsAsked.Wait(TimeSpan.FromMinutes(1), TestContext.Current.CancellationToken)); // the newer plan is found and not yet shown

        var (carried, view) = (desk.Season(), desk.Look());
        Assert.True(view.IsRunning);
        Assert.True(carried.Carried);
        Assert.Equal("Plan 2 under today’s facts. Plan 3 is being worked out; until it is there every page goes by this one.", carried.Newer);
        Assert.Same(carried.Made, view.Plan);
        Assert.NotSame(view.Trying, view.Plan);
        Assert.Same(carried, desk.Season());

        held.Released.Set();
        await desk.MadeAsync().WaitAsync(TimeSpan.FromMinutes(1), TestContext.Current.CancellationToken);

        Assert.Equal((3, false), (desk.Season().Number, desk.Season().Carried));
        Assert.Null(desk.Season().Newer);
        Assert.Equal([2, 3], shelf.Read().Select(kept => kept.Number));
    }

    [Fact]
    public async Task What_if_shows_no_plan_before_it_is_worked_out()
    {
        using var desk = new PlanDesk(SmallBook.Open(), TimeProvider.System, workShare: 1.0);
        IReadOnlyList<Interruption> without = [Assert.IsType<Outcome<Interruption>.Done>(Interruption.Read("without", "K1:2026-11-20..2026-11-25")).Value];
        await desk.MadeAsync().WaitAsync(TimeSpan.FromMinutes(1), TestContext.Current.CancellationToken);
        var view = desk.Look(without);
        for (var looks = 0; view.IsRunning && looks < 400; looks++)
        {
            Assert.Null(view.Plan);
            view = desk.Look(without);
        }

        Assert.NotNull(view.Plan);
        Assert.Null(view.Season); // pages go on with the plan of the yard as it stands
    }

    [Fact]
    public async Task Yard_that_cannot_be_planned_says_why()
    {
        using var desk = new PlanDesk(new YardBook(new MemoryBookStore([]), new StandingClock(new(2026, 11, 2, 16, 0, 0))), TimeProvider.System, Little);

        await desk.MadeAsync();

        Assert.Contains("no kiln", desk.Season().Why, StringComparison.Ordinal);
        Assert.Null(desk.Season().Sheet);
    }

    [Fact]
    public async Task What_ifs_are_planned_once_for_a_plan_and_kept_until_it_is_another()
    {
        var book = SmallBook.Open();
        using var plans = new PlanDesk(book, TimeProvider.System, Little);
        using var desk = new WhatIfDesk(book, plans, Little);
        await plans.MadeAsync();

        var view = Ended(desk);

        Assert.Equal(["Your own plan"], view.Ways.Select(way => way.Words).Where(words => words.StartsWith("Your", StringComparison.Ordinal)));
        Assert.Equal(PlanWhatIf.Tries(book.State, view.Plan.Plan!, Little, TestContext.Current.CancellationToken).Select(one => one.Words), view.Tried.Select(one => one.Words));
        Assert.Same(view.Ways, desk.Look().Ways);

        book.Write("Pell", new MoistureRead("S-07", MoistureMethod.OvenSections, MeanPct: 40.0, SdPct: 1.0, Boards: 12));
        await plans.MadeAsync();

        Assert.NotSame(view.Ways, Ended(desk).Ways);
    }

    [Fact]
    public async Task What_ifs_of_a_yard_without_a_plan_are_none()
    {
        var book = new YardBook(new MemoryBookStore([]), new StandingClock(new(2026, 11, 2, 16, 0, 0)));
        using var plans = new PlanDesk(book, TimeProvider.System, Little);
        using var desk = new WhatIfDesk(book, plans, Little);
        await plans.MadeAsync();

        var view = desk.Look();

        Assert.False(view.IsRunning);
        Assert.Empty(view.Ways);
        Assert.IsType<Outcome<PlanMade>.Refused>(view.Plan.Ended);
    }

    // Each look waits a moment for the desk.
    private static WhatIfView Ended(WhatIfDesk desk)
    {
        var view = desk.Look();
        for (var looks = 0; view.IsRunning && looks < 400; looks++)
        {
            view = desk.Look();
        }

        Assert.False(view.IsRunning);
        return view;
    }

    /// <summary>A shelf that takes a plan only once it is released: as long, the search has not ended.</summary>
    private sealed class HeldShelf(MemoryPlanShelf shelf) : IPlanShelf, IDisposable
    {
        public ManualResetEventSlim IsAsked { get; } = new();

        public ManualResetEventSlim Released { get; } = new();

        public IReadOnlyList<KeptPlan> Read() => shelf.Read();

        public void Write(IReadOnlyList<KeptPlan> plans)
        {
            IsAsked.Set();
            Released.Wait(TimeSpan.FromMinutes(1));
            shelf.Write(plans);
        }

        public void Dispose()
        {
            Released.Set();
            IsAsked.Dispose();
            Released.Dispose();
        }
    }
}
