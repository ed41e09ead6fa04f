using CsCheck;
using Finwright.Geometry.Tests.Solids;

namespace Finwright.Geometry.Tests;

public sealed class MeshChecksTests
{
    private static readonly TriangleMesh Ball = SampleMeshes.Ball(0.05, new(0.01, 0.02, 0.03), 8);

    [Fact]
    public void Box_and_ball_are_closed()
    {
        Assert.True(MeshChecks.IsClosed(Shapes.Box(default, new(1, 2, 3))));
        Assert.True(MeshChecks.IsClosed(Ball));
    }

    [Fact]
    public void Mesh_without_triangles_is_not_closed_but_has_no_defect()
    {
        TriangleMesh empty = new([], []);
        Assert.False(MeshChecks.IsClosed(empty));
        Assert.Empty(MeshChecks.Defects(empty));
    }

    [Fact]
    public void Any_missing_triangle_leaves_three_open_edges() =>
        Gen.Int[0, Ball.TriangleCount - 1].Hold(missing =>
        {
            int[] corners = [.. Ball.Corners[..(3 * missing)], .. Ball.Corners[(3 * missing + 3)..]];
            IReadOnlyList<MeshDefect> defects = MeshChecks.Defects(new(Ball.Coordinates.ToArray(), corners));
            return defects.Count == 3 && defects.All(d => d.Kind == MeshDefectKind.OpenEdge);
        });

    [Fact]
    public void Any_triangle_turned_over_is_found() =>
        Gen.Int[0, Ball.TriangleCount - 1].Hold(turned =>
        {
            int[] corners = Ball.Corners.ToArray();
            (corners[3 * turned], corners[3 * turned + 1]) = (corners[3 * turned + 1], corners[3 * turned]);
            IReadOnlyList<MeshDefect> defects = MeshChecks.Defects(new(Ball.Coordinates.ToArray(), corners));
            // Its three edges now run along with those of the neighbours, and the neighbours' edges lack a partner.
            return defects.Count(d => d.Kind == MeshDefectKind.EdgeUsedTwice) == 3 && defects.Count(d => d.Kind == MeshDefectKind.OpenEdge) == 3;
        });

    [Fact]
    public void Triangle_with_a_repeated_corner_is_named_with_its_place()
    {
        MeshDefect defect = MeshChecks.Defects(new([0, 0, 0, 0.001, 0.002, 0.003], [1, 0, 1]), 1)[0];
        Assert.Equal(MeshDefectKind.RepeatedCorner, defect.Kind);
        Assert.Contains("vertex 1 at (1, 2, 3) mm", defect.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Sheet_folded_on_itself_with_three_triangles_at_an_edge_is_found()
    {
        TriangleMesh book = new([0, 0, 0, 1, 0, 0, 0, 1, 0, 0, 0, 1, 0, 1, 1], [0, 1, 2, 0, 1, 3, 1, 0, 4]);
        Assert.Contains(MeshChecks.Defects(book), d => d.Kind == MeshDefectKind.EdgeUsedTwice && d.From == 0 && d.To == 1);
    }

    [Fact]
    public void Number_of_reported_defects_is_bounded()
    {
        TriangleMesh open = new(Ball.Coordinates.ToArray(), Ball.Corners[..60].ToArray());
        Assert.Equal(4, MeshChecks.Defects(open, 4).Count);
    }

    [Fact]
    public void Hub_of_a_hundred_thousand_triangles_is_checked()
    {
        Point2[] ring = [.. Enumerable.Range(0, 100_000).Select(i => new Point2(Math.Cos(Math.Tau * i / 100_000), Math.Sin(Math.Tau * i / 100_000)))];
        Assert.True(MeshChecks.IsClosed(Shapes.Loft([ring, ring], [0, 1])));
    }
}
