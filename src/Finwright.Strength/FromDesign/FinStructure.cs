using Finwright.Design;
using Finwright.Geometry.Blades;
using Finwright.Geometry.FromDesign;
using Finwright.Numerics;
using Finwright.Strength.Beams;
using Finwright.Strength.Joints;
using Finwright.Strength.Materials;
using Finwright.Strength.Plates;
using Finwright.Strength.Sections;

namespace Finwright.Strength.FromDesign;

/// <summary>What a section at one depth resists.</summary>
/// <param name="Cut">Depth and stiffness, with what the bench showed; a tip that draws together counts as its last wide section.</param>
/// <param name="LeadingEdge">x of its leading edge, metres.</param>
/// <param name="Chord">Metres.</param>
/// <param name="Thickness">Greatest, metres.</param>
public sealed record SectionAtDepth(BladeSection Cut, double LeadingEdge, double Chord, double Thickness)
{
    /// <summary>Metres.</summary>
    public double Depth => Cut.Y;

    /// <summary>What it resists with.</summary>
    public SectionStiffness Stiffness => Cut.Stiffness;
}

/// <summary>A cut across the blade that is bonded again.</summary>
/// <param name="Depth">Where it crosses the quarter-chord line, metres.</param>
/// <param name="Slope">Radians, positive when it goes deeper toward the trailing edge.</param>
public readonly record struct BondedCut(double Depth, double Slope);

/// <summary>A design's structure: plate, sections, beam, root, ready for loads.</summary>
public sealed class FinStructure
{
    private FinStructure(FinMaterials materials, PrintDirection direction, RootHolding root, PlateModel plate, IReadOnlyList<SectionAtDepth> sections, IReadOnlyList<BondedCut> cuts, double rootFillet, bool endsInJoint)
    {
        (Materials, Direction, Root, Plate, Sections) = (materials, direction, root, plate, sections);
        (Cuts, RootFillet, EndsInJoint) = (cuts, rootFillet, endsInJoint);
        Beam = BladeBeam.Sideways([.. sections.Select(own => own.Cut)]);
    }

    /// <summary>What the fin is made of.</summary>
    public FinMaterials Materials { get; }

    /// <summary>How the blade is printed.</summary>
    public PrintDirection Direction { get; }

    /// <summary>How the root is held.</summary>
    public RootHolding Root { get; }

    /// <summary>The blade as a plate on a closed joint, with what the bench showed.</summary>
    public PlateModel Plate { get; }

    /// <summary>Sections from the root down.</summary>
    public IReadOnlyList<SectionAtDepth> Sections { get; }

    /// <summary>Cuts that the design gives; cuts that are only proposed are not among them.</summary>
    public IReadOnlyList<BondedCut> Cuts { get; }

    /// <summary>The blade as a beam that is clamped at the hull plane: a second opinion.</summary>
    public BeamModel Beam { get; }

    /// <summary>Radius of the fillet at the root, metres; 0 for a sharp corner.</summary>
    public double RootFillet { get; }

    /// <summary>Whether the blade ends at a joint in the hull plane, so that no corner is bent there.</summary>
    public bool EndsInJoint { get; }

    /// <summary>The factors at which everything is computed.</summary>
    public StiffnessFactors Factors => new(Materials.WallFactor.Value, Materials.CoreFactor.Value, Materials.RodFactor.Value);

    /// <summary>Pull that a bolt or rod across the joint bears before it, its nut or its bond gives, N.</summary>
    /// <param name="index">Its place in <see cref="RootHolding.Ties"/>.</param>
    public double TieStrength(int index) => TieStrengthRange(index).Value;

    /// <summary>The same with its range.</summary>
    /// <param name="index">Its place in <see cref="RootHolding.Ties"/>.</param>
    public Ranged TieStrengthRange(int index)
    {
        JointTie tie = Root.Ties[index];
        if (tie is not { Thread: { } thread, Seat: { } seat })
        {
            Ranged bond = RodBond.Pull(Diameter(tie.Tie.Area), tie.BondedLength, Materials.Rod.BondStrength), rod = Materials.Rod.TensileStrength.Times(tie.Tie.Area);
            return bond.Value < rod.Value ? bond : rod;
        }

        Ranged yields = ThreadStrength.YieldPull(thread, Materials.Bolt), sinks = seat.BearingPull(Materials.Around), comesOut = seat.PullOut(Materials.Around);
        return new[] { yields, sinks, comesOut }.MinBy(pull => pull.Value);
    }

    private static double Diameter(double area) => Math.Sqrt(4 * area / Math.PI);

    /// <summary>The blade on its joint as it is under a bending moment at the root.</summary>
    /// <param name="moment">Moment about x at the hull plane, N·m.</param>
    public PlateModel PlateUnder(double moment) => PlateUnder(moment, Factors);

