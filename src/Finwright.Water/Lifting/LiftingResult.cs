using Finwright.Geometry;
using Finwright.Water.Polars;

namespace Finwright.Water.Lifting;

/// <summary>What a fin does at one speed and leeway.</summary>
public sealed record LiftingResult
{
    /// <summary>The state of flow.</summary>
    public required FlowState Flow { get; init; }

    /// <summary>How the answer came out.</summary>
    public required LiftingStatus Status { get; init; }

    /// <summary>What limits the trust in it; <see cref="LiftingValidities.Describe"/> says it in words.</summary>
    public required LiftingValidity Validity { get; init; }

    /// <summary>Steps of the iteration between lattice and sections.</summary>
    public required int Iterations { get; init; }

    /// <summary>Largest difference of lift coefficient left between lattice and sections.</summary>
    public required double Residual { get; init; }

    /// <summary>Force across the stream, newtons, positive to starboard.</summary>
    public required double SideForce { get; init; }

    /// <summary>Side force of another solution found at the same leeway, newtons; equal to <see cref="SideForce"/> when none was found. Past stall there can be more.</summary>
    public required double OtherSideForce { get; init; }

    /// <summary>Force along the stream and where it comes from.</summary>
    public required DragSplit Drag { get; init; }

    /// <summary>Force along z, newtons: what the board feels across itself.</summary>
    public required double ForceZ { get; init; }

    /// <summary>Force along x, newtons, positive aft.</summary>
    public required double ForceX { get; init; }

    /// <summary>Moment about the y axis through the root quarter chord, newton metres, right-handed about y (down): a starboard force aft of it gives a negative moment, bow to port.</summary>
    /// <remarks>Drag times the small z of a bent fin is left out.</remarks>
    public required double YawMoment { get; init; }

    /// <summary>Moment about the x axis at the hull plane, newton metres, right-handed about x (aft): a starboard force on the fin gives a positive moment.</summary>
    public required double RollMoment { get; init; }

    /// <summary>Where <see cref="ForceZ"/> acts: X aft of the root quarter chord, Y depth below the hull, metres; null when there is no force to speak of.</summary>
    public required Point2? CentreOfEffort { get; init; }

    /// <summary>Area of the fin, m².</summary>
    public required double Area { get; init; }

    /// <summary>Lift coefficient of the fin.</summary>
    public double CL => SideForce / (Flow.DynamicPressure * Area);

    /// <summary>Drag coefficient of the fin.</summary>
    public double CD => Drag.Total / (Flow.DynamicPressure * Area);

    /// <summary>Suction along the leading edge that was lost, over what full attachment would give, 0 to 1; only where a vortex takes its place or the edge is sharp.</summary>
    public required double LostSuction { get; init; }

    /// <summary>Part of <see cref="ForceZ"/> due to the leading-edge vortex, newtons.</summary>
    public required double VortexForce { get; init; }

    /// <summary>Part of <see cref="ForceZ"/> due to flow round the tip, newtons.</summary>
    public required double TipForce { get; init; }

    /// <summary>Strips from root to tip.</summary>
    public required IReadOnlyList<StripResult> Strips { get; init; }

    /// <summary>Stall share that 3 % of the fin's area have reached or passed: 1 where stall of the fin starts; 0 without sections.</summary>
    public required double StallShare { get; init; }

    /// <summary>The strip that stands for that part of the fin; null without sections.</summary>
    public required StripResult? Critical { get; init; }

    /// <summary>Share of the fin's area whose sections are past their peak of lift.</summary>
    public required double StalledShare { get; init; }
}

/// <summary>Drag along the stream, newtons.</summary>
/// <param name="Induced">Left behind in the wake as sideways motion (Trefftz plane).</param>
/// <param name="Section">Friction and separation of the sections.</param>
/// <param name="Separation">Lost suction and cross-flow: leading-edge vortex and tip.</param>
/// <param name="Junction">Where fin and hull meet.</param>
/// <param name="Spray">Thrown up at the surface.</param>
public readonly record struct DragSplit(double Induced, double Section, double Separation, double Junction, double Spray)
{
    /// <summary>All together.</summary>
    public double Total => Induced + Section + Separation + Junction + Spray;
}

/// <summary>What one strip of the fin does.</summary>
public sealed record StripResult
{
    /// <summary>Depth below the hull, metres.</summary>
    public required double Depth { get; init; }

    /// <summary>x of the quarter chord, metres.</summary>
    public required double QuarterChord { get; init; }

    /// <summary>Chord, metres.</summary>
    public required double Chord { get; init; }

    /// <summary>Width along the span, metres.</summary>
    public required double Width { get; init; }

    /// <summary>Lift coefficient on the whole stream.</summary>
    public required double Cl { get; init; }

    /// <summary>Lift coefficient at which the strip's section peaks, on the whole stream, signed; null without a section.</summary>
    public required double? ClPeak { get; init; }

    /// <summary>Side force per depth carried by the strip's circulation, N/m; forces of vortices at leading edge and tip come on top.</summary>
    public required double Load { get; init; }

    /// <summary>Moment of that load and of the section about the strip's quarter chord, per depth, N, positive nose to starboard.</summary>
    public required double Moment { get; init; }

    /// <summary>Load of a half ellipse that peaks at the hull and carries the same side force, N/m.</summary>
    public required double EllipticLoad { get; init; }

    /// <summary>Angle of attack of the section, radians, in the plane square to the quarter-chord line.</summary>
    public required double SectionAngle { get; init; }

    /// <summary>Reynolds number of the section, square to the quarter-chord line.</summary>
    public required double ReynoldsNumber { get; init; }

    /// <summary>Drag coefficient of the section on the whole stream.</summary>
    public required double Cd { get; init; }

    /// <summary>Forces of the section in its own plane; null without a section.</summary>
    public required SectionForces? Section { get; init; }

    /// <summary>Lowest pressure coefficient on the whole stream; null without a section.</summary>
    public required double? MinimumCp { get; init; }

    /// <summary>Angle from zero lift over the same at the section's peak of lift: below 1 attached, above 1 stalled; 0 without a section.</summary>
    public required double StallShare { get; init; }

    /// <summary>Turn of the flexible strip's edge, radians, positive with the edge to starboard, that is away from a starboard load.</summary>
    public required double EdgeTurn { get; init; }

    /// <summary>Whether the section is past its peak of lift.</summary>
    public bool IsStalled => StallShare > 1;
}

/// <summary>How a lifting-surface answer came out.</summary>
public enum LiftingStatus
{
    /// <summary>Solved, flow attached but for the last bit of a pointed tip.</summary>
    Attached,

    /// <summary>Solved, with more than 3 % of the area stalled; not the only possible answer in general.</summary>
    Stalled,

    /// <summary>Lattice and sections were not brought together; the numbers are the last ones reached.</summary>
    NotConverged,

    /// <summary>The geometry leaves the lattice's equations undetermined; every force is zero.</summary>
    Singular,
}
