using Microsoft.Playwright;

namespace Boardwright.Browser.Tests;

/// <summary>Stacks and charges, their forms, and a reading that moves its curve.</summary>
public sealed class StackAndChargeTests(ServedProgram served)
{
    public static TheoryData<string, string> Pages => new()
    {
        { "stack-cherry", "/stacks/S-07" }, { "stack-ash", "/stacks/S-02" }, { "stack-in-kiln", "/stacks/S-10" }, { "stack-slab", "/stacks/S-20" }, { "stack-read", "/stacks/S-07/read" },
        { "stack-sections", "/stacks/S-07/read?how=sections" }, { "stack-move", "/stacks/S-07/move" }, { "stack-new", "/stacks/new" }, { "charge-oak", "/charges/C-61" },
        { "charge-hung", "/charges/D-40" }, { "charge-sample", "/charges/C-61/sample" }, { "charge-vacuum", "/charges/V-19" }, { "charge-weigh", "/charges/C-61/weigh" }, { "charge-set", "/charges/C-61/set" },
        { "charge-air", "/charges/C-61/air" }, { "charge-unload", "/charges/V-19/unload" }, { "charge-new", "/charges/new?plan=D-41" },
    };

    [Theory, MemberData(nameof(Pages))]
    public Task Page_is_sound_on_a_phone(string name, string path) => CheckAsync(name, path, Screen.Phone);

    [Theory, MemberData(nameof(Pages))]
    public Task Page_is_sound_on_a_desktop(string name, string path) => CheckAsync(name, path, Screen.Desktop);

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

    private async Task CheckAsync(string name, string path, Screen screen)
    {
        await using var leaf = await served.OpenAsync(screen);
        await leaf.GoAsync(path);
        await leaf.PictureAsync(name);
        await leaf.IsSoundAsync();
    }
}
