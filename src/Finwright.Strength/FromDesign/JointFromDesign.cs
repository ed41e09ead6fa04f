using Finwright.Design;
using Finwright.Geometry;
using Finwright.Geometry.Bases;
using Finwright.Geometry.Blades;
using Finwright.Geometry.Features;
using Finwright.Geometry.FromDesign;
using Finwright.Numerics;
using Finwright.Strength.Joints;
using Finwright.Strength.Materials;

namespace Finwright.Strength.FromDesign;

/// <summary>From the design's base, bolts and rods to the joint at the hull plane and the base in its box.</summary>
internal static class JointFromDesign
{
    // Points along each side of the face where blade and base meet.
    private const int FaceSteps = 40;

    // A bonded rod takes over its force over about this many diameters to each side of the joint (judgement).
    private const double TakeUpDiameters = 4;

    // Bolts are taken as tightened by hand, but no harder than to this share of what nut and print bear: beyond it the hand feels the print give (judgement).
    private const double TightenedShare = 0.6;

    // A flange bears beside the blade over about this many times its own thickness before it bends away (judgement).
    private const double FlangeReach = 2;

    // Least overlap of blade and base that can be called a face, metres.
    private const double LeastFace = 10e-3;

    // A pocket that reaches its face still leaves a skin, metres; the checks of the design have refused less.
    private const double LeastCover = 1e-4;

    /// <summary>Works out how the root is held.</summary>
    /// <param name="design">Every value within the range of its field.</param>
    /// <param name="blade">The blade.</param>
    /// <param name="placed">Base, bores and pockets in their places.</param>
    /// <param name="materials">What the fin is made of.</param>
    public static RootHolding Of(FinDesign design, Blade blade, PlacedHardware placed, FinMaterials materials)
    {
        BasePlan plan = placed.Base;
        BaseInBox box = new()
        {
            Length = plan.HullLength,
            Width = (plan.HullWidth + plan.DeepWidth) / 2,
            Depth = (plan.FrontDepth + plan.RearDepth) / 2,
            Clearance = design.Base.Measured is { } measured && design.Base.Box == BoxKind.Measured ? measured.ClearanceMm * 1e-3 : 0,
        };
        // The base bends across the fin like the blade: across its layers when it stands on the printer, along them when it lies.
        bool lies = design.Parts.BaseAttitude == PrintAttitude.Lying || design.Base.Printed == BasePrinting.AsOne && design.Parts.BladeAttitude == PrintAttitude.Lying;
        Ranged modulus = lies ? materials.Printed.ModulusAlong : materials.Printed.ModulusAcross;
        double stiffness = box.RotationStiffness((modulus.Value + materials.Core.Modulus.Value) / 2, materials.Core.ShearModulus.Value);
        JointTie[] ties = [.. Ties(design, blade, placed, materials)];
        bool opens = design.Base.RootHold == RootHold.Joint && design.Base.Printed == BasePrinting.Separate && Face(design, blade, plan) is not null;
        CrackedSection? joint = opens ? Joint(design, blade, plan, materials, ties) : null;
        double from = Math.Max(blade.Outline.LeadingEdge(0), plan.FrontX), to = Math.Min(blade.Outline.TrailingEdge(0), plan.RearX);
        return new(design.Base.RootHold, box, lies, stiffness, joint, ties, [.. BaseNuts(design, placed)], plan, from, to, x => blade.HalfThickness(x, 0));
    }

    private static CrackedSection Joint(FinDesign design, Blade blade, BasePlan plan, FinMaterials materials, IReadOnlyList<JointTie> ties)
    {
        Footprint face = Face(design, blade, plan)!;
        double? bond = design.Materials.RootBonded ? materials.FaceBond.Value : null;
        return new(face, materials.Core.Modulus.Value, plan.HullWidth, [.. ties.Select(tie => tie.Tie)], bond);
    }

    /// <summary>Where the blade's root lies on the base, and its flange on base and hull; null when they hardly meet.</summary>
    private static Footprint? Face(FinDesign design, Blade blade, BasePlan plan)
    {
        double around = design.Shape.Flange is { } flange ? 1e-3 * Math.Min(flange.OverhangMm, FlangeReach * flange.ThicknessMm) : 0;
        double leading = blade.Outline.LeadingEdge(0), trailing = blade.Outline.TrailingEdge(0);
        // Without a flange only what lies over the base bears; with one the hull's underside bears as well.
        double from = around > 0 ? leading - around : Math.Max(leading, plan.FrontX), to = around > 0 ? trailing + around : Math.Min(trailing, plan.RearX);
        if (Math.Min(to, plan.RearX) - Math.Max(from, plan.FrontX) < LeastFace)
            return null;
        double edge = around > 0 ? double.MaxValue : plan.HullWidth / 2;
        List<FootprintPoint> starboard = [], port = [];
        for (int i = 0; i <= FaceSteps; i++)
        {
            // Closer together at the ends, where a nose is round.
            double x = from + (to - from) * (1 - Math.Cos(Math.PI * i / FaceSteps)) / 2, inside = Math.Clamp(x, leading, trailing);
            double middle = blade.MidSurface(inside, 0), half = blade.HalfThickness(inside, 0) + around * Math.Sqrt(Math.Max(0, 1 - Square((x - inside) / Math.Max(around, double.Epsilon))));
            double high = Math.Min(middle + half, edge), low = Math.Max(middle - half, -edge);
            if (high <= low)
                continue;
            starboard.Add(new(x, high));
            port.Add(new(x, low));
        }

        port.Reverse();
        return starboard.Count < 2 ? null : new([.. starboard, .. port]);
    }

    private static double Square(double x) => x * x;

