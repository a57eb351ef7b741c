namespace Boardwright.Web.Pages;

/// <summary>Units that stand beside a field instead of in it.</summary>
internal static class Units
{
    /// <summary>A bare temperature with the unit its field shows: Celsius where that was chosen, else as it is typed.</summary>
    public static string? With(string? text, bool celsius) => celsius && text is { Length: > 0 } && char.IsAsciiDigit(text.Trim()[^1]) ? text.Trim() + "C" : text;
}
