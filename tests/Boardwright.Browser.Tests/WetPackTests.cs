using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Boardwright.Browser.Tests;

/// <summary>A pack found wetter than its order asks: it goes back on stickers, or leaves on a named decision.</summary>
[Collection(WritingTests.Name)]
public sealed partial class WetPackTests(ServedProgram served)
{
    [Fact]
    public async Task Pack_found_wetter_than_ordered_goes_back_on_stickers_as_a_stack_of_its_own()
    {
        await using var leaf = await served.OpenAsync(Screen.Phone);
        var (page, main) = (leaf.Page, leaf.Page.Locator("main"));
        await TallyAsync(leaf, "P-191");
        await Assertions.Expect(main).ToContainTextAsync(WetterPattern());
        await leaf.IsSoundAsync();

        var form = main.Locator("form", new() { Has = page.GetByRole(AriaRole.Button, new() { Name = "Back on stickers" }) });
        var stack = await form.GetByLabel("On stickers as stack").InputValueAsync();
        await form.GetByLabel("In", new() { Exact = true }).SelectOptionAsync("shed B");
        await form.GetByLabel("Who").SelectOptionAsync("Wren");
        await form.GetByRole(AriaRole.Button, new() { Name = "Back on stickers" }).ClickAsync();

        await Assertions.Expect(main).ToContainTextAsync($"See stack {stack}.");
        await Assertions.Expect(main.GetByRole(AriaRole.Button, new() { Name = "It left, wetter than ordered" })).ToHaveCountAsync(0);
        await leaf.IsSoundAsync();
        await main.GetByRole(AriaRole.Link, new() { Name = $"Stack {stack}", Exact = true }).ClickAsync();
        await leaf.ArrivedAsync($"/stacks/{stack}");
        await Assertions.Expect(main).ToContainTextAsync("shed B");
        await leaf.IsSoundAsync();
    }

    [Fact]
    public async Task Pack_found_wetter_than_ordered_leaves_only_with_who_agreed_and_why_and_its_page_keeps_both()
    {
        await using var leaf = await served.OpenAsync(Screen.Desktop);
        var (page, main) = (leaf.Page, leaf.Page.Locator("main"));
        await TallyAsync(leaf, "P-192");
        var form = main.Locator("form", new() { Has = page.GetByRole(AriaRole.Button, new() { Name = "It left, wetter than ordered", IncludeHidden = true }) });
        await Assertions.Expect(form).ToBeHiddenAsync();   // the usual way is back on stickers
        await main.GetByText("Ship it wetter than ordered all the same").ClickAsync();
        await form.GetByLabel("Who", new() { Exact = true }).SelectOptionAsync("Tam");
        await form.GetByRole(AriaRole.Button).ClickAsync();
        Assert.False(await form.EvaluateAsync<bool>("form => form.checkValidity()"));   // no reason, no load
        await Assertions.Expect(main).Not.ToContainTextAsync("it left with");

        await form.GetByLabel("Who agreed that it goes wetter than ordered, and why").FillAsync("Oda: the shop dries it themselves");
        await form.GetByRole(AriaRole.Button).ClickAsync();

        await Assertions.Expect(main).ToContainTextAsync("it left with");
        await Assertions.Expect(main).ToContainTextAsync("Oda: the shop dries it themselves");
        await leaf.IsSoundAsync();
    }

    // One board of the cherry in shed B, read 15 %, for an order that takes 6 to 8.
    private static async Task TallyAsync(Leaf leaf, string pack)
    {
        var page = leaf.Page;
        await leaf.GoAsync($"/tally/{pack}/count?stack=S-07&order=O-301&line=1&by=Tam");
        await page.GetByText("Another width or length").ClickAsync();
        await page.Locator("#other-width").FillAsync("7.25");
        await page.Locator("#other-length").FillAsync("8");
        await page.GetByRole(AriaRole.Button, new() { Name = "Write this board" }).ClickAsync();
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("Last, 1: 7.25 in");
        await page.GetByRole(AriaRole.Button, new() { Name = "Close the tally" }).ClickAsync();
        await leaf.ArrivedAsync($"/tally/{pack}");
    }

    [GeneratedRegex(@"Wetter than ordered\.\s*15\.0\s%\smeasured, 6 to 8 % ordered by\s*O-301")]
    private static partial Regex WetterPattern();
}
