using Finwright.Design;
using Finwright.Geometry.Blades;
using Finwright.Geometry.Features;
using Finwright.Geometry.Parts;

namespace Finwright.Geometry.FromDesign;

/// <summary>What every step of planning the parts has at hand; lengths in metres.</summary>
internal sealed class PartWork(FinDesign design, BladeShape blade, FinSolids solids, ICollection<Finding> findings)
{
    private const double Millimetres = 1e-3;

    public FinDesign Design { get; } = design;

    public BladeShape Blade { get; } = blade;

    public FinSolids Solids { get; } = solids;

    public ICollection<Finding> Findings { get; } = findings;

    /// <summary>Blade and base are one print.</summary>
    public bool AsOne => Solids.Base is null;

    /// <summary>What the print with the blade in it is called.</summary>
    public string BladeName => AsOne ? "fin" : "blade";

    /// <summary>The printer's room.</summary>
    public PrintRoom Room { get; } = RoomFromDesign.Of(design.Print);

    public double PartGap => Design.Print.PartGapMm * Millimetres;

    public double Line => Design.Print.LineWidthMm * Millimetres;

    /// <summary>Thickness of one printed wall.</summary>
    public double Wall => Design.Print.Walls * Line;

    /// <summary>Least plastic between two hollows that are meant to stay apart: two printed lines.</summary>
    public double LeastPlastic => 2 * Line;

    public double BondGap => Design.Parts.BondGapMm * Millimetres;

    public double Dowel => Design.Parts.DowelMm * Millimetres;

    public double DowelBore => (Design.Parts.DowelMm + Design.Print.BoreAllowanceMm) * Millimetres;

    public double DowelLength => Design.Parts.DowelLengthMm * Millimetres;

    public double Engraving => Design.Parts.EngravingMm * Millimetres;

    public double GaugeThickness => Design.Base.GaugeThicknessMm * Millimetres;

    public double PortDiameter => Design.Pour.Ports.DiameterMm * Millimetres;

    public double PortDepth => Design.Pour.Ports.DepthMm * Millimetres;

    /// <summary>Pockets and cavities in the blade that a cut must not open.</summary>
    public IEnumerable<PlacedFeature> BladePockets => Solids.Features.Where(f =>
        f.IsInBlade && f.Kind is FeatureKind.NutPocket or FeatureKind.NutWayIn or FeatureKind.SocketPocket or FeatureKind.CavityRoom or FeatureKind.LidRecess);

    /// <summary>How a piece of the blade may rest by the design, best first.</summary>
    /// <param name="cut">The cut at its root side; null for the piece at the root.</param>
    public IReadOnlyList<Resting> BladeWays(CutPlane? cut) => BladeWays(cut, Design.Parts.BladeAttitude);

    /// <summary>How a piece of the blade may rest in a given attitude, best first.</summary>
    /// <param name="cut">The cut at its root side; null for the piece at the root.</param>
    /// <param name="attitude">Standing, lying or either.</param>
    public IReadOnlyList<Resting> BladeWays(CutPlane? cut, PrintAttitude attitude)
    {
        Point3 rootFace = cut is { } plane ? -1 * plane.Normal : AsOne ? BaseFaces.Top(Solids.Plan) : new(0, -1, 0);
        return Ways(attitude, rootFace, new(0, 0, 1));
    }

    /// <summary>How the base may rest by the design, best first.</summary>
    public IReadOnlyList<Resting> BaseWays() => BaseWays(Design.Parts.BaseAttitude);

    /// <summary>How the base may rest in a given attitude, best first.</summary>
    public IReadOnlyList<Resting> BaseWays(PrintAttitude attitude) => Ways(attitude, new(0, 1, 0), BaseFaces.Starboard(Solids.Plan));

    /// <summary>The gauge lies on its flush side.</summary>
    public IReadOnlyList<Resting> GaugeWays() => [FitGauge.Rest(Solids.Plan)];

    /// <summary>A length as text.</summary>
    public static string Mm(double metres) => $"{metres / Millimetres:0.0} mm";

    private static Resting[] Ways(PrintAttitude wanted, Point3 standing, Point3 lying) => wanted switch
    {
        PrintAttitude.Standing => [new(PrintAttitude.Standing, standing)],
        PrintAttitude.Lying => [new(PrintAttitude.Lying, lying)],
        _ => [new(PrintAttitude.Standing, standing), new(PrintAttitude.Lying, lying)],
    };
}
