using Finwright.Design;
using Finwright.Geometry.Blades;
using Finwright.Geometry.Outlines;
using static Finwright.Geometry.FromDesign.Wording;

namespace Finwright.Geometry.FromDesign;

/// <summary>Turns the shape section of a design into a blade: the edge where millimetres and degrees become metres and radians.</summary>
public static class BladeFromDesign
{
    // A tip or a flange beyond these shares is allowed, but hardly meant.
    private const double UsualRounding = 0.1, UsualOverhang = 0.35;
    private const double GreatestShare = 0.5;

    // A section is judged down to this share of the span; below it every round tip is thin.
    private const double JudgedSpan = 0.9;
    private const int JudgedDepths = 46, JudgedStations = 48;

    // With camber, thickness laid square to it carries one side a little ahead of the nose; that is no fold.
    private const int NoseStations = 4;

    /// <summary>Makes the blade.</summary>
    /// <param name="design">The design; every value within the range of its field.</param>
    /// <param name="findings">Receives what was found.</param>
    /// <param name="openSectionFile">
    /// Opens a file of section coordinates beside the design by its name, or answers null when there is none; null when the design stands alone.
    /// </param>
    /// <returns>The blade, or null when an error was found.</returns>
    public static Blade? Create(FinDesign design, ICollection<Finding> findings, Func<string, TextReader?>? openSectionFile = null)
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(findings);
        List<Finding> found = [];
        SplineOutline? outline = OutlineFromDesign.Create(design.Shape.Outline, found);
        List<BladeStation>? stations = StationsFromDesign.Create(design.Shape, outline?.Span ?? 1, found, openSectionFile);
        Blade? blade = null;
        if (outline is not null && stations is not null)
        {
            JudgeLengths(design.Shape, outline, found);
            if (!found.Exists(f => f.IsError))
            {
                blade = new(outline, stations, design.Shape.TrailingEdgeMm * 1e-3, Rounding(design.Shape));
                JudgeSkin(design, blade, found);
            }
        }

