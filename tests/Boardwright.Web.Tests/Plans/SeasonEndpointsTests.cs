using System.Text;
using Boardwright.Testing;
using Boardwright.Web.Plans;
using Boardwright.Yard.Book;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.Logging;

namespace Boardwright.Web.Tests.Plans;

/// <summary>Calendar and week sheet of a small yard (invented), asked without a network.</summary>
public sealed class SeasonEndpointsTests
{
    [Fact]
    public async Task Calendar_has_the_loads_and_the_due_days_of_the_plan()
    {
        var (status, type, body, _) = await Ask(SmallBook.Open(), "/season/calendar.ics");

        Assert.Equal((200, "text/calendar; charset=utf-8"), (status, type));
        Assert.StartsWith("BEGIN:VCALENDAR\r\n", body, StringComparison.Ordinal);
        Assert.Contains("SUMMARY:Load K", body, StringComparison.Ordinal);
        Assert.Contains("SUMMARY:O-301 due", body, StringComparison.Ordinal);
        Assert.Equal(body.Split("BEGIN:VEVENT").Length, body.Split("END:VEVENT").Length);
    }

    [Theory]
    [InlineData("")]
    [InlineData("?week=2026-11-11&paper=letter")]
    public async Task Week_sheet_is_a_pdf(string query)
    {
        var (status, type, body, _) = await Ask(SmallBook.Open(), "/season/week-sheet.pdf", query);

        Assert.Equal((200, "application/pdf"), (status, type));
        Assert.StartsWith("%PDF", body, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("?week=yesterday", "week: got “yesterday”, accepted a day such as 2026-11-02")]
    [InlineData("?paper=a0", "paper: got “a0”, accepted a4 or letter")]
    public async Task What_cannot_be_read_is_refused(string query, string words)
    {
        var (status, _, body, _) = await Ask(SmallBook.Open(), "/season/week-sheet.pdf", query);

        Assert.Equal((400, words), (status, body));
    }

    [Fact]
    public async Task Yard_that_cannot_be_planned_says_why_and_not_to_ask_again()
    {
        var (status, _, body, retry) = await Ask(new YardBook(new MemoryBookStore([]), new StandingClock(new(2026, 11, 2, 16, 0, 0))), "/season/calendar.ics");

        Assert.Equal(422, status);
        Assert.Contains("no kiln", body, StringComparison.Ordinal);
        Assert.Empty(retry);
    }

    [Fact]
    public async Task While_the_plan_is_being_made_the_calendar_asks_to_come_again()
    {
        var (status, _, _, retry) = await Ask(DemonstrationBook.Open(), "/season/calendar.ics", "", made: false);

        Assert.Equal((503, "30"), (status, retry));
    }

    [Fact]
    public async Task While_the_plan_is_being_made_the_week_sheet_shows_what_is_known()
    {
        var (status, type, body, retry) = await Ask(DemonstrationBook.Open(), "/season/week-sheet.pdf", "", made: false);

        Assert.Equal((200, "application/pdf", ""), (status, type, retry));
        Assert.StartsWith("%PDF", body, StringComparison.Ordinal);
    }

    private static async Task<(int Status, string? Type, string Body, string Retry)> Ask(YardBook book, string path, string query = "", bool made = true)
    {
        using var desk = new PlanDesk(book, TimeProvider.System, 0.02);
        var builder = WebApplication.CreateSlimBuilder();
        builder.Logging.ClearProviders();
        await using var app = builder.Build();
        app.MapSeason(book, desk, new StandingClock(new(2026, 11, 2, 16, 0, 0)));
        if (made)
        {
            await desk.MadeAsync();
        }

        var endpoint = ((IEndpointRouteBuilder)app).DataSources.SelectMany(source => source.Endpoints).OfType<RouteEndpoint>().Single(one => one.RoutePattern.RawText == path);
        using var body = new MemoryStream();
        var context = new DefaultHttpContext { RequestServices = app.Services };
        (context.Request.Method, context.Request.QueryString, context.Response.Body) = ("GET", new QueryString(query), body);
        await endpoint.RequestDelegate!(context);
        return (context.Response.StatusCode, context.Response.ContentType, Encoding.UTF8.GetString(body.ToArray()), context.Response.Headers.RetryAfter.ToString());
    }
}
