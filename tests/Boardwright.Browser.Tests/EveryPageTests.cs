using Microsoft.Playwright;

namespace Boardwright.Browser.Tests;

/// <summary>Every page at one size: it answers, is accessible, fits, and the browser has nothing to complain of. A class a size, so that two pages are looked at side by side.</summary>
public abstract class EveryPageTests(ServedProgram served, Screen screen)
{
    [Theory, MemberData(nameof(Addresses.All), MemberType = typeof(Addresses))]
    public Task Page_is_sound(string name, string path) => CheckAsync(name, path, Paper.Day);

    [Theory, MemberData(nameof(Addresses.OnEveryPaper), MemberType = typeof(Addresses))]
    public async Task Page_is_sound_on_the_other_papers(string name, string path)
    {
        await CheckAsync(name, path, Paper.Dawn);
        await CheckAsync(name, path, Paper.Noon);
    }

    [Fact]
    public async Task Unknown_address_says_so_and_offers_a_way_on()
    {
        await using var leaf = await served.LookAsync(screen);

        await leaf.GoAsync("/nothing-here", status: 404);

        await Assertions.Expect(leaf.Page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToHaveTextAsync("Not in the book");
        await leaf.PictureAsync("not-there");
        await leaf.IsSoundAsync();
    }

    protected async Task CheckAsync(string name, string path, Paper paper)
    {
        await using var leaf = await served.LookAsync(screen, paper);
        await leaf.GoAsync(path);
        await leaf.PictureAsync(paper == Paper.Day ? name : $"{name}-{paper.ToString().ToLowerInvariant()}");
        await leaf.IsSoundAsync();
    }
}
