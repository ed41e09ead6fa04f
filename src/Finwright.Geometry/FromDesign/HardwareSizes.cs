using Finwright.Design;
using Finwright.Geometry.Features;
using Finwright.Geometry.Solids;
using Thread = Finwright.Design.Thread;

namespace Finwright.Geometry.FromDesign;

/// <summary>Sizes of bores and pockets from the design file's hardware and print allowances.</summary>
internal static class HardwareSizes
{
    /// <summary>The thread of a name in the design file.</summary>
    public static MetricThread Of(Thread thread) => thread switch
    {
        Thread.M4 => MetricThread.M4,
        Thread.M5 => MetricThread.M5,
        Thread.M8 => MetricThread.M8,
        _ => MetricThread.M6,
    };

    /// <summary>Half of what the nut's pocket takes up along the bolt, metres.</summary>
    public static double HalfAlongBolt(MetricThread thread, NutKind nut, double allowance) => nut switch
    {
        NutKind.Cross => (thread.CrossNut.Diameter + allowance) / 2,
        NutKind.Square => (thread.SquareNut.Height + allowance) / 2,
        _ => (thread.HexNut.Height + allowance) / 2,
    };

    /// <summary>
    /// The pocket of a nut: flats of hexagon and square nuts face the sides of the fin, where the wall is thinnest; a cross
    /// nut lies across the fin.
    /// </summary>
    /// <param name="thread">Thread.</param>
    /// <param name="nut">Form of the nut.</param>
    /// <param name="middle">Middle of the nut, design axes, metres.</param>
    /// <param name="along">Unit vector along the bolt, in the x–y plane.</param>
    /// <param name="allowance">Added across the flats and in height, metres.</param>
    public static FeatureVolume Pocket(MetricThread thread, NutKind nut, Point3 middle, Point3 along, double allowance)
    {
        if (nut == NutKind.Cross)
        {
            Point3 half = new(0, 0, (thread.CrossNut.Length + allowance) / 2);
            return FeatureVolume.Cylinder(thread.CrossNut.Diameter + allowance, middle - half, middle + half);
        }

        NutSize size = nut == NutKind.Square ? thread.SquareNut : thread.HexNut;
        double across = size.AcrossFlats + allowance;
        Point3 reach = (size.Height + allowance) / 2 * along;
        return FeatureVolume.Prism(
            nut == NutKind.Square ? Rings.Rectangle(across, across) : Rings.Hexagon(across),
            middle - reach, middle + reach, new Point3(1, 0, 0));
    }

    /// <summary>The nut in words.</summary>
    public static string Name(MetricThread thread, NutKind nut) => nut switch
    {
        NutKind.Cross => FormattableString.Invariant($"{thread} cross nut, {thread.CrossNut.Diameter * 1e3:0.#} x {thread.CrossNut.Length * 1e3:0.#} mm"),
        NutKind.Square => $"{thread} square nut (DIN 557)",
        _ => $"{thread} hexagon nut (ISO 4032)",
    };
}
