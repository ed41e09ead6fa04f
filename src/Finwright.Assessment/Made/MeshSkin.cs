using Finwright.Geometry;

namespace Finwright.Assessment.Made;

/// <summary>Finds the point of a mesh's surface that is nearest to a place.</summary>
internal sealed class MeshSkin(TriangleMesh mesh)
{
    /// <summary>The nearest point, and the unit vector out of the part there.</summary>
    public (Point3 Place, Point3 Outward) Nearest(Point3 wanted)
    {
        Point3 best = default, outward = new(0, 0, 1);
        double least = double.PositiveInfinity;
        ReadOnlySpan<int> corners = mesh.Corners;
        for (int i = 0; i < corners.Length; i += 3)
        {
            Point3 a = mesh.Vertex(corners[i]), b = mesh.Vertex(corners[i + 1]), c = mesh.Vertex(corners[i + 2]);
            Point3 near = OnTriangle(wanted, a, b, c);
            double distance = (near - wanted).Length;
            if (distance >= least)
                continue;
            Point3 normal = (b - a).Cross(c - a);
            if (normal.Length > 0)
                (best, outward, least) = (near, 1 / normal.Length * normal, distance);
        }

        return (best, outward);
    }

    // C. Ericson, Real-Time Collision Detection, 2005, section 5.1.5: by the region of the triangle's plane in which the point lies.
    private static Point3 OnTriangle(Point3 p, Point3 a, Point3 b, Point3 c)
    {
        Point3 ab = b - a, ac = c - a, ap = p - a;
        double d1 = ab.Dot(ap), d2 = ac.Dot(ap);
        if (d1 <= 0 && d2 <= 0)
            return a;
        Point3 bp = p - b;
        double d3 = ab.Dot(bp), d4 = ac.Dot(bp);
        if (d3 >= 0 && d4 <= d3)
            return b;
        double vc = d1 * d4 - d3 * d2;
        if (vc <= 0 && d1 >= 0 && d3 <= 0)
            return a + d1 / (d1 - d3) * ab;
        Point3 cp = p - c;
        double d5 = ab.Dot(cp), d6 = ac.Dot(cp);
        if (d6 >= 0 && d5 <= d6)
            return c;
        double vb = d5 * d2 - d1 * d6;
        if (vb <= 0 && d2 >= 0 && d6 <= 0)
            return a + d2 / (d2 - d6) * ac;
        double va = d3 * d6 - d5 * d4;
        if (va <= 0 && d4 - d3 >= 0 && d5 - d6 >= 0)
            return b + (d4 - d3) / (d4 - d3 + d5 - d6) * (c - b);
        double sum = va + vb + vc;
        return a + vb / sum * ab + vc / sum * ac;
    }
}
