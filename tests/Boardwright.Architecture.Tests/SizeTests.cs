using System.Text.RegularExpressions;

namespace Boardwright.Architecture.Tests;

/// <summary>Small files, small functions: what does not fit a screen is not read.</summary>
public partial class SizeTests
{
    private const int FileLinesMax = 400;
    private const int FunctionLinesMax = 70;

    [Fact]
    public void No_file_is_longer_than_400_lines() => Ratchet.Holds(
        "file-length",
        Code().Where(path => Checkout.Lines(path).Length > FileLinesMax),
        $"{FileLinesMax} lines a file; aim at 200");

    [Fact]
    public void No_function_is_longer_than_70_lines() => Ratchet.Holds(
        "function-length",
        Code().SelectMany(path => LongFunctions(path, Checkout.Lines(path))),
        $"{FunctionLinesMax} lines a function; aim at 40");

    [Fact]
    public void A_long_function_would_be_seen()
    {
        string[] code = ["    private void Long(int x)", "    {", .. Enumerable.Repeat("        x++;", FunctionLinesMax + 1), "    }"];

        Assert.Equal(["file.cs Long"], LongFunctions("file.cs", code));
    }

    /// <summary>Migrations and their snapshots are written by a program.</summary>
    private static IEnumerable<string> Code() => Checkout.Files("", ".cs").Where(path => !path.Contains("/Migrations/", StringComparison.Ordinal));

    /// <summary>By the house's layout: a signature, a brace alone on a line of the same depth, and its partner at that depth.</summary>
    private static IEnumerable<string> LongFunctions(string path, string[] lines)
    {
        for (var i = 1; i < lines.Length; i++)
        {
            var depth = lines[i].Length - lines[i].TrimStart().Length;
            if (lines[i].Trim() != "{" || depth == 0 || Name(lines, i) is not { } name)
                continue;

            var end = Array.FindIndex(lines, i + 1, line => line.Length >= depth + 1 && line[depth] == '}' && line[..depth].Trim().Length == 0);
            if (end - i - 1 > FunctionLinesMax)
                yield return $"{path} {name}";
        }
    }

    private static string? Name(string[] lines, int brace)
    {
        var line = lines[brace - 1].Trim();
        return line.EndsWith(')') && Signature().Match(line) is { Success: true } m && !Statement().IsMatch(line) ? m.Groups[1].Value : null;
    }

    [GeneratedRegex(@"(\w+)(<[^>]*>)?\([^=]*\)$")]
    private static partial Regex Signature();

    [GeneratedRegex(@"^(if|for|foreach|while|switch|using|lock|catch|else|return|var)\b|\b(class|record|struct)\b")]
    private static partial Regex Statement();
}
