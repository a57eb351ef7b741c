using System.Globalization;
using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging.Abstractions;

namespace Boardwright.Web.Tests.Drawings;

/// <summary>A component as the HTML it gives.</summary>
internal static partial class Rendered
{
    public static async Task<string> Html<T>(params (string Name, object? Value)[] parameters)
        where T : IComponent
    {
        await using var services = new ServiceCollection().BuildServiceProvider();
        await using var renderer = new HtmlRenderer(services, NullLoggerFactory.Instance);
        var view = ParameterView.FromDictionary(parameters.ToDictionary(pair => pair.Name, pair => pair.Value));
        return await renderer.Dispatcher.InvokeAsync(async () => (await renderer.RenderComponentAsync<T>(view)).ToHtmlString());
    }

    /// <summary>The tags with this class, each as its attributes.</summary>
    public static List<Dictionary<string, string>> Tags(string html, string tag, string? withClass = null) =>
        [.. Regex.Matches(html, $"<{tag}\\b([^>]*)>").Select(match => Attributes(match.Groups[1].Value))
            .Where(attributes => withClass is null || attributes.GetValueOrDefault("class", "").Split(' ').Contains(withClass))];

    public static double Number(this Dictionary<string, string> attributes, string name) => double.Parse(attributes[name], CultureInfo.InvariantCulture);

    private static Dictionary<string, string> Attributes(string text) =>
        AttributePattern().Matches(text).ToDictionary(match => match.Groups[1].Value, match => match.Groups[2].Value);

    [GeneratedRegex("([\\w-]+)=\"([^\"]*)\"")]
    private static partial Regex AttributePattern();
}
