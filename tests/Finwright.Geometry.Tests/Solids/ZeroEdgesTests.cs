using CsCheck;
using Finwright.Geometry.Solids;

namespace Finwright.Geometry.Tests.Solids;

public sealed class ZeroEdgesTests
{
    private static readonly TriangleMesh Ball = SampleMeshes.Ball(1, default, 8);

    [Fact]
    public void Mesh_without_zero_edges_is_returned_as_it_is()
    {
        int[] corners = Ball.Corners.ToArray();
        Assert.Same(corners, ZeroEdges.Collapse(Floats(Ball), corners));
    }

    [Fact]
    public void Edge_whose_ends_meet_goes_with_its_two_triangles() =>
        Gen.Int[0, Ball.Corners.Length - 1].Hold(corner =>
        {
            int from = Ball.Corners[corner], to = Ball.Corners[corner % 3 == 2 ? corner - 2 : corner + 1];
            float[] coordinates = Floats(Ball);
            coordinates.AsSpan(3 * from, 3).CopyTo(coordinates.AsSpan(3 * to));
            int[] left = ZeroEdges.Collapse(coordinates, Ball.Corners.ToArray());
            return left.Length == Ball.Corners.Length - 6 && MeshChecks.IsClosed(new(Array.ConvertAll(coordinates, c => (double)c), left));
        });

    [Fact]
    public void Many_points_that_round_together_leave_a_closed_mesh_without_zero_edges() =>
        Gen.Int[2, 12].Hold(steps =>
        {
            // A coarse grid brings neighbours together in clusters, as single precision does on a small scale.
            float[] coordinates = Array.ConvertAll(Floats(SampleMeshes.Ball(1, default, 24)), c => MathF.Round(c * steps) / steps);
            int[] left = ZeroEdges.Collapse(coordinates, SampleMeshes.Ball(1, default, 24).Corners.ToArray());
            return MeshChecks.Defects(new(Array.ConvertAll(coordinates, c => (double)c), left)).Count == 0;
        });

    [Fact]
    public void Two_boxes_that_touch_along_an_edge_stay_apart_in_their_vertices()
    {
        TriangleMesh a = Shapes.Box(default, new(1, 1, 1)), b = Shapes.Box(new(1, 1, 0), new(1, 1, 1));
        int[] corners = [.. a.Corners, .. b.Corners.ToArray().Select(c => c + 8)];
        Assert.Same(corners, ZeroEdges.Collapse([.. Floats(a), .. Floats(b)], corners));
    }

    private static float[] Floats(TriangleMesh mesh) => Array.ConvertAll(mesh.Coordinates.ToArray(), c => (float)c);
}
