using CsCheck;
using Finwright.Design;
using Finwright.Geometry.Parts;

namespace Finwright.Geometry.Tests.Parts;

public sealed class CutProposalTests
{
    private static readonly StraightBlade Bar = new(0.05, 0.05, 0.4, 0, 0.1);

    [Fact]
    public void Find_blade_that_fits_needs_no_cut() =>
        Assert.Empty(CutProposal.Find(Bar.Mesh(), Bar.Span, [], Standing, new(0.2, 0.2, 0.41, 0))!);

    [Fact]
    public void Find_bar_of_twice_the_height_is_cut_in_two_even_pieces()
    {
        // 0.4 m on a printer 0.25 m high: two pieces of 0.2 m, to the grid of 1.6 mm.
        double cut = Assert.Single(CutProposal.Find(Bar.Mesh(), Bar.Span, [], Standing, new(0.2, 0.2, 0.25, 0))!);
        Assert.Equal(0.2, cut, 1.7e-3);
    }

    [Fact]
    public void Find_forbidden_depth_moves_the_cut_aside()
    {
        double cut = Assert.Single(CutProposal.Find(Bar.Mesh(), Bar.Span, [(0.19, 0.215)], Standing, new(0.2, 0.2, 0.25, 0))!);
        Assert.False(cut is >= 0.19 and <= 0.215);
        Assert.InRange(cut, 0.18, 0.225);
    }

    [Fact]
    public void Find_bar_wider_than_the_bed_has_no_level_cut() =>
        Assert.Null(CutProposal.Find(Bar.Mesh(), Bar.Span, [], Standing, new(0.03, 0.03, 0.25, 0)));

    [Fact]
    public void Find_pieces_fit_and_one_piece_fewer_would_not() =>
        (from tip in Gen.Double[0.03, 0.1]
         from span in Gen.Double[0.2, 0.5]
         from rake in Gen.Double[-0.2, 0.9]
         from room in Gen.Double[0.14, 0.25]
         select (tip, span, rake, room)).Hold(
            c =>
            {
                StraightBlade blade = new(0.12, c.tip, c.span, c.rake, 0.1);
                TriangleMesh mesh = blade.Mesh(around: 40);
                PrintRoom printer = new(c.room, c.room, c.room, 0);
                IReadOnlyList<double>? cuts = CutProposal.Find(mesh, c.span, [], Lying, printer);
                Assert.NotNull(cuts);
                double[] ends = [0, .. cuts, c.span];
                for (int i = 0; i + 1 < ends.Length; i++)
                    Assert.True(LaidPart.Lay(Piece(blade, ends[i], ends[i + 1]), Lying(i == 0), printer).Fits);
                // As deep as each piece goes, in steps of 2 mm and without spare room: never more than half a piece better.
                int fewest = 0;
                for (double y = 0; y < c.span - 1e-9; fewest++)
                {
                    double to = c.span;
                    while (!LaidPart.Lay(Piece(blade, y, to), Lying(false), printer).Fits)
                        to -= 2e-3;
                    y = to;
                }

                // One grid step of each piece may be lost to the grid: only a last sliver can cost a piece.
                Assert.InRange(cuts.Count + 1, fewest, fewest + 1);
            },
            iter: 8);

    private static Point3[] Piece(StraightBlade blade, double top, double end) =>
        [.. from y in new[] { top, end } from i in Enumerable.Range(0, 41) select blade.Skin(y, i / 40.0)];

    private static Resting[] Standing(bool atRoot) => [new(PrintAttitude.Standing, new(0, -1, 0))];

    private static Resting[] Lying(bool atRoot) => [new(PrintAttitude.Lying, new(0, 0, 1))];
}
