namespace Boardwright.Yard.UseCases;

/// <summary>What a person calls the thing a refusal is about: names of the book's own fields are told in words.</summary>
public static class FieldWords
{
    /// <summary>"weight_g" is "weight"; what is in words already stays.</summary>
    public static string Of(string what)
    {
        ArgumentNullException.ThrowIfNull(what);
        return what.Length > 0 && what.Contains('_', StringComparison.Ordinal) && what.All(letter => letter is '_' or (>= 'a' and <= 'z') or (>= '0' and <= '9')) ? EntryUnits.Label(what) : what;
    }
}
