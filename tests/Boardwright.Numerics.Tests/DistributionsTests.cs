using Boardwright.Testing;
using CsCheck;

namespace Boardwright.Numerics.Tests;

public sealed class DistributionsTests
{
    public static IEnumerable<object[]> Rows => PublishedTable.Theory("distributions");

    [Theory, MemberData(nameof(Rows))]
    public void A_distribution_agrees_with_its_printed_table(PublishedRow row) => Assert.InRange(
        row.Quantity switch
        {
            "normal_quantile" => Distributions.NormalQuantile(row["probability"]),
            "normal_probability" => Distributions.NormalProbability(row["z"]),
            "student_quantile" => Distributions.StudentQuantile(row["probability"], row["degrees_of_freedom"]),
            _ => throw new InvalidOperationException(row.Quantity),
        },
        row.Low,
        row.High);

    [Fact]
    public void The_table_would_notice_a_one_percent_error() => Assert.All(
        PublishedTable.Rows("distributions"),
        row => Assert.True(Math.Abs(row.ExpectedNumber) * 0.01 > row.Tolerance || row.ExpectedNumber == 0.0));

    [Fact]
    public void A_quantile_is_the_inverse_of_the_probability() => Gen.Double[0.0001, 0.9999].Always(
        probability => Assert.Equal(probability, Distributions.NormalProbability(Distributions.NormalQuantile(probability)), 1e-9),
        draws: 1000);

    [Fact]
    public void Student_is_symmetric_wider_than_normal_and_becomes_it() => Gen.Select(Gen.Double[0.51, 0.999], Gen.Int[1, 200]).Always(
        (probability, degrees) =>
        {
            var student = Distributions.StudentQuantile(probability, degrees);
            Assert.Equal(-student, Distributions.StudentQuantile(1.0 - probability, degrees), 1e-6 * student);
            Assert.True(student > Distributions.NormalQuantile(probability));
            Assert.Equal(Distributions.NormalQuantile(probability), Distributions.StudentQuantile(probability, 1e7), 1e-4);
        },
        draws: 300);
}
