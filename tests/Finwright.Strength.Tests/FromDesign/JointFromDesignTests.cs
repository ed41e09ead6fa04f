using Finwright.Design;
using Finwright.Geometry.Blades;
using Finwright.Geometry.Features;
using Finwright.Geometry.FromDesign;
using Finwright.Strength.FromDesign;
using Finwright.Strength.Joints;

namespace Finwright.Strength.Tests.FromDesign;

public sealed class JointFromDesignTests
{
    [Fact]
    public void Of_bolts_through_the_base_ties_the_joint_where_they_cross_the_hull_plane()
    {
        FinDesign design = BuiltFin.Bare("fairway-upright");
        Blade blade = BuiltFin.Blade(design);
        PlacedHardware placed = BuiltFin.Placed(design);
        RootHolding root = BuiltFin.Of(design).Root;
        PlacedFeature[] bores = [.. placed.Features.Where(own => own.Kind is FeatureKind.BoltBore)];
        Assert.Equal(2, bores.Length);
        foreach (JointTie own in root.Ties)
        {
            HoldsAtHullPlane(own, bores.Single(bore => bore.Name.StartsWith(own.Name + ":", StringComparison.Ordinal)).Volume);
            PlacedFeature pocket = placed.Features.Single(pocket => pocket.Kind is FeatureKind.NutPocket && pocket.Name.StartsWith(own.Name + ":", StringComparison.Ordinal));
            Assert.Equal(MetricThread.M6, own.Thread);
            Assert.Equal(0, own.Tie.Z, 1e-9);
            Assert.False(own.Tie.CarriesCompression);
            Assert.InRange(own.Tie.Preload, 100, 10e3);
            // From the hull plane to the nut's nearer side.
            Assert.Equal(pocket.Volume.Middle.Y - MetricThread.M6.HexNut.Height / 2, own.Seat!.Cover, 1e-9);
            // From the pocket's side to the skin; the pocket carries its allowance.
            double pocketHalf = pocket.Volume.Reach(new(0, 0, 1));
            Assert.Equal(blade.HalfThickness(pocket.Volume.Middle.X, pocket.Volume.Middle.Y) - pocketHalf, own.Seat.SideWall, 1e-9);
            Assert.InRange(pocketHalf, MetricThread.M6.HexNut.AcrossFlats / 2, MetricThread.M6.HexNut.AcrossFlats / Math.Sqrt(3) + 1e-3);
            // The bolt stretches from its head on the deck's side to the nut.
            Assert.True(own.Tie.FreeLength > pocket.Volume.Middle.Y);
        }

        Assert.NotNull(root.Joint);
        Assert.Empty(root.BaseNuts);
    }

    [Fact]
    public void Of_clamp_rods_finds_them_with_their_lean()
    {
        FinDesign design = BuiltFin.Bare("sandbar-delta");
        RootHolding root = BuiltFin.Of(design).Root;
        Assert.Equal(2, root.Ties.Count);
        PlacedFeature[] bores = [.. BuiltFin.Placed(design).Features.Where(own => own.Kind is FeatureKind.ClampRodBore)];
        foreach (JointTie own in root.Ties)
        {
            Assert.Equal(MetricThread.M6, own.Thread);
            HoldsAtHullPlane(own, bores.Single(bore => bore.Name.StartsWith(own.Name + ":", StringComparison.Ordinal)).Volume);
            Assert.NotNull(own.Seat);
        }

        // The box's own bolts end in the base.
        Assert.Equal(2, root.BaseNuts.Count);
    }

    [Fact]
    public void Of_rods_into_the_base_ties_the_joint_by_their_bond()
    {
        RootHolding root = BuiltFin.Of(Rods()).Root;
        Assert.Equal(2, root.Ties.Count);
        (double Length, double Free)[] expected = [(22e-3, 2 * 16e-3), (8e-3, 2 * 8e-3)]; // four diameters to each side, or as far as the rod goes
        for (int i = 0; i < expected.Length; i++)
        {
            JointTie own = root.Ties[i];
            Assert.Null(own.Seat);
            Assert.True(own.Tie.CarriesCompression);
            Assert.Equal(0, own.Tie.Preload);
            Assert.Equal(Math.PI * 4e-6, own.Tie.Area, 1e-12);
            Assert.Equal(expected[i].Length, own.BondedLength, 1e-9);
            Assert.Equal(expected[i].Free, own.Tie.FreeLength, 1e-9);
        }
    }

