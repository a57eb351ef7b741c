using System.ComponentModel;
using System.Diagnostics;
using System.Globalization;
using System.Text.RegularExpressions;

namespace Boardwright.Documents.Tests;

/// <summary>Reads a PDF with programs that did not write it: pdftotext and pdftoppm of poppler-utils, zbarimg of zbar-tools.</summary>
internal static partial class Pdf
{
    public sealed record Word(int Page, string Text, double Left, double Top, double Right, double Bottom);

    public sealed record Page(double Width, double Height);

    public sealed record Raster(int Width, int Height, byte[] Rgb)
    {
        public (byte Red, byte Green, byte Blue) At(int x, int y) => (Rgb[((y * Width) + x) * 3], Rgb[(((y * Width) + x) * 3) + 1], Rgb[(((y * Width) + x) * 3) + 2]);
    }

    /// <summary>The text with single blanks between words, so that a phrase may be sought across line ends.</summary>
    public static string Text(byte[] pdf) => Blanks().Replace(With(pdf, path => Run("pdftotext", "-enc", "UTF-8", "-layout", path, "-")), " ");

    public static IReadOnlyList<Page> Pages(byte[] pdf) => [.. PageTag().Matches(Boxes(pdf)).Select(m => new Page(Number(m, 1), Number(m, 2)))];

    public static IReadOnlyList<Word> Words(byte[] pdf)
    {
        var words = new List<Word>();
        var page = 0;
        foreach (var line in Boxes(pdf).Split('\n'))
        {
            page += PageTag().IsMatch(line) ? 1 : 0;
            if (WordTag().Match(line) is { Success: true } m)
                words.Add(new(page, System.Net.WebUtility.HtmlDecode(m.Groups[5].Value), Number(m, 1), Number(m, 2), Number(m, 3), Number(m, 4)));
        }

        return words;
    }

    public static Raster Draw(byte[] pdf, int page, int dotsPerInch) => With(pdf, path =>
    {
        var stem = path + "-page";
        Run("pdftoppm", "-r", Text(dotsPerInch), "-f", Text(page), "-l", Text(page), "-singlefile", path, stem);
        try
        {
            return Read(File.ReadAllBytes(stem + ".ppm"));
        }
        finally
        {
            File.Delete(stem + ".ppm");
        }
    });

    /// <summary>What a bar-code reader sees on the first page, or nothing when none is installed.</summary>
    public static string? ScanCode(byte[] pdf) => With(pdf, path =>
    {
        Run("pdftoppm", "-r", "150", "-png", "-singlefile", path, path);
        try
        {
            return Run("zbarimg", "--quiet", "--raw", path + ".png").TrimEnd('\n');
        }
        catch (Win32Exception)
        {
            return null;
        }
        finally
        {
            File.Delete(path + ".png");
        }
    });

    private static string Boxes(byte[] pdf) => With(pdf, path => Run("pdftotext", "-enc", "UTF-8", "-bbox", path, "-"));

    private static Raster Read(byte[] ppm)
    {
        var at = 0;
        string Token()
        {
            var start = at;
            while (!char.IsWhiteSpace((char)ppm[at]))
                at++;

            return System.Text.Encoding.ASCII.GetString(ppm, start, at++ - start);
        }

        Assert.Equal("P6", Token());
        var (width, height) = (int.Parse(Token(), CultureInfo.InvariantCulture), int.Parse(Token(), CultureInfo.InvariantCulture));
        Assert.Equal("255", Token());
        return new(width, height, ppm[at..]);
    }

    private static T With<T>(byte[] pdf, Func<string, T> use)
    {
        var path = Path.Combine(Path.GetTempPath(), $"boardwright-{Guid.NewGuid():N}.pdf");
        File.WriteAllBytes(path, pdf);
        try
        {
            return use(path);
        }
        catch (Win32Exception missing) when (missing.Message.Contains("pdfto", StringComparison.Ordinal))
        {
            Assert.Fail("pdftotext and pdftoppm are needed to read the papers back: install poppler-utils (apt-get install poppler-utils, brew install poppler).");
            throw;
        }
        finally
        {
            File.Delete(path);
        }
    }

    private static string Run(string program, params string[] arguments)
    {
        var start = new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true, RedirectStandardError = true };
        using var process = Process.Start(start) ?? throw new InvalidOperationException($"{program} did not start.");
        var error = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return process.ExitCode == 0 ? output : throw new InvalidOperationException($"{program} ended with {process.ExitCode}: {error.Result}");
    }

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static double Number(Match match, int group) => double.Parse(match.Groups[group].Value, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blanks();

    [GeneratedRegex("""<page width="([\d.]+)" height="([\d.]+)">""")]
    private static partial Regex PageTag();

    [GeneratedRegex("""<word xMin="([\d.-]+)" yMin="([\d.-]+)" xMax="([\d.-]+)" yMax="([\d.-]+)">(.*)</word>""")]
    private static partial Regex WordTag();
}
