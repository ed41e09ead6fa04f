using Finwright.Geometry;
using Finwright.Making.Voxels;
using Finwright.Numerics;

namespace Finwright.Making.Pores;

/// <summary>The pores of a part on a grid, as air and resin see them: which cells count, how much each holds, and how the border cuts it.</summary>
/// <remarks>
/// Both labyrinths of the gyroid run through the whole core, so on a grid as coarse as this one they are one room; that each of them is opened is
/// checked by <see cref="PortOpening"/>. In a cell that is cut by the border the core is taken to end at a plane: its direction from how the shares of
/// the 26 cells round it change (D. L. Youngs' weights, from memory), its place from the cell's own share.
/// </remarks>
public sealed class PoreGrid
{
    /// <summary>Share of core above which a cell counts: less is a sliver through which no bubble finds its way (judgement).</summary>
    public const double UsualThreshold = 0.1;

    // A cell this full is taken as uncut.
    private const double Full = 1 - 1e-6;

    private PoreGrid(Point3 origin, Point3 cell, int countX, int countY, int countZ, double openShare)
    {
        (Origin, Cell, CountX, CountY, CountZ, OpenShare) = (origin, cell, countX, countY, countZ, openShare);
        Map = new int[(countX + 2) * (countY + 2) * (countZ + 2)];
        Array.Fill(Map, -1);
        Neighbours = new int[26];
        int n = 0;
        for (int k = -1; k <= 1; k++)
            for (int j = -1; j <= 1; j++)
                for (int i = -1; i <= 1; i++)
                    if (i != 0 || j != 0 || k != 0)
                        Neighbours[n++] = i + (countX + 2) * (j + (countY + 2) * k);
    }

    /// <summary>Corner of the first cell, metres.</summary>
    public Point3 Origin { get; }

    /// <summary>Edge lengths of a cell, metres.</summary>
    public Point3 Cell { get; }

    /// <summary>Cells along x.</summary>
    public int CountX { get; }

    /// <summary>Cells along y.</summary>
    public int CountY { get; }

    /// <summary>Cells along z.</summary>
    public int CountZ { get; }

    /// <summary>Open share of the core: 1 less the share of plastic.</summary>
    public double OpenShare { get; }

    /// <summary>Cells that count.</summary>
    public int Count => Share.Length;

    /// <summary>Pore volume of the cells that count, m³.</summary>
    public double Volume { get; private set; }

    /// <summary>Pore volume in cells too empty to count, m³.</summary>
    public double Neglected { get; private set; }

    /// <summary>Core share of each cell that counts.</summary>
    internal double[] Share { get; private set; } = [];

    /// <summary>Middles of the cells that count, metres.</summary>
    internal Point3[] Centre { get; private set; } = [];

    /// <summary>Outward unit normal of the plane that cuts a cell; zero for a cell that is not cut, or cut so that no plane is found.</summary>
    internal Point3[] Normal { get; private set; } = [];

    /// <summary>Number of each cell that counts in <see cref="Map"/>.</summary>
    internal int[] Places { get; private set; } = [];

    /// <summary>For each cell of a grid with one empty cell round it: its number among those that count, −1 when it does not.</summary>
    internal int[] Map { get; }

    /// <summary>Steps in <see cref="Map"/> to the 26 cells round one.</summary>
    internal int[] Neighbours { get; }

    /// <summary>Takes the pores from a part on its grid.</summary>
    /// <param name="part">The part.</param>
    /// <param name="infillShare">Share of the core that is plastic, 0 to 0.95.</param>
    /// <param name="threshold">Share of core above which a cell counts, 0.001 to 0.9.</param>
    public static PoreGrid Create(PartVoxels part, double infillShare, double threshold = UsualThreshold)
    {
        ArgumentNullException.ThrowIfNull(part);
        PoreGrid grid = new(part.Origin, part.Cell, part.CountX, part.CountY, part.CountZ, 1 - Require.Between(infillShare, 0, 0.95));
        grid.Fill(part.Core, Require.Between(threshold, 0.001, 0.9));
        return grid;
    }

