using System.Collections.Concurrent;
using System.Diagnostics;
using System.Text;
using System.Text.RegularExpressions;
using Microsoft.Playwright;

[assembly: AssemblyFixture(typeof(Boardwright.Browser.Tests.ServedProgram))]

namespace Boardwright.Browser.Tests;

/// <summary>The real program, serving the demonstration yard of 2 November 2026 from a new folder on a free port, and one browser for all tests.</summary>
public sealed partial class ServedProgram : IAsyncLifetime
{
    private static readonly TimeSpan StartsWithin = TimeSpan.FromSeconds(120);

    private const double PlanWork = 0.1;

    private readonly string data = Directory.CreateTempSubdirectory("boardwright-browser-").FullName;
    private readonly StringBuilder said = new();
    private readonly ConcurrentDictionary<(Screen Screen, Paper Paper), Lazy<Task<IPage>>> shared = new();
    private Process? program;
    private IPlaywright? playwright;
    private IBrowser? browser;

    /// <summary>Where it serves, without a closing slash.</summary>
    public string Address { get; private set; } = "";

    public async ValueTask InitializeAsync()
    {
        Address = await StartAsync();
        playwright = await Playwright.CreateAsync();
        browser = await Chromium.LaunchAsync(playwright);
    }

    public async ValueTask DisposeAsync()
    {
        if (browser is not null)
        {
            await browser.DisposeAsync();
        }

        playwright?.Dispose();
        if (program is { HasExited: false })
        {
            program.Kill(entireProcessTree: true);
            await program.WaitForExitAsync();
        }

        program?.Dispose();
        Directory.Delete(data, recursive: true);
    }

    /// <summary>A phone or a desktop of its own, on the paper asked for.</summary>
    public async Task<Leaf> OpenAsync(Screen screen, Paper paper = Paper.Day) => new(await (await DeviceAsync(screen, paper)).NewPageAsync(), screen, isAlone: true);

    /// <summary>An address only to be looked at: all of one size and paper are opened one after the other on one page, whose device remembers nobody.</summary>
    /// <remarks>A page of its own for each would start a process for each: measured, seven tenths of the work of looking.</remarks>
    public async Task<Leaf> LookAsync(Screen screen, Paper paper = Paper.Day)
    {
        var page = await shared.GetOrAdd((screen, paper), key => new(async () => await (await DeviceAsync(key.Screen, key.Paper)).NewPageAsync())).Value;
        await page.Context.ClearCookiesAsync();
        return new(page, screen, isAlone: false);
    }

    private async Task<IBrowserContext> DeviceAsync(Screen screen, Paper paper)
    {
        ArgumentNullException.ThrowIfNull(screen);
        var context = await browser!.NewContextAsync(new()
        {
            BaseURL = Address,
            ViewportSize = new() { Width = screen.Width, Height = screen.Height },
            HasTouch = screen.IsPhone,
            ColorScheme = paper == Paper.Dawn ? ColorScheme.Dark : ColorScheme.Light,
            ReducedMotion = ReducedMotion.Reduce,
        });
        if (paper == Paper.Noon)
        {
            await context.AddInitScriptAsync("localStorage.setItem('boardwright-paper', 'noon')");
        }

        return context;
    }

    private async Task<string> StartAsync()
    {
        var address = new TaskCompletionSource<string>(TaskCreationOptions.RunContinuationsAsynchronously);
        program = new Process { StartInfo = Demonstration.Serve(data, PlanWork), EnableRaisingEvents = true };
        program.OutputDataReceived += (_, line) => Hear(line.Data, address);
        program.ErrorDataReceived += (_, line) => Hear(line.Data, address);
        program.Exited += (_, _) => address.TrySetException(new InvalidOperationException($"The program ended before it served. It said:\n{Said()}"));
        program.Start();
        program.BeginOutputReadLine();
        program.BeginErrorReadLine();
        try
        {
            return await address.Task.WaitAsync(StartsWithin);
        }
        catch (TimeoutException)
        {
            throw new InvalidOperationException($"The program printed no address within {StartsWithin.TotalSeconds:0} s. It said:\n{Said()}");
        }
    }

    private void Hear(string? line, TaskCompletionSource<string> address)
    {
        lock (said)
        {
            said.AppendLine(line);
        }

        if (line is not null && AddressPattern().Match(line) is { Success: true } match)
        {
            address.TrySetResult(match.Value);
        }
    }

    private string Said()
    {
        lock (said)
        {
            return said.ToString();
        }
    }

    [GeneratedRegex(@"http://(127\.0\.0\.1|localhost|\[::1\]):[1-9][0-9]*")]
    private static partial Regex AddressPattern();
}
