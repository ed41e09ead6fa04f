using Finwright.Strength.Materials;

namespace Finwright.Strength.Plates;

/// <summary>A loaded plate.</summary>
/// <remarks>Positive deflection is to starboard, as positive loads are. When <see cref="Status"/> is <see cref="PlateStatus.NotHeld"/> all values are zero and mean nothing.</remarks>
public sealed class PlateSolution
{
    /// <summary>Loads against reactions, and work against twice the energy: both agree within this share, or the solution says so.</summary>
    public const double BalanceLimit = 1e-8;

    /// <summary>Deflection over the span up to which linear theory is good; beyond it the true deflection is smaller (judgement).</summary>
    public const double LinearShare = 0.1;

    private readonly PlateModel _model;
    private readonly double[] _unknowns;
    private readonly PlateField _field;
    private readonly Lazy<CurvatureField> _curvature;

    internal PlateSolution(PlateModel model, double[] unknowns, double[] forces)
    {
        (_model, _unknowns) = (model, unknowns);
        PlateMesh mesh = model.Assembly.Mesh;
        _field = new(mesh, unknowns);
        _curvature = new(() => new(mesh, unknowns));
        double[] answer = new double[unknowns.Length];
        model.Stiffness.Multiply(unknowns, answer);
        double twice = Product(unknowns, answer), size = 0, arm = 0;
        if (model.Assembly is { Springs: { } springs, BendingSprings: { } bending })
        {
            double[] held = new double[unknowns.Length];
            springs.Multiply(unknowns, held);
            twice += Product(unknowns, held);
            bending.Multiply(unknowns, held);
            twice += model.Factors.Root * Product(unknowns, held);
        }

        for (int i = 0; i < mesh.Nodes; i++)
        {
            double force = forces[3 * i];
            Load += force;
            LoadMomentX += force * mesh.Y(i) + forces[3 * i + 2];
            LoadMomentY += force * mesh.X[i] + forces[3 * i + 1];
            size += Math.Abs(force);
            arm = Math.Max(arm, Math.Max(Math.Abs(mesh.X[i]), mesh.Y(i)));
            if (Math.Abs(unknowns[3 * i]) > Math.Abs(MaximumDeflection))
                MaximumDeflection = unknowns[3 * i];
        }

        RootReaction[] reactions = new RootReaction[mesh.Columns];
        for (int i = 0; i < mesh.Columns; i++)
        {
            reactions[i] = new(mesh.X[i], answer[3 * i] - forces[3 * i], answer[3 * i + 2] - forces[3 * i + 2], answer[3 * i + 1] - forces[3 * i + 1]);
            ReactionForce += reactions[i].Force;
            ReactionMomentX += reactions[i].Bending;
            ReactionMomentY += reactions[i].Force * mesh.X[i] + reactions[i].Twisting;
        }

        RootReactions = reactions;
        StrainEnergy = twice / 2;
        ExternalWork = Product(forces, unknowns);
        if (model.Status is not PlateStatus.Solved)
        {
            Status = model.Status;
            return;
        }

        ForceBalance = size > 0 ? Math.Max(Math.Abs(ReactionForce + Load), Math.Max(Math.Abs(ReactionMomentX + LoadMomentX), Math.Abs(ReactionMomentY + LoadMomentY)) / arm) / size : 0;
        WorkBalance = ExternalWork > 0 ? Math.Abs(ExternalWork - twice) / ExternalWork : 0;
        Status = ForceBalance <= BalanceLimit && WorkBalance <= BalanceLimit ? PlateStatus.Solved : PlateStatus.OutOfBalance;
    }

    /// <summary>Whether the solution holds.</summary>
    public PlateStatus Status { get; }

    /// <summary>Sum of the loads, N.</summary>
    public double Load { get; }

    /// <summary>Moment of the loads that bends the root: Σ force × depth, N·m.</summary>
    public double LoadMomentX { get; }

    /// <summary>Moment of the loads that twists the root: Σ force × x, about x = 0, N·m.</summary>
    public double LoadMomentY { get; }

    /// <summary>What the root gives back along z, N; minus the loads.</summary>
    public double ReactionForce { get; }

    /// <summary>What the root gives back against bending, about y = 0, N·m.</summary>
    public double ReactionMomentX { get; }

