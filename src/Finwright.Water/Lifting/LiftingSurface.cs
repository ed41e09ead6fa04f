using Finwright.Water.Polars;
using Finwright.Water.Ventilation;

namespace Finwright.Water.Lifting;

/// <summary>One fin under one root condition, ready for any speed and leeway.</summary>
/// <remarks>
/// Vortex lattice on the mean surface: horseshoes with bound vortices by Lan's (1974) rule along the chord and cosine spacing along the span, wake straight along x. Sections are coupled
/// strip by strip by turning (decambering), see <see cref="StripCoupling"/>. The influence of hull or image is inside the factorised equations, so a further state of flow
/// costs a few small products.
/// Limits: attached or mildly stalled fins at leeway within 20 degrees; depth Froude number V/√(g·span) above 1 unless the root is a full mirror; no ventilation, no cavitation;
/// steady. The wake does not turn with leeway, which is a second-order effect. It keeps no state between calls, so several threads may use it at once.
/// </remarks>
public sealed class LiftingSurface
{
    // A gap below this share of the span is partly closed by friction.
    private const double NarrowGap = 0.01;

    // Two answers that differ by less than this share of the side force are the same one.
    private const double SameAnswer = 0.005;

    // Turn from which the second start comes, radians (8 degrees): all strips well past stall.
    private const double StalledStart = 8 * Math.PI / 180;

    // Harper and Maki (1964), NASA TN D-2373, from memory: inboard sections of swept wings pass well beyond the peak that simple sweep theory gives them. Cosine of 20 degrees (judgement).
    private const double RakedCosine = 0.9397;

    private const int AreaSteps = 400;

    // Leeway at which lift slopes are taken, radians: small against stall, large against rounding.
    private const double SlopeLeeway = 0.5 * Math.PI / 180;

    private readonly FinInfluence _influence;
    private readonly FinLattice _lattice;
    private readonly LiftingModes _modes;
    private readonly StripGeometry _geometry;
    private readonly ForceSum _forces;

    private LiftingSurface(LiftingFin fin, RootCondition root, LiftingOptions options, HullGrid grid)
    {
        (Fin, Root, Options) = (fin, root, options);
        SpanRule span = root is FullMirror && root.Gap is 0 ? SpanRule.TowardTip(fin.Span, options.Strips) : SpanRule.TowardBothEnds(fin.Span, options.Strips);
        _lattice = new(fin, span, new(options.Rows), root.Gap);
        _influence = new(_lattice, root, grid);
        _modes = new(_influence);
        _geometry = new(_lattice);
        Area = PlanArea(fin);
        _forces = new(_lattice, _modes, _geometry, new(_influence), options, Area);
    }

    private LiftingSurface(LiftingSurface straight, Func<double, double, double> deflection)
    {
        (Fin, Root, Options, Area, _influence) = (straight.Fin, straight.Root, straight.Options, straight.Area, straight._influence);
        _lattice = _influence.Lattice.Bent(deflection);
        _modes = straight._modes.Bent(_influence, _lattice);
        _geometry = new(_lattice);
        _forces = new(_lattice, _modes, _geometry, new(_influence), Options, Area);
    }

    /// <summary>The fin.</summary>
    public LiftingFin Fin { get; }

    /// <summary>What it meets at its root.</summary>
    public RootCondition Root { get; }

    /// <summary>How it is divided.</summary>
    public LiftingOptions Options { get; }

    /// <summary>Area of the fin, m².</summary>
    public double Area { get; }

    /// <summary>Prepares a fin: lays the lattice and factorises its equations.</summary>
    /// <param name="fin">The fin.</param>
    /// <param name="root">What it meets at its root.</param>
    /// <param name="options">How it is divided; null for the usual.</param>
    /// <exception cref="ArgumentException">An edge, surface or length that cannot be a fin; the message says where.</exception>
    public static LiftingSurface Create(LiftingFin fin, RootCondition root, LiftingOptions? options = null) => Create(fin, root, options, HullGrid.Usual);

    internal static LiftingSurface Create(LiftingFin fin, RootCondition root, LiftingOptions? options, HullGrid grid)
    {
        ArgumentNullException.ThrowIfNull(fin);
        ArgumentNullException.ThrowIfNull(root);
        options ??= new();
        LiftingOptions.Check(options);
        FinChecks.Check(fin, root);
        return new(fin, root, options, grid);
    }

