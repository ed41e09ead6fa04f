using Finwright.Design;
using Finwright.Geometry.FromDesign;

namespace Finwright.Workshop.Starting;

/// <summary>A new fin by its few first numbers; what is left out is usual for its family.</summary>
public sealed record NewFin
{
    // Half of the usual tab of a long slot, less its plate screw and the room for a driver.
    private const double BeforePlateScrewMm = 63;

    /// <summary>Name of the fin.</summary>
    public required string Name { get; init; }

    /// <summary>Outline family; not <see cref="OutlineFamily.Free"/>, which has no numbers to start from.</summary>
    public OutlineFamily Family { get; init; } = OutlineFamily.Upright;

    /// <summary>Depth of the tip below the hull, mm.</summary>
    public double? SpanMm { get; init; }

    /// <summary>Area seen from the side, cm²; this or the root chord.</summary>
    public double? AreaCm2 { get; init; }

    /// <summary>Chord at the root, mm; this or the area.</summary>
    public double? RootChordMm { get; init; }

    /// <summary>Rake, degrees.</summary>
    public double? RakeDegrees { get; init; }

    /// <summary>Chord near the tip, per cent of the root's.</summary>
    public double? TipChordPercent { get; init; }

    /// <summary>Thickness ratio at the root, per cent.</summary>
    public double? ThicknessPercent { get; init; }

    /// <summary>Fin box.</summary>
    public BoxKind Box { get; init; } = BoxKind.TwoBoltTapered;

    /// <summary>How blade, base and bolts hold together.</summary>
    public Fixing Fixing { get; init; } = Fixing.BaseOnly;

    /// <summary>The maker's own measurements of the box; only with <see cref="BoxKind.Measured"/>.</summary>
    public MeasuredBox? Measured { get; init; }

    /// <summary>Whether the outline is given as points that can be moved, in place of the family's numbers.</summary>
    public bool AsPoints { get; init; }

    /// <summary>Who sails it, on what, and where.</summary>
    public Brief Brief { get; init; } = new();

    /// <summary>A section that was brought along, with its points, for the whole span; null for the usual one.</summary>
    public ImportedSection? Section { get; init; }

    /// <summary>Draws the design.</summary>
    /// <returns>The design with what is to be said against it; no design when its numbers give no outline.</returns>
    /// <exception cref="ArgumentException">The family has no numbers to start from.</exception>
    public DesignReading Draw()
    {
        if (Family == OutlineFamily.Free)
            throw new InvalidOperationException("A free outline has no numbers to start from.");
        UsualFin usual = UsualFin.Of(Family);
        Outline outline = new()
        {
            Family = Family,
            SpanMm = SpanMm ?? usual.SpanMm,
            RootChordMm = RootChordMm,
            AreaCm2 = RootChordMm is null ? AreaCm2 ?? usual.AreaCm2 : AreaCm2,
            RakeDegrees = RakeDegrees ?? usual.RakeDegrees,
            TipChordPercent = TipChordPercent ?? usual.TipChordPercent,
        };
        // The shallow tab of a long slot has no room for rods: it is one print with its blade. Elsewhere rods hold the blade.
        bool asOne = Fixing == Fixing.BaseOnly && Box == BoxKind.LongSlot;
        FinDesign design = new()
        {
            Name = Name,
            Brief = Brief,
            Shape = new()
            {
                Outline = outline,
                Sections = Sections(usual),
                ImportedSections = Section is null ? [] : [Section],
                Flange = usual.Flange,
            },
            Base = new() { Box = Box, Fixing = Fixing, Printed = asOne ? BasePrinting.AsOne : BasePrinting.Separate, Measured = Measured },
            Hardware = new()
            {
                CarbonRods = Fixing == Fixing.BaseOnly && !asOne ? usual.Rods : [],
                ClampRods = Fixing == Fixing.ClampRods ? UsualFin.ClampRods : [],
            },
            Materials = new() { RootBonded = Fixing == Fixing.BaseOnly && !asOne },
        };
        DesignReading drawn = new(design, DesignValidation.Check(design));
        if (drawn.HasErrors)
            return drawn;
        if (Box == BoxKind.LongSlot)
            design = design with { Base = design.Base with { BladeOffsetMm = SlotOffset(design.Shape) } };
        if (!AsPoints)
            return new(design, drawn.Findings);
        List<Finding> findings = [];
        if (OutlineFromDesign.AsFreePoints(outline, findings) is not { } points)
            return new(null, findings);
        design = design with { Shape = design.Shape with { Outline = points } };
        return new(design, DesignValidation.Check(design));
    }

    private IReadOnlyList<SectionStation> Sections(UsualFin usual)
    {
        if (Section is { } own)
            return [new() { AtPercent = 0, Section = own.Name, ThicknessPercent = ThicknessPercent }, new() { AtPercent = 100, Section = own.Name }];
        double root = ThicknessPercent ?? usual.RootThicknessPercent;
        return [new() { AtPercent = 0, ThicknessPercent = root }, new() { AtPercent = 100, ThicknessPercent = Math.Min(root, usual.TipThicknessPercent) }];
    }

    /// <summary>How far aft the blade must stand on the tab of a long slot so that a driver reaches the plate screw before it, mm.</summary>
    private static double SlotOffset(Shape shape)
    {
        double chord = 1e3 * (OutlineFromDesign.Create(shape.Outline, [])?.Chord(0) ?? 0);
        return Math.Max(0, Math.Ceiling(chord / 2 + (shape.Flange?.OverhangMm ?? 0) - BeforePlateScrewMm));
    }
}