    /// <summary>What the root gives back against twisting, about x = 0, N·m.</summary>
    public double ReactionMomentY { get; }

    /// <summary>The root's reactions node by node along the chord.</summary>
    public IReadOnlyList<RootReaction> RootReactions { get; }

    /// <summary>Energy stored in blade and root, J.</summary>
    public double StrainEnergy { get; }

    /// <summary>Σ load × deflection, J: twice the energy.</summary>
    public double ExternalWork { get; }

    /// <summary>Reactions plus loads over the loads' sizes; moments over the greatest distance as well.</summary>
    public double ForceBalance { get; }

    /// <summary>Work less twice the energy, over the work.</summary>
    public double WorkBalance { get; }

    /// <summary>Deflection at the node that moves farthest, metres, with its sign.</summary>
    public double MaximumDeflection { get; }

    /// <summary>Size of the greatest deflection over the span. The true deflection is smaller than this linear one: by about a tenth at 1/3 (cantilever with a force at its end; Mattiasson, 1981, from memory).</summary>
    public double DeflectionShare => Math.Abs(MaximumDeflection) / _model.Fin.Span;

    /// <summary>Deflection at x and depth, metres; off the mesh carried on straight.</summary>
    public double Deflection(double x, double y) => _field.Deflection(x, y);

    /// <summary>Slope along the chord at x and depth, dw/dx of the fibres across the thickness, radians.</summary>
    public double SlopeX(double x, double y) => _field.SlopeX(x, y);

    /// <summary>Smoothed curvature at x and depth, 1/m; off the mesh the edge's.</summary>
    public PlateCurvature Curvature(double x, double y) => _curvature.Value.At(x, y);

    /// <summary>Stresses through the thickness at x and depth, from the smoothed curvature.</summary>
    /// <remarks>Smooth stress of the plate: peaks at holes, notches and the corners of a clamped root are not in it. Layers bear what their own stiffness gives them at their height over the neutral surface.</remarks>
    public PlateStress StressAt(double x, double y)
    {
        LayerSums layers = new(_model.Fin, _model.Options.LeastThickness);
        layers.At(x, y);
        PlateCurvature curvature = Curvature(x, y);
        double half = layers.Half, core = layers.CoreHalf, neutral = layers.Neutral;
        StressState Wall(double z) => At(_model.Fin.Wall, _model.Factors.Wall, curvature, z - neutral);
        StressState Core(double z) => At(_model.Fin.Core, _model.Factors.Core, curvature, z - neutral);
        return core > 0
            ? new(half, Wall(half), Wall(-half), core, Core(core), Core(-core))
            : new(half, Wall(half), Wall(-half), 0, null, null);
    }

    /// <summary>What a rod bears, at even stations along its length.</summary>
    /// <remarks>
    /// Where a rod ends inside the blade its moment falls to nothing over a length of the order of its diameter. The plate does not follow that: the moment of the last station is what the bond must hand over there,
    /// beside <see cref="RodStation.MomentChange"/> along the way. The stress at the end of a rod, and at a root on springs, depends on the mesh by some tenths.
    /// </remarks>
    /// <param name="rod">Its place in <see cref="PlateFin.Rods"/>.</param>
    /// <param name="stations">How many, 3 or more.</param>
    /// <returns>Stations on the mesh, from the rod's first end on; none when it lies outside.</returns>
    public IReadOnlyList<RodStation> RodStations(int rod, int stations = 41)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(rod);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(rod, _model.Fin.Rods.Count);
        ArgumentOutOfRangeException.ThrowIfLessThan(stations, 3);
        PlateRod what = _model.Fin.Rods[rod];
        RodPath path = _model.Assembly.Paths[rod];
        (double tx, double ty) = path.Direction;
        LayerSums layers = new(_model.Fin, _model.Options.LeastThickness);
        double modulus = _model.Factors.Rod * what.Modulus, area = Math.PI * what.Diameter * what.Diameter / 4;
        List<RodStation> found = [];
        for (int i = 0; i < stations; i++)
        {
            double distance = path.Length * i / (stations - 1), x = what.FromX + tx * distance, y = what.FromY + ty * distance;
            if (!_model.Assembly.Mesh.Find(x, y).IsInside)
                continue;
            layers.At(x, y);
            double height = what.Z - layers.Neutral, curvature = Curvature(x, y).Along(tx, ty);
            double moment = modulus * area * (what.Diameter * what.Diameter / 16 + height * height) * curvature;
            found.Add(new(distance, x, y, curvature, modulus * Math.Abs(curvature) * (Math.Abs(height) + what.Diameter / 2), -modulus * area * height * curvature, moment, 0));
        }

