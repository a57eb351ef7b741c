using System.Globalization;
using Boardwright.Testing;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Boardwright.Browser.Tests;

/// <summary>One open page, with the checks every page has to pass.</summary>
public sealed class Leaf : IAsyncDisposable
{
    private readonly Screen screen;
    private readonly List<string> complaints = [];

    public Leaf(IPage page, Screen screen)
    {
        Page = page ?? throw new ArgumentNullException(nameof(page));
        this.screen = screen;
        page.Console += (_, message) =>
        {
            if (message.Type is "error" or "warning")
            {
                complaints.Add(message.Text);
            }
        };
        page.PageError += (_, error) => complaints.Add(error);
        page.RequestFailed += (_, request) => complaints.Add($"not loaded: {request.Url}");
        page.Response += (_, response) =>
        {
            if (response.Status >= 400 && response.Request.ResourceType != "document")
            {
                complaints.Add($"{response.Status} {response.Url}");
            }
        };
    }

    public IPage Page { get; }

    public async ValueTask DisposeAsync() => await Page.Context.CloseAsync();

    /// <summary>Opens an address of the book and waits until it and its font are there.</summary>
    public async Task GoAsync(string path, int status = 200)
    {
        var response = await Page.GotoAsync(path);
        Assert.Equal(status, response!.Status);
        await Page.EvaluateAsync("() => document.fonts.ready");
    }

    /// <summary>No accessibility violation, nothing wider than the screen, no complaint of the browser.</summary>
    public async Task IsSoundAsync()
    {
        var axe = await Page.RunAxe();
        Assert.Empty(axe.Violations.Select(violation => $"{violation.Id} ({violation.Impact}): {violation.Help}: {string.Join(" | ", violation.Nodes.Take(3).Select(node => node.Html))}"));
        Assert.Empty(await TooWideAsync());
        Assert.Empty(complaints);
    }

    /// <summary>Writes the whole page as a picture to the ignored folder pictures, to be looked at.</summary>
    public async Task PictureAsync(string name)
    {
        var path = Repository.PathOf("pictures", string.Create(CultureInfo.InvariantCulture, $"{name}-{screen.Width}.png"));
        await Page.ScreenshotAsync(new() { Path = path, FullPage = true });
    }

    private Task<string[]> TooWideAsync() => Page.EvaluateAsync<string[]>(
        """
        () => document.documentElement.scrollWidth <= innerWidth ? [] : [...document.querySelectorAll("main *")]
          .filter(part => part.getBoundingClientRect().right > innerWidth + 1 && !part.closest("svg *") && !part.closest(".prose"))
          .slice(0, 5).map(part => `${part.tagName}.${part.className} reaches ${Math.round(part.getBoundingClientRect().right)} of ${innerWidth}`)
          .concat("the page scrolls sideways")
        """);
}
