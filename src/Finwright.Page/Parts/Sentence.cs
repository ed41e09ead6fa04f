using System.Globalization;
using Finwright.Page.Words;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Rendering;

namespace Finwright.Page.Parts;

/// <summary>A sentence with its numbers set off: "{0} deep" in words, the number in the colour of water.</summary>
public sealed class Sentence : ComponentBase
{
    /// <summary>The sentence in English, with places {0}, {1}, …</summary>
    [Parameter, EditorRequired]
    public string Text { get; set; } = "";

    /// <summary>What goes there, as the reader wants it.</summary>
    [Parameter]
    public IReadOnlyList<string> Values { get; set; } = [];

    /// <summary>The reader's words.</summary>
    [Inject]
    public Reader T { get; set; } = default!;

    /// <inheritdoc/>
    protected override void BuildRenderTree(RenderTreeBuilder builder)
    {
        ArgumentNullException.ThrowIfNull(builder);
        string text = T[Text];
        int from = 0;
        while (from < text.Length)
        {
            int open = text.IndexOf('{', from), close = open < 0 ? -1 : text.IndexOf('}', open);
            if (close < 0 || !int.TryParse(text.AsSpan(open + 1, close - open - 1), NumberStyles.None, CultureInfo.InvariantCulture, out int value) || value >= Values.Count)
                break;
            builder.AddContent(0, text[from..open]);
            builder.OpenElement(1, "em");
            builder.AddContent(2, Values[value]);
            builder.CloseElement();
            from = close + 1;
        }

        builder.AddContent(3, text[from..] + " ");
    }
}
