using System.Collections.Concurrent;
using System.Reflection;
using System.Text.RegularExpressions;
using Markdig;

namespace Boardwright.Web.Methods;

/// <summary>A method page as HTML.</summary>
public sealed record MethodPage(string Title, string Html);

/// <summary>The pages of docs/methods, built into the program, so that a figure's method is one press away without a network.</summary>
public static partial class MethodPages
{
    private const string Prefix = "methods/";
    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder().UsePipeTables().UseAutoIdentifiers().DisableHtml().Build();
    private static readonly ConcurrentDictionary<string, MethodPage?> Read = new(StringComparer.Ordinal);

    public static MethodPage? Find(string name) => Read.GetOrAdd(name, Load);

    private static MethodPage? Load(string name)
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream($"{Prefix}{name}.md");
        if (stream is null)
        {
            return null;
        }

        using var reader = new StreamReader(stream);
        var text = reader.ReadToEnd();
        var first = text.IndexOf('\n', StringComparison.Ordinal);
        var title = (first < 0 ? text : text[..first]).TrimStart('#', ' ').TrimEnd();
        return new(title, Addressed(name, Reachable(Markdown.ToHtml(first < 0 ? "" : text[first..], Pipeline))));
    }

    // Pages name each other, their own parts and their drawings as files beside them; here all addresses start at the root.
    private static string Addressed(string name, string html)
    {
        var folder = name.Contains('/', StringComparison.Ordinal) ? $"/methods/{name[..name.IndexOf('/', StringComparison.Ordinal)]}/" : "/methods/";
        return Drawing().Replace(Above().Replace(Beside().Replace(html, $"href=\"{folder}$1$2\""), "href=\"/methods/$1$2\""), $"src=\"{folder}$1\"").Replace("href=\"#", $"href=\"/methods/{name}#", StringComparison.Ordinal);
    }

    // A table or a formula wider than a phone moves sideways inside its own frame, and a keyboard has to reach the frame to move it.
    // A corner without a heading is no heading.
    private static string Reachable(string html) => NoHeading().Replace(html, "<td></td>")
        .Replace("<table>", "<div class=\"sideways\" role=\"group\" aria-label=\"Table\" tabindex=\"0\"><table>", StringComparison.Ordinal)
        .Replace("</table>", "</table></div>", StringComparison.Ordinal)
        .Replace("<pre>", "<pre tabindex=\"0\">", StringComparison.Ordinal);

    [GeneratedRegex("href=\"([a-z/-]+)\\.md(#[^\"]*)?\"")]
    private static partial Regex Beside();

    [GeneratedRegex("href=\"\\.\\./([a-z-]+)\\.md(#[^\"]*)?\"")]
    private static partial Regex Above();

    [GeneratedRegex("src=\"([a-z-]+\\.svg)\"")]
    private static partial Regex Drawing();

    [GeneratedRegex(@"<th(?: [^>]*)?>\s*</th>")]
    private static partial Regex NoHeading();
}
