namespace Finwright.Geometry.Pictures;

/// <summary>For each sample of a picture, what surface is nearest to the eye: its depth, direction and mesh.</summary>
internal sealed class DepthBuffer
{
    private readonly float[] _depth;
    private readonly float[] _normal;
    private readonly int[] _mesh;

    private readonly (Point3 Right, Point3 Up, Point3 Eye) _axes;
    private readonly double _scale;
    private readonly Point3 _shift;

    private DepthBuffer(int width, int height, (Point3 Right, Point3 Up, Point3 Eye) axes, double scale, Point3 shift)
    {
        (_axes, _scale, _shift) = (axes, scale, shift);
        Width = width;
        Height = height;
        _depth = new float[width * height];
        _normal = new float[3 * width * height];
        _mesh = new int[width * height];
        _depth.AsSpan().Fill(float.NegativeInfinity);
        _mesh.AsSpan().Fill(-1);
    }

    /// <summary>Samples across.</summary>
    public int Width { get; }

    /// <summary>Samples down.</summary>
    public int Height { get; }

    /// <summary>Whether nothing is seen there.</summary>
    public bool IsEmpty(int at) => _mesh[at] < 0;

    /// <summary>Distance towards the eye, in samples; minus infinity where nothing is seen.</summary>
    public float Depth(int at) => _depth[at];

    /// <summary>Number of the mesh seen; -1 where nothing is.</summary>
    public int Mesh(int at) => _mesh[at];

    /// <summary>Unit normal in picture axes: x right, y up, z to the eye.</summary>
    public Point3 Normal(int at) => new(_normal[3 * at], _normal[3 * at + 1], _normal[3 * at + 2]);

    /// <summary>The place of the surface seen at a sample, in the axes of the meshes, metres.</summary>
    public Point3 Place(int at)
    {
        Point3 seen = 1 / _scale * (new Point3(at % Width + 0.5, at / Width + 0.5, _depth[at]) - _shift);
        return seen.X * _axes.Right - seen.Y * _axes.Up + seen.Z * _axes.Eye;
    }

    /// <summary>A direction in the axes of the meshes as it appears in picture axes.</summary>
    public Point3 Seen(Point3 direction) => new(direction.Dot(_axes.Right), direction.Dot(_axes.Up), direction.Dot(_axes.Eye));

    /// <summary>Projects meshes so that they fit with a margin, and keeps the nearest surface everywhere.</summary>
    public static DepthBuffer Filled(IReadOnlyList<TriangleMesh> meshes, View view, int width, int height, double margin)
    {
        (Point3 right, Point3 up, Point3 eye) = view.Axes();
        Point3 low = new(double.MaxValue, double.MaxValue, 0), high = new(double.MinValue, double.MinValue, 0);
        Point3[][] seen = new Point3[meshes.Count][];
        for (int m = 0; m < meshes.Count; m++)
        {
            seen[m] = new Point3[meshes[m].VertexCount];
            for (int i = 0; i < seen[m].Length; i++)
            {
                Point3 p = meshes[m].Vertex(i);
                Point3 s = seen[m][i] = new(p.Dot(right), -p.Dot(up), p.Dot(eye));
                low = new(Math.Min(low.X, s.X), Math.Min(low.Y, s.Y), 0);
                high = new(Math.Max(high.X, s.X), Math.Max(high.Y, s.Y), 0);
            }
        }

        if (!(high.X > low.X) || !(high.Y > low.Y))
            throw new ArgumentException("There is nothing to draw.", nameof(meshes));
        double scale = (1 - 2 * margin) * Math.Min(width / (high.X - low.X), height / (high.Y - low.Y));
        Point3 shift = new(width / 2.0 - scale * (low.X + high.X) / 2, height / 2.0 - scale * (low.Y + high.Y) / 2, 0);

        DepthBuffer buffer = new(width, height, (right, up, eye), scale, shift);
        for (int m = 0; m < meshes.Count; m++)
        {
            Point3[] normals = SmoothNormals.Of(meshes[m]);
            ReadOnlySpan<int> corners = meshes[m].Corners;
            for (int i = 0; i < corners.Length; i += 3)
            {
                Corner At(int c) => new(scale * seen[m][c] + shift, default);
                buffer.Fill(m,
                    At(corners[i]) with { Normal = buffer.Seen(normals[i]) },
                    At(corners[i + 1]) with { Normal = buffer.Seen(normals[i + 1]) },
                    At(corners[i + 2]) with { Normal = buffer.Seen(normals[i + 2]) });
            }
        }

        return buffer;
    }

    private readonly record struct Corner(Point3 Place, Point3 Normal);

    private void Fill(int mesh, Corner a, Corner b, Corner c)
    {
        // Twice the signed area on the picture, y down: outward faces turn towards the eye when it is negative.
        double area = Edge(a.Place, b.Place, c.Place);
        if (!(Math.Abs(area) > 0))
            return;
        int left = Math.Max(0, (int)Math.Ceiling(Math.Min(a.Place.X, Math.Min(b.Place.X, c.Place.X)) - 0.5));
        int right = Math.Min(Width - 1, (int)Math.Floor(Math.Max(a.Place.X, Math.Max(b.Place.X, c.Place.X)) - 0.5));
        int top = Math.Max(0, (int)Math.Ceiling(Math.Min(a.Place.Y, Math.Min(b.Place.Y, c.Place.Y)) - 0.5));
        int bottom = Math.Min(Height - 1, (int)Math.Floor(Math.Max(a.Place.Y, Math.Max(b.Place.Y, c.Place.Y)) - 0.5));
        for (int y = top; y <= bottom; y++)
            for (int x = left; x <= right; x++)
            {
                Point3 p = new(x + 0.5, y + 0.5, 0);
                double u = Edge(b.Place, c.Place, p) / area, v = Edge(c.Place, a.Place, p) / area, w = 1 - u - v;
                if (u < 0 || v < 0 || w < 0)
                    continue;
                int at = y * Width + x;
                float depth = (float)(u * a.Place.Z + v * b.Place.Z + w * c.Place.Z);
                if (depth <= _depth[at])
                    continue;
                Point3 normal = u * a.Normal + v * b.Normal + w * c.Normal;
                double length = Math.Max(normal.Length, 1e-12);
                _depth[at] = depth;
                _mesh[at] = mesh;
                (_normal[3 * at], _normal[3 * at + 1], _normal[3 * at + 2]) = ((float)(normal.X / length), (float)(normal.Y / length), (float)(normal.Z / length));
            }
    }

    private static double Edge(Point3 from, Point3 to, Point3 p) => (to.X - from.X) * (p.Y - from.Y) - (to.Y - from.Y) * (p.X - from.X);
}
