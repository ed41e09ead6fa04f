using Finwright.Assessment.Afloat;
using Finwright.Assessment.Caching;
using Finwright.Assessment.Loaded;
using Finwright.Assessment.Made;
using Finwright.Assessment.Stages;
using Finwright.Design;
using Finwright.Geometry;
using Finwright.Geometry.Blades;
using Finwright.Geometry.FromDesign;
using Finwright.Making.FromDesign;
using Finwright.Strength.FromDesign;
using Finwright.Water.Polars;

namespace Finwright.Assessment;

/// <summary>The stages from a design to its printed parts, and to what it does in the water. This is the one place that knows their order and what each may read.</summary>
public static class FinStages
{
    /// <summary>Outline, sections, twist: the blade as a smooth surface.</summary>
    public static Stage<Blade> Shape { get; } = new(
        "shape",
        version: 1,
        "drawing the blade",
        share: 1,
        design => Blank(design),
        after: [],
        work => BladeFromDesign.Create(work.Design, work.Findings));

    /// <summary>The blade's closed skin.</summary>
    public static Stage<TriangleMesh> Skin { get; } = new(
        "skin",
        version: 2,
        "lofting the skin",
        share: 3,
        design => Blank(design),
        after: [Shape],
        work => BladeFromDesign.Skin(work.Design.Shape, work.Of(Shape), work.Findings));

    /// <summary>Base, bores, pockets, slot and cavities, placed, checked and written down; nothing is cut yet.</summary>
    public static Stage<FinSolids> Solid { get; } = new(
        "solid",
        version: 3,
        "placing rods, bolts and pockets",
        share: 3,
        design => Blank(design) with
        {
            Base = design.Base,
            Hardware = design.Hardware,
            Parts = new() { BladeAttitude = design.Parts.BladeAttitude, BaseAttitude = design.Parts.BaseAttitude },
            Print = Allowances(design.Print),
        },
        after: [Shape, Skin],
        work => SkinProof.Holds(work.Of(Skin), work.Kernel, work.Findings, work.Cancellation)
            ? FinSolids.Build(work.Design, work.Of(Shape), work.Of(Skin), work.Findings)
            : null);

    /// <summary>Everything cut, laid on the bed and spread over plates.</summary>
    public static Stage<PartPlan> Parts { get; } = new(
        "parts",
        version: 1,
        "cutting the parts and laying them on the bed",
        share: 20,
        design => Blank(design) with
        {
            Base = design.Base,
            Hardware = design.Hardware,
            Parts = design.Parts,
            Print = design.Print,
            Pour = new() { Ports = design.Pour.Ports },
        },
        after: [Shape, Solid],
        work => PartPlan.Build(work.Design, work.Of(Shape), work.Of(Solid), work.Kernel, work.Findings, work.Progress, work.Cancellation));

    /// <summary>What the sections do in the water, from root to tip.</summary>
    public static Stage<FinPolars> Polars { get; } = new(
        "polars",
        version: 1,
        "working out the flow past the sections",
        share: 40,
        design => Blank(design) with
        {
            Brief = new()
            {
                GettingGoingSpeedMPerS = design.Brief.GettingGoingSpeedMPerS,
                TopSpeedMPerS = design.Brief.TopSpeedMPerS,
                Water = design.Brief.Water,
                WaterTemperatureCelsius = design.Brief.WaterTemperatureCelsius,
                WaterState = design.Brief.WaterState,
            },
            // Bare print lines: their height, and which way they run. A sanded side does not remember.
            Parts = IsBare(design) ? new() { BladeAttitude = design.Parts.BladeAttitude } : new(),
            Print = IsBare(design) ? new() { LayerMm = design.Print.LayerMm } : new(),
        },
        after: [Shape],
        work => PolarsOfBlade.Solve(work.Design, work.Of(Shape), new KeptSectionCurves(OutwardCurves.By(SectionCurves.Solve), work.Curves).Solve, work.Progress, work.Cancellation));

    /// <summary>What the fin does when it sails, load case by load case.</summary>
    public static Stage<FinAfloat> Water { get; } = new(
        "water",
        version: 1,
        "sailing the fin",
        share: 4,
        design => Blank(design) with { Brief = design.Brief, Base = new() { BladeOffsetMm = design.Base.BladeOffsetMm } },
        after: [Shape, Polars],
        work => AfloatWork.Of(work.Design, work.Of(Shape), work.Of(Polars), work.Progress, work.Cancellation));

    /// <summary>The blade as a plate and a beam, and how its root is held.</summary>
    public static Stage<FinBuilt> Structure { get; } = new(
        "structure",
        version: 1,
        "laying out walls, core and rods",
        share: 2,
        design => Blank(design) with
        {
            Base = design.Base,
            Hardware = design.Hardware,
            Materials = design.Materials,
            Parts = new() { BladeAttitude = design.Parts.BladeAttitude, BaseAttitude = design.Parts.BaseAttitude, Cuts = design.Parts.Cuts },
            Print = Allowances(design.Print) with { Walls = design.Print.Walls, SolidLayers = design.Print.SolidLayers, InfillPercent = design.Print.InfillPercent },
        },
        after: [Shape],
        work => FinBuilt.Of(work.Design, work.Of(Shape)));

