using System.Reflection;

namespace Boardwright.Yard.Tests.Scenario;

public sealed class AllAnswersTests
{
    [Fact]
    public void Each_expected_answer_of_the_demonstration_has_one_test()
    {
        var answered = typeof(AllAnswersTests).Assembly.GetTypes().SelectMany(type => type.GetMethods(BindingFlags.Public | BindingFlags.Instance))
            .Select(method => method.Name).Where(name => name.Length > 5 && name.StartsWith("X_", StringComparison.Ordinal)).Select(name => name[2..4]).Order(StringComparer.Ordinal);

        Assert.Equal(Enumerable.Range(1, 31).Select(number => $"{number:00}"), answered);
    }
}
