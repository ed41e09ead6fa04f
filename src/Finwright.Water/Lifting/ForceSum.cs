using Finwright.Geometry;
using Finwright.Water.Polars;

namespace Finwright.Water.Lifting;

/// <summary>From the strengths of a solved fin to forces and moments.</summary>
internal sealed class ForceSum(FinLattice lattice, LiftingModes modes, StripGeometry geometry, WakePlane wake, LiftingOptions options, double area)
{
    // Hoerner (1965), Fluid-Dynamic Drag, from memory: corner drag q c² (0.8 (t/c)³ - 0.0003), spray 0.24 q t².
    private const double JunctionThickness = 0.8, JunctionSaved = 0.0003, SprayFactor = 0.24;

    // A force below this share of q S has no place where it acts.
    private const double NoForce = 1e-9;

    public LiftingResult Sum(StripCoupling coupling, FlowState flow, LiftingStatus status, LiftingValidity validity, double otherShare)
    {
        int strips = lattice.Strips;
        double q = flow.DynamicPressure, scale = flow.Density * flow.Speed * flow.Speed;
        double cos = Math.Cos(flow.Leeway), sin = Math.Sin(flow.Leeway);
        double[] weights = coupling.Weights, vortices = new double[lattice.Count], circulation = new double[strips];
        modes.Vortices(weights, vortices);
        Tally total = default;
        double section = 0, suction = 0, lost = 0, vortexForce = 0;
        for (int j = 0; j < strips; j++)
        {
            circulation[j] = modes.Row(modes.Circulation, j, weights);
            double y = lattice.Span.Middles[j] + lattice.Gap, chord = lattice.Chords[j], strip = q * chord * lattice.Widths[j];
            double perCirculation = scale * cos * lattice.Widths[j];
            total.Attached += perCirculation * circulation[j];
            total.Yaw -= perCirculation * modes.Row(modes.Arm, j, weights);
            total.Roll += perCirculation * circulation[j] * y;
            double a0 = modes.Row(modes.Suction, j, weights), edge = geometry.EdgeCos[j];
            double thrust = strip * 2 * Math.PI * a0 * a0 / edge, kept = 1;
            if (coupling.Section(j) is { } own)
            {
                SectionForces forces = own.Forces(coupling.Angles[j]);
                double cd = own.Cd(coupling.Angles[j]) * strip;
                section += cd;
                total.Normal(cd * sin, geometry.QuarterX[j], y);
                // The polar's moment replaces the thin section's, which the lattice carries already.
                double sweep = geometry.CosSweep[j] * geometry.CosSweep[j];
                total.Yaw += strip * chord * (forces.Cm * sweep - geometry.FlatMoment[j]);
                double share = own.StallShare(coupling.Angles[j]);
                if (share > 1)
                    kept = 1 - geometry.VortexShare[j] * (1 - 1 / (share * share));
            }

            if (options.LeadingEdge == LeadingEdgeForm.Sharp)
                kept = 0;
            suction += thrust;
            lost += (1 - kept) * thrust;
            // Polhamus (1966), NASA TN D-3767: the lost suction acts square to the surface. Suction square to the edge is thrust over cos Λ.
            double vortex = Math.CopySign((1 - kept) * thrust / edge, circulation[j]) * geometry.VortexShare[j];
            vortexForce += vortex;
            total.Normal(vortex, geometry.LeadingX[j], y);
        }

        double tip = TipForce(flow, vortices);
        double tipDepth = lattice.Fin.Span + lattice.Gap, tipX = (lattice.Fin.LeadingEdge(lattice.Fin.Span) + lattice.Fin.TrailingEdge(lattice.Fin.Span)) / 2;
        total.Normal(tip, tipX, tipDepth);

        double induced = scale * wake.Drag(vortices, circulation);
        // With all suction kept the drag is that of the wake, and the normal force follows from the load along the fin.
        double sideForce = total.Attached / cos - induced * sin / cos - lost * sin + (vortexForce + tip) * cos;
        double separation = lost * cos + (vortexForce + tip) * sin;
        double root = Math.Max(lattice.Fin.Chord(0), 0), ratio = lattice.Fin.ThicknessRatio(0);
        bool touches = lattice.Gap is 0 && coupling.Section(0) is not null;
        double junction = touches && !options.PiercesSurface ? Math.Max(0, q * root * root * (JunctionThickness * ratio * ratio * ratio - JunctionSaved)) : 0;
        double spray = options.PiercesSurface ? SprayFactor * q * ratio * ratio * root * root : 0;
        DragSplit drag = new(induced, section, separation, junction, spray);
        double forceZ = sideForce * cos + drag.Total * sin;
        StripResult[] results = Strips(coupling, flow, circulation);
        (double stallShare, int critical) = StallExtent.Of([.. results.Select(s => s.StallShare)], [.. results.Select(s => s.Chord * s.Width)]);
        bool acts = Math.Abs(total.Attached + total.Extra) > NoForce * q * area;
        return new()
        {
            Flow = flow,
            Status = status,
            Validity = validity | (vortexForce != 0 ? LiftingValidity.LeadingEdgeVortex : LiftingValidity.Full),
            Iterations = coupling.Iterations,
            Residual = coupling.Residual,
            SideForce = sideForce,
            OtherSideForce = sideForce * otherShare,
            Drag = drag,
            ForceZ = forceZ,
            ForceX = drag.Total * cos - sideForce * sin,
            YawMoment = total.Yaw,
            RollMoment = total.Roll,
            CentreOfEffort = acts ? new Point2(-total.Yaw / (total.Attached + total.Extra), total.Roll / (total.Attached + total.Extra)) : null,
            Area = area,
            LostSuction = suction > 0 ? lost / suction : 0,
            VortexForce = vortexForce,
            TipForce = tip,
            StallShare = stallShare,
            Critical = critical < 0 ? null : results[critical],
            StalledShare = results.Where(s => s.IsStalled).Sum(s => s.Chord * s.Width) / results.Sum(s => s.Chord * s.Width),
            Strips = results,
        };
    }

