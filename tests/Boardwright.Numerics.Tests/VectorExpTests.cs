using System.Numerics;

namespace Boardwright.Numerics.Tests;

public class VectorExpTests
{
    [Fact]
    public void Decay_agrees_with_the_exponential_over_its_range()
    {
        for (var x = VectorExp.Lowest; x <= 0.0; x += 0.001)
        {
            Assert.Equal(1.0, VectorExp.Decay(new Vector<double>(x))[0] / Math.Exp(x), 1e-8);
        }
    }

    [Fact]
    public void Every_lane_has_its_own_answer()
    {
        var x = new double[Vector<double>.Count];
        for (var i = 0; i < x.Length; i++)
        {
            x[i] = -0.7 * i;
        }

        var y = VectorExp.Decay(new Vector<double>(x));
        for (var i = 0; i < x.Length; i++)
        {
            Assert.Equal(Math.Exp(x[i]), y[i], 1e-8);
        }
    }
}
