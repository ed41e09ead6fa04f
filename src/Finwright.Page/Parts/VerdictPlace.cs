using Finwright.Assessment.Verdicts;

namespace Finwright.Page.Parts;

/// <summary>Where in the design a verdict leads: the field that is changed first when it fails.</summary>
public static class VerdictPlace
{
    /// <summary>The place, such as <c>$.shape.outline.span_mm</c>.</summary>
    /// <param name="verdict">The verdict.</param>
    public static string Of(Verdict verdict)
    {
        ArgumentNullException.ThrowIfNull(verdict);
        return verdict.Code switch
        {
            "draught" => "$.shape.outline.span_mm",
            _ => "$.shape.outline.family",
        };
    }
}
