using Finwright.Design;
using Finwright.Geometry.Blades;
using Finwright.Workshop.Learning;
using Finwright.Workshop.Reviewing;

namespace Finwright.Workshop.Comparing;

/// <summary>What is compared.</summary>
public enum ComparedKind
{
    /// <summary>A revision on the shelf.</summary>
    Revision,

    /// <summary>A build.</summary>
    Build,

    /// <summary>A design file.</summary>
    File,
}

/// <summary>One of two fins that are compared.</summary>
public sealed record ComparedSide
{
    /// <summary>What it is.</summary>
    public required ComparedKind Kind { get; init; }

    /// <summary>How a person calls it: <c>Mudflat 21@3</c>, the name of a build, or of a file.</summary>
    public required string Label { get; init; }

    /// <summary>The design, with the files that it names taken in.</summary>
    public required FinDesign Design { get; init; }

    /// <summary>Its blade; null when it could not be drawn.</summary>
    public required Blade? Blade { get; init; }

    /// <summary>Its results; of a build, with what was learned of its batches.</summary>
    public required FinResults Results { get; init; }

    /// <summary>The review of a build; null for a design.</summary>
    public BuildReview? Review { get; init; }

    /// <summary>What was learned that went into the results; nothing for a design.</summary>
    public Learned Used { get; init; } = Learned.Nothing;
}