    /// <summary>The same with other factors on wall, core and rods.</summary>
    /// <param name="moment">Moment about x at the hull plane, N·m.</param>
    /// <param name="factors">Factors; that of the root times what the joint gives.</param>
    public PlateModel PlateUnder(double moment, StiffnessFactors factors)
    {
        ArgumentNullException.ThrowIfNull(factors);
        StiffnessFactors whole = factors with { Root = factors.Root * Root.StiffnessShare(moment) };
        return whole == Plate.Factors ? Plate : Plate.With(whole);
    }

    /// <summary>Takes the structure from a design.</summary>
    /// <param name="design">Every value within the range of its field; material files taken in.</param>
    /// <param name="blade">The blade of the same design.</param>
    /// <param name="findings">Receives what was found.</param>
    /// <returns>The structure; null when an error was found.</returns>
    public static FinStructure? Of(FinDesign design, Blade blade, ICollection<Finding> findings)
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(blade);
        ArgumentNullException.ThrowIfNull(findings);
        if (MaterialsFromDesign.Of(design, findings) is not { } materials || Place(design, blade, findings) is not { } placed)
            return null;
        PrintDirection direction = design.Parts.BladeAttitude == PrintAttitude.Lying ? PrintDirection.Lying : PrintDirection.Standing;
        RootHolding root = JointFromDesign.Of(design, blade, placed, materials);
        if (!(root.ClosedStiffness > 0))
        {
            findings.Add(new(
                "joint-not-held",
                Severity.Error,
                "$.base.fixing",
                "Nothing holds the blade to its base: no bolt or rod crosses the joint, and a bond of the faces is not counted on.",
                "Let bolts, clamp rods or carbon rods run from the base into the blade, print both as one, or, for a bond that was proved, set materials.root_bonded. With base.root_hold elastic the joint is taken as whole."));
            return null;
        }

        BladeStructure structure = new(design, blade, placed.Features, materials, direction);
        StiffnessFactors factors = new(materials.WallFactor.Value, materials.CoreFactor.Value, materials.RodFactor.Value);
        PlateModel plate;
        IReadOnlyList<SectionAtDepth> sections;
        try
        {
            plate = PlateModel.Create(structure.Plate(root.PlateRoot())).With(factors);
            sections = [.. BladeBeam.Sections(With(plate.Fin, factors)).Select(cut => Section(blade, cut))];
        }
        catch (ArgumentException problem)
        {
            // An outline that can be drawn and printed, and that neither plate nor sections can be laid on.
            findings.Add(new("no-plate", Severity.Error, "$.shape.outline", $"How the blade bends cannot be worked out: {problem.Message.Split(" (Parameter", 2)[0]}", "Look at outline.svg and sections.svg, and smooth what looks odd."));
            return null;
        }

        if (plate.Status is not PlateStatus.Solved)
        {
            findings.Add(new("blade-not-held", Severity.Error, "$.base.blade_offset_mm", "The base holds too little of the blade's root to work out how it bends.", "Bring the blade over the base, or take a longer base."));
            return null;
        }

        bool endsInJoint = design.Base.Printed == BasePrinting.Separate;
        return new(materials, direction, root, plate, sections, [.. design.Parts.Cuts.Select(cut => new BondedCut(cut.AtDepthMm * 1e-3, double.DegreesToRadians(cut.SlopeDegrees)))], design.Shape.Flange is { } flange ? flange.FilletMm * 1e-3 : 0, endsInJoint);
    }

    // A root that is held in a block does not ask how bolts would hold it: they may still stand in the way of one another.
    private static PlacedHardware? Place(FinDesign design, Blade blade, ICollection<Finding> findings)
    {
        if (design.Base.RootHold is not RootHold.Clamped)
            return FinSolids.Place(design, blade, findings);
        FinDesign unbolted = design with { Base = design.Base with { Fixing = Fixing.BaseOnly }, Hardware = design.Hardware with { ClampRods = [] } };
        return FinSolids.Place(unbolted, blade, findings);
    }

    private static PlateFin With(PlateFin fin, StiffnessFactors factors) => fin with
    {
        Wall = fin.Wall.Times(factors.Wall),
        Core = fin.Core.Times(factors.Core),
        Rods = [.. fin.Rods.Select(rod => rod with { Modulus = factors.Rod * rod.Modulus })],
    };

    private static SectionAtDepth Section(Blade blade, BladeSection cut)
    {
        double chord = blade.Outline.Chord(cut.Y);
        return new(cut, blade.Outline.LeadingEdge(cut.Y), chord, blade.ThicknessRatio(cut.Y) * chord);
    }
}