    /// <summary>How the fin swings, in air and in water.</summary>
    public static Stage<FinVibration> Vibration { get; } = new(
        "vibration",
        version: 1,
        "swinging the fin",
        share: 2,
        design => Blank(design) with { Brief = design.Brief },
        after: [Shape, Structure],
        work => FinVibration.Of(work.Design.Brief, work.Of(Shape), work.Of(Structure)));

    /// <summary>What the bench should show.</summary>
    public static Stage<FinOnBench> Bench { get; } = new(
        "bench",
        version: 1,
        "hanging a weight on the fin",
        share: 1,
        design => Blank(design) with { Prove = design.Prove },
        after: [Shape, Structure],
        work => FinOnBench.Of(work.Design.Prove, work.Of(Shape), work.Of(Structure)));

    /// <summary>What the loads of sailing do to the fin.</summary>
    public static Stage<FinLoaded> Loaded { get; } = new(
        "loaded",
        version: 1,
        "bending the fin",
        share: 4,
        design => Blank(design),
        after: [Structure, Water],
        work => LoadedWork.Of(work.Of(Structure), work.Of(Water), work.Progress, work.Cancellation));

    /// <summary>Every part layer by layer: plastic, time, stops.</summary>
    public static Stage<FinPrinted> Printed { get; } = new(
        "printed",
        version: 1,
        "laying the parts down layer by layer",
        share: 6,
        design => Blank(design) with { Print = design.Print },
        after: [Solid, Parts],
        work => PrintWork.Of(work.Design.Print, PartToMake.Of(work.Of(Parts), work.Of(Solid)), work.Of(Parts).Plates, work.Kernel, work.Findings, work.Progress, work.Cancellation));

    /// <summary>How every part is held and poured, and which air stays.</summary>
    public static Stage<FinPoured> Poured { get; } = new(
        "poured",
        version: 1,
        "filling the pores",
        share: 6,
        // How it is cooled, and when further pours come, matters to the cure alone.
        design => Blank(design) with { Pour = Warm(design.Pour), Print = design.Print },
        after: [Printed],
        work => ResinFromDesign.Of(work.Design.Pour.System, work.Findings) is { } resin
            ? PourWork.Of(work.Design.Pour, resin, work.Of(Printed).Parts, work.Findings, work.Progress, work.Cancellation)
            : null);

    /// <summary>How warm every part grows while it cures.</summary>
    public static Stage<FinCured> Cured { get; } = new(
        "cured",
        version: 1,
        "letting the resin cure",
        share: 40,
        design => Blank(design) with { Pour = design.Pour, Print = design.Print, Materials = new() { Printed = design.Materials.Printed } },
        after: [Poured],
        work => MaterialsFromDesign.Printed(work.Design.Materials.Printed, "$.materials.printed", work.Findings) is { } plastic
            ? CureWork.Of(work.Design.Pour, work.Design.Print, work.Of(Poured), plastic.SofteningTemperature.Value, work.Progress, work.Cancellation)
            : null);

    /// <summary>What the fin takes, costs, and how long it takes.</summary>
    public static Stage<FinPlan> Plan { get; } = new(
        "plan",
        version: 1,
        "adding up",
        share: 1,
        design => Blank(design) with { Parts = design.Parts, Pour = design.Pour, Prices = design.Prices },
        after: [Solid, Parts, Printed, Poured, Cured],
        work => PlanWork.Of(work.Design, work.Of(Solid), work.Of(Parts), work.Of(Printed), work.Of(Poured), work.Of(Cured)));

    private static Pour Warm(Pour pour)
    {
        Pour usual = new();
        return pour with { Cooling = usual.Cooling, BathCelsius = usual.BathCelsius, BathLevelPercent = usual.BathLevelPercent, BathHours = usual.BathHours, Stages = usual.Stages };
    }

    private static bool IsBare(FinDesign design) => design.Shape.StarboardFinish == Finish.BarePrint || design.Shape.PortFinish == Finish.BarePrint;

    /// <summary>The shape alone, all else at its default.</summary>
    private static FinDesign Blank(FinDesign design) => new() { Name = "", Shape = design.Shape };

    /// <summary>What placing features needs of the printer: not the bed, which only the layout reads.</summary>
    private static Print Allowances(Print print) => new()
    {
        LineWidthMm = print.LineWidthMm,
        LayerMm = print.LayerMm,
        BoreAllowanceMm = print.BoreAllowanceMm,
        PocketAllowanceMm = print.PocketAllowanceMm,
    };
}
