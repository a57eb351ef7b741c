using System.Diagnostics;
using System.Net;
using System.Text.RegularExpressions;

namespace Boardwright.Browser.Tests;

/// <summary>The season as a newcomer plays it: the page's own key turns each day, and after each day every page still answers.</summary>
public sealed partial class SeasonTests
{
    private const int DaysPlayed = 42;

    // Every page on the first day of each week; on the others those whose wood or heat moves daily.
    private const int DaysAWeek = 7;
    private const int Daily = 8;
    private const double PlanWork = 0.05;

    private static readonly string[] Places =
    [
        "/", "/stacks", "/charges", "/tally", "/pours", "/history/S-07", "/stacks/S-16", "/charges/C-61", "/logs", "/season", "/promises", "/boiler", "/yard", "/find", "/write", "/day", "/book", "/tally/new",
        "/stacks/S-07", "/write/entry", "/tally/P-118", "/promises/O-301", "/promises/O-303", "/promises/O-310/ship", "/promises/new", "/history/S-10", "/history/L-021", "/pours/T-1",
    ];

    [Fact]
    public async Task Every_page_answers_after_every_day_of_the_season()
    {
        var cancel = TestContext.Current.CancellationToken;
        var data = Directory.CreateTempSubdirectory("boardwright-season-").FullName;
        using var program = Process.Start(Demonstration.Serve(data, PlanWork))!;
        program.BeginErrorReadLine();
        try
        {
            using var client = new HttpClient(new HttpClientHandler { CookieContainer = new CookieContainer() }) { BaseAddress = new(await AddressAsync(program, cancel)) };
            var faults = new List<string>();
            for (var day = 0; day <= DaysPlayed; day++)
            {
                var page = await client.GetStringAsync("/day", cancel);
                var title = TitlePattern().Match(page).Groups[1].Value;
                foreach (var place in day % DaysAWeek == 0 ? Places : Places.Take(Daily))
                {
                    using var answer = await client.GetAsync(place, cancel);
                    if (answer.StatusCode != HttpStatusCode.OK)
                        faults.Add($"{title}: {place} {(int)answer.StatusCode}");
                }

                if (day < DaysPlayed)
                    await TurnAsync(client, page, cancel);
            }

            Assert.Empty(faults);
            Assert.Contains("14 December 2026", await client.GetStringAsync("/day", cancel), StringComparison.Ordinal);
            Assert.Contains("event E-20", await client.GetStringAsync("/day?on=2026-12-12", cancel), StringComparison.Ordinal);
        }
        finally
        {
            program.Kill(entireProcessTree: true);
            await program.WaitForExitAsync(CancellationToken.None);
            Directory.Delete(data, recursive: true);
        }
    }

    private static async Task TurnAsync(HttpClient client, string page, CancellationToken cancel)
    {
        var form = FormPattern().Matches(page).Select(match => match.Value).Single(text => text.Contains("value=\"next\"", StringComparison.Ordinal));
        using var fields = new FormUrlEncodedContent(HiddenPattern().Matches(form).ToDictionary(match => match.Groups[1].Value, match => WebUtility.HtmlDecode(match.Groups[2].Value)));
        using var answer = await client.PostAsync("/day", fields, cancel);
        answer.EnsureSuccessStatusCode();
    }

    private static async Task<string> AddressAsync(Process program, CancellationToken cancel)
    {
        while (await program.StandardOutput.ReadLineAsync(cancel) is { } line)
        {
            if (AddressPattern().Match(line) is { Success: true } match)
                return match.Value;
        }

        throw new InvalidOperationException("The program ended before it served.");
    }

    [GeneratedRegex(@"http://127\.0\.0\.1:[1-9][0-9]*")]
    private static partial Regex AddressPattern();

    [GeneratedRegex("<h1>(.*?)</h1>")]
    private static partial Regex TitlePattern();

    [GeneratedRegex("<form\\b.*?</form>", RegexOptions.Singleline)]
    private static partial Regex FormPattern();

    [GeneratedRegex("<input type=\"hidden\" name=\"([^\"]*)\" value=\"([^\"]*)\"")]
    private static partial Regex HiddenPattern();
}
