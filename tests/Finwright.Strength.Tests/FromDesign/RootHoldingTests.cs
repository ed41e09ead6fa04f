using Finwright.Strength.FromDesign;
using Finwright.Strength.Plates;

namespace Finwright.Strength.Tests.FromDesign;

public sealed class RootHoldingTests
{
    private static readonly RootHolding Root = BuiltFin.Of(BuiltFin.Bare("fairway-upright")).Root;

    [Fact]
    public void StiffnessShare_is_one_until_the_joint_opens_and_falls_from_there()
    {
        double opens = Root.Joint!.OpeningFactor(new(1, 0, 0));
        Assert.Equal(1, Root.StiffnessShare(0));
        foreach (double share in (double[])[0.2, 0.6, 0.99])
            Assert.Equal(1, Root.StiffnessShare(share * opens), 1e-9);
        double before = 1;
        foreach (double share in (double[])[1.2, 1.5, 2, 3, 5])
        {
            double now = Root.StiffnessShare(share * opens);
            Assert.InRange(now, 1e-3, before - 1e-6);
            before = now;
        }
    }

    [Fact]
    public void StiffnessShare_is_that_of_springs_in_a_row()
    {
        double moment = 2 * Root.Joint!.OpeningFactor(new(1, 0, 0)), turn = moment / Root.BoxStiffness + Root.Under(moment)!.RotationX;
        Assert.Equal(moment / turn / Root.ClosedStiffness, Root.StiffnessShare(moment), 1e-9);
    }

    [Fact]
    public void StiffnessShare_is_the_same_to_either_side_of_an_even_joint() => Assert.Equal(Root.StiffnessShare(60), Root.StiffnessShare(-60), 1e-9);

    [Fact]
    public void StiffnessShare_never_comes_to_nothing() => Assert.InRange(Root.StiffnessShare(1e6), 1e-3, 1);

    [Fact]
    public void StiffnessShare_of_a_block_round_the_root_is_one()
    {
        RootHolding clamped = BuiltFin.Of(BuiltFin.Plain).Root;
        Assert.Equal(1, clamped.StiffnessShare(1000));
        Assert.Null(clamped.Under(1000));
        Assert.Same(PlateRoot.Clamped, clamped.PlateRoot());
    }
}
