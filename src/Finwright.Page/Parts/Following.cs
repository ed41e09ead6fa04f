using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Rendering;

namespace Finwright.Page.Parts;

/// <summary>One state of the open design and of what a tab shows of it.</summary>
/// <param name="Number">Counts them.</param>
public sealed record Moment(long Number);

/// <summary>Follows the open design for all parts below it: however many they are, the browser is told of a change once (measured: docs/bench/page-latency.md).</summary>
public sealed class Following : SessionComponent
{
    private long _number;

    /// <summary>The parts.</summary>
    [Parameter, EditorRequired]
    public RenderFragment? ChildContent { get; set; }

    /// <inheritdoc/>
    protected override void BuildRenderTree(RenderTreeBuilder builder)
    {
        builder.OpenComponent<CascadingValue<Moment>>(0);
        builder.AddComponentParameter(1, nameof(CascadingValue<>.Value), new Moment(++_number));
        builder.AddComponentParameter(2, nameof(CascadingValue<>.ChildContent), ChildContent);
        builder.CloseComponent();
    }
}
