using Finwright.Strength.Beams;
using Finwright.Strength.FromDesign;
using Finwright.Strength.Grounding;
using Finwright.Strength.Joints;
using Finwright.Strength.Materials;
using Finwright.Strength.Plates;
using Finwright.Water.Sailing;

namespace Finwright.Assessment.Loaded;

/// <summary>What the blade, its joint and their give do when the leading edge near the tip strikes hard ground.</summary>
internal static class GroundingWork
{
    // Friction between edge and ground, between wet stone and sand (judgement).
    private const double Friction = 0.45;

    // A steeper edge lies on the ground rather than strikes it, radians (80 degrees).
    private const double SteepestEdge = 80 * Math.PI / 180;

    // Where along the span the leading edge's lean is taken: its outer half, short of a rounded tip.
    private const double LeanFrom = 0.5, LeanTo = 0.9;

    // A joint is searched up to this many times the force at which the blade gives; beyond it the blade decides.
    private const int Halvings = 40;

    /// <summary>Works out the strike.</summary>
    public static GroundStrike Of(FinStructure structure, LoadCase load)
    {
        PlateFin fin = structure.Plate.Fin;
        IReadOnlyList<SectionAtDepth> sections = structure.Sections;
        double depth = sections[^1].Depth;
        double blade = EdgewiseCompliance.At(BladeBeam.Edgewise([.. sections.Select(own => own.Cut)]), depth);
        List<double> compliances = [blade];
        if (structure.Root.Joint is { } joint && joint.Solve(new(0, -1e-3 * depth, 0)) is { HasAnswer: true } tight)
            compliances.Add(depth * depth / tight.TangentStiffnessZ);
        double lean = Math.Atan2(fin.LeadingEdge(LeanTo * fin.Span) - fin.LeadingEdge(LeanFrom * fin.Span), (LeanTo - LeanFrom) * fin.Span);
        double mass = load.ImpactForce / new CaseEstimates().GroundingDeceleration;
        Strike strike = new() { Mass = mass, Compliances = compliances, EdgeLean = Math.Clamp(lean, 0, SteepestEdge), Friction = Friction };
        (double force, string what) = Bearable(structure, depth);
        StrikeResult result = strike.At(load.Speed);
        // Blade and joint are bent fore and aft by the push aft alone.
        double perSpeed = result.AftForce / load.Speed;
        return new()
        {
            Load = load,
            Mass = mass,
            Compliance = 1 / strike.Stiffness,
            BearableForce = force,
            GivesFirst = what,
            BearableSpeed = force / perSpeed,
            ForceAtSpeed = result.AftForce,
            RidesUp = result.RidesUp,
        };
    }

    private static (double Force, string What) Bearable(FinStructure structure, double depth)
    {
        PrintedPlastic printed = structure.Materials.Printed;
        double modulus = structure.Materials.WallFactor.Value * (structure.Direction is PrintDirection.Standing ? printed.ModulusAcross.Value : printed.ModulusAlong.Value);
        double strength = printed.StrengthAlongSpan(structure.Direction).Value;
        (double force, string what) = (double.MaxValue, "the blade");
        foreach (SectionAtDepth own in structure.Sections.Where(own => own.Depth < depth))
        {
            // The edge that is pulled is the leading one, towards the strike.
            double reach = own.Stiffness.Centroid - structure.Plate.Fin.LeadingEdge(own.Depth);
            double bears = strength * own.Stiffness.EdgeRigidity / (modulus * reach * (depth - own.Depth));
            if (bears < force)
                (force, what) = (bears, $"the leading edge of the blade {1e3 * own.Depth:0} mm below the hull");
        }

        if (structure.Root.Joint is { } joint)
        {
            double held = LargestHeld(structure, joint, depth, force);
            if (held < force)
                (force, what) = (held, "the joint between blade and base");
        }

        return (force, what);
    }

    private static double LargestHeld(FinStructure structure, CrackedSection joint, double depth, double most)
    {
        if (Holds(most))
            return most;
        double low = 0, high = most;
        for (int i = 0; i < Halvings; i++)
        {
            double middle = (low + high) / 2;
            (low, high) = Holds(middle) ? (middle, high) : (low, middle);
        }

        return low;

        bool Holds(double force)
        {
            JointState state = joint.Solve(new(0, -force * depth, 0));
            if (!state.HasAnswer)
                return false;
            for (int i = 0; i < state.Tensions.Count; i++)
                if (state.Tensions[i] > structure.TieStrength(i))
                    return false;
            return true;
        }
    }
}
