using System.Diagnostics;
using System.Globalization;
using Boardwright.Testing;

namespace Boardwright.Browser.Tests;

/// <summary>The real program on the demonstration yard of 2 November 2026.</summary>
internal static class Demonstration
{
    /// <summary>How to start it on a free port.</summary>
    /// <param name="data">Folder of its book.</param>
    /// <param name="planWork">Work put into a plan, of the usual: the same share makes the same plan, and a test has no use for the last day of lateness.</param>
    public static ProcessStartInfo Serve(string data, double planWork)
    {
        var program = Repository.PathOf("src", "Boardwright.Cli", "bin", AppContext.BaseDirectory.Contains("Release", StringComparison.Ordinal) ? "Release" : "Debug", "net10.0", "boardwright.dll");
        return new("dotnet", [program, "serve", "--port", "0", "--data", data, "--demo", Repository.PathOf("demo"), "--today", "2026-11-02", "--plan-work", planWork.ToString(CultureInfo.InvariantCulture)])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
    }
}