    /// <summary>The same pores on a grid of cells twice as long, wide and high.</summary>
    /// <param name="part">The part.</param>
    /// <param name="infillShare">Share of the core that is plastic, 0 to 0.95.</param>
    /// <param name="threshold">Share of core above which a cell counts, 0.001 to 0.9.</param>
    public static PoreGrid CreateCoarse(PartVoxels part, double infillShare, double threshold = UsualThreshold)
    {
        ArgumentNullException.ThrowIfNull(part);
        int countX = (part.CountX + 1) / 2, countY = (part.CountY + 1) / 2, countZ = (part.CountZ + 1) / 2;
        double[] share = new double[countX * countY * countZ];
        for (int k = 0; k < part.CountZ; k++)
            for (int j = 0; j < part.CountY; j++)
                for (int i = 0; i < part.CountX; i++)
                    share[i / 2 + countX * (j / 2 + countY * (k / 2))] += part.Core[part.Index(i, j, k)] / 8;
        PoreGrid grid = new(part.Origin, 2 * part.Cell, countX, countY, countZ, 1 - Require.Between(infillShare, 0, 0.95));
        grid.Fill(share, Require.Between(threshold, 0.001, 0.9));
        return grid;
    }

    /// <summary>Number on the whole grid of a cell that counts: x fastest, then y, then z.</summary>
    /// <param name="cell">0 to <see cref="Count"/> − 1, in the order of <see cref="TrappedAirResult.Cells"/>.</param>
    public int CellOf(int cell)
    {
        int place = Places[cell], rowY = CountX + 2, rowZ = rowY * (CountY + 2);
        return place % rowY - 1 + CountX * (place / rowY % (CountY + 2) - 1 + CountY * (place / rowZ - 1));
    }

    /// <summary>Share of core in a cell that counts, gyroid and pores together, 0 to 1.</summary>
    /// <param name="cell">0 to <see cref="Count"/> − 1.</param>
    public double CoreShareOf(int cell) => Share[cell];

    /// <summary>Half the extent of a cell along a direction, metres.</summary>
    internal double HalfExtent(Point3 unit) => (Math.Abs(unit.X) * Cell.X + Math.Abs(unit.Y) * Cell.Y + Math.Abs(unit.Z) * Cell.Z) / 2;

    /// <summary>Pore volume of a cell that counts, m³.</summary>
    internal double VolumeOf(int cell) => Share[cell] * OpenShare * Cell.X * Cell.Y * Cell.Z;

    /// <summary>How far the core in a cell reaches along a direction from the cell's middle, metres; for a cell that counts.</summary>
    /// <remarks>
    /// The farthest point of a box cut by one plane: from the box's farthest corner one edge after another is walked back, that first which gives up least
    /// height for the distance it gains from the plane (a linear programme with one condition, solved exactly).
    /// </remarks>
    internal double Reach(int cell, Point3 unit)
    {
        double reach = HalfExtent(unit);
        Point3 normal = Normal[cell];
        if (normal == default)
            // Uncut, or a slab too thin for a plane: then its middle is the cell's.
            return Share[cell] >= Full ? reach : Share[cell] * reach;
        double offset = (Share[cell] - 0.5) * 2 * HalfExtent(normal);
        double over = Side(unit.X) * normal.X * Cell.X / 2 + Side(unit.Y) * normal.Y * Cell.Y / 2 + Side(unit.Z) * normal.Z * Cell.Z / 2 - offset;
        if (over <= 0)
            return reach;
        Span<(double Price, double Room, double Loss)> steps =
        [
            Step(normal.X, unit.X, Cell.X), Step(normal.Y, unit.Y, Cell.Y), Step(normal.Z, unit.Z, Cell.Z),
        ];
        for (int pass = 0; pass < 3 && over > 0; pass++)
        {
            int best = 0;
            for (int i = 1; i < 3; i++)
                if (steps[i].Price < steps[best].Price)
                    best = i;
            (double price, double room, double loss) = steps[best];
            if (double.IsPositiveInfinity(price))
                break;
            double used = Math.Min(1, over / room);
            over -= used * room;
            reach -= used * loss;
            steps[best].Price = double.PositiveInfinity;
        }

        return reach;

        // Which end of an edge lies higher; for a level edge the end that lies deeper inside does not matter, as walking along it costs nothing.
        static double Side(double u) => u < 0 ? -1 : 1;

        static (double Price, double Room, double Loss) Step(double n, double u, double edge)
        {
            double gain = n * Side(u) * edge, loss = Math.Abs(u) * edge;
            return gain > 0 ? (loss / gain, gain, loss) : (double.PositiveInfinity, 0, 0);
        }
    }