    /// <summary>Speed over √(g · span).</summary>
    /// <param name="speed">m/s.</param>
    public double DepthFroudeNumber(double speed) => DepthFroude.Number(speed, Fin.Span + Root.Gap);

    /// <summary>The same fin, bent a little: the flow meets the slopes of the bent surface, the vortices stay where they are.</summary>
    /// <param name="deflection">Deflection along z at a place (x, y) of the planform, metres; replaces that of a fin that is bent already.</param>
    /// <remarks>To first order in the deflection, so for deflections of up to about a tenth of the span. Costs one solution of the factorised equations.</remarks>
    public LiftingSurface Bent(Func<double, double, double> deflection)
    {
        ArgumentNullException.ThrowIfNull(deflection);
        return new(this, deflection);
    }

    /// <summary>Side force per leeway at small leeway, N/rad.</summary>
    /// <param name="flow">The water; its leeway is not read.</param>
    public double Slope(FlowState flow) =>
        (Solve(flow with { Leeway = SlopeLeeway }).SideForce - Solve(flow with { Leeway = -SlopeLeeway }).SideForce) / (2 * SlopeLeeway);

    /// <summary>What turning each strip by itself does to the loads of all strips, without friction and stall.</summary>
    public TwistResponse ResponseToTwist() => TwistResponse.Of(_lattice, _modes, _geometry);

    /// <summary>Forces at a speed and leeway.</summary>
    /// <param name="flow">The water.</param>
    /// <exception cref="ArgumentOutOfRangeException">Speed, density or viscosity not positive, or leeway beyond 30 degrees.</exception>
    public LiftingResult Solve(FlowState flow)
    {
        FlowState.Check(flow);
        StripCoupling coupling = new(_modes, _geometry, _lattice, flow);
        if (_influence.IsSingular)
            return _forces.Nothing(flow, Validity(coupling, flow));
        coupling.Solve();
        if (!coupling.Converged && Stalled(flow, coupling) is { Converged: true } instead)
            coupling = instead;
        LiftingValidity validity = Validity(coupling, flow);
        double otherShare = 1;
        if (validity.HasFlag(LiftingValidity.StalledStrips) && coupling.Converged)
        {
            StripCoupling other = Stalled(flow, coupling);
            otherShare = other.Converged ? TotalLift(other) / TotalLift(coupling) : 1;
            if (!double.IsFinite(otherShare) || Math.Abs(otherShare - 1) < SameAnswer)
                otherShare = 1;
            else
                validity |= LiftingValidity.NotUnique;
        }

        LiftingStatus status = !coupling.Converged ? LiftingStatus.NotConverged
            : validity.HasFlag(LiftingValidity.StalledStrips) ? LiftingStatus.Stalled : LiftingStatus.Attached;
        return _forces.Sum(coupling, flow, status, validity, otherShare);
    }

    // The same flow, reached from a fin that is stalled all over.
    private StripCoupling Stalled(FlowState flow, StripCoupling first)
    {
        StripCoupling other = new(_modes, _geometry, _lattice, flow);
        for (int j = 0; j < _lattice.Strips; j++)
            other.Weights[2 + j] = -Math.CopySign(StalledStart, first.Cl(j));
        other.Solve();
        return other;
    }

