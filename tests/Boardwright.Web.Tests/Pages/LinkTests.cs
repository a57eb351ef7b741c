using System.Globalization;
using System.Reflection;
using System.Text.RegularExpressions;
using Boardwright.Testing;
using Boardwright.Web.Layout;
using Boardwright.Yard.Book;
using Boardwright.Yard.Commands;
using Boardwright.Yard.UseCases;
using Microsoft.AspNetCore.Components;

namespace Boardwright.Web.Tests.Pages;

/// <summary>Every link the use cases make leads to a page that is there.</summary>
public sealed class LinkTests
{
    private static readonly IReadOnlyList<string> Routes =
        [.. typeof(Places).Assembly.GetTypes().SelectMany(type => type.GetCustomAttributes<RouteAttribute>()).Select(route => route.Template)];

    public static TheoryData<int> Days => [2, 3, 10, 12, 16, 20, 24, 28, 30];

    [Theory, MemberData(nameof(Days))]
    public void Every_task_of_the_morning_sheet_leads_to_a_page(int day) =>
        AllLead(MorningSheet.For(Yard(day), null).Tasks.Select(task => task.Path));

    [Theory, MemberData(nameof(Days))]
    public void Every_entry_the_sheet_asks_for_has_its_fields(int day)
    {
        const string Prefix = "/write/entry/";
        foreach (var path in MorningSheet.For(Yard(day), null).Tasks.Select(task => task.Path).Where(path => path.StartsWith(Prefix, StringComparison.Ordinal)))
        {
            var parts = path[Prefix.Length..].Split('?');
            var fields = Assert.IsType<Boardwright.Quantities.Outcome<IReadOnlyList<EntryInput>>.Done>(EntryWrite.Inputs(Yard(day), parts[0])).Value.Select(input => input.Key).ToList();

            Assert.All(parts.Skip(1).SelectMany(query => query.Split('&')).Select(pair => pair.Split('=')[0]), key => Assert.Contains(key, fields));
        }
    }

    [Theory, MemberData(nameof(Days))]
    public void Every_form_of_the_write_page_is_there(int day) =>
        AllLead(YardForm.All(Yard(day)).SelectMany(form => form.Links).Select(link => link.Path));

    [Fact]
    public void Every_question_leads_to_its_page_with_a_yard_and_without()
    {
        foreach (var state in new[] { Yard(2), YardState.Of([], new(2026, 11, 2)) })
        {
            AllLead(WeekQuestions.All.Select(question => question.Path(state)));
        }

        Assert.All(WeekQuestions.All, question => Assert.Contains(question.Route, Routes));
        Assert.All(WeekQuestions.All.Where(question => question.Path(Yard(2)) != question.Route), question => Assert.Equal(question.Route, RouteOf(question.Path(Yard(2)))));
    }

    // A part that a question leads to is on its page: a fragment that leads nowhere leaves the reader at the top.
    [Fact]
    public void Every_part_a_question_leads_to_is_named_on_a_page()
    {
        var pages = string.Concat(Directory.EnumerateFiles(Repository.PathOf("src", "Boardwright.Web", "Pages"), "*.razor").Select(File.ReadAllText));

        Assert.All(WeekQuestions.All.Select(question => question.Path(Yard(2)).Split('#')).Where(parts => parts.Length > 1), parts => Assert.Contains($"Id=\"{parts[1]}\"", pages, StringComparison.Ordinal));
    }

    [Fact]
    public void Every_command_a_question_names_is_there() =>
        Assert.All(WeekQuestions.All.Where(question => question.Command is not null), question => Assert.NotNull(CommandCatalogue.Find(question.Command!)));

    [Fact]
    public void Questions_are_two_taps_from_the_sheet()
    {
        var sheet = File.ReadAllText(Repository.PathOf("src", "Boardwright.Web", "Pages", "Morning.razor"));

        Assert.Contains("href=\"/questions\"", sheet, StringComparison.Ordinal);
        Assert.Equal(Enumerable.Range(1, 25), WeekQuestions.All.Select(question => question.Number));
    }

