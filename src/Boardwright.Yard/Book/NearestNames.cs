namespace Boardwright.Yard.Book;

/// <summary>A short list of names that a mistyped one may have meant.</summary>
internal static class NearestNames
{
    private const int Shown = 5;

    public static string Of(string given, IReadOnlyCollection<string> names)
    {
        var near = names.Count <= Shown
            ? names
            : [.. names.OrderByDescending(name => CommonLetters(given, name)).Take(Shown).Order(StringComparer.Ordinal)];
        return string.Join(", ", near) + (near.Count < names.Count ? $" or {names.Count - near.Count} more" : "");
    }

    // Letters agreeing at the beginning weigh most: tags of one kind begin alike.
    private static int CommonLetters(string left, string right)
    {
        var length = 0;
        while (length < left.Length && length < right.Length && char.ToUpperInvariant(left[length]) == char.ToUpperInvariant(right[length]))
            length++;
        return length;
    }
}