    /// <summary>The point of the core's border nearest to a cell's middle along the way out, and that way: the drill comes from there.</summary>
    internal (Point3 Place, Point3 Outward) Border(int cell, Point3 wanted)
    {
        Point3 normal = Normal[cell];
        if (normal != default)
            return (Centre[cell] + (Share[cell] - 0.5) * 2 * HalfExtent(normal) * normal, normal);
        // A full cell beside the border: out through the open faces, the one nearest to the wanted direction first.
        int place = Places[cell], rowY = CountX + 2, rowZ = rowY * (CountY + 2);
        Span<(int Step, Point3 Way, double Edge)> faces =
        [
            (1, new(1, 0, 0), Cell.X), (-1, new(-1, 0, 0), Cell.X), (rowY, new(0, 1, 0), Cell.Y), (-rowY, new(0, -1, 0), Cell.Y), (rowZ, new(0, 0, 1), Cell.Z), (-rowZ, new(0, 0, -1), Cell.Z),
        ];
        Point3 way = wanted;
        double edge = 2 * HalfExtent(wanted), nearest = double.NegativeInfinity;
        foreach ((int step, Point3 face, double length) in faces)
            if (Map[place + step] < 0 && face.Dot(wanted) > nearest)
                (way, edge, nearest) = (face, length, face.Dot(wanted));
        return (Centre[cell] + edge / 2 * way, way);
    }

    private void Fill(double[] core, double threshold)
    {
        List<int> places = [], sources = [];
        int rowY = CountX + 2, rowZ = rowY * (CountY + 2);
        double all = 0, counted = 0;
        for (int k = 0; k < CountZ; k++)
            for (int j = 0; j < CountY; j++)
                for (int i = 0; i < CountX; i++)
                {
                    int source = i + CountX * (j + CountY * k);
                    double share = Require.Between(core[source], 0, 1 + 1e-9, nameof(core));
                    all += share;
                    if (share <= threshold)
                        continue;
                    int place = i + 1 + rowY * (j + 1) + rowZ * (k + 1);
                    Map[place] = places.Count;
                    places.Add(place);
                    sources.Add(source);
                    counted += share;
                }

        Places = [.. places];
        Share = new double[places.Count];
        Centre = new Point3[places.Count];
        Normal = new Point3[places.Count];
        for (int cell = 0; cell < Places.Length; cell++)
        {
            int source = sources[cell], i = source % CountX, j = source / CountX % CountY, k = source / (CountX * CountY);
            Share[cell] = Math.Min(core[source], 1);
            Centre[cell] = new(Origin.X + (i + 0.5) * Cell.X, Origin.Y + (j + 0.5) * Cell.Y, Origin.Z + (k + 0.5) * Cell.Z);
            if (Share[cell] < Full)
                Normal[cell] = NormalAt(core, i, j, k);
        }

        double scale = OpenShare * Cell.X * Cell.Y * Cell.Z;
        (Volume, Neglected) = (scale * counted, scale * (all - counted));
    }

    private Point3 NormalAt(double[] core, int i, int j, int k)
    {
        double x = 0, y = 0, z = 0, sum = 0;
        for (int dk = -1; dk <= 1; dk++)
            for (int dj = -1; dj <= 1; dj++)
                for (int di = -1; di <= 1; di++)
                {
                    int ii = i + di, jj = j + dj, kk = k + dk;
                    if (ii < 0 || jj < 0 || kk < 0 || ii >= CountX || jj >= CountY || kk >= CountZ)
                        continue;
                    double share = core[ii + CountX * (jj + CountY * kk)];
                    double weightX = Weight(dj) * Weight(dk), weightY = Weight(di) * Weight(dk), weightZ = Weight(di) * Weight(dj);
                    x -= di * weightX * share;
                    y -= dj * weightY * share;
                    z -= dk * weightZ * share;
                    sum += share;
                }

        Point3 slope = new(x / Cell.X, y / Cell.Y, z / Cell.Z);
        double steepness = slope.Length * Math.Min(Cell.X, Math.Min(Cell.Y, Cell.Z));
        // A plane between full and empty has a steepness of about 16 in these weights; a tenth of it is no plane but a thin slab or a string.
        return steepness > 1.6 && sum > 0 ? 1 / slope.Length * slope : default;
    }

    private static double Weight(int step) => step is 0 ? 2 : 1;
}
