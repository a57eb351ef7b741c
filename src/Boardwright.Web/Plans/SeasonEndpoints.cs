using System.Globalization;
using Boardwright.Documents;
using Boardwright.Documents.Weeks;
using Boardwright.Planning;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.UseCases;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Boardwright.Web.Plans;

/// <summary>The plan for calendars and for the wall: <c>/season/calendar.ics</c>, and <c>/season/week-sheet.pdf?week=2026-11-02</c> with <c>paper</c>; and the key that ends a search, <c>/season/enough</c>.</summary>
public static class SeasonEndpoints
{
    private const string AskAgain = "The plan is being made. Ask again in half a minute.";

    public static void MapSeason(this IEndpointRouteBuilder routes, YardBook book, PlanDesk desk, TimeProvider clock)
    {
        ArgumentNullException.ThrowIfNull(routes);
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(desk);
        ArgumentNullException.ThrowIfNull(clock);
        routes.MapGet("/season/calendar.ics", (HttpResponse response) => Events(book, desk, response, events =>
            Results.Text(CalendarText.Of(book.State.Yard?.Name ?? "Boardwright", clock.GetUtcNow().UtcDateTime, events), "text/calendar", System.Text.Encoding.UTF8)));
        routes.MapPost("/season/enough", (IFormCollection form) => Enough(desk, form));
        routes.MapGet("/season/week-sheet.pdf", (string? week, string? paper, HttpResponse response) =>
            Day(week, book.State.Today) is not { } day ? Refused("week", week!, "a day such as 2026-11-02")
            : Sheet(paper) is not { } sheet ? Refused("paper", paper!, "a4 or letter")
            : desk.Look() is { IsRunning: true, Plan: null } ? Week(SeasonEvents.Known(book.State), First(week, day), [new(First(week, day), null, "Your own plan", "The season’s plan is still being worked: print again once it is ready.")], sheet)
            : Events(book, desk, response, events => Week(events, First(week, day), [], sheet)));

        // A wall sheet of what is known is better than none; a calendar that is subscribed to keeps what it has instead.
        IResult Week(IReadOnlyList<CalendarEvent> events, DateOnly from, IReadOnlyList<WeekLine> first, Paper sheet) =>
            Results.File(WeekSheet.Render(new(book.State.Yard?.Name ?? "Boardwright", from, book.Now, [.. first, .. SeasonEvents.Lines(events), .. WeekRounds.Of(book.State, from, desk.Season().Sheet).Select(round => new WeekLine(round.Day, round.At, round.What, round.Which))]), sheet), "application/pdf", $"week-{from:yyyy-MM-dd}.pdf");

        // A week that is asked for begins on its Monday; the seven days ahead begin today, so that nothing of the sheet is past.
        static DateOnly First(string? week, DateOnly day) => string.IsNullOrWhiteSpace(week) ? day : Monday(day);
    }

    // The search for this plan ends; the page the key stood on is shown again.
    private static IResult Enough(PlanDesk desk, IFormCollection form)
    {
        var read = form["without"].ToString().Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(text => Interruption.Read("without", text)).ToList();
        if (read.OfType<Outcome<Interruption>.Refused>().FirstOrDefault() is { Reasons: [var reason, ..] })
        {
            return Refused(reason.What, reason.Given, reason.Accepted);
        }

        desk.Enough([.. read.OfType<Outcome<Interruption>.Done>().Select(done => done.Value)]);
        return Uri.TryCreate(form["back"].ToString(), UriKind.Relative, out var back) && back.OriginalString.StartsWith('/') && !back.OriginalString.StartsWith("//", StringComparison.Ordinal)
            ? Results.LocalRedirect(back.OriginalString)
            : Results.LocalRedirect("/season");
    }

    private static IResult Events(YardBook book, PlanDesk desk, HttpResponse response, Func<IReadOnlyList<CalendarEvent>, IResult> show)
    {
        switch (desk.Look())
        {
            case { IsRunning: true, Plan: null }:
                response.Headers.RetryAfter = "30";
                return Results.Text(AskAgain, "text/plain", System.Text.Encoding.UTF8, StatusCodes.Status503ServiceUnavailable);
            case { Plan: { } made }:
                return show(SeasonEvents.Of(book.State, SeasonSheet.Of(book.State, made)));
            default:
                return Results.Text(desk.Season().Why ?? AskAgain, "text/plain", System.Text.Encoding.UTF8, StatusCodes.Status422UnprocessableEntity); // asking again would not help
        }
    }

    private static DateOnly? Day(string? text, DateOnly today) =>
        text is null ? today : DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? day : null;

    private static Paper? Sheet(string? name) => name is null ? Paper.A4 : Paper.Find(name) is { } found && (found == Paper.A4 || found == Paper.Letter) ? found : null;

    private static DateOnly Monday(DateOnly day) => day.AddDays(-(((int)day.DayOfWeek + 6) % 7));

    private static IResult Refused(string what, string given, string accepted) =>
        Results.Text($"{what}: got “{given}”, accepted {accepted}", "text/plain", System.Text.Encoding.UTF8, StatusCodes.Status400BadRequest);
}
