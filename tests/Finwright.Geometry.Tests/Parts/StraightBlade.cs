using Finwright.Geometry.Blades;
using Finwright.Geometry.Outlines;

namespace Finwright.Geometry.Tests.Parts;

/// <summary>A straight-tapered blade with a plain symmetric section and a flat tip: everything about it is known in closed form.</summary>
internal sealed class StraightBlade(double rootChord, double tipChord, double span, double rake, double thicknessRatio) : BladeShape
{
    public override Outline Outline { get; } = new StraightOutline(rootChord, tipChord, span, rake);

    public override double TrailingEdgeThickness => 2 * Half(1, thicknessRatio * rootChord);

    public override double ThicknessRatio(double y) => thicknessRatio;

    public override double Twist(double y) => 0;

    public override Point3 Skin(double y, double u)
    {
        double share = (1 + Math.Cos(2 * Math.PI * u)) / 2;
        double z = Half(share, thicknessRatio * Outline.Chord(y));
        return new(Outline.LeadingEdge(y) + share * Outline.Chord(y), y, u <= 0.5 ? z : -z);
    }

    public override double MidSurface(double x, double y) => 0;

    public override double HalfThickness(double x, double y)
    {
        double share = (x - Outline.LeadingEdge(y)) / Outline.Chord(y);
        return share is < 0 or > 1 ? 0 : Half(share, thicknessRatio * Outline.Chord(y));
    }

    /// <summary>The skin as a closed mesh, root face in the hull plane.</summary>
    public TriangleMesh Mesh(int around = 160, int along = 24)
    {
        int ring = around + 1;
        List<double> vertices = [];
        List<int> corners = [];
        for (int j = 0; j <= along; j++)
            for (int i = 0; i < ring; i++)
                Add(Skin(Outline.Span * j / along, (double)i / around));
        for (int j = 0; j < along; j++)
            for (int i = 0; i < ring; i++)
            {
                int a = j * ring + i, b = j * ring + (i + 1) % ring;
                corners.AddRange([a, b + ring, b, a, a + ring, b + ring]);
            }

        foreach ((int row, double y) in new[] { (0, 0.0), (along, Outline.Span) })
        {
            int middle = vertices.Count / 3;
            Add(new(Outline.LeadingEdge(y) + 0.5 * Outline.Chord(y), y, 0));
            for (int i = 0; i < ring; i++)
            {
                int a = row * ring + i, b = row * ring + (i + 1) % ring;
                corners.AddRange(row == 0 ? [middle, a, b] : [middle, b, a]);
            }
        }

        TriangleMesh mesh = new([.. vertices], [.. corners]);
        Assert.True(MeshChecks.IsClosed(mesh) && mesh.Volume() > 0);
        return mesh;

        void Add(Point3 p) => vertices.AddRange([p.X, p.Y, p.Z]);
    }

    // NACA four-digit thickness form (Jacobs, Ward and Pinkerton, 1933, NACA TR-460).
    private static double Half(double s, double thickness) =>
        5 * thickness * (0.2969 * Math.Sqrt(s) - 0.126 * s - 0.3516 * s * s + 0.2843 * s * s * s - 0.1015 * s * s * s * s);

    private sealed class StraightOutline(double rootChord, double tipChord, double span, double rake) : Outline
    {
        public override double Span => span;

        public override double LeadingEdge(double y) => y * Math.Tan(rake) - ChordAt(y) / 4;

        public override double TrailingEdge(double y) => y * Math.Tan(rake) + 0.75 * ChordAt(y);

        private double ChordAt(double y) => rootChord + (tipChord - rootChord) * y / span;
    }
}