    /// <summary>Forces over a range of leeway.</summary>
    /// <param name="flow">The water; its leeway is not read.</param>
    /// <param name="from">First leeway, radians.</param>
    /// <param name="to">Last leeway, radians.</param>
    /// <param name="count">Number of angles, 2 or more.</param>
    public IReadOnlyList<LiftingResult> Sweep(FlowState flow, double from, double to, int count)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 2);
        LiftingResult[] results = new LiftingResult[count];
        for (int i = 0; i < count; i++)
            results[i] = Solve(flow with { Leeway = from + (to - from) * i / (count - 1) });
        return results;
    }

    /// <summary>Where stall starts and where side force peaks.</summary>
    /// <param name="flow">The water; its leeway is not read.</param>
    /// <param name="positive">Toward positive leeway; else toward negative.</param>
    public StallLimits StallOf(FlowState flow, bool positive = true) => StallSearch.Find(this, flow, positive);

    /// <summary>The leeway at which the fin carries a side force.</summary>
    /// <param name="flow">The water; its leeway is not read.</param>
    /// <param name="sideForce">Force across the stream, newtons, positive to starboard.</param>
    /// <exception cref="ArgumentOutOfRangeException">Side force not finite, or no moving water.</exception>
    public LeewayResult LeewayFor(FlowState flow, double sideForce)
    {
        if (!double.IsFinite(sideForce))
            throw new ArgumentOutOfRangeException(nameof(sideForce), sideForce, "The side force must be a number, in newtons.");
        return LeewaySearch.Find(this, flow, sideForce);
    }

    /// <summary>Stall share of the fin, by the strips that lift to one side; infinite when the sections could not be brought in.</summary>
    internal double DecidingStallShare(FlowState flow, bool positive)
    {
        FlowState.Check(flow);
        StripCoupling coupling = new(_modes, _geometry, _lattice, flow);
        coupling.Solve();
        if (!coupling.Converged)
            return double.PositiveInfinity;
        return FinShare(coupling, positive);
    }

    // Only strips that lift to one side, or all.
    private double FinShare(StripCoupling coupling, bool? positive)
    {
        Span<double> shares = stackalloc double[_lattice.Strips], areas = stackalloc double[_lattice.Strips];
        for (int j = 0; j < shares.Length; j++)
        {
            bool counts = positive is null || (coupling.Cl(j) >= 0) == positive;
            shares[j] = counts && coupling.Section(j) is { } section ? section.StallShare(coupling.Angles[j]) : 0;
            areas[j] = _lattice.Chords[j] * _lattice.Widths[j];
        }

        return StallExtent.Of(shares, areas).Share;
    }

    private double TotalLift(StripCoupling coupling)
    {
        double sum = 0;
        for (int j = 0; j < _lattice.Strips; j++)
            sum += coupling.Cl(j) * _lattice.Chords[j] * _lattice.Widths[j];
        return sum;
    }

    private LiftingValidity Validity(StripCoupling coupling, FlowState flow)
    {
        LiftingValidity validity = LiftingValidity.Full;
        if (Math.Abs(flow.Leeway) > FlowState.TrustedLeeway)
            validity |= LiftingValidity.LargeLeeway;
        if (Root is not FullMirror && DepthFroudeNumber(flow.Speed) < 1)
            validity |= LiftingValidity.SlowForSurface;
        if (Root.Gap > 0 && Root.Gap < NarrowGap * Fin.Span)
            validity |= LiftingValidity.NarrowGap;
        for (int j = 0; j < _lattice.Strips; j++)
        {
            if (_geometry.IsSteep[j])
                validity |= LiftingValidity.SteepSweep;
            if (coupling.Section(j) is not { } section)
            {
                validity |= LiftingValidity.NoSections;
                continue;
            }

            double angle = coupling.Angles[j];
            validity |= section.Forces(angle).Origin switch
            {
                PolarOrigin.BeyondTable => LiftingValidity.BeyondPolar,
                PolarOrigin.Bridged => LiftingValidity.BridgedPolar,
                _ => LiftingValidity.Full,
            };
            if (!section.StallOn(angle + _geometry.CamberAngle[j] >= 0).IsReached)
                validity |= LiftingValidity.PeakNotReached;
        }

        if (!(FinShare(coupling, null) > 1))
            return validity;
        validity |= LiftingValidity.StalledStrips;
        for (int j = 0; j < _lattice.Strips; j++)
            if (_geometry.CosSweep[j] < RakedCosine && coupling.Section(j) is { } section && section.StallShare(coupling.Angles[j]) > 1)
                validity |= LiftingValidity.StalledRake;
        return validity;
    }

    // Midpoints in the angle of a cosine spacing: exact enough for round tips.
    private static double PlanArea(LiftingFin fin)
    {
        double sum = 0;
        for (int i = 0; i < AreaSteps; i++)
        {
            double angle = (i + 0.5) * Math.PI / AreaSteps;
            sum += fin.Chord(fin.Span * (1 - Math.Cos(angle)) / 2) * Math.Sin(angle);
        }

        return sum * fin.Span / 2 * Math.PI / AreaSteps;
    }
}