    [Fact]
    public void Document_of_the_questions_says_what_the_page_says()
    {
        var rows = File.ReadAllLines(Repository.PathOf("docs", "questions.md")).Where(line => Regex.IsMatch(line, @"^\| \d")).ToList();

        Assert.Equal(WeekQuestions.All.Select(question => string.Create(CultureInfo.InvariantCulture,
            $"| {question.Number} | {question.Asks} | `{question.Route}` | {(question.Command is { } command ? $"`{command}`" : "")} | {question.Answered} | {question.Gap} |")), rows);
    }

    [Fact]
    public void Every_stop_of_the_tour_is_there_and_takes_ten_minutes()
    {
        var steps = TourWalk.Of(Yard(2));

        AllLead(steps.Select(step => step.Path));
        Assert.Equal(Enumerable.Range(0, 11), steps.Select(step => step.Minute));
        Assert.Empty(TourWalk.Of(YardState.Of([], new(2026, 11, 2))));
    }

    // The yard moves with the day it is opened on: so do the days and figures of its tour.
    [Theory, InlineData(0), InlineData(3), InlineData(60)]
    public void Tour_says_the_days_and_figures_of_the_yard_it_is_opened_in(int weeks)
    {
        var today = DemoYard.WrittenFor.AddDays(7 * weeks);
        var book = new YardBook(new MemoryBookStore([]), new StandingClock(today.ToDateTime(new(8, 0))));
        Assert.IsType<Boardwright.Quantities.Outcome<IReadOnlyList<Entry>>.Done>(DemoYard.Fill(book, DemonstrationBook.Folder, today));
        var state = book.State;
        var sheet = MorningSheet.For(state, null);
        var text = TourWalk.Of(state).Select(step => step.Look).ToList();
        var down = state.Boilers["B1"].Down!;
        var coldest = BoilerSheet.Days(state, 27).MinBy(day => day.OutsideC)!;
        var due = state.Orders["O-309"].Lines[0].Asked.DueOn;
        string Day(DateOnly? day) => DayWords.Of(day!.Value, today);

        Assert.Contains($"promised for {Day(down.BackExpectedOn)}, perhaps {Day(down.BackLateOn)}: look at {Day(coldest.Date)}, {DayWords.Celsius(coldest.OutsideC)}", text[5], StringComparison.Ordinal);
        Assert.Contains($"by {Day(due)}; S-22 stands at {state.Stacks["S-22"].Moisture!.Mean!.Value.Percent:0} %", text[6], StringComparison.Ordinal);
        Assert.Contains($"about {sheet.Tasks.Single(task => task.At == "O-303").Much.Value} (", text[8], StringComparison.Ordinal);
        Assert.Contains($"{PourList.Of(state).Totals.Single(figure => figure.Label == "Part B short").Value} kg short", text[9], StringComparison.Ordinal);
        Assert.Equal([Day(down.BackExpectedOn), Day(down.BackLateOn), Day(coldest.Date), Day(due)], text.SelectMany(look => Regex.Matches(look, @"\b\d{1,2} [A-Z][a-z]{2}( \d{4})?\b")).Select(match => match.Value));
        Assert.DoesNotContain(text, look => Regex.IsMatch(look, "January|February|March|April|June|July|August|September|October|November|December"));
    }

    [Theory, MemberData(nameof(Days))]
    public void Tour_can_be_walked_on_every_day_of_the_season(int day) =>
        Assert.All(TourWalk.Of(Yard(day)), step => Assert.EndsWith(".", step.Look, StringComparison.Ordinal));

    [Fact]
    public void What_is_found_leads_to_its_page() =>
        AllLead(new[] { "oak", "O-", "P-", "T-", "C-" }.SelectMany(text => FindSearch.For(Yard(2), new(text))).Select(found => found.Path));

    private static YardState Yard(int day) => DemonstrationBook.On(new(2026, 11, day));

    private static void AllLead(IEnumerable<string> paths)
    {
        var dead = paths.Where(path => RouteOf(path) is null).Distinct().ToList();

        Assert.True(dead.Count == 0, $"No page at: {string.Join(", ", dead)}");
    }

    // A literal address wins over one with a tag, as in the router.
    private static string? RouteOf(string path)
    {
        var bare = path.Split('?', '#')[0];
        return Routes.Where(route => Regex.IsMatch(bare, "^" + Regex.Replace(route, @"\{[^}]+\}", "[^/]+") + "$")).OrderBy(route => route.Count(letter => letter == '{')).FirstOrDefault();
    }
}
