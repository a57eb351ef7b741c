using Microsoft.Playwright;

namespace Boardwright.Browser.Tests;

/// <summary>The browser of this machine; nothing is downloaded.</summary>
public static class Chromium
{
    private static readonly string[] Places =
    [
        "/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome", "/Applications/Chromium.app/Contents/MacOS/Chromium",
        @"C:\Program Files\Google\Chrome\Application\chrome.exe", @"C:\Program Files (x86)\Microsoft\Edge\Application\msedge.exe",
    ];

    /// <summary>Starts it.</summary>
    /// <exception cref="InvalidOperationException">No browser; the message says what to install and where it was looked for.</exception>
    public static Task<IBrowser> LaunchAsync(IPlaywright playwright)
    {
        ArgumentNullException.ThrowIfNull(playwright);
        return playwright.Chromium.LaunchAsync(new()
        {
            ExecutablePath = Find(),
            Args = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"],
        });
    }

    private static string Find()
    {
        var named = Environment.GetEnvironmentVariable("BOARDWRIGHT_BROWSER");
        return (named is null ? Places : [named]).FirstOrDefault(File.Exists) ?? throw new InvalidOperationException(
            $"The browser tests need Chromium. Install it (Debian: apt-get install chromium) or name it in BOARDWRIGHT_BROWSER. Looked for: {string.Join(", ", named is null ? Places : [named])}.");
    }
}
