using Finwright.Design;
using Finwright.Workshop.Library;

namespace Finwright.Page.Libraries;

/// <summary>What a design holds that a library could keep.</summary>
public static class PartsOfDesign
{
    /// <summary>The things of a kind within a design.</summary>
    /// <param name="kind">The kind.</param>
    /// <param name="design">The design.</param>
    /// <param name="note">Where they come from.</param>
    /// <returns>One for parts of the design itself; those materials and resins that the design carries along whole, if any.</returns>
    public static IReadOnlyList<LibraryContent> Of(LibraryKind kind, FinDesign design, string note)
    {
        ArgumentNullException.ThrowIfNull(design);
        return kind switch
        {
            LibraryKind.Material => [.. new[] { design.Materials.Printed, design.Materials.Resin, design.Materials.Rod, design.Materials.Bolt, design.Materials.Sheet }.SelectMany(choice => Read(kind, choice.Content))],
            LibraryKind.Resin => Read(kind, design.Pour.System.Content),
            _ => [DesignPart.Of(kind, "", note, design)],
        };
    }

    private static IReadOnlyList<LibraryContent> Read(LibraryKind kind, string? text) => text is null || LibraryFile.Read(kind, text).Content is not { } content ? [] : [content];
}
