using Finwright.Workshop.Shelf;

namespace Finwright.Workshop.Exchange.Bundles;

/// <summary>A design with its revisions, and what was built of them, as it goes from one workshop to another.</summary>
/// <param name="MadeBy">The program and its version that exported it.</param>
/// <param name="Name">Name of the design.</param>
/// <param name="Tags">Words to find it by.</param>
/// <param name="AddedAt">When it came onto the shelf.</param>
/// <param name="Revisions">The revisions, by number; at least one.</param>
/// <param name="Builds">What was built; null when it is not told.</param>
internal sealed record DesignBundle(string MadeBy, string Name, IReadOnlyList<string> Tags, DateTimeOffset AddedAt, IReadOnlyList<BundledRevision> Revisions, BundledBuilds? Builds);

/// <summary>A revision in a bundle.</summary>
/// <param name="Number">Its number in the design.</param>
/// <param name="Parent">Number of the revision that it was made from, where that is in the bundle too.</param>
/// <param name="MadeFrom">What it was made from as a person names it; empty for a first one.</param>
/// <param name="Hash">SHA-256 of the text, lower-case hexadecimal.</param>
/// <param name="Note">What was tried.</param>
/// <param name="MadeAt">When it was kept.</param>
/// <param name="MadeBy">The program and its version.</param>
/// <param name="Text">The design file, as it was kept.</param>
/// <param name="Picture">A small picture, SVG; null for none.</param>
/// <param name="Results">What was worked out of it; null for nothing.</param>
internal sealed record BundledRevision(int Number, int? Parent, string MadeFrom, string Hash, string Note, DateTimeOffset MadeAt, string MadeBy, string Text, string? Picture, KeptPrediction? Results);
