using Finwright.Assessment;
using Finwright.Design;
using Finwright.Geometry;
using Finwright.Geometry.Features;
using Finwright.Geometry.FromDesign;
using Finwright.Geometry.Parts;

namespace Finwright.Page.Drawings;

/// <summary>A thing inside the fin, seen from the side.</summary>
/// <param name="Path">Its outline as an SVG path.</param>
/// <param name="Place">The value in the design file that places it.</param>
/// <param name="Name">What it is, in English.</param>
/// <param name="IsRod">Whether it is filled by a rod that stays.</param>
public sealed record InsidePicture(string Path, string Place, string Name, bool IsRod);

/// <summary>A fin from the side as lines of a drawing: water from the left, hull above, tip down; mm.</summary>
public sealed record PlanformPicture
{
    // Finer than a pixel of a large screen, metres.
    private const double Tolerance = 5e-5;

    private PlanformPicture()
    {
    }

    /// <summary>The blade's outline.</summary>
    public required string Blade { get; init; }

    /// <summary>The base; empty when it was not placed.</summary>
    public string Base { get; init; } = "";

    /// <summary>Rods, bolts, pockets, cavities.</summary>
    public IReadOnlyList<InsidePicture> Inside { get; init; } = [];

    /// <summary>The bottom of the strip's slot; empty for none.</summary>
    public string Slot { get; init; } = "";

    /// <summary>The strip where it stands out behind the edge; empty for none.</summary>
    public string Strip { get; init; } = "";

    /// <summary>Cuts between printed parts.</summary>
    public IReadOnlyList<string> Cuts { get; init; } = [];

    /// <summary>Leftmost, uppermost, rightmost and lowest place, mm.</summary>
    public required (double Left, double Top, double Right, double Bottom) Bounds { get; init; }

    /// <summary>Draws the blade alone.</summary>
    /// <param name="shape">A result with a blade.</param>
    /// <param name="datum">Where the drawing's x counts from; see <see cref="PlanformHandles.Datum"/>.</param>
    public static PlanformPicture? OfBlade(AssessmentResult shape, double datum)
    {
        ArgumentNullException.ThrowIfNull(shape);
        if (shape.Planform is not { } planform)
            return null;
        IReadOnlyList<Point2> line = planform.Polyline(Tolerance);
        return new()
        {
            Blade = SvgNumber.Path(line, datum),
            Bounds = (1e3 * line.Min(p => p.X) + datum, 0, 1e3 * line.Max(p => p.X) + datum, 1e3 * planform.Span),
        };
    }

    /// <summary>Adds what lies inside and above: base, rods, bolts, slot, cuts.</summary>
    /// <param name="design">The design of the blade.</param>
    /// <param name="shape">Its shape.</param>
    /// <param name="cuts">Where it is cut; empty when that is not known.</param>
    /// <param name="datum">As for <see cref="OfBlade"/>.</param>
    public PlanformPicture WithInside(FinDesign design, AssessmentResult shape, IReadOnlyList<CutPlane> cuts, double datum)
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(shape);
        ArgumentNullException.ThrowIfNull(cuts);
        if (shape.Blade is not { } blade || FinSolids.Place(design, blade, []) is not { } placed)
            return this;
        IReadOnlyList<Point2> ring = placed.Base.Ring();
        (double left, double top, double right, double bottom) = Bounds;
        double overhang = (design.Shape.Strip?.OverhangMm ?? 0) * 1e-3;
        return this with
        {
            Base = SvgNumber.Path(ring, datum),
            Inside =
            [
                .. placed.Features.Where(feature => feature.Kind is not FeatureKind.NutWayIn)
                    .Select(feature => new InsidePicture(SvgNumber.Path(feature.Volume.SideView(), datum), Owner(feature), feature.Name, feature.Kind is FeatureKind.CarbonRodBore or FeatureKind.ClampRodBore))
                    .OrderBy(inside => inside.IsRod ? 0 : 1),
            ],
            Slot = placed.Slot is { } slot ? SvgNumber.Path(slot.SideView(), datum, closed: false) : "",
            Strip = placed.Slot is { } own && overhang > 0 ? SvgNumber.Path([.. own.Line(0), .. own.Line(-overhang).Reverse()], datum) : "",
            Cuts = [.. cuts.Select(cut => Line(cut, shape, datum)).Where(line => line.Length > 0)],
            Bounds = (Math.Min(left, 1e3 * ring.Min(p => p.X) + datum), 1e3 * ring.Min(p => p.Y), Math.Max(right + 1e3 * overhang, 1e3 * ring.Max(p => p.X) + datum), bottom),
        };
    }

    // The group that a value belongs to: a click leads to the rod, not to one of its numbers.
    private static string Owner(PlacedFeature feature) => feature.Owner.StartsWith('$') ? feature.Owner : feature.Path;

    private static string Line(CutPlane cut, AssessmentResult shape, double datum) => cut.Exits(shape.Blade!.Outline) is { } exits
        ? SvgNumber.Path([new(shape.Blade.Outline.LeadingEdge(exits.Leading), exits.Leading), new(shape.Blade.Outline.TrailingEdge(exits.Trailing), exits.Trailing)], datum, closed: false)
        : "";
}
