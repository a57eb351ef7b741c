using System.Collections.Concurrent;
using System.Reflection;
using Markdig;

namespace Boardwright.Web.Methods;

/// <summary>A method page as HTML.</summary>
public sealed record MethodPage(string Title, string Html);

/// <summary>The pages of docs/methods, built into the program, so that a figure's method is one press away without a network.</summary>
public static class MethodPages
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
        return new(title, Markdown.ToHtml(first < 0 ? "" : text[first..], Pipeline));
    }
}
