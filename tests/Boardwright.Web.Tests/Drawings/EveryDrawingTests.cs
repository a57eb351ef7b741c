using System.Text.RegularExpressions;
using Boardwright.Web.Drawings;

namespace Boardwright.Web.Tests.Drawings;

/// <summary>What every drawing keeps: words for those who do not see it, the tokens' colours only, nothing a strict policy forbids.</summary>
public sealed partial class EveryDrawingTests
{
    private static readonly Task<string> Sheet = Rendered.Html<DrawingSheet>();

    [Fact]
    public async Task Drawing_says_in_words_what_it_shows()
    {
        var drawings = Rendered.Tags(await Sheet, "svg").Where(svg => svg.GetValueOrDefault("aria-hidden") != "true").ToList();

        Assert.True(drawings.Count > 30, $"only {drawings.Count} drawings");
        Assert.Empty(drawings.Where(svg => svg.GetValueOrDefault("role") is not ("img" or "group") || svg.GetValueOrDefault("aria-label", "").Length < 15).Select(svg => string.Join(' ', svg)));
    }

    [Fact]
    public async Task Drawing_takes_its_colours_from_the_tokens_only()
    {
        Assert.Empty(ColourPattern().Matches(await Sheet).Select(match => match.Value));
        Assert.DoesNotContain(" style=", await Sheet);
    }

    [Fact]
    public async Task Drawing_refers_only_to_fills_that_stand_on_the_page()
    {
        var html = await Rendered.Html<WoodPatterns>() + await Sheet;
        var defined = IdPattern().Matches(html).Select(match => match.Groups[1].Value).ToHashSet();
        var used = ReferencePattern().Matches(html).Select(match => match.Groups[1].Value).ToHashSet();

        Assert.Contains("wood-red-oak", used);
        Assert.Empty(used.Except(defined));
    }

    [Fact]
    public async Task Drawing_holds_real_numbers_only() => Assert.DoesNotMatch("NaN|Infinity|∞", await Sheet);

    [Fact]
    public async Task Words_are_at_least_12_px_high_on_a_phone()
    {
        var narrow = NarrowPattern().Matches(await Sheet).Select(match => match.Value).ToList();
        var sizes = narrow.SelectMany(html => Rendered.Tags(html, "text")).Select(text => text.Number("font-size")).ToList();

        Assert.True(sizes.Count > 100, $"only {sizes.Count} words");
        Assert.DoesNotContain(sizes, size => size < 12);
        Assert.All(narrow.SelectMany(html => Rendered.Tags(html, "svg")), svg => Assert.Equal("328", svg["viewBox"].Split(' ')[2]));
    }

    [Fact]
    public async Task Every_species_has_a_pattern_of_its_own()
    {
        var html = await Rendered.Html<WoodPatterns>();
        var tiles = TilePattern().Matches(html).Select(match => (Id: match.Groups[1].Value, Body: match.Groups[2].Value)).ToList();

        Assert.Equal(WoodLook.All.Count + 1, tiles.Count);
        Assert.Equal(tiles.Count, tiles.Select(tile => tile.Body).Distinct().Count());
    }

    [GeneratedRegex("(fill|stroke)=\"(?!url\\(#)[^\"]*\"|=\"#[0-9a-fA-F]{3,8}\"|rgb\\(")]
    private static partial Regex ColourPattern();

    [GeneratedRegex("\\bid=\"([^\"]+)\"")]
    private static partial Regex IdPattern();

    [GeneratedRegex("url\\(#([^)]+)\\)")]
    private static partial Regex ReferencePattern();

    [GeneratedRegex("<div class=\"narrow\">.*?</svg>", RegexOptions.Singleline)]
    private static partial Regex NarrowPattern();

    [GeneratedRegex("<pattern id=\"wood-([^\"]+)\"[^>]*>(.*?)</pattern>", RegexOptions.Singleline)]
    private static partial Regex TilePattern();
}
