using System.Diagnostics;
using System.Text.RegularExpressions;

namespace Boardwright.Browser.Tests;

/// <summary>Reads a PDF with pdftotext of poppler-utils, a program that did not write it.</summary>
internal static partial class PdfText
{
    /// <summary>Its words with single blanks between them.</summary>
    public static async Task<string> OfAsync(string path)
    {
        using var reader = Process.Start(new ProcessStartInfo("pdftotext", ["-enc", "UTF-8", "-layout", path, "-"]) { RedirectStandardOutput = true })!;
        var text = await reader.StandardOutput.ReadToEndAsync();
        await reader.WaitForExitAsync();
        Assert.Equal(0, reader.ExitCode);
        return Blanks().Replace(text, " ");
    }

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blanks();
}