    [Fact]
    public void TieStrength_of_a_rod_is_its_bond_and_grows_with_its_length()
    {
        FinStructure fin = BuiltFin.Of(Rods());
        // π d L τ, both far below the rod's own strength.
        Assert.Equal(Math.PI * 4e-3 * 22e-3 * fin.Materials.Rod.BondStrength.Value, fin.TieStrength(0), 1e-6);
        Assert.Equal(fin.TieStrength(0) * 8 / 22, fin.TieStrength(1), 1e-6);
        Assert.True(fin.TieStrengthRange(0).Low < fin.TieStrength(0));
    }

    [Fact]
    public void Of_a_flange_widens_the_face_and_closes_it_longer()
    {
        FinDesign design = BuiltFin.Bare("fairway-upright");
        JointLoad moment = new(1, 0, 0);
        double Opens(Flange? flange) => BuiltFin.Of(design with { Shape = design.Shape with { Flange = flange } }).Root.Joint!.OpeningFactor(moment);
        double bare = Opens(null), narrow = Opens(new() { OverhangMm = 3, ThicknessMm = 4, FilletMm = 2 }), wide = Opens(new() { OverhangMm = 8, ThicknessMm = 4, FilletMm = 2 }), thin = Opens(new() { OverhangMm = 12, ThicknessMm = 4, FilletMm = 2 });
        Assert.True(bare < narrow && narrow < wide);
        // Beyond twice its thickness it bends away.
        Assert.Equal(wide, thin, 1e-6 * wide);
    }

    [Fact]
    public void Of_one_print_or_a_joint_that_is_taken_as_whole_has_nothing_to_open()
    {
        FinDesign design = BuiltFin.Bare("fairway-upright");
        FinDesign Held(RootHold hold, BasePrinting printing) => design with { Base = design.Base with { RootHold = hold, Printed = printing }, Hardware = design.Hardware with { CarbonRods = [] } };
        Assert.NotNull(BuiltFin.Of(Held(RootHold.Joint, BasePrinting.Separate)).Root.Joint);
        Assert.Null(BuiltFin.Of(Held(RootHold.Elastic, BasePrinting.Separate)).Root.Joint);
        Assert.Null(BuiltFin.Of(Held(RootHold.Clamped, BasePrinting.Separate)).Root.Joint);
        FinStructure one = BuiltFin.Of(Held(RootHold.Joint, BasePrinting.AsOne));
        Assert.Null(one.Root.Joint);
        Assert.False(one.EndsInJoint);
    }

    [Fact]
    public void Of_a_joint_that_nothing_ties_says_so_and_what_to_do()
    {
        FinDesign untied = BuiltFin.Plain with { Base = BuiltFin.Plain.Base with { RootHold = RootHold.Joint } };
        List<Finding> findings = [];
        Assert.Null(FinStructure.Of(untied, BuiltFin.Blade(untied), findings));
        Assert.Equal("joint-not-held", Assert.Single(findings, finding => finding.IsError).Code);
        // A proved bond holds it, until it lets go.
        RootHolding bonded = BuiltFin.Of(untied with { Materials = new() { RootBonded = true } }).Root;
        Assert.Equal(JointStatus.Bonded, bonded.Under(5)!.Status);
        Assert.False(bonded.Under(500)!.HasAnswer);
        Assert.Equal(1e-3, bonded.StiffnessShare(500), 1e-12);
    }

    private static FinDesign Rods()
    {
        FinDesign bare = BuiltFin.Bare("eelgrass-rake");
        return bare with { Hardware = bare.Hardware with { CarbonRods = [new() { RootChordPercent = 30, IntoBaseMm = 22 }, new() { RootChordPercent = 60, IntoBaseMm = 8 }] } };
    }

    // Where the straight line through both ends of the bore crosses y = 0.
    private static void HoldsAtHullPlane(JointTie tie, FeatureVolume bore)
    {
        (double fromX, double fromY, double toX, double toY) = (bore.From.X, bore.From.Y, bore.To.X, bore.To.Y);
        Assert.Equal(0, (tie.Tie.X - fromX) * (toY - fromY) + fromY * (toX - fromX), 1e-9);
    }
}
