using Boardwright.Testing;
using CsCheck;

namespace Boardwright.Numerics.Tests;

public sealed class RootTests
{
    [Fact]
    public void A_root_is_found_between_ends_of_other_signs() => Gen.Select(Gen.Double[-5.0, 5.0], Gen.Double[0.01, 3.0]).Always(
        (root, steepness) =>
        {
            var found = Root.Between(x => Math.Sinh(steepness * (x - root)) + (x - root), -10.0, 10.0, 1e-12);
            Assert.Equal(root, found!.Value, 1e-9);
        },
        draws: 500);

    [Fact]
    public void The_cosine_meets_the_line_at_its_known_place() =>
        Assert.Equal(0.739085133215160641655, Root.Between(x => Math.Cos(x) - x, 0.0, 1.0)!.Value, 1e-11);

    [Fact]
    public void A_root_at_an_end_is_found() => Assert.Equal(2.0, Root.Between(x => x - 2.0, 0.0, 2.0)!.Value, 1e-12);

    [Fact]
    public void Ends_of_one_sign_have_no_root_between_them() => Assert.Null(Root.Between(x => x * x + 1.0, -1.0, 1.0));
}
