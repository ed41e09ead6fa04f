using Finwright.Geometry;
using Finwright.Geometry.Parts;
using Finwright.Geometry.Solids;
using Finwright.Numerics;
using Figure = NetTopologySuite.Geometries.Geometry;

namespace Finwright.Making.Layers;

/// <summary>Cuts a part into the layers a printer lays down: outline, walls, solid layers, core.</summary>
/// <remarks>
/// <para>Walls are an inset of the outline. A spot inside them is printed solid when the part is not there in any one of the next or last
/// <see cref="PrintSettings.SolidLayers"/> layers; the rest is core.</para>
/// <para>Whether a neighbour covers a layer's inside is asked first, which is quick and nearly always so in a part that stands; only where it is
/// not are areas cut, with the farthest neighbour first, because that one mostly settles it.</para>
/// </remarks>
public static class LayerSlicer
{
    /// <summary>Share of a layer by which a part may stick out of the last whole layer and get no further one: the rounding of mesh files.</summary>
    private const double Rounding = 1e-3;

    /// <summary>A slice this close to a level face is taken just above it, metres: there the kernel could fall to either side of rounding.</summary>
    private const double Hair = 1e-7;

    /// <summary>Cuts a part into layers.</summary>
    /// <param name="name">Name of the part.</param>
    /// <param name="mesh">Closed, outward-facing mesh, metres.</param>
    /// <param name="toBed">From the mesh's axes to axes whose z is up as printed; the height of the bed does not matter.</param>
    /// <param name="settings">How it is printed.</param>
    /// <param name="kernel">Slices the mesh.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <returns>
    /// The layers, each sliced at its mid-height. The last one is thinner when the height is no whole number of layers, so that the layers
    /// are as high as the part and hold its volume.
    /// </returns>
    /// <exception cref="SolidException">The mesh cannot be sliced.</exception>
    /// <exception cref="OperationCanceledException">The work was stopped.</exception>
    public static PartLayers Slice(string name, TriangleMesh mesh, Placement toBed, PrintSettings settings, ISolidKernel kernel, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(mesh);
        ArgumentNullException.ThrowIfNull(settings);
        ArgumentNullException.ThrowIfNull(kernel);
        Check(settings);
        if (mesh.TriangleCount == 0)
            throw new ArgumentException("An empty mesh has no layers.", nameof(mesh));

        Placement toLayers = Squared(mesh, toBed);
        TriangleMesh placed = mesh.Placed(toLayers);
        Point3 size = placed.Bounds().Size;
        double[] borders = Borders(size.Z, settings.LayerHeight);
        IReadOnlyList<SliceRings> slices = kernel.Slice(new MeshSolid(placed), Heights(borders, placed), cancellation);
        return new(name, settings, toLayers, size, Fill(borders, slices, settings, cancellation));
    }

