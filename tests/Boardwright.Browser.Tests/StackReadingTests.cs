using Microsoft.Playwright;

namespace Boardwright.Browser.Tests;

/// <summary>A reading that moves its stack's curve, and is taken back.</summary>
[Collection(WritingTests.Name)]
public sealed class StackReadingTests(ServedProgram served)
{
    [Fact]
    public async Task Reading_out_of_trend_is_asked_about_then_moves_the_curve_and_the_ready_day_and_is_taken_back()
    {
        await using var leaf = await served.OpenAsync(Screen.Phone);
        var page = leaf.Page;
        await leaf.GoAsync("/stacks/S-18");
        var (ready, curve) = (page.Locator(".figure", new() { HasText = "Dry enough" }), page.Locator("figure svg:visible path.likely").Last);
        var (readyBefore, curveBefore) = (await ready.InnerTextAsync(), await curve.GetAttributeAsync("d"));

        await leaf.GoAsync("/stacks/S-18/read");
        await page.GetByLabel("The meter shows").FillAsync("22");
        await page.GetByLabel("The wood’s own temperature").FillAsync("40");
        await Assertions.Expect(page.GetByLabel("Who")).ToHaveValueAsync("");   // nobody wrote on this device yet
        await page.GetByLabel("Who").SelectOptionAsync("Wren");
        await page.GetByRole(AriaRole.Button, new() { Name = "Write it down" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Alert).First).ToContainTextAsync("Out of trend");
        await Assertions.Expect(page.GetByLabel("The meter shows")).ToHaveValueAsync("22");
        await page.GetByRole(AriaRole.Button, new() { Name = "It is right: keep it" }).ClickAsync();

        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToContainTextAsync("S-18");
        Assert.NotEqual(readyBefore, await ready.InnerTextAsync());
        Assert.NotEqual(curveBefore, await curve.GetAttributeAsync("d"));

        await page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Assertions.Expect(ready).ToContainTextAsync(readyBefore.Split('\n')[1]);
        Assert.Equal(curveBefore, await curve.GetAttributeAsync("d"));
        await leaf.IsSoundAsync();
    }
}
