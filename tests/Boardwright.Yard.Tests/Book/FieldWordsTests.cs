using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Book;

public sealed class FieldWordsTests
{
    [Theory]
    [InlineData("raw_pct", "meter showed")]
    [InlineData("weight_g", "weight")]
    [InlineData("large_end_mm", "large end")]
    [InlineData("stack", "stack")]
    [InlineData("Dry bulb", "Dry bulb")]
    [InlineData("", "")]
    public void Fields_of_the_book_are_told_in_words(string what, string words) => Assert.Equal(words, FieldWords.Of(what));
}
