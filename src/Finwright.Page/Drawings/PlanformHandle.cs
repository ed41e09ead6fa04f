using Finwright.Geometry;

namespace Finwright.Page.Drawings;

/// <summary>What a handle of the planform moves.</summary>
public enum HandleKind
{
    /// <summary>Depth of the tip.</summary>
    Span,

    /// <summary>Chord at the root, or the area where that is what the design gives.</summary>
    RootChord,

    /// <summary>Rake.</summary>
    Rake,

    /// <summary>Chord near the tip.</summary>
    TipChord,

    /// <summary>A free point of the leading edge.</summary>
    LeadingPoint,

    /// <summary>A free point of the trailing edge.</summary>
    TrailingPoint,

    /// <summary>The free point in which both edges meet.</summary>
    MeetingPoint,

    /// <summary>A section's place along the span.</summary>
    Section,
}

/// <summary>Ways in which a handle can go.</summary>
public enum HandleWay
{
    /// <summary>Fore and aft.</summary>
    Across,

    /// <summary>Up and down.</summary>
    Down,

    /// <summary>Anywhere.</summary>
    Free,
}

/// <summary>A place of the planform that the hand can move.</summary>
/// <param name="Kind">What it moves.</param>
/// <param name="Index">Number of the point or section, from 0; 0 where there is only one.</param>
/// <param name="Place">The place in the design file that changes.</param>
/// <param name="At">Where it lies in the drawing: x aft of the line from which the design file counts, y depth; mm.</param>
/// <param name="Way">Where it can go.</param>
public sealed record PlanformHandle(HandleKind Kind, int Index, string Place, Point2 At, HandleWay Way)
{
    /// <summary>Its name on the page.</summary>
    public string Id => $"{Kind.ToString().ToLowerInvariant()}-{Index}";
}
