namespace Finwright.Papers.Words;

/// <summary>A step of the build sheet.</summary>
/// <param name="Text">What to do.</param>
/// <param name="Reason">Why, in a line.</param>
public sealed record StepWords(string Text, string Reason);
