using System.Globalization;
using Boardwright.Drying;
using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Stacks;

public sealed class LearnedRatesTests
{
    [Fact]
    public void Without_the_setting_every_earlier_stack_teaches() => Assert.NotEmpty(Drying(DemonstrationBook.Open()).LearnedFrom);

    [Theory]
    [InlineData(RateKind.Stacks)]
    [InlineData(RateKind.Charges)]
    public void What_was_learned_is_seen_with_its_readings_and_forgotten_from_a_day_on(RateKind kind)
    {
        var book = DemonstrationBook.Open();
        var before = DryLearned.Of(book.State, kind);

        Assert.True(before is { Used: true, Since: null });
        Assert.Contains(before.Shown, one => one.Teaches && one.Readings >= 2);
        Assert.All(before.Next, next => Assert.True(next.Low < next.Factor && next.Factor < next.High && next.Readings >= next.Teachers));
        Assert.Equal(before.Shown.Where(one => one.Teaches).Sum(one => one.Readings), before.Next.Sum(next => next.Readings));

        Begin(book, kind, "2026-11-02");
        var after = DryLearned.Of(book.State, kind);
        Assert.Empty(after.Next);
        Assert.Equal(before.Shown.Count, after.Shown.Count);
        Assert.All(after.Shown, one => Assert.False(one.Counts));

        Begin(book, kind, "");
        Assert.False(DryLearned.Of(book.State, kind).Used);
        Assert.Equal("From", Assert.Single(Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(DryLearned.Begin(book, kind, null, "spring", "Pell", PostedKey.None)).Reasons).What);
    }

    [Theory]
    [InlineData(RateKind.Stacks, true)]
    [InlineData(RateKind.Stacks, false)]
    [InlineData(RateKind.Charges, true)]
    [InlineData(RateKind.Charges, false)]
    public void One_wood_row_or_kiln_is_begun_anew_alone(RateKind kind, bool byWood)
    {
        var book = DemonstrationBook.Open();
        var before = DryLearned.Of(book.State, kind);
        var one = before.Shown.First(teacher => teacher.Teaches);
        var of = byWood ? one.Species : one.Place;
        bool Named(RateTeacher teacher) => (byWood ? teacher.Species : teacher.Place) == of;

        Begin(book, kind, book.State.Today.AddDays(1).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), of);

        var after = DryLearned.Of(book.State, kind);
        Assert.Equal(of, Assert.Single(after.Apart).Of);
        Assert.All(after.Shown, teacher => Assert.Equal(!Named(teacher), teacher.Counts));
        Assert.DoesNotContain(after.Next, next => (byWood ? next.Species : next.Place) == of);
        Assert.Equal(before.Shown.Count(teacher => teacher.Teaches && !Named(teacher)), after.Next.Sum(next => next.Teachers));

        // An early day lets it teach again.
        Begin(book, kind, "2000-01-01", of);
        Assert.Equal(before.Next, DryLearned.Of(book.State, kind).Next);
        Assert.Equal("Of", Assert.Single(Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(DryLearned.Begin(book, kind, "row of nobody", "2026-01-01", "Pell", PostedKey.None)).Reasons).What);
    }

    [Fact]
    public void Wood_begun_with_the_printed_rate_learns_from_no_stack()
    {
        var book = DemonstrationBook.Open();
        var drying = Drying(book);
        Assert.NotEmpty(drying.LearnedFrom);

        Begin(book, RateKind.Stacks, "", drying.Stack.Species.CommonName);

        Assert.Empty(Drying(book).LearnedFrom);
    }

    [Fact]
    public void Charge_begins_with_what_an_earlier_one_taught()
    {
        var book = DemonstrationBook.Open();
        var next = book.State.Charges["C-61"] with { Tag = "C-63", LoadedAt = book.State.Charges["C-61"].LoadedAt.AddHours(1) };
        ChargeRun Run() => Assert.IsType<Outcome<ChargeRun>.Done>(ChargeRun.Of(book.State, next, book.Now)).Value;

        var taught = Run();
        Begin(book, RateKind.Charges, "");
        var printed = Run();

        Assert.Equal("C-61", Assert.Single(taught.Begun!.Value.From).Tag);
        Assert.Null(printed.Begun);
        double Spread(ChargeRun run) => Assert.IsType<Outcome<KilnRate>.Done>(run.Rate).Value.Spread;
        Assert.True(Spread(taught) < Spread(printed));
    }

    [Fact]
    public void Setting_lets_earlier_stacks_teach_and_a_later_day_forgets_them()
    {
        var book = DemonstrationBook.Open();
        Set(book, 20200101);
        var taught = Drying(book);
        Set(book, 20261101);

        Assert.NotEmpty(taught.LearnedFrom);
        Assert.All(taught.LearnedFrom, one => Assert.True(book.State.Stacks[one.Tag].SawnOn < taught.Stack.SawnOn));
        Assert.Contains(taught.Forecast.Notes, note => note.Contains("earlier stacks", StringComparison.Ordinal));
        Assert.Empty(Drying(book).LearnedFrom);
    }

    private static StackForecast Drying(YardBook book)
    {
        // The last stack sawn that still stands outdoors: all the others came before it.
        var last = book.State.Stacks.Values.Where(stack => stack.Stage == StackStage.AirDrying).MaxBy(stack => stack.SawnOn)!;
        return Assert.IsType<Outcome<StackForecast>.Done>(StackForecast.Of(book.State, last.Tag)).Value;
    }

    private static void Set(YardBook book, double day) => Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(book.Write("Pell", new SettingSet("learn_air_rates_since", day, "day")));

    private static void Begin(YardBook book, RateKind kind, string since, string? of = null) => Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(DryLearned.Begin(book, kind, of, since, "Pell", PostedKey.None));
}
