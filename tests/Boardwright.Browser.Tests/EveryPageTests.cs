namespace Boardwright.Browser.Tests;

/// <summary>Every page at both sizes: it answers, is accessible, fits, and the browser has nothing to complain of.</summary>
public sealed class EveryPageTests(ServedProgram served)
{
    public static TheoryData<string, string> Pages => new()
    {
        { "morning", "/" }, { "logs", "/logs" }, { "stacks", "/stacks" }, { "charges", "/charges" }, { "season", "/season" }, { "tally", "/tally" },
        { "promises", "/promises" }, { "pours", "/pours" }, { "boiler", "/boiler" }, { "yard", "/yard" }, { "find", "/find" }, { "write", "/write" },
        { "drawings", "/drawings" },
    };

    [Theory, MemberData(nameof(Pages))]
    public Task Page_is_sound_on_a_phone(string name, string path) => CheckAsync(name, path, Screen.Phone, Paper.Day);

    [Theory, MemberData(nameof(Pages))]
    public Task Page_is_sound_on_a_desktop(string name, string path) => CheckAsync(name, path, Screen.Desktop, Paper.Day);

    [Theory]
    [InlineData("drawings", "/drawings", Paper.Dawn)]
    [InlineData("drawings", "/drawings", Paper.Noon)]
    [InlineData("morning", "/", Paper.Dawn)]
    [InlineData("morning", "/", Paper.Noon)]
    public async Task Page_is_sound_on_the_other_papers(string name, string path, Paper paper)
    {
        await CheckAsync(name, path, Screen.Phone, paper);
        await CheckAsync(name, path, Screen.Desktop, paper);
    }

    [Fact]
    public async Task Sun_key_changes_the_paper_and_the_phone_remembers_it()
    {
        await using var leaf = await served.OpenAsync(Screen.Phone);
        await leaf.GoAsync("/");
        var sun = leaf.Page.GetByRole(Microsoft.Playwright.AriaRole.Button, new() { Name = "Sun" });

        await sun.ClickAsync();
        await leaf.GoAsync("/stacks");

        await Microsoft.Playwright.Assertions.Expect(sun).ToHaveAttributeAsync("aria-pressed", "true");
        await Microsoft.Playwright.Assertions.Expect(leaf.Page.Locator("html")).ToHaveAttributeAsync("data-theme", "noon");
    }

    [Fact]
    public async Task Unknown_address_says_so_and_offers_a_way_on()
    {
        await using var leaf = await served.OpenAsync(Screen.Phone);

        await leaf.GoAsync("/nothing-here", status: 404);

        await Microsoft.Playwright.Assertions.Expect(leaf.Page.GetByRole(Microsoft.Playwright.AriaRole.Heading, new() { Level = 1 })).ToHaveTextAsync("Not in the book");
    }

    private async Task CheckAsync(string name, string path, Screen screen, Paper paper)
    {
        await using var leaf = await served.OpenAsync(screen, paper);
        await leaf.GoAsync(path);
        await leaf.PictureAsync(paper == Paper.Day ? name : $"{name}-{paper.ToString().ToLowerInvariant()}");
        await leaf.IsSoundAsync();
    }
}
