using Boardwright.Web.Pages;
using Boardwright.Web.Drawings;
using Boardwright.Web.Tests.Drawings;

namespace Boardwright.Web.Tests.Pages;

/// <summary>Blade heights stand in the mill's own steps, in the list as in the drawing.</summary>
public sealed class MillScaleTests
{
    [Theory]
    [InlineData(452.4, 0.0625, false, "17 13/16 in")]
    [InlineData(452.4, 0.25, false, "17 3/4 in")]
    [InlineData(25.4, 0.0625, false, "1 in")]
    [InlineData(12.7, 0.015625, false, "1/2 in")]
    [InlineData(452.4, 0.0625, true, "452 mm")]
    public void A_height_is_told_as_the_blade_is_set(double millimetres, double step, bool metric, string told) => Assert.Equal(told, new MillScale(step, metric).Height(millimetres));

    [Fact]
    public async Task The_drawing_names_its_unit_and_keeps_a_long_height_within_its_edge()
    {
        var log = new LogEndDrawing("L-1", "white oak", 20, 20) { Cuts = [new("A", 3, "17 13/16")], HeightUnit = "millimetres" };
        foreach (var (width, size) in new[] { (328.0, 13.0), (620.0, 16.5) })
        {
            var html = await Rendered.Html<LogEndFace>(("Of", log), ("Width", width));
            var at = System.Text.RegularExpressions.Regex.Match(html, "<text[^>]* x=\"([0-9.]+)\"[^>]*>17 13/16<");

            Assert.Contains("Blade heights above the bed in millimetres: A 17 13/16.", html, StringComparison.Ordinal);
            Assert.True(at.Success, html);
            Assert.InRange(double.Parse(at.Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture) + (8 * size * .5), 0.0, width);
        }
    }
}
