using Finwright.Strength.FromDesign;
using Finwright.Strength.Joints;
using Finwright.Strength.Materials;

namespace Finwright.Assessment.Loaded;

/// <summary>How hard one bolt may be tightened.</summary>
/// <param name="Name">The bolt.</param>
/// <param name="Advice">The advice.</param>
public sealed record NutTorque(string Name, TorqueAdvice Advice)
{
    // Tapered boxes stand about as much push along the board as hand-tight bolts make of it; three times that is asked of nobody (judgement).
    private const double SpreadingPressure = 10e6;

    // Between base and box, plastic on plastic (from memory).
    private const double Friction = 0.2;

    /// <summary>Advice for every bolt of a fin.</summary>
    /// <param name="structure">The fin.</param>
    /// <param name="overload">What a gust or landing does; null when it was not worked out, so that nothing asks for a least torque.</param>
    public static IReadOnlyList<NutTorque> Of(FinStructure structure, CaseLoaded? overload)
    {
        ArgumentNullException.ThrowIfNull(structure);
        FinMaterials materials = structure.Materials;
        RootHolding root = structure.Root;
        int bolts = root.Ties.Count(tie => tie.Seat is not null) + root.BaseNuts.Count;
        double lean = (root.Plan.FrontAngle + root.Plan.RearAngle) / 2;
        double? spreading = lean > 0 && bolts > 0
            ? new TaperedEnds(lean, Friction).PullThatSpreads(SpreadingPressure * root.Box.Width * root.Box.Depth) / bolts
            : null;
        // A bond that holds keeps the joint closed by itself.
        double closes = root.Joint is { } joint && overload is { Joint.Status: not JointStatus.Bonded } ? joint.PreloadFactorToStayClosed(new(overload.RootMoment, 0, 0)) : 0;
        List<NutTorque> advice = [];
        foreach (JointTie tie in root.Ties)
        {
            if (tie.Seat is { } seat)
                advice.Add(new(tie.Name, TighteningTorque.Of(seat, materials.Bolt, materials.Around, structure.Direction, double.IsFinite(closes) ? closes * tie.Tie.Preload : 0, spreading)));
        }

        foreach (BaseNut nut in root.BaseNuts)
            advice.Add(new(nut.Name, TighteningTorque.Of(nut.Seat, materials.Bolt, materials.Around, structure.Direction, 0, spreading)));
        return advice;
    }
}
