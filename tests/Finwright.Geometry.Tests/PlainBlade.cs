using Finwright.Geometry.Blades;
using Finwright.Geometry.Outlines;

namespace Finwright.Geometry.Tests;

/// <summary>A raked blade in closed form for tests of whatever takes a blade: cubic outline with a rounded tip, four-digit thickness, washout.</summary>
internal sealed class PlainBlade(double span = 0.22, double rootChord = 0.11, double thickness = 0.1, double edge = 0.0008, double twist = -0.03, bool roundedTip = true) : BladeShape
{
    public override Outline Outline { get; } = new RakedOutline(span, rootChord, roundedTip);

    public override double TrailingEdgeThickness => edge;

    public override double ThicknessRatio(double y) => thickness * (1 - 0.2 * y / span);

    public override double Twist(double y) => twist * y / span;

    public override Point3 Skin(double y, double u)
    {
        double x = (1 + Math.Cos(2 * Math.PI * u)) / 2;
        double side = u <= 0.5 ? 1 : -1;
        double chord = Outline.Chord(y);
        // Jacobs, Ward and Pinkerton (1933), NACA TR-460, with the closed trailing edge of common practice (-0.1036).
        double half = 5 * ThicknessRatio(y) * (0.2969 * Math.Sqrt(x) - x * (0.1260 + x * (0.3516 - x * (0.2843 - 0.1036 * x))));
        Point3 flat = new(chord * (x - 0.25), y, side * (chord * half + Math.Min(edge, chord * 0.02) / 2 * x));
        return Placement.Rotation(new(0, 1, 0), Twist(y)).Turn(flat) + new Point3(Outline.LeadingEdge(y) + 0.25 * chord, 0, 0);
    }

    public override double MidSurface(double x, double y) => throw new NotSupportedException();

    public override double HalfThickness(double x, double y) => throw new NotSupportedException();

    /// <summary>The skin with flat caps as a closed mesh.</summary>
    public TriangleMesh Mesh(int stations = 80, int around = 120)
    {
        List<double> vertices = [];
        List<int> triangles = [];
        double end = roundedTip ? 0.9995 * span : span;
        for (int i = 0; i <= stations; i++)
            for (int j = 0; j <= around; j++)
            {
                double t = 1 - i / (double)stations;
                Point3 p = Skin(end * (1 - t * t), j / (double)around);
                vertices.AddRange([p.X, p.Y, p.Z]);
            }

        int At(int i, int j) => i * (around + 1) + j % (around + 1);
        for (int j = 0; j <= around; j++)
            for (int i = 0; i < stations; i++)
                triangles.AddRange([At(i, j), At(i + 1, j), At(i + 1, j + 1), At(i, j), At(i + 1, j + 1), At(i, j + 1)]);
        for (int j = 0; j < around / 2; j++)
        {
            int k = around - j;
            triangles.AddRange([At(0, j), At(0, j + 1), At(0, k), At(stations, j), At(stations, k), At(stations, j + 1)]);
            if (j + 1 < k - 1)
                triangles.AddRange([At(0, j + 1), At(0, k - 1), At(0, k), At(stations, j + 1), At(stations, k), At(stations, k - 1)]);
        }

        return new([.. vertices], [.. triangles]);
    }

    private sealed class RakedOutline(double span, double rootChord, bool roundedTip) : Outline
    {
        public override double Span => span;

        public override double LeadingEdge(double y)
        {
            double s = y / span;
            return Quarter(s) - 0.25 * Width(s);
        }

        public override double TrailingEdge(double y)
        {
            double s = y / span;
            return Quarter(s) + 0.75 * Width(s);
        }

        private double Quarter(double s) => span * (0.1 * s + 0.25 * s * s);

        private double Width(double s) => rootChord * (1 - 0.45 * s) * (roundedTip ? Math.Sqrt(Math.Max(0, 1 - Math.Pow(s, 6))) : 1);
    }
}
