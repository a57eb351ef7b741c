using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Components;

namespace Boardwright.Web.Components;

public partial class Said
{
    [Parameter, EditorRequired] public required string? Words { get; set; }

    /// <summary>Words and tags in their order, nothing left out.</summary>
    public static IReadOnlyList<string> Parts(string? words) => [.. Tag().Split(words ?? "").Where(part => part.Length > 0)];

    private static bool IsTag(string part) => Tag().Match(part) is { Success: true, Length: var length } && length == part.Length;

    [GeneratedRegex(@"(\b[A-Z]{1,2}-\d+\b)", RegexOptions.CultureInvariant)]
    private static partial Regex Tag();
}
