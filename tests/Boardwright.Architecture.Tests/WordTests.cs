namespace Boardwright.Architecture.Tests;

/// <summary>Words that have no place in finished work: promises to do it later, and places outside the project.</summary>
public class WordTests
{
    // Parted, so that this file does not hold them itself.
    private static readonly string[] Banned =
    [
        "TO" + "DO", "FIX" + "ME", "HA" + "CK", "NotImplemented" + "Exception", "tran" + "script of", "api.nuget" + ".org", "registry." + "npmjs", "registry." + "yarnpkg", "pypi" + ".org", "/wo" + "rk/", "/ro" + "ot/", "/ho" + "me/",
    ];

    private static readonly string[] Endings = [".cs", ".razor", ".md", ".csv", ".json", ".csproj", ".props", ".targets", ".ts", ".css", ".yml", ".sh", ".slnx"];

    [Fact]
    public void No_file_holds_a_banned_word() => Ratchet.Holds("banned-word", Offenders(), "none of " + string.Join(", ", Banned));

    private static IEnumerable<string> Offenders() =>
        from path in Checkout.Files("", Endings)
        let lines = Checkout.Lines(path)
        from number in Enumerable.Range(0, lines.Length)
        from word in Banned
        where HoldsWord(lines[number], word)
        select $"{path}:{number + 1} {word}";

    private static bool HoldsWord(string line, string word)
    {
        for (var at = line.IndexOf(word, StringComparison.Ordinal); at >= 0; at = line.IndexOf(word, at + 1, StringComparison.Ordinal))
        {
            var (before, after) = (at == 0 ? ' ' : line[at - 1], at + word.Length == line.Length ? ' ' : line[at + word.Length]);
            if (!char.IsLetterOrDigit(before) && before != '.' && (word.EndsWith('/') || !char.IsLetterOrDigit(after)))
                return true;
        }

        return false;
    }
}
