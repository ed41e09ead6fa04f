using System.Globalization;

namespace Finwright.Workshop.Shelf;

/// <summary>A design on the shelf.</summary>
/// <param name="Id">Its number.</param>
/// <param name="Name">Its name; no other design on the shelf has it.</param>
/// <param name="Tags">Words to find it by.</param>
/// <param name="AddedAt">When it came onto the shelf.</param>
/// <param name="Revisions">How many revisions it has.</param>
/// <param name="Builds">How many builds were made of them.</param>
/// <param name="Latest">The latest revision.</param>
public sealed record ShelvedDesign(long Id, string Name, IReadOnlyList<string> Tags, DateTimeOffset AddedAt, int Revisions, int Builds, Revision Latest);

/// <summary>A design as it was at one time. Never changed.</summary>
/// <param name="Id">Its number in the store.</param>
/// <param name="DesignId">Number of its design.</param>
/// <param name="DesignName">Name of its design.</param>
/// <param name="Number">Its number in the design, from 1.</param>
/// <param name="Parent">The revision that it was made from, as <see cref="Label"/>; empty for a first one.</param>
/// <param name="Hash">SHA-256 of its text, lower-case hexadecimal.</param>
/// <param name="Note">What was tried.</param>
/// <param name="MadeAt">When it was kept.</param>
/// <param name="MadeBy">The program and its version.</param>
public sealed record Revision(long Id, long DesignId, string DesignName, int Number, string Parent, string Hash, string Note, DateTimeOffset MadeAt, string MadeBy)
{
    /// <summary>How it is called: <c>Mudflat 21@3</c>.</summary>
    public string Label => Reference.Of(DesignName, Number);
}

/// <summary>How a person names a design or one of its revisions: the name, or name@number.</summary>
/// <param name="Name">Name of the design.</param>
/// <param name="Number">Number of the revision; null for the latest.</param>
public readonly record struct Reference(string Name, int? Number)
{
    /// <summary>Reads a reference; a name may hold an @ of its own, as long as no number follows it.</summary>
    public static Reference Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        int at = text.LastIndexOf('@');
        return at > 0 && int.TryParse(text.AsSpan(at + 1), NumberStyles.None, CultureInfo.InvariantCulture, out int number)
            ? new(text[..at].Trim(), number)
            : new(text.Trim(), null);
    }

    /// <summary>A reference as text.</summary>
    public static string Of(string name, int number) => string.Create(CultureInfo.InvariantCulture, $"{name}@{number}");
}
