using Microsoft.Playwright;

namespace Boardwright.Browser.Tests;

/// <summary>Gloves on: the last value is taken again by one press.</summary>
[Collection(WritingTests.Name)]
public sealed class SameAgainTests(ServedProgram served)
{
    [Fact]
    public async Task The_last_board_is_written_again_by_one_press()
    {
        await using var leaf = await served.OpenAsync(Screen.Phone);
        var (page, main) = (leaf.Page, leaf.Page.Locator("main"));
        await leaf.GoAsync("/tally/P-193/count?stack=S-07&by=Tam");
        await Assertions.Expect(page.GetByRole(AriaRole.Button, new() { NameRegex = new("^The same again") })).ToHaveCountAsync(0);
        await page.GetByText("Another width or length").ClickAsync();
        await page.Locator("#other-width").FillAsync("7.25");
        await page.Locator("#other-length").FillAsync("8");
        await page.GetByRole(AriaRole.Button, new() { Name = "Write this board" }).ClickAsync();
        await Assertions.Expect(main).ToContainTextAsync("Last, 1: 7.25 in × 8 ft");

        await page.GetByRole(AriaRole.Button, new() { Name = "The same again: 7.25 in × 8 ft" }).ClickAsync();

        await Assertions.Expect(main).ToContainTextAsync("Last, 2: 7.25 in × 8 ft");
        await leaf.IsSoundAsync();
    }

    [Fact]
    public async Task What_was_read_before_is_taken_again_by_one_press()
    {
        await using var leaf = await served.OpenAsync(Screen.Phone);
        await leaf.GoAsync("/stacks/S-06/read");
        var again = leaf.Page.Locator(".pad-field", new() { HasText = "Boards read" }).GetByRole(AriaRole.Button, new() { NameRegex = new("^as before: ") });
        var field = leaf.Page.GetByLabel("Boards read").First;

        await again.ClickAsync();

        await Assertions.Expect(field).ToHaveValueAsync(await again.GetAttributeAsync("data-again") ?? "none");
        await leaf.IsSoundAsync();
    }
}
