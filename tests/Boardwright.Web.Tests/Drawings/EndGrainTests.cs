using Boardwright.Web.Drawings;
using Boardwright.Wood;

namespace Boardwright.Web.Tests.Drawings;

/// <summary>Pictures of end grain are drawn from the key's features.</summary>
public sealed class EndGrainTests
{
    [Fact]
    public void Every_mark_lies_in_the_picture_and_no_two_woods_of_different_features_look_the_same()
    {
        var drawings = EndGrain.All.Select(EndGrainDrawing.Of).ToList();

        Assert.All(drawings.SelectMany(one => one.Pores), pore =>
        {
            Assert.InRange(pore.X, -6.0, EndGrainDrawing.Size + 14.0);
            Assert.InRange(pore.Y, -6.0, EndGrainDrawing.Size + 6.0);
        });
        var keys = EndGrain.All.GroupBy(one => (one.Pores, one.LargeRows, one.Latewood, one.Tyloses, one.Rays)).Count();
        Assert.Equal(keys, drawings.Select(one => $"{one.Pores.Count} {one.Pores.Sum(pore => pore.X * pore.Y * pore.Radius):0} {one.Pores.Count(pore => pore.Plugged)} {one.Rays.Sum(ray => ray.Width):0.0} {one.Bands.Count}").Distinct().Count());
    }

    [Fact]
    public void Features_are_seen_in_the_picture()
    {
        Assert.All(Draw("white oak").Pores.Where(pore => pore.Radius > 3.0), pore => Assert.True(pore.Plugged));
        Assert.DoesNotContain(Draw("northern red oak").Pores, pore => pore.Plugged);
        Assert.Contains(Draw("northern red oak").Rays, ray => ray.Width > 4.0);
        Assert.DoesNotContain(Draw("white ash").Rays, ray => ray.Width > 1.0);
        Assert.NotEmpty(Draw("white ash").Bands);
        Assert.DoesNotContain(Draw("sugar maple").Pores, pore => pore.Radius > 3.0);
    }

    [Fact]
    public async Task A_picture_says_in_words_what_it_shows()
    {
        var svg = Rendered.Tags(await Rendered.Html<EndGrainFace>(("Of", Draw("white oak"))), "svg").Single();

        Assert.Contains("white oak", svg["aria-label"], StringComparison.Ordinal);
        Assert.Contains("flames", svg["aria-label"], StringComparison.Ordinal);
    }

    private static EndGrainDrawing Draw(string species) => EndGrainDrawing.Of(EndGrain.All.Single(one => one.Species == species));
}