    private static IEnumerable<JointTie> Ties(FinDesign design, Blade blade, PlacedHardware placed, FinMaterials materials)
    {
        double allowance = design.Print.BoreAllowanceMm * 1e-3;
        foreach (PlacedFeature bore in placed.Features)
        {
            Point3 from = bore.Volume.From, to = bore.Volume.To;
            if (!(Math.Min(from.Y, to.Y) < 0 && Math.Max(from.Y, to.Y) > 0))
                continue;
            double share = from.Y / (from.Y - to.Y), x = from.X + share * (to.X - from.X), z = from.Z + share * (to.Z - from.Z), diameter = bore.Volume.Diameter - allowance;
            if (bore.Kind is FeatureKind.CarbonRodBore)
            {
                double shorter = Math.Min(Math.Abs(from.Y), Math.Abs(to.Y));
                yield return new(bore.Name.Split(':')[0], new()
                {
                    X = x,
                    Z = z,
                    Area = Math.PI * diameter * diameter / 4,
                    Modulus = materials.Rod.Modulus.Value,
                    FreeLength = 2 * Math.Min(TakeUpDiameters * diameter, shorter),
                    CarriesCompression = true,
                }, null, null, shorter);
            }
            else if (bore.Kind is FeatureKind.BoltBore or FeatureKind.ClampRodBore && MetricThread.All.MinBy(own => Math.Abs(own.Diameter - diameter)) is { } thread)
            {
                PlacedFeature? pocket = placed.Features.FirstOrDefault(own => own.Kind is FeatureKind.NutPocket && own.Owner == bore.Owner);
                if (pocket is null || !pocket.IsInBlade)
                    continue;
                NutKind kind = bore.Kind is FeatureKind.BoltBore ? design.Hardware.BoxBolts.Nut : RodNut(design, bore);
                PlacedFeature? socket = placed.Features.FirstOrDefault(own => own.Kind is FeatureKind.SocketPocket && own.Owner == bore.Owner);
                Point3 nut = pocket.Volume.Middle, head = socket is null ? from.Y < to.Y ? from : to : socket.Volume.From.Y > socket.Volume.To.Y ? socket.Volume.From : socket.Volume.To;
                NutSeat seat = Seat(thread, kind, bore.Volume.Diameter, pocket, nut.Y, blade.HalfThickness(nut.X, nut.Y) - Math.Abs(blade.MidSurface(nut.X, nut.Y) - nut.Z));
                yield return new(bore.Name.Split(':')[0], new()
                {
                    X = x,
                    Z = z,
                    Area = ThreadStrength.StressArea(thread),
                    Modulus = materials.Bolt.Modulus.Value,
                    FreeLength = (nut - head).Length,
                    Preload = Math.Min(
                        ThreadStrength.Preload(thread, TighteningTorque.HandTight.Value).Value,
                        TightenedShare * Math.Min(seat.BearingPull(materials.Around).Value, seat.PullOut(materials.Around).Value)),
                }, thread, seat, 0);
            }
        }
    }

    private static NutKind RodNut(FinDesign design, PlacedFeature bore)
    {
        for (int i = 0; i < design.Hardware.ClampRods.Count; i++)
            if (bore.Owner == $"$.hardware.clamp_rods[{i}]")
                return design.Hardware.ClampRods[i].Nut;
        return NutKind.Hex;
    }

    /// <summary>Nuts of bolts that end in the base.</summary>
    private static IEnumerable<BaseNut> BaseNuts(FinDesign design, PlacedHardware placed)
    {
        double allowance = design.Print.BoreAllowanceMm * 1e-3;
        BasePlan plan = placed.Base;
        foreach (PlacedFeature bore in placed.Features.Where(own => own.Kind is FeatureKind.BoltBore))
        {
            PlacedFeature? pocket = placed.Features.FirstOrDefault(own => own.Kind is FeatureKind.NutPocket && own.Owner == bore.Owner);
            if (pocket is null || pocket.IsInBlade)
                continue;
            MetricThread thread = MetricThread.All.MinBy(own => Math.Abs(own.Diameter - bore.Volume.Diameter + allowance))!;
            Point3 nut = pocket.Volume.Middle, top = bore.Volume.From.Y < bore.Volume.To.Y ? bore.Volume.From : bore.Volume.To;
            yield return new(bore.Name.Split(':')[0], thread, Seat(thread, design.Hardware.BoxBolts.Nut, bore.Volume.Diameter, pocket, (nut - top).Length, plan.Width(nut.Y) / 2));
        }
    }

    /// <summary>A nut in its pocket.</summary>
    /// <param name="thread">Thread.</param>
    /// <param name="kind">Form.</param>
    /// <param name="bore">Bore of the bolt, metres.</param>
    /// <param name="pocket">Its pocket.</param>
    /// <param name="depth">From the face it is pulled towards to its middle, metres.</param>
    /// <param name="half">From its middle to the nearer side of the fin, metres.</param>
    private static NutSeat Seat(MetricThread thread, NutKind kind, double bore, PlacedFeature pocket, double depth, double half)
    {
        double halfHeight = (kind switch { NutKind.Cross => thread.CrossNut.Diameter, NutKind.Square => thread.SquareNut.Height, _ => thread.HexNut.Height }) / 2;
        double reach = pocket.Volume.Reach(new(0, 0, 1)) - pocket.Volume.Middle.Z;
        return new()
        {
            Thread = thread,
            Form = kind switch { NutKind.Cross => NutForm.Cross, NutKind.Square => NutForm.Square, _ => NutForm.Hexagon },
            Bore = bore,
            Cover = Math.Max(depth - halfHeight, LeastCover),
            SideWall = Math.Max(half - reach, LeastCover),
        };
    }
}
