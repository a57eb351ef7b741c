using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Boardwright.Browser.Tests;

/// <summary>Ways through the whole book by pressing what is shown: a log to its pack and back, a reading to the plan, a pack to its printed tag.</summary>
[Collection(WritingTests.Name)]
public sealed partial class ChainTests(ServedProgram served)
{
    private static readonly TimeSpan PlanWithin = TimeSpan.FromMinutes(3);

    public static TheoryData<int> Widths => [Screen.Phone.Width, Screen.Desktop.Width];

    [Theory, MemberData(nameof(Widths))]
    public async Task Log_is_followed_to_its_pack_and_back_by_pressing_what_is_shown(int width)
    {
        await using var leaf = await OpenAsync(width);
        var main = leaf.Page.Locator("main");
        await leaf.GoAsync("/");

        if (width == Screen.Phone.Width)
        {
            await PressAsync(leaf, leaf.Page.Locator(".thumb").GetByText("Yard"), "/yard");
        }

        await PressAsync(leaf, width == Screen.Phone.Width ? main.GetByRole(AriaRole.Link, new() { Name = "Logs" }) : leaf.Page.Locator(".places").GetByText("Logs"), "/logs");
        await main.GetByText("sawn logs").ClickAsync();
        await PressAsync(leaf, main.Locator("li", new() { HasText = "M-105" }).GetByRole(AriaRole.Link), "/logs/M-105");
        await Assertions.Expect(main).ToContainTextAsync("black cherry");

        await PressAsync(leaf, main.GetByRole(AriaRole.Link, new() { Name = "R-39", Exact = true }).First, "/stacks/R-39");
        await PressAsync(leaf, main.GetByRole(AriaRole.Link, new() { Name = "P-118", Exact = true }), "/tally/P-118");
        await PressAsync(leaf, main.GetByRole(AriaRole.Link, new() { NameRegex = HistoryPattern() }), "/history/P-118");
        await PressAsync(leaf, main.Locator("svg:visible a[href='/logs/M-105'] rect").First, "/logs/M-105");
    }

    [Theory, MemberData(nameof(Widths))]
    public async Task Every_bar_of_a_history_takes_the_press_wherever_it_is_touched(int width)
    {
        await using var leaf = await OpenAsync(width);
        foreach (var tag in new[] { "P-118", "S-10" })
        {
            await leaf.GoAsync($"/history/{tag}");
            Assert.Empty(await leaf.Page.EvaluateAsync<string[]>(
                """
                () => [...document.querySelectorAll("main svg a rect")].filter(bar => bar.getClientRects().length > 0 && bar.checkVisibility()).flatMap(bar => {
                  bar.scrollIntoView({ block: "center" });
                  const box = bar.getBoundingClientRect();
                  return [.1, .5, .9].flatMap(x => [.1, .5, .9].map(y => document.elementFromPoint(box.left + box.width * x, box.top + box.height * y)))
                    .filter(hit => hit?.localName !== "rect" || hit.closest("a") !== bar.closest("a"))
                    .map(hit => `${bar.closest("a").getAttribute("href")} under ${hit?.outerHTML.slice(0, 80)}`);
                })
                """));
        }
    }

    [Fact]
    public async Task Reading_on_a_phone_moves_the_drying_curve_and_the_plan()
    {
        await using var leaf = await OpenAsync(Screen.Phone.Width);
        var (page, curve) = (leaf.Page, leaf.Page.Locator("figure svg:visible path.likely").Last);
        var planned = await PlannedAsync(leaf, "S-04", "O-310");
        await leaf.IsSoundAsync();
        await leaf.GoAsync("/stacks/S-04");
        var curveBefore = await curve.GetAttributeAsync("d");

        // Last read 21.3 % in cold wood. 25 is a stack that was rained on: still under fibre saturation, so that it counts, and wet enough to need more days in a kiln.
        await leaf.GoAsync("/stacks/S-04/read");
        await page.GetByLabel("The meter shows").ClickAsync();
        foreach (var digit in "25")
        {
            await page.Locator($".number-pad button[data-key='{digit}']").ClickAsync();
        }

        await page.GetByLabel("The wood’s own temperature").FillAsync("37");
        await page.GetByLabel("Who").SelectOptionAsync("Oda");
        await leaf.IsSoundAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Write it down" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "It is right: keep it" }).ClickAsync();

        await leaf.ArrivedAsync("/stacks/S-04");
        Assert.NotEqual(curveBefore, await curve.GetAttributeAsync("d"));
        await leaf.IsSoundAsync();

        var now = await PlannedAsync(leaf, "S-04", "O-310");
        Assert.NotEqual(planned, now);
    }

    [Theory, MemberData(nameof(Widths))]
    public async Task Tag_of_a_pack_is_printed_from_its_page_and_says_what_the_pack_is(int width)
    {
        await using var leaf = await OpenAsync(width);
        await leaf.GoAsync("/tally");
        await PressAsync(leaf, leaf.Page.Locator("main").Locator("a[href='/tally/P-119']"), "/tally/P-119");

        var print = leaf.Page.GetByRole(AriaRole.Link, new() { Name = "Tag, PDF" });
        var paper = await leaf.Page.RunAndWaitForDownloadAsync(() => print.ClickAsync());

        var text = await PdfText.OfAsync(await paper.PathAsync());
        Assert.All(["P-119", "black cherry", "204 bf", "O-300", "Ollenwhin Sawyard"], words => Assert.Contains(words, text, StringComparison.Ordinal));
    }

    private Task<Leaf> OpenAsync(int width) => served.OpenAsync(width == Screen.Phone.Width ? Screen.Phone : Screen.Desktop);

    private static async Task PressAsync(Leaf leaf, ILocator shown, string path)
    {
        await shown.ClickAsync();
        await leaf.ArrivedAsync(path);
        await leaf.IsSoundAsync();
    }

    // What the finished plan says of a stack's charge and of an order.
    private static async Task<(string Charge, string Order)> PlannedAsync(Leaf leaf, string stack, string order)
    {
        using var patience = new CancellationTokenSource(PlanWithin);
        do
        {
            patience.Token.ThrowIfCancellationRequested();
            await leaf.GoAsync("/season");
        }
        while (await leaf.Page.Locator(".working").CountAsync() > 0);

        var charge = await leaf.Page.Locator("details.tables tr", new() { HasText = stack }).First.TextContentAsync();
        var promise = await leaf.Page.Locator(".promises > li", new() { HasText = order }).First.TextContentAsync();
        return (Words(charge), Words(promise));
    }

    private static string Words(string? text) => BlanksPattern().Replace(text ?? "", " ").Trim();

    [GeneratedRegex("^History")]
    private static partial Regex HistoryPattern();

    [GeneratedRegex(@"\s+")]
    private static partial Regex BlanksPattern();
}
