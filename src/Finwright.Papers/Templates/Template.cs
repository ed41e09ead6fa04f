using Finwright.Papers.Drawings;

namespace Finwright.Papers.Templates;

/// <summary>A template for the bench.</summary>
/// <param name="Name">Its name for files: lower-case letters, digits and "-".</param>
/// <param name="Title">Its name for people.</param>
/// <param name="What">What it is for and how it is used, in a line or two.</param>
/// <param name="Drawing">The drawing in true size, with its title and a line to check the print by; its box begins at the origin.</param>
public sealed record Template(string Name, string Title, string What, Drawing Drawing);