        foreach (Finding finding in found)
            findings.Add(finding);
        return found.Exists(f => f.IsError) ? null : blade;
    }

    /// <summary>How the design wants its blade lofted.</summary>
    /// <param name="shape">The shape section of a design for which <see cref="Create"/> found no error.</param>
    /// <param name="rootExtension">How far the root is drawn on into the base, metres.</param>
    public static LoftOptions Loft(Shape shape, double rootExtension = 0)
    {
        ArgumentNullException.ThrowIfNull(shape);
        return new()
        {
            Tolerance = shape.SkinToleranceMm * 1e-3,
            Flange = shape.Flange is { } flange ? new(flange.OverhangMm * 1e-3, flange.ThicknessMm * 1e-3, flange.FilletMm * 1e-3) : null,
            RootExtension = rootExtension,
        };
    }

    /// <summary>Lofts a design's blade, and tells when the skin is coarser than the design asks for.</summary>
    /// <param name="shape">The shape section of the design.</param>
    /// <param name="blade">What <see cref="Create"/> made of it.</param>
    /// <param name="findings">Receives what was found.</param>
    public static TriangleMesh Skin(Shape shape, Blade blade, ICollection<Finding> findings)
    {
        ArgumentNullException.ThrowIfNull(shape);
        ArgumentNullException.ThrowIfNull(findings);
        LoftOptions options = Loft(shape);
        LoftedSkin skin = BladeLoft.Build(blade, options);
        if (skin.WorstStray > options.Tolerance)
            findings.Add(new(
                "skin-coarser-than-asked", Severity.Caution, "$.shape.skin_tolerance_mm",
                $"The facets stray {FineMm(skin.WorstStray)} from the true skin, more than the {FineMm(options.Tolerance)} asked for; closer would take more than {BladeLoft.MostTriangles / 1_000_000:0} million triangles.",
                $"Ask for {FineMm(NextHundredth(skin.WorstStray))}; a printer shows nothing finer than about 0.02 mm.")
            { Value = FineMm(skin.WorstStray), Limit = FineMm(options.Tolerance) });
        return skin.Mesh;
    }

    private static string FineMm(double metres) => FormattableString.Invariant($"{metres * 1e3:0.####} mm");

    private static double NextHundredth(double metres) => Math.Ceiling(metres * 1e5) / 1e5;

    private static double? Rounding(Shape shape) => shape.Tip == TipStyle.Flat ? 0 : shape.TipRoundingMm * 1e-3;

    private static void JudgeLengths(Shape shape, SplineOutline outline, List<Finding> found)
    {
        double span = outline.Span;
        if (Rounding(shape) is double rounding && rounding > UsualRounding * span)
        {
            bool beyond = rounding > GreatestShare * span;
            found.Add(new(
                "tip-rounding-long", beyond ? Severity.Error : Severity.Caution, "$.shape.tip_rounding_mm",
                $"The tip runs out over {Mm(rounding)}, {100 * rounding / span:0} % of the span of {Mm(span)}; the blade loses thickness over all of that.",
                "Round the tip over a few millimetres, or leave the value out.")
            { Value = Mm(rounding), Limit = Mm((beyond ? GreatestShare : UsualRounding) * span) });
        }

        if (shape.Flange is not { } flange)
            return;
        if (flange.FilletMm > flange.OverhangMm)
            found.Add(new(
                "fillet-over-flange", Severity.Error, "$.shape.flange.fillet_mm",
                $"The fillet's radius is {flange.FilletMm:0.##} mm, but the flange stands out only {flange.OverhangMm:0.##} mm; the fillet would run past its rim.",
                $"Give the fillet at most {flange.OverhangMm:0.##} mm, or the flange more overhang.")
            { Value = $"{flange.FilletMm:0.##} mm", Limit = $"{flange.OverhangMm:0.##} mm" });
        double height = (flange.ThicknessMm + flange.FilletMm) * 1e-3, overhang = flange.OverhangMm * 1e-3, chord = outline.Chord(0);
        if (height > GreatestShare * span)
            found.Add(new(
                "flange-too-high", Severity.Error, "$.shape.flange",
                $"Flange and fillet reach {Mm(height)} down, more than half the span of {Mm(span)}.",
                "Make the flange thinner or its fillet smaller.")
            { Value = Mm(height), Limit = Mm(GreatestShare * span) });
        if (overhang > UsualOverhang * chord)
            found.Add(new(
                "flange-wide", Severity.Caution, "$.shape.flange.overhang_mm",
                $"The flange stands out {Mm(overhang)} round a root chord of {Mm(chord)}; it drags and adds nothing once the gap round the box is covered.",
                "A few millimetres beyond the edge of the box are enough.")
            { Value = Mm(overhang), Limit = Mm(UsualOverhang * chord) });
    }

    private static void JudgeSkin(FinDesign design, Blade blade, List<Finding> found)
    {
        double line = design.Print.LineWidthMm * 1e-3;
        (double Depth, double Thickness)? thinnest = null, capped = null;
        for (int i = 0; i <= JudgedDepths; i++)
        {
            double y = JudgedSpan * blade.Span * i / JudgedDepths;
            double thickness = blade.ThicknessRatio(y) * blade.Outline.Chord(y);
            if (thinnest is null || thickness < thinnest.Value.Thickness)
                thinnest = (y, thickness);
            if (capped is null && blade.EdgeThickness(y) < blade.TrailingEdgeThickness - Hair)
                capped = (y, blade.EdgeThickness(y));
            if (FoldAt(blade, y) is not { } station)
                continue;
            found.Add(new(
                "skin-crosses-itself", Severity.Error, "$.shape.sections",
                $"At {Mm(y)} depth the two sides of the blade cross at {100 * station:0} % of the chord.",
                "Use less camber there, a thicker section, or other section points."));
            return;
        }

        if (thinnest is { } thin && thin.Thickness < 2 * line)
            found.Add(new(
                "section-thin", thin.Thickness < line ? Severity.Error : Severity.Caution, "$.shape.sections",
                $"At {Mm(thin.Depth)} depth the blade is at most {Mm(thin.Thickness)} thick; two printed walls need {Mm(2 * line)}.",
                "Give the sections there more thickness, or the outline more chord.")
            { Value = Mm(thin.Thickness), Limit = Mm(2 * line) });
        if (design.Shape.Flange is not null && FlangeFold.Find(blade, Loft(design.Shape).Flange!) is { } fold)
            found.Add(new(
                "flange-folds", Severity.Error, "$.shape.flange.overhang_mm",
                $"At {Mm(fold.Depth)} depth the section is hollow with a radius of {Mm(fold.Radius)}; a flange that stands out {design.Shape.Flange.OverhangMm:0.##} mm would run through itself there.",
                $"Let the flange stand out less than {Mm(fold.Radius)}, or use a section with less hollow sides.")
            { Value = $"{design.Shape.Flange.OverhangMm:0.##} mm", Limit = Mm(fold.Radius) });
        if (blade.TrailingEdgeThickness < line / 2)
            found.Add(new(
                "trailing-edge-sharp", Severity.Caution, "$.shape.trailing_edge_mm",
                $"A trailing edge of {Mm(blade.TrailingEdgeThickness)} is less than half a printed line of {Mm(line)}; the printer ends the blade where it becomes too thin.",
                $"Give it {Mm(line)} or more, and sand it to shape.")
            { Value = Mm(blade.TrailingEdgeThickness), Limit = Mm(line / 2) });
        if (capped is { } cap)
            found.Add(new(
                "trailing-edge-thinned", Severity.Note, "$.shape.trailing_edge_mm",
                $"From {Mm(cap.Depth)} depth on, a trailing edge of {Mm(blade.TrailingEdgeThickness)} would be more than {100 * Blade.EdgeShareFree:0} % of the blade's thickness; it is drawn thinner, {Mm(cap.Thickness)} there.",
                "Nothing need be done; a thinner edge or a thicker tip section avoids it.")
            { Value = Mm(cap.Thickness), Limit = Mm(blade.TrailingEdgeThickness) });
    }

    /// <summary>The place on the chord where the section at a depth has no thickness or turns back on itself; null when it is sound.</summary>
    private static double? FoldAt(Blade blade, double y)
    {
        // Squared places crowd at the nose, where a fold would begin.
        Point3 starboard = blade.Skin(y, 0.5), port = starboard;
        double cosine = Math.Cos(blade.Twist(y)), sine = Math.Sin(blade.Twist(y));
        for (int i = 1; i < JudgedStations; i++)
        {
            double u = 0.5 * (1 - (double)i / JudgedStations);
            Point3 nextStarboard = blade.Skin(y, u), nextPort = blade.Skin(y, 1 - u);
            Point3 across = nextStarboard - nextPort, up = nextStarboard - starboard, down = nextPort - port;
            double thickness = across.X * sine + across.Z * cosine;
            bool turnsBack = i > NoseStations && (up.X * cosine - up.Z * sine < 0 || down.X * cosine - down.Z * sine < 0);
            if (thickness <= 0 || turnsBack)
                return (1 + Math.Cos(2 * Math.PI * u)) / 2;
            (starboard, port) = (nextStarboard, nextPort);
        }

        return null;
    }
}
