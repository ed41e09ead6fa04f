using System.Runtime.CompilerServices;
using Finwright.Design;
using Finwright.Geometry;
using Finwright.Geometry.Blades;
using Finwright.Geometry.FromDesign;
using Finwright.Making.Layers;
using MathNet.Numerics.Integration;

namespace Finwright.Making.Tests.Layers;

/// <summary>A demo blade in layers beside the smooth blade, measured by ways that know neither mesh nor polygons.</summary>
public sealed class FinLayersTests
{
    private static readonly Blade Demo = BladeFromDesign.Create(
        DesignReader.ReadFile(Path.Combine(Path.GetDirectoryName(Here())!, "..", "..", "..", "examples", "fairway-upright.fin.json")).Design!, [])!;

    private static readonly Lazy<TriangleMesh> Skin = new(() => BladeLoft.Build(Demo, new()).Mesh);

    // Standing on its root face: the span goes up.
    private static readonly Placement Standing = new(new(1, 0, 0), new(0, 0, 1), new(0, -1, 0), default);

    [Fact]
    public void Slice_standing_blade_holds_the_volume_of_the_smooth_blade()
    {
        PartLayers part = TestParts.Slice(Skin.Value, Standing);
        Assert.Equal((int)Math.Ceiling(part.Size.Z / 0.2e-3), part.Layers.Count);
        // Section areas by Green's integral over the smooth skin, trapezoidal rule over depth. 0.2 %: chord error of the skin 0.02 mm, layers.
        Assert.Equal(1, part.EnvelopeVolume / Volume(), 2e-3);
    }

    [Fact]
    public void Slice_lying_blade_holds_the_volume_of_the_smooth_blade() =>
        Assert.Equal(1, TestParts.Slice(Skin.Value).EnvelopeVolume / Volume(), 2e-3);

    [Theory]
    [InlineData(0.1)]
    [InlineData(0.5)]
    [InlineData(0.8)]
    public void Slice_standing_blade_keeps_the_walls_thickness_from_the_smooth_skin(double share)
    {
        PartLayers part = TestParts.Slice(Skin.Value, Standing);
        Layer layer = part.Layers[(int)(share * part.Layers.Count)];
        // Second method: points of a fine lattice whose distance from the smooth section is more than the walls' thickness are counted.
        // 0.5 %: a lattice of 0.05 mm.
        double area = InsideByCounting(layer.Middle, 1.35e-3, 0.05e-3);
        Assert.Equal(1, layer.InsideArea / area, 5e-3);
    }

    private static double Volume()
    {
        // Smooth over depth but for the tip: s = sin² substitution takes its square root away.
        double sum = 0;
        const int pieces = 16;
        for (int i = 0; i < pieces; i++)
            sum += GaussLegendreRule.Integrate(
                s => Area(Demo.Span * Math.Pow(Math.Sin(s), 2)) * Demo.Span * Math.Sin(2 * s), Math.PI / 2 * i / pieces, Math.PI / 2 * (i + 1) / pieces, 32);
        return sum;
    }

    private static double Area(double y)
    {
        Point2[] ring = Section(y, 1200);
        double twice = 0;
        for (int i = 0; i < ring.Length; i++)
            twice += ring[i].Cross(ring[(i + 1) % ring.Length]);
        return Math.Abs(twice) / 2;
    }

    private static Point2[] Section(double y, int count) =>
        [.. Enumerable.Range(0, count).Select(i => Demo.Skin(y, (double)i / (count - 1))).Select(p => new Point2(p.X, p.Z))];

    private static double InsideByCounting(double y, double thickness, double step)
    {
        Point2[] ring = Section(y, 500);
        double left = ring.Min(p => p.X), right = ring.Max(p => p.X), low = ring.Min(p => p.Y), high = ring.Max(p => p.Y);
        int count = 0;
        for (double x = left + step / 3; x < right; x += step)
        {
            // Only the skin close to this column can be near or cross it.
            List<int> near = [.. Enumerable.Range(0, ring.Length).Where(i => Math.Max(ring[i].X, ring[(i + 1) % ring.Length].X) >= x - thickness && Math.Min(ring[i].X, ring[(i + 1) % ring.Length].X) <= x + thickness)];
            for (double z = low + step / 3; z < high; z += step)
                count += Inside(ring, near, new(x, z), thickness) ? 1 : 0;
        }

        return count * step * step;
    }

    private static bool Inside(Point2[] ring, List<int> near, Point2 p, double thickness)
    {
        bool inside = false;
        foreach (int i in near)
        {
            Point2 a = ring[i], b = ring[(i + 1) % ring.Length], edge = b - a;
            double along = edge.Dot(edge) is > 0 and double squared ? Math.Clamp((p - a).Dot(edge) / squared, 0, 1) : 0;
            if ((p - a - along * edge).Length < thickness)
                return false;
            if (a.X <= p.X != b.X <= p.X && a.Y + (p.X - a.X) / (b.X - a.X) * (b.Y - a.Y) > p.Y)
                inside = !inside;
        }

        return inside;
    }

    private static string Here([CallerFilePath] string path = "") => path;
}
