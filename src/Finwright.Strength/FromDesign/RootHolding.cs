using Finwright.Design;
using Finwright.Geometry.Bases;
using Finwright.Geometry.Features;
using Finwright.Strength.Joints;
using Finwright.Strength.Plates;

namespace Finwright.Strength.FromDesign;

/// <summary>A bolt or rod across the joint, with its nut where it has one.</summary>
/// <param name="Name">Name for papers.</param>
/// <param name="Tie">What it does in the joint.</param>
/// <param name="Thread">Its thread; null for a bonded rod.</param>
/// <param name="Seat">Its nut in the print; null for a bonded rod.</param>
/// <param name="BondedLength">Length bonded on the shorter side of the joint, metres; 0 for a bolt.</param>
public sealed record JointTie(string Name, Reinforcement Tie, MetricThread? Thread, NutSeat? Seat, double BondedLength);

/// <summary>A nut in the base, at the end of a bolt from the deck.</summary>
/// <param name="Name">Name of its bolt for papers.</param>
/// <param name="Thread">Its thread.</param>
/// <param name="Seat">How it sits in the print.</param>
public sealed record BaseNut(string Name, MetricThread Thread, NutSeat Seat);

/// <summary>How the blade is held to the base, and the base in its box.</summary>
public sealed class RootHolding
{
    // Steps along the root over which its thickness is summed.
    private const int RootSteps = 200;

    // Where blade and base lie on each other, x in metres; half thickness of the blade there.
    private readonly double _from, _to;
    private readonly Func<double, double> _half;

    internal RootHolding(
        RootHold kind, BaseInBox box, bool baseLies, double boxStiffness, CrackedSection? joint, IReadOnlyList<JointTie> ties, IReadOnlyList<BaseNut> baseNuts, BasePlan plan, double from, double to,
        Func<double, double> half)
    {
        (Kind, Box, BaseLies, BoxStiffness, Joint, Ties, BaseNuts, Plan) = (kind, box, baseLies, boxStiffness, joint, ties, baseNuts, plan);
        (_from, _to, _half) = (from, to, half);
        ClosedStiffness = 1 / (1 / BoxStiffness + (joint is null ? 0 : 1 / joint.Solve(new(SmallMoment, 0, 0)).SecantStiffnessX));
    }

    // Small beside any load, and well above rounding, N·m.
    private const double SmallMoment = 1e-3;

    /// <summary>How the root is taken to be held.</summary>
    public RootHold Kind { get; }

    /// <summary>The base in its box.</summary>
    public BaseInBox Box { get; }

    /// <summary>Whether the base was printed lying, so that its layers run along the blade's depth.</summary>
    public bool BaseLies { get; }

    /// <summary>How stiffly the base holds against bending in its box, N·m per radian.</summary>
    public double BoxStiffness { get; }

    /// <summary>The joint between blade and base; null when they are one print, or when the joint is taken as whole.</summary>
    public CrackedSection? Joint { get; }

    /// <summary>What crosses the joint.</summary>
    public IReadOnlyList<JointTie> Ties { get; }

    /// <summary>Nuts that hold the base alone.</summary>
    public IReadOnlyList<BaseNut> BaseNuts { get; }

    /// <summary>The base before boring.</summary>
    public BasePlan Plan { get; }

    /// <summary>Stiffness against bending under a load that opens nothing, N·m per radian; 0 when nothing holds the joint.</summary>
    public double ClosedStiffness { get; }

    /// <summary>The joint under a bending moment; null when there is none to open.</summary>
    /// <param name="moment">Moment about x at the hull plane, N·m.</param>
    public JointState? Under(double moment) => Joint?.Solve(new(moment, 0, 0));

    /// <summary>The joint under a bending moment when its bond, if any, has given; null when there is none to open.</summary>
    /// <param name="moment">Moment about x at the hull plane, N·m.</param>
    public JointState? UnderWithoutBond(double moment) => Joint?.WithoutBond().Solve(new(moment, 0, 0));

    /// <summary>The base in its box; null when the root is taken as clamped.</summary>
    /// <param name="force">Side force on the blade, N, not negative.</param>
    /// <param name="moment">Its moment at the hull plane, N·m, not negative.</param>
    public BaseInBoxState? InBox(double force, double moment) => Kind is RootHold.Clamped ? null : Box.Solve(force, moment);

    /// <summary>Stiffness at a bending moment over that of the closed joint, above 0 and not above 1.</summary>
    /// <param name="moment">Moment about x at the hull plane, N·m.</param>
    public double StiffnessShare(double moment)
    {
        if (Kind is RootHold.Clamped || Joint is null || Math.Abs(moment) <= SmallMoment)
            return 1;
        JointState state = Joint.Solve(new(moment, 0, 0));
        // A joint that nothing holds, or whose rods are slack, has no stiffness to speak of; the least keeps the plate solvable, and the verdict speaks of the joint.
        double joint = state.HasAnswer ? state.SecantStiffnessX : 0;
        return Math.Clamp(1 / (1 / BoxStiffness + 1 / joint) / ClosedStiffness, 1e-3, 1);
    }

    /// <summary>The plate's root: clamped, or springs over the length on which blade and base lie on each other.</summary>
    public PlateRoot PlateRoot()
    {
        if (Kind is RootHold.Clamped)
            return Plates.PlateRoot.Clamped;
        (double from, double to, double length) = (_from, _to, _to - _from);
        if (!(length > 0))
            return Plates.PlateRoot.Elastic(_ => default);
        // The base turns as a whole, and a face holds against turning by the cube of its width: springs against bending go with the cube of the blade's thickness, so that the root turns by moment over stiffness.
        Func<double, double> half = _half;
        double cubes = 0;
        for (int i = 0; i < RootSteps; i++)
            cubes += Math.Pow(half(from + (i + 0.5) * length / RootSteps), 3) * length / RootSteps;
        // Against moving sideways the base bears on the box, as stiff as it is against turning at its own depth; against twisting it bears at both ends, which the same springs do. The joint gives in bending only.
        double bending = ClosedStiffness / cubes, deflection = BoxStiffness / length / (Plan.Depth * Plan.Depth);
        return Plates.PlateRoot.Elastic(x => x >= from && x <= to ? new(deflection, bending * Math.Pow(half(x), 3), 0) : default);
    }
}
