namespace Finwright.Design;

/// <summary>How much a finding matters.</summary>
public enum Severity
{
    /// <summary>Worth knowing; the fin can be made.</summary>
    Note,

    /// <summary>The fin can be made, but something is close to its limit.</summary>
    Caution,

    /// <summary>The fin cannot be made as described.</summary>
    Error,
}

/// <summary>
/// One thing found in a design: what, where, why it matters and what to do. Findings are collected, never thrown,
/// so that a maker sees all of them at once.
/// </summary>
/// <param name="Code">Stable kebab-case name of the check, for example <c>rod-outside-skin</c>.</param>
/// <param name="Severity">How much it matters.</param>
/// <param name="Path">JSON path in the design file, for example <c>$.hardware.carbon_rods[1].to_depth_mm</c>.</param>
/// <param name="Message">What is wrong and why, in one or two sentences with numbers and units.</param>
/// <param name="Remedy">What to do, in one sentence.</param>
public sealed record Finding(string Code, Severity Severity, string Path, string Message, string Remedy)
{
    /// <summary>Line in the design file, from 1: that of the value, or of the group in which it is missing; null when the file has neither, or the design was not read from text.</summary>
    public int? Line { get; init; }

    /// <summary>The value found, as text with its unit; null when there is none to show.</summary>
    public string? Value { get; init; }

    /// <summary>The limit it broke, as text with its unit; null when there is none to show.</summary>
    public string? Limit { get; init; }

    /// <summary>True when the fin cannot be made as described.</summary>
    public bool IsError => Severity == Severity.Error;
}
