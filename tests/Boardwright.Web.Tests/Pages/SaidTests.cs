using Boardwright.Web.Components;

namespace Boardwright.Web.Tests.Pages;

/// <summary>Tags in a sentence are kept whole; the sentence stays as it was.</summary>
public sealed class SaidTests
{
    [Theory]
    [InlineData("Put S-06 behind O-303: the wood may fall short.", new[] { "Put ", "S-06", " behind ", "O-303", ": the wood may fall short." })]
    [InlineData("L-001", new[] { "L-001" })]
    [InlineData("a 7-day week, 4-foot logs", new[] { "a 7-day week, 4-foot logs" })]
    [InlineData(null, new string[0])]
    public void Tags_stand_apart_and_nothing_is_lost(string? words, string[] parts)
    {
        Assert.Equal(parts, Said.Parts(words));
        Assert.Equal(words ?? "", string.Concat(Said.Parts(words)));
    }
}