    private static void Check(PrintSettings settings)
    {
        Require.Positive(settings.LayerHeight);
        Require.Positive(settings.LineWidth);
        Require.Positive(settings.PlasticDensity);
        Require.Between(settings.InfillShare, 0, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(settings.Walls, 1, nameof(settings));
        ArgumentOutOfRangeException.ThrowIfNegative(settings.SolidLayers, nameof(settings));
    }

    /// <summary>Turns the footprint so that its narrowest rectangle lies along x and y, long side along x, corner at the origin.</summary>
    private static Placement Squared(TriangleMesh mesh, Placement toBed)
    {
        // Turns that save less than this share of the width are not worth it: a part that lies square already stays as it is.
        const double worthIt = 1e-6;
        double low = double.PositiveInfinity;
        Point2[] shadow = new Point2[mesh.VertexCount];
        for (int i = 0; i < shadow.Length; i++)
        {
            Point3 p = toBed.Apply(mesh.Vertex(i));
            shadow[i] = new(p.X, p.Y);
            low = Math.Min(low, p.Z);
        }

        Point2[] hull = FootprintFit.Hull(shadow);
        Point2 along = new(1, 0);
        double least = Width(hull, along);
        if (Width(hull, new(0, 1)) < least * (1 - worthIt))
            (along, least) = (new(0, 1), Width(hull, new(0, 1)));
        for (int i = 0; i < hull.Length; i++)
        {
            Point2 edge = hull[(i + 1) % hull.Length] - hull[i];
            if (edge.Length is not > 0)
                continue;
            Point2 direction = 1 / edge.Length * edge;
            if (Width(hull, direction) is double width && width < least * (1 - worthIt))
                (along, least) = (direction, width);
        }

        // Half a turn is never needed.
        if (along.X < 0)
            along = -1 * along;
        Placement turn = new(new(along.X, -along.Y, 0), new(along.Y, along.X, 0), new(0, 0, 1), default);
        double left = double.PositiveInfinity, front = double.PositiveInfinity;
        foreach (Point2 p in hull)
        {
            left = Math.Min(left, p.Dot(along));
            front = Math.Min(front, along.Cross(p));
        }

        return toBed.Then(turn).Then(Placement.Shift(new(-left, -front, -low)));
    }

    /// <summary>Width of a hull across a direction.</summary>
    private static double Width(Point2[] hull, Point2 along)
    {
        double low = double.PositiveInfinity, high = double.NegativeInfinity;
        foreach (Point2 p in hull)
        {
            low = Math.Min(low, along.Cross(p));
            high = Math.Max(high, along.Cross(p));
        }

        return high - low;
    }

    private static double[] Borders(double height, double layer)
    {
        int count = Math.Max(1, (int)Math.Ceiling(height / layer - Rounding));
        double[] borders = new double[count + 1];
        for (int i = 0; i < count; i++)
            borders[i] = i * layer;
        borders[count] = height;
        return borders;
    }

    /// <summary>Middle of each layer, moved a hair where a level face lies there.</summary>
    private static double[] Heights(double[] borders, TriangleMesh mesh)
    {
        List<double> level = [];
        ReadOnlySpan<int> corners = mesh.Corners;
        ReadOnlySpan<double> at = mesh.Coordinates;
        for (int i = 0; i < corners.Length; i += 3)
        {
            double a = at[3 * corners[i] + 2], b = at[3 * corners[i + 1] + 2], c = at[3 * corners[i + 2] + 2];
            if (Math.Abs(a - b) < Hair && Math.Abs(a - c) < Hair)
                level.Add(a);
        }

        level.Sort();
        double[] heights = new double[borders.Length - 1];
        for (int i = 0; i < heights.Length; i++)
        {
            heights[i] = (borders[i] + borders[i + 1]) / 2;
            int next = level.BinarySearch(heights[i] - 2 * Hair);
            next = next < 0 ? ~next : next;
            if (next < level.Count && level[next] < heights[i] + 2 * Hair)
                heights[i] += 4 * Hair;
        }

        return heights;
    }

    private static Layer[] Fill(double[] borders, IReadOnlyList<SliceRings> slices, PrintSettings settings, CancellationToken cancellation)
    {
        int count = slices.Count, solid = settings.SolidLayers;
        Layer[] layers = new Layer[count];
        Figure[] outlines = new Figure[count], insides = new Figure[count];
        RingCover[] covers = new RingCover[count];
        ParallelOptions options = new() { CancellationToken = cancellation };
        // Each layer is worked out by itself, so that the order in which threads take them changes nothing.
        Parallel.For(0, count, options, i =>
        {
            outlines[i] = RingAreas.ToFigure(slices[i].Rings);
            insides[i] = RingAreas.Shrunk(outlines[i], settings.WallThickness);
            covers[i] = new(slices[i].Rings);
        });
        Parallel.For(0, count, options, i =>
        {
            IReadOnlyList<IReadOnlyList<Point2>> inside = RingAreas.ToRings(insides[i], 0);
            IReadOnlyList<IReadOnlyList<Point2>> core = i < solid || i >= count - solid ? [] : Core(i, inside);
            double outlineArea = RingAreas.Area(slices[i].Rings), insideArea = RingAreas.Area(inside);
            layers[i] = new(
                borders[i], borders[i + 1], slices[i].Rings, core, outlineArea, insideArea, RingAreas.Area(core),
                // The area of a band of parallel lines over their width is the length of their middles, corners and narrow places included.
                Math.Max(0, outlineArea - insideArea) / settings.LineWidth);
        });
        return layers;

        IReadOnlyList<IReadOnlyList<Point2>> Core(int i, IReadOnlyList<IReadOnlyList<Point2>> inside)
        {
            // What is smaller than a printed line is wide and long gets no gyroid.
            double least = settings.LineWidth * settings.LineWidth;
            IReadOnlyList<IReadOnlyList<Point2>> core = inside;
            Figure figure = insides[i];
            for (int away = solid; away >= 1; away--)
            {
                foreach (int j in (ReadOnlySpan<int>)[i - away, i + away])
                {
                    if (core.Count == 0 || covers[j].Covers(core))
                        continue;
                    figure = RingAreas.Shared(figure, outlines[j]);
                    core = RingAreas.ToRings(figure, least);
                }
            }

            return core;
        }
    }
}
