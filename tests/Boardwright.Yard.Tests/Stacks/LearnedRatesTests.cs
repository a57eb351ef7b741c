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
    public void Without_the_setting_every_stack_begins_with_the_printed_rate() => Assert.Empty(Drying(DemonstrationBook.Open()).LearnedFrom);

    [Fact]
    public void Setting_lets_earlier_stacks_teach_and_a_later_day_forgets_them()
    {
        var book = DemonstrationBook.Open();
        Set(book, 20200101);
        var taught = Drying(book);
        Set(book, 20261101);

        Assert.NotEmpty(taught.LearnedFrom);
        Assert.All(taught.LearnedFrom, one => Assert.True(book.State.Stacks[one.Stack].SawnOn < taught.Stack.SawnOn));
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
}
