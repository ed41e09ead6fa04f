namespace Finwright.Workshop.Reviewing;

/// <summary>An assumption that a build shows to be off.</summary>
/// <param name="Code">Stable kebab-case name of the rule that found it, for example <c>plastic-in-place-of-resin</c>.</param>
/// <param name="Text">What it is, with numbers, and what to do.</param>
public sealed record ReviewRemark(string Code, string Text);
