namespace Boardwright.Browser.Tests;

/// <summary>Tests that write in the one served book, or compare it before and after, take turns.</summary>
[CollectionDefinition(Name)]
public sealed class WritingTests
{
    public const string Name = "writing in the served book";
}
