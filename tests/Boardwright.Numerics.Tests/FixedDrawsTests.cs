using Boardwright.Testing;
using CsCheck;

namespace Boardwright.Numerics.Tests;

/// <summary>The draws of a property test are the same at every run, and a failure can be found again.</summary>
public sealed class FixedDrawsTests
{
    [Fact]
    public void Draws_are_the_same_at_every_run() => Assert.Equal(Drawn(), Drawn());

    [Fact]
    public void As_many_are_drawn_as_asked_and_they_differ()
    {
        Assert.Equal(50, Drawn().Count);
        Assert.True(Drawn().Distinct().Count() > 40);
    }

    [Fact]
    public void A_failure_names_its_draw_and_value()
    {
        var seventh = Drawn()[6];
        var error = Assert.Throws<InvalidOperationException>(() => Gen.Int.Always(value => value != seventh, draws: 50));
        Assert.StartsWith($"Draw 7 of 50, {seventh}:", error.Message, StringComparison.Ordinal);
    }

    private static List<int> Drawn()
    {
        var drawn = new List<int>();
        Gen.Int.Always(drawn.Add, draws: 50);
        return drawn;
    }
}
