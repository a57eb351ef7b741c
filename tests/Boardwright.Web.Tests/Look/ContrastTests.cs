using System.Globalization;
using System.Text.RegularExpressions;
using Boardwright.Testing;

namespace Boardwright.Web.Tests.Look;

/// <summary>Contrast of the three papers by the ratio of WCAG 2.2 (relative luminance, success criteria 1.4.3, 1.4.6 and 1.4.11).</summary>
public sealed partial class ContrastTests
{
    private static readonly string Css = File.ReadAllText(Repository.PathOf("src", "Boardwright.Web", "wwwroot", "css", "tokens.css"));

    public static TheoryData<string, string, double> Pairs => new()
    {
        { "ink", "paper", 7 }, { "ink", "leaf", 7 }, { "ink-2", "paper", 7 }, { "paper", "ink", 7 },
        { "crayon", "paper", 4.5 }, { "crayon", "crayon-wash", 4.5 }, { "on-crayon", "crayon", 4.5 },
        { "warn", "paper", 4.5 }, { "warn", "warn-wash", 4.5 }, { "on-warn", "warn", 4.5 }, { "ink", "warn-wash", 7 },
        { "ink", "wood-heart", 4.5 }, { "ink", "wood-sap", 4.5 }, { "grain", "wood-heart", 3 }, { "rule-2", "paper", 3 },
    };

    [Fact]
    public void Ratio_of_black_on_white_is_21() => Assert.Equal(21, Ratio("#000000", "#ffffff"), .001);

    [Theory, MemberData(nameof(Pairs))]
    public void Pair_is_readable_on_every_paper(string front, string back, double least)
    {
        foreach (var paper in new[] { "day", "dawn", "noon" })
        {
            var ratio = Ratio(Colour(paper, front), Colour(paper, back));
            Assert.True(ratio >= least, $"{front} on {back}, {paper}: {ratio:0.0}, wanted {least}");
        }
    }

    [Fact]
    public void Dawn_by_the_phone_is_the_dawn_of_the_theme()
    {
        var blocks = DarkPattern().Matches(Css).Select(match => match.Groups[1].Value).ToList();

        Assert.Single(blocks);
        Assert.Equal(Values(Block("dawn")), Values(blocks[0]));
    }

    private static string Values(string block) => string.Join(';', TokenPattern().Matches(block).Select(match => match.Value));

    private static string Block(string paper) => Regex.Match(Css, $"\\[data-theme=\"{paper}\"\\] \\{{(.*?)\\n\\}}", RegexOptions.Singleline).Groups[1].Value;

    private static string Colour(string paper, string token) => Regex.Match(Block(paper), $"--{token}:(#[0-9a-f]{{6}})").Groups[1].Value;

    private static double Ratio(string one, string other)
    {
        var (a, b) = (Luminance(one), Luminance(other));
        return (Math.Max(a, b) + .05) / (Math.Min(a, b) + .05);
    }

    /// <summary>WCAG 2.2: L = 0.2126 R + 0.7152 G + 0.0722 B over linearised sRGB.</summary>
    private static double Luminance(string hex)
    {
        double Part(int at)
        {
            var value = int.Parse(hex.AsSpan(at, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0;
            return value <= .04045 ? value / 12.92 : Math.Pow((value + .055) / 1.055, 2.4);
        }

        return (.2126 * Part(1)) + (.7152 * Part(3)) + (.0722 * Part(5));
    }

    [GeneratedRegex("--[a-z0-9-]+:[^;]+")]
    private static partial Regex TokenPattern();

    [GeneratedRegex("prefers-color-scheme: dark\\) \\{ :root:not\\(\\[data-theme\\]\\) \\{(.*?)\\n\\} \\}", RegexOptions.Singleline)]
    private static partial Regex DarkPattern();
}
