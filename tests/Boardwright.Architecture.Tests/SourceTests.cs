using System.Text.RegularExpressions;
using Boardwright.Testing;

namespace Boardwright.Architecture.Tests;

/// <summary>What is cited can be found: links, sources of docstrings and of published rows, method pages.</summary>
public partial class SourceTests
{
    private static readonly Lazy<HashSet<string>> SourceIds = new(() =>
        [.. Checkout.Lines("docs/sources.md").Select(line => SourceRow().Match(line)).Where(m => m.Success).Select(m => m.Groups[1].Value)]);

    [Fact]
    public void Every_link_of_a_document_leads_to_a_file() => Ratchet.Holds(
        "link",
        from path in Checkout.Files("", ".md")
        from Match link in Link().Matches(Checkout.Read(path))
        let target = link.Groups[1].Value.Split('#')[0]
        where target.Length > 0 && !target.Contains("://", StringComparison.Ordinal) && !target.StartsWith("mailto:", StringComparison.Ordinal)
        where !Checkout.Has(Path.GetRelativePath(Repository.Root, Path.Combine(Repository.Root, Path.GetDirectoryName(path) ?? "", target)).Replace('\\', '/'))
        select $"{path} -> {target}",
        "a path relative to the document");

    [Fact]
    public void Every_source_of_a_docstring_is_in_the_list_of_sources() => Ratchet.Holds(
        "source-id",
        from path in Checkout.Files("src/", ".cs")
        from Match tag in SourceTag().Matches(Checkout.Read(path))
        where !SourceIds.Value.Contains(tag.Groups[1].Value)
        select $"{path} {tag.Groups[1].Value}",
        "an id of docs/sources.md");

    [Fact]
    public void Every_method_page_of_a_docstring_exists() => Ratchet.Holds(
        "method-page",
        from path in Checkout.Files("src/", ".cs")
        from Match tag in MethodTag().Matches(Checkout.Read(path))
        where !Checkout.Has(tag.Groups[1].Value)
        select tag.Groups[1].Value,
        "a page under docs/methods");

    [Fact]
    public void A_function_that_names_its_source_names_its_method_page() => Ratchet.Holds(
        "method-tag",
        from path in Checkout.Files("src/", ".cs")
        let lines = Checkout.Lines(path)
        from i in Enumerable.Range(0, lines.Length)
        where lines[i].Contains("/// <source ", StringComparison.Ordinal) && !DocComment(lines, i).Contains("<method ", StringComparison.Ordinal)
        where DocumentedMember(lines, i) is { } member && member.Contains("public static", StringComparison.Ordinal) && member.Contains('(', StringComparison.Ordinal)
        select $"{path} {MemberName().Match(DocumentedMember(lines, i)!).Groups[1].Value}",
        "<method page=\"...\"/> beside <source id=\"...\"/>");

    [Fact]
    public void Every_published_row_names_a_known_source_and_a_mark()
    {
        string[] marks = ["P", "M", "C", "I", "computed"];
        var rows = Checkout.Files("tests/published/", ".csv").SelectMany(path => PublishedTable.Rows(Path.GetFileNameWithoutExtension(path)).Select(row => (path, row))).ToList();

        Assert.NotEmpty(rows);
        Ratchet.Holds("published-mark", rows.Where(r => !marks.Contains(r.row.Mark)).Select(r => $"{r.path} {r.row.Id} {r.row.Mark}"), string.Join(", ", marks));
        Ratchet.Holds(
            "published-source",
            rows.Where(r => !Cited(r.row).Any(SourceIds.Value.Contains)).Select(r => $"{r.path} {r.row.Source.Split(' ')[0]}"),
            "first word: an id of docs/sources.md, \"invented\" with mark I, or \"common-practice\" with mark C");
    }

    private static IEnumerable<string> Cited(PublishedRow row) => row switch
    {
        { Mark: "I" } or { Mark: "C" } => [SourceIds.Value.First()],
        _ => row.Source.Split([' ', ',', ';', ':', '('], StringSplitOptions.RemoveEmptyEntries).Take(1),
    };

    private static string DocComment(string[] lines, int inside)
    {
        var (first, last) = (inside, inside);
        while (first > 0 && lines[first - 1].TrimStart().StartsWith("///", StringComparison.Ordinal))
            first--;

        while (last + 1 < lines.Length && lines[last + 1].TrimStart().StartsWith("///", StringComparison.Ordinal))
            last++;

        return string.Join('\n', lines[first..(last + 1)]);
    }

    private static string? DocumentedMember(string[] lines, int inside) =>
        lines.Skip(inside).FirstOrDefault(line => !line.TrimStart().StartsWith("///", StringComparison.Ordinal) && !line.TrimStart().StartsWith('['));

    [GeneratedRegex(@"^\| ([a-z0-9][a-z0-9-]*) \|")]
    private static partial Regex SourceRow();

    [GeneratedRegex(@"\]\(([^)\s]+)\)")]
    private static partial Regex Link();

    [GeneratedRegex("""/// <source id="([^"]+)" """)]
    private static partial Regex SourceTag();

    [GeneratedRegex("""/// <method page="([^"]+)" ?/>""")]
    private static partial Regex MethodTag();

    [GeneratedRegex(@"(\w+)(<[^>]*>)?\(")]
    private static partial Regex MemberName();
}
