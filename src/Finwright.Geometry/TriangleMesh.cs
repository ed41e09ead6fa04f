namespace Finwright.Geometry;

/// <summary>An indexed triangle mesh, metres. Corners run counter-clockwise seen from outside.</summary>
public sealed class TriangleMesh
{
    /// <summary>Takes over the arrays; they must not be changed afterwards.</summary>
    /// <param name="vertices">x, y, z of each vertex, length 3 × vertex count, finite.</param>
    /// <param name="triangles">Three vertex numbers a triangle, length 3 × triangle count.</param>
    /// <exception cref="ArgumentException">A length is not a multiple of three, a number is not finite, or an index is out of range.</exception>
    public TriangleMesh(double[] vertices, int[] triangles)
    {
        ArgumentNullException.ThrowIfNull(vertices);
        ArgumentNullException.ThrowIfNull(triangles);
        if (vertices.Length % 3 != 0)
            throw new ArgumentException($"{vertices.Length} coordinates are not whole points.", nameof(vertices));
        if (triangles.Length % 3 != 0)
            throw new ArgumentException($"{triangles.Length} indices are not whole triangles.", nameof(triangles));
        foreach (double value in vertices)
            if (!double.IsFinite(value))
                throw new ArgumentException("A vertex coordinate is not finite.", nameof(vertices));
        int count = vertices.Length / 3;
        foreach (int index in triangles)
            if ((uint)index >= (uint)count)
                throw new ArgumentException($"Vertex {index} does not exist; the mesh has {count}.", nameof(triangles));
        Vertices = vertices;
        Triangles = triangles;
    }

    internal double[] Vertices { get; }

    internal int[] Triangles { get; }

    /// <summary>Number of vertices.</summary>
    public int VertexCount => Vertices.Length / 3;

    /// <summary>Number of triangles.</summary>
    public int TriangleCount => Triangles.Length / 3;

    /// <summary>Flat x, y, z of all vertices, length 3 × <see cref="VertexCount"/>.</summary>
    public ReadOnlySpan<double> Coordinates => Vertices;

    /// <summary>Flat corner indices, length 3 × <see cref="TriangleCount"/>.</summary>
    public ReadOnlySpan<int> Corners => Triangles;

    /// <summary>Position of a vertex.</summary>
    public Point3 Vertex(int index) => new(Vertices[3 * index], Vertices[3 * index + 1], Vertices[3 * index + 2]);

    /// <summary>Positions of all vertices, in order.</summary>
    public IReadOnlyList<Point3> Points()
    {
        Point3[] points = new Point3[VertexCount];
        for (int i = 0; i < points.Length; i++)
            points[i] = Vertex(i);
        return points;
    }

    /// <summary>Signed enclosed volume by the divergence theorem, m³; positive for an outward-facing closed mesh.</summary>
    public double Volume()
    {
        double sum = 0;
        for (int i = 0; i < Triangles.Length; i += 3)
            sum += Vertex(Triangles[i]).Dot(Vertex(Triangles[i + 1]).Cross(Vertex(Triangles[i + 2])));
        return sum / 6;
    }

    /// <summary>Surface area, m².</summary>
    public double Area()
    {
        double sum = 0;
        for (int i = 0; i < Triangles.Length; i += 3)
        {
            Point3 a = Vertex(Triangles[i]);
            sum += (Vertex(Triangles[i + 1]) - a).Cross(Vertex(Triangles[i + 2]) - a).Length;
        }

        return sum / 2;
    }

    /// <summary>Smallest axis-aligned box round all vertices.</summary>
    /// <exception cref="InvalidOperationException">The mesh has no vertex.</exception>
    public Bounds Bounds()
    {
        if (Vertices.Length == 0)
            throw new InvalidOperationException("An empty mesh has no bounds.");
        Point3 low = Vertex(0), high = low;
        for (int i = 1; i < VertexCount; i++)
        {
            Point3 p = Vertex(i);
            low = new(Math.Min(low.X, p.X), Math.Min(low.Y, p.Y), Math.Min(low.Z, p.Z));
            high = new(Math.Max(high.X, p.X), Math.Max(high.Y, p.Y), Math.Max(high.Z, p.Z));
        }

        return new(low, high);
    }

    /// <summary>The mesh after a placement; corners are reversed when the placement mirrors, so that outside stays outside.</summary>
    public TriangleMesh Placed(Placement placement)
    {
        double[] moved = new double[Vertices.Length];
        for (int i = 0; i < VertexCount; i++)
        {
            Point3 p = placement.Apply(Vertex(i));
            (moved[3 * i], moved[3 * i + 1], moved[3 * i + 2]) = (p.X, p.Y, p.Z);
        }

        int[] corners = (int[])Triangles.Clone();
        if (placement.Determinant < 0)
            for (int i = 0; i < corners.Length; i += 3)
                (corners[i + 1], corners[i + 2]) = (corners[i + 2], corners[i + 1]);
        return new(moved, corners);
    }
}
