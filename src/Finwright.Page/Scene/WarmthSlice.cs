using Finwright.Assessment.Made;
using Finwright.Geometry;
using Finwright.Making.Cure;
using Finwright.Making.Voxels;

namespace Finwright.Page.Scene;

/// <summary>A curing part cut open along z = 0 of the fin: the cut face with its temperatures, and the half behind it.</summary>
internal static class WarmthSlice
{
    // Points of the cut face lie this much closer together than the cells of the grid, and no closer than this, metres.
    private const double Finer = 0.7, Closest = 0.5e-3;

    // So many points along the longer side at most.
    private const int MostPoints = 360;

    // Where half of the room is part, there is its border.
    private const double Border = 0.5;

    /// <summary>The cut face, in the axes of the part's mesh, with the temperature of each vertex, K.</summary>
    public static (TriangleMesh Face, double[] Kelvin) Of(PartCured part)
    {
        PartVoxels voxels = part.Voxels;
        PartCureResult run = part.Band.Nominal;
        double[] field = new double[voxels.Count];
        Array.Fill(field, double.NaN);
        for (int n = 0; n < run.Cells.Count; n++)
            field[run.Cells[n]] = run.FieldAtPeak[n];
        Placement toLayers = part.Part.Layers.ToLayers, back = toLayers.RigidInverse();
        Bounds box = Corners(voxels, back);
        double edge = Math.Min(voxels.Cell.X, Math.Min(voxels.Cell.Y, voxels.Cell.Z)), step = Math.Max(Math.Max(Closest, Finer * edge), Math.Max(box.Size.X, box.Size.Y) / MostPoints);
        int columns = (int)Math.Ceiling(box.Size.X / step) + 1, rows = (int)Math.Ceiling(box.Size.Y / step) + 1;
        (double Share, double Kelvin)[] samples = new (double, double)[columns * rows];
        for (int j = 0; j < rows; j++)
            for (int i = 0; i < columns; i++)
                samples[j * columns + i] = Sample(voxels, field, toLayers.Apply(new(box.Minimum.X + i * step, box.Minimum.Y + j * step, 0)));

        List<double> points = [], kelvin = [];
        List<int> corners = [];
        Dictionary<(int, int), int> numbers = [];
        Span<int> polygon = stackalloc int[4];
        for (int j = 0; j + 1 < rows; j++)
        {
            for (int i = 0; i + 1 < columns; i++)
            {
                int a = j * columns + i;
                Clip(a, a + 1, a + 1 + columns, polygon);
                Clip(a, a + 1 + columns, a + columns, polygon);
            }
        }

        return (new([.. points], [.. corners]), [.. kelvin]);

        // The part of a triangle that lies within the border.
        void Clip(int a, int b, int c, Span<int> kept)
        {
            int count = 0;
            ReadOnlySpan<int> three = [a, b, c];
            for (int n = 0; n < 3; n++)
            {
                int here = three[n], next = three[(n + 1) % 3];
                bool isIn = samples[here].Share >= Border, isNextIn = samples[next].Share >= Border;
                if (isIn)
                    kept[count++] = Number(here, here);
                if (isIn != isNextIn)
                    kept[count++] = Number(Math.Min(here, next), Math.Max(here, next));
            }

            for (int n = 2; n < count; n++)
                corners.AddRange([kept[0], kept[n - 1], kept[n]]);
        }

        int Number(int low, int high)
        {
            if (numbers.TryGetValue((low, high), out int number))
                return number;
            double part01 = low == high ? 0 : (Border - samples[low].Share) / (samples[high].Share - samples[low].Share);
            double Mix(double from, double to) => from + part01 * (to - from);
            points.AddRange([box.Minimum.X + step * Mix(low % columns, high % columns), box.Minimum.Y + step * Mix(low / columns, high / columns), 0]);
            (double first, double second) = (samples[low].Kelvin, samples[high].Kelvin);
            kelvin.Add(double.IsNaN(first) ? second : double.IsNaN(second) ? first : Mix(first, second));
            return numbers[(low, high)] = kelvin.Count - 1;
        }
    }

