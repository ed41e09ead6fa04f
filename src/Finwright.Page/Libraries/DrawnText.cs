using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Rendering;

namespace Finwright.Page.Libraries;

/// <summary>A text within a drawing. In markup, the element's own name means something else inside loops and conditions.</summary>
public sealed class DrawnText : ComponentBase
{
    /// <summary>Place across.</summary>
    [Parameter, EditorRequired]
    public string X { get; set; } = "0";

    /// <summary>Place down.</summary>
    [Parameter, EditorRequired]
    public string Y { get; set; } = "0";

    /// <summary>Which end of it stands there: start, middle, end.</summary>
    [Parameter]
    public string Anchor { get; set; } = "start";

    /// <summary>What it says.</summary>
    [Parameter, EditorRequired]
    public string Says { get; set; } = "";

    /// <inheritdoc/>
    protected override void BuildRenderTree(RenderTreeBuilder builder)
    {
        ArgumentNullException.ThrowIfNull(builder);
        builder.OpenElement(0, "text");
        builder.AddAttribute(1, "x", X);
        builder.AddAttribute(2, "y", Y);
        builder.AddAttribute(3, "text-anchor", Anchor);
        builder.AddContent(4, Says);
        builder.CloseElement();
    }
}