        for (int i = 0; i < found.Count && found.Count > 1; i++)
        {
            RodStation before = found[Math.Max(i - 1, 0)], after = found[Math.Min(i + 1, found.Count - 1)];
            found[i] = found[i] with { MomentChange = (after.Moment - before.Moment) / (after.Distance - before.Distance) };
        }

        return found;
    }

    private static StressState At(Elasticity material, double factor, PlateCurvature curvature, double z)
    {
        (double q11, double q12, double q22, double q66) = PlateAssembly.PlaneStress(material);
        double f = -factor * z;
        return new(f * (q11 * curvature.X + q12 * curvature.Y), f * (q12 * curvature.X + q22 * curvature.Y), f * q66 * curvature.XY);
    }

    private static double Product(double[] a, double[] b)
    {
        double sum = 0;
        for (int i = 0; i < a.Length; i++)
            sum += a[i] * b[i];
        return sum;
    }
}

/// <summary>Curvatures of the plate, 1/m: changes of the slopes.</summary>
/// <param name="X">∂βx/∂x.</param>
/// <param name="Y">∂βy/∂y.</param>
/// <param name="XY">∂βx/∂y + ∂βy/∂x, twice the twist.</param>
public readonly record struct PlateCurvature(double X, double Y, double XY)
{
    /// <summary>Curvature along a unit vector.</summary>
    public double Along(double tx, double ty) => tx * tx * X + ty * ty * Y + tx * ty * XY;
}

/// <summary>Stress in the plane of the blade, Pa.</summary>
/// <param name="SigmaX">Along the chord.</param>
/// <param name="SigmaY">Along the span: across the layers of a blade printed on its root.</param>
/// <param name="TauXY">Shear.</param>
public readonly record struct StressState(double SigmaX, double SigmaY, double TauXY)
{
    /// <summary>Equivalent stress of von Mises for plane stress.</summary>
    public double VonMises => Math.Sqrt(SigmaX * SigmaX - SigmaX * SigmaY + SigmaY * SigmaY + 3 * TauXY * TauXY);
}

/// <summary>Stresses at the heights that matter at one place.</summary>
/// <param name="HalfThickness">Height of the surface, metres.</param>
/// <param name="Upper">Wall at the starboard surface.</param>
/// <param name="Lower">Wall at the port surface.</param>
/// <param name="CoreHalfThickness">Height of the core's face, metres; 0 where there is none.</param>
/// <param name="CoreUpper">Core at its starboard face; null where there is none.</param>
/// <param name="CoreLower">Core at its port face; null where there is none.</param>
public readonly record struct PlateStress(double HalfThickness, StressState Upper, StressState Lower, double CoreHalfThickness, StressState? CoreUpper, StressState? CoreLower);

/// <summary>A place on a rod.</summary>
/// <param name="Distance">From the rod's first end, metres.</param>
/// <param name="X">Metres.</param>
/// <param name="Y">Depth, metres.</param>
/// <param name="Curvature">Along the rod, 1/m.</param>
/// <param name="BendingStress">Greatest stress along the rod, Pa, positive: E κ (|z| + d/2), z over the neutral surface.</param>
/// <param name="AxialForce">Pull in a rod off the neutral surface, N.</param>
/// <param name="Moment">What the rod bears of the bending moment, about the neutral surface, N·m.</param>
/// <param name="MomentChange">Its change per length, N.</param>
public readonly record struct RodStation(double Distance, double X, double Y, double Curvature, double BendingStress, double AxialForce, double Moment, double MomentChange);

/// <summary>Reaction of a node of the root.</summary>
/// <param name="X">Where, metres.</param>
/// <param name="Force">Along z on the blade, N.</param>
/// <param name="Bending">Against the slope dw/dy, N·m.</param>
/// <param name="Twisting">Against the slope dw/dx, N·m.</param>
public readonly record struct RootReaction(double X, double Force, double Bending, double Twisting);
