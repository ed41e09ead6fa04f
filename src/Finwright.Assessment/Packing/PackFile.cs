namespace Finwright.Assessment.Packing;

/// <summary>One file of a pack.</summary>
/// <param name="Path">Path within the pack, with forward slashes.</param>
/// <param name="Content">The file's bytes.</param>
/// <param name="What">What it is, in a few words, for the list of files.</param>
public sealed record PackFile(string Path, ReadOnlyMemory<byte> Content, string What);
