namespace Finwright.Page.Explaining;

/// <summary>What a number is, how it is computed, how sure it is, and where that comes from. English; the keys of the German texts.</summary>
/// <param name="Name">Its name.</param>
/// <param name="What">What it is and what it means on the water or the bench.</param>
/// <param name="How">How it is computed.</param>
/// <param name="Sure">How sure it is, with figures where there are any.</param>
/// <param name="Source">Author, year; or that there is none.</param>
public sealed record Explanation(string Name, string What, string How, string Sure, string Source);
