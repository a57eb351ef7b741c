using System.Text.RegularExpressions;
using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Tests.Plan;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Morning;

/// <summary>A day of another year says its year, wherever a due day or a ready day is told.</summary>
public sealed partial class YearTests
{
    [Fact]
    public void Ready_and_due_days_of_the_next_year_say_so()
    {
        var made = DemonstrationPlan.Made();
        var ready = WorkedReady.Of(made, 0, new("S-06", true, 0m)) with { On = new(2027, 1, 12), InPlan = true, Kiln = "K1" };

        Assert.Contains("12 Jan 2027", ready.Words, StringComparison.Ordinal);
        Assert.Equal("Mon 11 Jan 2027", DayWords.Weekday(new DateOnly(2027, 1, 11), new(2026, 11, 2)));
        Assert.Equal("Mon 2 Nov", DayWords.Weekday(new DateOnly(2026, 11, 2), new(2026, 11, 2)));
        Assert.Equal("", DayWords.Of((DateOnly?)null, new(2026, 11, 2)));
    }

    [Fact]
    public void Change_asked_for_another_year_says_both_days_with_their_year()
    {
        var book = DemonstrationBook.Open(new(2026, 12, 30));
        var order = book.State.Orders.Values.First(one => one.IsOpen);
        Assert.IsType<Quantities.Outcome<IReadOnlyList<Entry>>.Done>(book.Write("Oda", new OrderChangeAsked(order.Tag, DueOn: new(2027, 1, 15), Why: "the floor is late", Line: order.Lines.First(line => !line.IsFilled).Asked.Line)));

        Assert.Contains(MorningSheet.For(book.State, null).Tasks, task => task.Much.Value == "15 Jan 2027" && task.At == order.Tag);
    }

    // Told in the year before: any day of January or February without its year would be read as one long gone.
    [Fact]
    public void No_line_of_the_sheet_on_the_last_days_of_the_year_names_a_day_of_the_next_without_it()
    {
        foreach (var day in new[] { 28, 29, 30, 31 })
        {
            foreach (var task in MorningSheet.For(DemonstrationBook.On(new(2026, 12, day)), null).Tasks)
                Assert.DoesNotMatch(NextYear(), $"{task.Do} {task.Why} {task.Much.Basis} {task.Much.Value}");
        }
    }

    [GeneratedRegex(@"\b\d{1,2} (Jan|Feb|Mar)(?! 20)", RegexOptions.CultureInvariant)]
    private static partial Regex NextYear();
}
