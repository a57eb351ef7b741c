using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Rendering;

namespace Boardwright.Web.Drawings;

/// <summary>Text in a drawing. (The markup language keeps the tag name "text" for itself, so it is written here.)</summary>
public sealed class Words : ComponentBase
{
    [Parameter, EditorRequired] public double X { get; set; }

    [Parameter, EditorRequired] public double Y { get; set; }

    /// <summary>Height in drawing units; at least 12 where a drawing is shown one to one on a phone.</summary>
    [Parameter] public double Size { get; set; } = 13;

    /// <summary>start, middle or end.</summary>
    [Parameter] public string? Anchor { get; set; }

    /// <summary>Any of: strong, second, crayon, warn, paper, halo, halo-sap, passed (a press goes to what lies under it).</summary>
    [Parameter] public string? Class { get; set; }

    [Parameter, EditorRequired] public required string Text { get; set; }

    protected override void BuildRenderTree(RenderTreeBuilder builder)
    {
        ArgumentNullException.ThrowIfNull(builder);
        builder.OpenElement(0, "text");
        builder.AddAttribute(1, "x", Svg.N(X));
        builder.AddAttribute(2, "y", Svg.N(Y));
        builder.AddAttribute(3, "font-size", Svg.N(Size));
        builder.AddAttribute(4, "text-anchor", Anchor);
        builder.AddAttribute(5, "class", Class);
        builder.AddContent(6, Text);
        builder.CloseElement();
    }
}