    /// <summary>The answer when there is none.</summary>
    public LiftingResult Nothing(FlowState flow, LiftingValidity validity) => new()
    {
        Flow = flow,
        Status = LiftingStatus.Singular,
        Validity = validity,
        Iterations = 0,
        Residual = 0,
        SideForce = 0,
        OtherSideForce = 0,
        Drag = default,
        ForceZ = 0,
        ForceX = 0,
        YawMoment = 0,
        RollMoment = 0,
        CentreOfEffort = null,
        Area = area,
        LostSuction = 0,
        VortexForce = 0,
        TipForce = 0,
        StallShare = 0,
        Critical = null,
        StalledShare = 0,
        Strips = [],
    };

    private double TipForce(FlowState flow, ReadOnlySpan<double> vortices)
    {
        int last = lattice.Strips - 1;
        double twist = lattice.Twists[last], angle = flow.Leeway + twist + geometry.CamberAngle[last];
        double sin = Math.Sin(angle), force;
        if (options.Tip == TipForm.SideEdgeSuction)
            force = flow.Density * flow.Speed * flow.Speed * TipEdge.Suction(lattice, vortices);
        else
            force = TipEdge.CrossFlow(options.Tip, lattice.Fin.Span, lattice.Fin.Chord(0), area) * area / (2 * lattice.Fin.Span * lattice.Fin.Span) * sin * sin * flow.DynamicPressure * area;
        return Math.CopySign(force, sin);
    }

    private StripResult[] Strips(StripCoupling coupling, FlowState flow, double[] circulation)
    {
        int strips = lattice.Strips;
        double scale = flow.Density * flow.Speed * flow.Speed, sum = 0;
        for (int j = 0; j < strips; j++)
            sum += scale * circulation[j] * lattice.Widths[j];
        StripResult[] results = new StripResult[strips];
        for (int j = 0; j < strips; j++)
        {
            double sweep = geometry.CosSweep[j] * geometry.CosSweep[j], angle = coupling.Angles[j];
            double along = lattice.Span.Middles[j] / lattice.Fin.Span;
            StripSection? own = coupling.Section(j);
            SectionForces? forces = own?.Forces(angle);
            results[j] = new()
            {
                Depth = lattice.Span.Middles[j] + lattice.Gap,
                QuarterChord = geometry.QuarterX[j],
                Chord = lattice.Chords[j],
                Width = lattice.Widths[j],
                Cl = coupling.Cl(j),
                ClPeak = own?.StallOn(angle + geometry.CamberAngle[j] >= 0).Cl * sweep,
                Load = scale * circulation[j],
                Moment = scale * (circulation[j] * geometry.QuarterX[j] - modes.Row(modes.Arm, j, coupling.Weights))
                    + (forces is { } f ? scale / 2 * lattice.Chords[j] * lattice.Chords[j] * (f.Cm * sweep - geometry.FlatMoment[j]) : 0),
                EllipticLoad = 4 / Math.PI * sum / lattice.Fin.Span * Math.Sqrt((1 - along) * (1 + along)),
                SectionAngle = angle,
                ReynoldsNumber = coupling.Reynolds[j],
                Cd = own?.Cd(angle) ?? 0,
                Section = forces,
                MinimumCp = forces?.MinimumCp * sweep,
                StallShare = own?.StallShare(angle) ?? 0,
                EdgeTurn = coupling.Weights.Length > 2 + strips ? -coupling.Weights[2 + strips + j] : 0,
            };
        }

        return results;
    }

    private struct Tally
    {
        public double Attached, Extra, Yaw, Roll;

        public void Normal(double force, double x, double y)
        {
            Extra += force;
            Yaw -= force * x;
            Roll += force * y;
        }
    }
}
