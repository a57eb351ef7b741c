using System.Globalization;
using System.Text.RegularExpressions;
using Boardwright.Testing;
using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Boardwright.Browser.Tests;

/// <summary>One open page, with the checks every page has to pass.</summary>
public sealed class Leaf : IAsyncDisposable
{
    // All rules run; only what they find is brought back, not the thousands of parts that passed.
    private static readonly AxeRunOptions Findings = new() { ResultTypes = [ResultType.Violations] };

    private readonly Screen screen;
    private readonly bool isAlone;
    private readonly List<string> complaints = [];

    /// <param name="page">The page.</param>
    /// <param name="screen">Its size.</param>
    /// <param name="isAlone">Nobody looks at another address on this page after this: it goes, and what it remembers with it.</param>
    public Leaf(IPage page, Screen screen, bool isAlone)
    {
        Page = page ?? throw new ArgumentNullException(nameof(page));
        (this.screen, this.isAlone) = (screen, isAlone);
        page.Console += Said;
        page.PageError += Threw;
        page.RequestFailed += Failed;
        page.Response += Answered;
    }

    public IPage Page { get; }

    public async ValueTask DisposeAsync()
    {
        Page.Console -= Said;
        Page.PageError -= Threw;
        Page.RequestFailed -= Failed;
        Page.Response -= Answered;
        if (isAlone)
        {
            await Page.Context.CloseAsync();
        }
    }

    /// <summary>Opens an address of the book and waits until it and its font are there.</summary>
    public async Task GoAsync(string path, int status = 200)
    {
        var response = await Page.GotoAsync(path);
        Assert.Equal(status, response!.Status);
        complaints.RemoveAll(complaint => status >= 400 && complaint.Contains($"status of {status}", StringComparison.Ordinal));
        await Page.EvaluateAsync("() => document.fonts.ready");
    }

    /// <summary>Waits until a pressed link or key has brought another address, and it is whole. The page is asked: an event of it may have passed by before anybody listened.</summary>
    public async Task ArrivedAsync(string path)
    {
        await Assertions.Expect(Page).ToHaveURLAsync(new Regex($"{Regex.Escape(path)}$"), new() { Timeout = 30_000 });
        await Page.WaitForFunctionAsync("() => document.readyState === 'complete'");
        await Page.EvaluateAsync("() => document.fonts.ready");
    }

    /// <summary>No accessibility violation, nothing wider than the screen, no complaint of the browser.</summary>
    public async Task IsSoundAsync()
    {
        var axe = await Page.RunAxe(Findings);
        Assert.Empty(axe.Violations.Select(violation => $"{violation.Id} ({violation.Impact}): {violation.Help}: {string.Join(" | ", violation.Nodes.Take(3).Select(node => node.Html))}"));
        Assert.Empty(await TooWideAsync());
        Assert.Empty(complaints);
    }

    /// <summary>Writes the whole page as a picture to the ignored folder pictures, to be looked at.</summary>
    public async Task PictureAsync(string name)
    {
        var path = Repository.PathOf("pictures", string.Create(CultureInfo.InvariantCulture, $"{name}-{screen.Width}.png"));
        await BarAsync("static");   // else it lies across the middle of a long page
        await Page.ScreenshotAsync(new() { Path = path, FullPage = true });
        await BarAsync("");
    }

    private async Task BarAsync(string position) => await Page.EvaluateAsync("position => { const bar = document.querySelector('.thumb'); if (bar) bar.style.position = position; }", position);

    private void Said(object? sender, IConsoleMessage message)
    {
        if (message.Type is "error" or "warning")
        {
            complaints.Add(message.Text);
        }
    }

    private void Threw(object? sender, string error) => complaints.Add(error);

    // What is still on its way when the next address is opened is given up, and nobody misses it.
    private void Failed(object? sender, IRequest request)
    {
        if (request.Failure != "net::ERR_ABORTED")
        {
            complaints.Add($"not loaded: {request.Url}: {request.Failure}");
        }
    }

    private void Answered(object? sender, IResponse response)
    {
        if (response.Status >= 400 && response.Request.ResourceType != "document")
        {
            complaints.Add($"{response.Status} {response.Url}");
        }
    }

    private Task<string[]> TooWideAsync() => Page.EvaluateAsync<string[]>(
        """
        () => document.documentElement.scrollWidth <= innerWidth ? [] : [...document.querySelectorAll("main *")]
          .filter(part => part.getBoundingClientRect().right > innerWidth + 1 && !part.closest("svg *") && !part.closest(".prose"))
          .slice(0, 5).map(part => `${part.tagName}.${part.className} reaches ${Math.round(part.getBoundingClientRect().right)} of ${innerWidth}`)
          .concat("the page scrolls sideways")
        """);
}