    /// <summary>Half of a closed mesh, open at z = 0.</summary>
    /// <param name="mesh">The mesh.</param>
    /// <param name="starboard">Whether it is the starboard half; else the port one.</param>
    public static TriangleMesh Behind(TriangleMesh mesh, bool starboard)
    {
        double side = starboard ? 1 : -1;
        List<double> points = [.. mesh.Coordinates];
        List<int> corners = [];
        Dictionary<(int, int), int> cuts = [];
        Span<int> kept = stackalloc int[4];
        for (int t = 0; t < mesh.Corners.Length; t += 3)
        {
            int count = 0;
            for (int n = 0; n < 3; n++)
            {
                int here = mesh.Corners[t + n], next = mesh.Corners[t + (n + 1) % 3];
                double z = side * mesh.Vertex(here).Z, nextZ = side * mesh.Vertex(next).Z;
                if (z >= 0)
                    kept[count++] = here;
                if (z >= 0 != nextZ >= 0)
                    kept[count++] = Cut(here, next, z / (z - nextZ));
            }

            for (int n = 2; n < count; n++)
                corners.AddRange([kept[0], kept[n - 1], kept[n]]);
        }

        return new([.. points], [.. corners]);

        int Cut(int from, int to, double share)
        {
            (int, int) key = (Math.Min(from, to), Math.Max(from, to));
            if (cuts.TryGetValue(key, out int number))
                return number;
            Point3 a = mesh.Vertex(from), p = a + share * (mesh.Vertex(to) - a);
            points.AddRange([p.X, p.Y, 0]);
            return cuts[key] = points.Count / 3 - 1;
        }
    }

    // Share of part and temperature at a point of the grid, straight between the middles of cells; cells without temperature do not count for it.
    private static (double Share, double Kelvin) Sample(PartVoxels voxels, double[] field, Point3 p)
    {
        double x = (p.X - voxels.Origin.X) / voxels.Cell.X - 0.5, y = (p.Y - voxels.Origin.Y) / voxels.Cell.Y - 0.5, z = (p.Z - voxels.Origin.Z) / voxels.Cell.Z - 0.5;
        int i0 = (int)Math.Floor(x), j0 = (int)Math.Floor(y), k0 = (int)Math.Floor(z);
        double share = 0, sum = 0, weights = 0;
        for (int corner = 0; corner < 8; corner++)
        {
            int i = i0 + (corner & 1), j = j0 + (corner >> 1 & 1), k = k0 + (corner >> 2);
            if (i < 0 || j < 0 || k < 0 || i >= voxels.CountX || j >= voxels.CountY || k >= voxels.CountZ)
                continue;
            double weight = Math.Abs(1 - (corner & 1) - (x - i0)) * Math.Abs(1 - (corner >> 1 & 1) - (y - j0)) * Math.Abs(1 - (corner >> 2) - (z - k0));
            int cell = voxels.Index(i, j, k);
            share += weight * voxels.Part[cell];
            if (double.IsNaN(field[cell]))
                continue;
            weights += weight;
            sum += weight * field[cell];
        }

        return (share, weights > 0 ? sum / weights : double.NaN);
    }

    private static Bounds Corners(PartVoxels voxels, Placement back)
    {
        Point3 low = new(double.MaxValue, double.MaxValue, double.MaxValue), high = -1 * low;
        for (int corner = 0; corner < 8; corner++)
        {
            Point3 p = back.Apply(voxels.Origin + new Point3((corner & 1) * voxels.CountX * voxels.Cell.X, (corner >> 1 & 1) * voxels.CountY * voxels.Cell.Y, (corner >> 2) * voxels.CountZ * voxels.Cell.Z));
            low = new(Math.Min(low.X, p.X), Math.Min(low.Y, p.Y), Math.Min(low.Z, p.Z));
            high = new(Math.Max(high.X, p.X), Math.Max(high.Y, p.Y), Math.Max(high.Z, p.Z));
        }

        return new(low, high);
    }
}
