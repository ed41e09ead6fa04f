using Finwright.Design;
using Finwright.Geometry.FromDesign;
using Finwright.Geometry.Outlines;
using DesignOutline = Finwright.Design.Outline;

namespace Finwright.Page.Drawings;

/// <summary>Another family for an outline, or another number that gives its size: the fin keeps its depth and its area.</summary>
public static class FamilyChange
{
    /// <summary>The outline as free points; nothing moves.</summary>
    /// <param name="design">The design.</param>
    public static DesignReading ToFree(FinDesign design)
    {
        ArgumentNullException.ThrowIfNull(design);
        List<Finding> findings = [];
        return OutlineFromDesign.AsFreePoints(design.Shape.Outline, findings) is { } free ? With(design, free) : new(null, findings);
    }

    /// <summary>Another family of the same depth and area, with the rake and tip that are its own.</summary>
    /// <param name="design">The design.</param>
    /// <param name="family">The family, or free points.</param>
    public static DesignReading To(FinDesign design, OutlineFamily family)
    {
        ArgumentNullException.ThrowIfNull(design);
        if (family is OutlineFamily.Free)
            return ToFree(design);
        DesignOutline old = design.Shape.Outline;
        if (Planform(old) is not { } planform)
            return With(design, old with { Family = family });
        DesignOutline byArea = new() { Family = family, SpanMm = Math.Round(1e3 * planform.Span, 2), AreaCm2 = Math.Round(1e4 * planform.Area, 2) };
        return With(design, old.RootChordMm is null ? byArea : ByRootChord(byArea));
    }

    /// <summary>The same outline with its size given by its area, or by its root chord.</summary>
    /// <param name="design">The design.</param>
    /// <param name="area">Whether by its area.</param>
    public static DesignReading Sized(FinDesign design, bool area)
    {
        ArgumentNullException.ThrowIfNull(design);
        DesignOutline old = design.Shape.Outline;
        if (Planform(old) is not { } planform)
            return With(design, area ? old with { AreaCm2 = old.AreaCm2 ?? 250, RootChordMm = null } : old with { RootChordMm = old.RootChordMm ?? 120, AreaCm2 = null });
        return With(design, area ? old with { AreaCm2 = Math.Round(1e4 * planform.Area, 2), RootChordMm = null } : ByRootChord(old));
    }

    private static DesignOutline ByRootChord(DesignOutline outline) =>
        OutlineFromDesign.Create(outline, []) is { } made ? outline with { AreaCm2 = null, RootChordMm = Math.Round(1e3 * made.Chord(0), 2) } : outline;

    private static Planform? Planform(DesignOutline outline) => OutlineFromDesign.Create(outline, []) is { } made ? Geometry.Outlines.Planform.Of(made) : null;

    private static DesignReading With(FinDesign design, DesignOutline outline)
    {
        FinDesign changed = design with { Shape = design.Shape with { Outline = outline } };
        return new(changed, DesignValidation.Check(changed));
    }
}
