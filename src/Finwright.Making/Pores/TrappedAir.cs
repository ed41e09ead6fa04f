using Finwright.Geometry;
using Finwright.Numerics;

namespace Finwright.Making.Pores;

/// <summary>
/// Which air stays when resin rises slowly in a part: it leaves only by ways to a vent that the resin has not closed. Owns its work arrays; one
/// solver for one grid, many attitudes.
/// </summary>
/// <remarks>
/// <para>For each cell the way to a vent whose lowest place lies highest is found by flooding from the vents, highest place first (priority flood: R.
/// Barnes, C. Lehman and D. Mulla, "Priority-flood: an optimal depression-filling and watershed-labeling algorithm for digital elevation models",
/// Computers and Geosciences 62 (2014) 117, turned upside down and to three dimensions). When the resin reaches that lowest place the way is closed:
/// air above it stays.</para>
/// <para>Cells pass air to all 26 cells round them, so that a wall at any slope is a stair one can climb. A cell's height is that of its highest open
/// point, with the border in it as a plane (<see cref="PoreGrid"/>), so that a straight sloped wall climbs without dips; what dips are left are below
/// half a cell's height along up, and bubbles no deeper than that are not counted. A true bubble as shallow is missed.</para>
/// <para>Left out: that trapped air is pressed together and lets a little resin in (about 1 % for each 100 mm of resin), bubbles that cling to lines,
/// and resin held up by its skin in fine pores. Both labyrinths must be open at every port.</para>
/// </remarks>
public sealed class TrappedAir
{
    // Heights are told apart to a part in this many of the part's height: some micrometres.
    private const int Levels = 1 << 16;

    private readonly PoreGrid _grid;
    private readonly double[] _top, _bottom;
    private readonly int[] _level, _spill, _next, _head, _stack, _region;
    private readonly float[] _fraction;
    private double _lowest, _step;

    /// <summary>Prepares for a grid.</summary>
    public TrappedAir(PoreGrid grid)
    {
        ArgumentNullException.ThrowIfNull(grid);
        _grid = grid;
        int count = grid.Count;
        (_top, _bottom) = (new double[count], new double[count]);
        (_level, _spill, _next, _stack, _region) = (new int[count], new int[count], new int[count], new int[count], new int[count]);
        _head = new int[Levels + 1];
        _fraction = new float[count];
    }

    /// <summary>Air that stays in an attitude.</summary>
    /// <param name="up">Upward direction, layer axes; need not be of unit length.</param>
    /// <param name="vents">The ports that let air out; none: all stays.</param>
    /// <param name="keepCells">Whether the result keeps each cell's share.</param>
    public TrappedAirResult Solve(Point3 up, IReadOnlyList<PourPort> vents, bool keepCells = false)
    {
        ArgumentNullException.ThrowIfNull(vents);
        Point3 unit = 1 / Require.Positive(up.Length) * up;
        bool[] reach = new bool[vents.Count];
        Flood(unit, vents, reach);
        List<TrappedRegion> regions = [];
        double volume = Gather(unit, regions);
        regions.Sort((a, b) => b.Volume.CompareTo(a.Volume));
        return new(unit, volume, _grid.Volume, regions, Tolerance(unit), reach, keepCells ? [.. _fraction] : []);
    }

    /// <summary>Share of each cell's pores that stays air, for the search over attitudes; valid until the next call.</summary>
    internal ReadOnlySpan<float> Fractions(Point3 unit, IReadOnlyList<PourPort> vents)
    {
        Flood(unit, vents, new bool[vents.Count]);
        Gather(unit, null);
        return _fraction;
    }

    /// <summary>What stays when the part is rocked between two attitudes: air that stays in both.</summary>
    /// <param name="first">One attitude, with its cells kept.</param>
    /// <param name="second">The other, with its cells kept.</param>
    /// <returns>Told for the first attitude's up.</returns>
    public TrappedAirResult Both(TrappedAirResult first, TrappedAirResult second)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        if (first.Cells.Count != _grid.Count || second.Cells.Count != _grid.Count)
            throw new ArgumentException("Both results must be of this grid and keep their cells.", nameof(first));
        for (int cell = 0; cell < _grid.Count; cell++)
            _fraction[cell] = Math.Min(first.Cells[cell], second.Cells[cell]);
        Measure(first.Up);
        Array.Clear(_spill);
        List<TrappedRegion> regions = [];
        double volume = Gather(first.Up, regions, shallowToo: true);
        regions.Sort((a, b) => b.Volume.CompareTo(a.Volume));
        return new(first.Up, volume, _grid.Volume, regions, first.Tolerance, first.VentsReach, [.. _fraction]);
    }

    /// <summary>Number of the cell with the highest open point along a direction; among those within the tolerance the one nearest to their middle. −1 on an empty grid.</summary>
    internal int Highest(Point3 unit)
    {
        if (_grid.Count == 0)
            return -1;
        double most = double.NegativeInfinity;
        for (int cell = 0; cell < _grid.Count; cell++)
        {
            _top[cell] = _grid.Centre[cell].Dot(unit) + _grid.Reach(cell, unit);
            most = Math.Max(most, _top[cell]);
        }

        double least = most - Tolerance(unit);
        Point3 sum = default;
        int count = 0;
        for (int cell = 0; cell < _grid.Count; cell++)
            if (_top[cell] >= least)
            {
                sum += _grid.Centre[cell];
                count++;
            }

        Point3 middle = 1.0 / count * sum;
        int best = -1;
        double nearest = double.PositiveInfinity;
        for (int cell = 0; cell < _grid.Count; cell++)
            if (_top[cell] >= least && (_grid.Centre[cell] - middle).Length < nearest)
                (best, nearest) = (cell, (_grid.Centre[cell] - middle).Length);
        return best;
    }

    /// <summary>Number of the cell that holds a point, or of the nearest within two cells; −1 when there is none.</summary>
    internal int CellAt(Point3 point)
    {
        int best = -1;
        double nearest = double.PositiveInfinity;
        int i = (int)Math.Floor((point.X - _grid.Origin.X) / _grid.Cell.X), j = (int)Math.Floor((point.Y - _grid.Origin.Y) / _grid.Cell.Y), k = (int)Math.Floor((point.Z - _grid.Origin.Z) / _grid.Cell.Z);
        for (int kk = Math.Max(0, k - 2); kk <= Math.Min(_grid.CountZ - 1, k + 2); kk++)
            for (int jj = Math.Max(0, j - 2); jj <= Math.Min(_grid.CountY - 1, j + 2); jj++)
                for (int ii = Math.Max(0, i - 2); ii <= Math.Min(_grid.CountX - 1, i + 2); ii++)
                {
                    int cell = _grid.Map[ii + 1 + (_grid.CountX + 2) * (jj + 1 + (_grid.CountY + 2) * (kk + 1))];
                    if (cell >= 0 && (_grid.Centre[cell] - point).Length < nearest)
                        (best, nearest) = (cell, (_grid.Centre[cell] - point).Length);
                }

        return best;
    }

    private double Tolerance(Point3 unit) => _grid.HalfExtent(unit);

    /// <summary>Highest and lowest open point of every cell, and the scale of heights.</summary>
    private void Measure(Point3 unit)
    {
        double lowest = double.PositiveInfinity, highest = double.NegativeInfinity;
        Point3 down = -1 * unit;
        for (int cell = 0; cell < _grid.Count; cell++)
        {
            double middle = _grid.Centre[cell].Dot(unit);
            _top[cell] = middle + _grid.Reach(cell, unit);
            _bottom[cell] = middle - _grid.Reach(cell, down);
            lowest = Math.Min(lowest, _bottom[cell]);
            highest = Math.Max(highest, _top[cell]);
        }

        (_lowest, _step) = (lowest, Math.Max(highest - lowest, 1e-12) / (Levels - 1));
    }

    private int LevelOf(double height) => Math.Clamp((int)((height - _lowest) / _step + 0.5), 0, Levels - 1);

    private void Flood(Point3 unit, IReadOnlyList<PourPort> vents, bool[] reach)
    {
        Measure(unit);
        Array.Fill(_spill, -1);
        Array.Fill(_head, -1);
        for (int cell = 0; cell < _grid.Count; cell++)
            _level[cell] = LevelOf(_top[cell]);
        int highest = -1;
        // Where two vents meet in a cell the first keeps it, so the higher one comes first.
        int[] order = new int[vents.Count];
        for (int i = 0; i < order.Length; i++)
            order[i] = i;
        Array.Sort(order, (a, b) => vents[b].Top(unit).CompareTo(vents[a].Top(unit)));
        foreach (int vent in order)
            reach[vent] = Open(vents[vent], unit, ref highest);

        // Each cell is settled when it is first reached: cells come in falling order of their lowest place on the way, so no later way is better.
        int[] map = _grid.Map, places = _grid.Places, neighbours = _grid.Neighbours;
        for (int level = highest; level >= 0; level--)
            while (_head[level] >= 0)
            {
                int cell = _head[level];
                _head[level] = _next[cell];
                int place = places[cell];
                foreach (int step in neighbours)
                {
                    int other = map[place + step];
                    if (other < 0 || _spill[other] >= 0)
                        continue;
                    int spill = Math.Min(level, _level[other]);
                    _spill[other] = spill;
                    _next[other] = _head[spill];
                    _head[spill] = other;
                }
            }
    }

    /// <summary>Starts the flood at a vent: in every cell that its mouth meets, or in the nearest.</summary>
    private bool Open(PourPort vent, Point3 unit, ref int highest)
    {
        int nearest = CellAt(vent.Mouth);
        if (nearest < 0)
            return false;
        int ventLevel = LevelOf(vent.Top(unit));
        Start(nearest, ref highest);
        double radius = vent.Diameter / 2, reach = 2 * _grid.HalfExtent(vent.Outward);
        int ri = (int)Math.Ceiling(radius / _grid.Cell.X) + 1, rj = (int)Math.Ceiling(radius / _grid.Cell.Y) + 1, rk = (int)Math.Ceiling(radius / _grid.Cell.Z) + 1;
        int rowY = _grid.CountX + 2, rowZ = rowY * (_grid.CountY + 2), place = _grid.Places[nearest];
        int i0 = place % rowY, j0 = place / rowY % (_grid.CountY + 2), k0 = place / rowZ;
        for (int k = Math.Max(1, k0 - rk); k <= Math.Min(_grid.CountZ, k0 + rk); k++)
            for (int j = Math.Max(1, j0 - rj); j <= Math.Min(_grid.CountY, j0 + rj); j++)
                for (int i = Math.Max(1, i0 - ri); i <= Math.Min(_grid.CountX, i0 + ri); i++)
                {
                    int cell = _grid.Map[i + rowY * j + rowZ * k];
                    if (cell < 0)
                        continue;
                    Point3 from = _grid.Centre[cell] - vent.Mouth;
                    double along = from.Dot(vent.Outward);
                    Point3 aside = from - along * vent.Outward;
                    double distance = aside.Length;
                    if (Math.Abs(along) <= reach && (distance is 0 || distance - _grid.HalfExtent(1 / distance * aside) < radius * (1 - 1e-9)))
                        Start(cell, ref highest);
                }

        return true;

        void Start(int cell, ref int highest)
        {
            int spill = Math.Min(ventLevel, _level[cell]);
            if (_spill[cell] >= 0)
                return;
            _spill[cell] = spill;
            _next[cell] = _head[spill];
            _head[spill] = cell;
            highest = Math.Max(highest, spill);
        }
    }

    /// <summary>Shares from spill levels, bubbles from shares; those too shallow to be true are set free.</summary>
    private double Gather(Point3 unit, List<TrappedRegion>? regions, bool shallowToo = false)
    {
        int count = _grid.Count;
        double tolerance = Tolerance(unit) * (1 + 1e-9) + 2 * _step, volume = 0;
        if (!shallowToo)
            for (int cell = 0; cell < count; cell++)
            {
                double spill = _lowest + _spill[cell] * _step;
                _fraction[cell] = _spill[cell] < 0 ? 1
                    : _spill[cell] >= _level[cell] ? 0
                    : (float)Math.Clamp((_top[cell] - spill) / Math.Max(_top[cell] - _bottom[cell], _step), 0, 1);
            }

        Array.Fill(_region, -1);
        int[] map = _grid.Map, places = _grid.Places, neighbours = _grid.Neighbours;
        for (int seed = 0; seed < count; seed++)
        {
            if (_region[seed] >= 0 || _fraction[seed] <= 0)
                continue;
            // One bubble: cells that touch and whose way out is closed at the same level.
            int size = 0, key = _spill[seed], high = seed;
            _stack[size++] = seed;
            _region[seed] = seed;
            for (int read = 0; read < size; read++)
            {
                int cell = _stack[read];
                if (_top[cell] > _top[high])
                    high = cell;
                foreach (int step in neighbours)
                {
                    int other = map[places[cell] + step];
                    if (other < 0 || _region[other] >= 0 || _fraction[other] <= 0 || _spill[other] != key)
                        continue;
                    _region[other] = seed;
                    _stack[size++] = other;
                }
            }

            double depth = _top[high] - (key < 0 || shallowToo ? Lowest(size) : _lowest + key * _step);
            if (!shallowToo && key >= 0 && depth <= tolerance)
            {
                for (int read = 0; read < size; read++)
                    _fraction[_stack[read]] = 0;
                continue;
            }

            double held = 0;
            Point3 moment = default;
            for (int read = 0; read < size; read++)
            {
                int cell = _stack[read];
                double part = _fraction[cell] * _grid.VolumeOf(cell);
                held += part;
                moment += part * _grid.Centre[cell];
            }

            volume += held;
            if (regions is not null && held > 0)
                regions.Add(new(held, Peak(unit, size, _top[high]), 1 / held * moment, depth, !shallowToo && key < 0));
        }

        return volume;
    }

    private double Lowest(int size)
    {
        double lowest = double.PositiveInfinity;
        for (int read = 0; read < size; read++)
            lowest = Math.Min(lowest, _bottom[_stack[read]]);
        return lowest;
    }

    /// <summary>The highest point of a bubble: of the cells that reach as high within the tolerance, the one nearest to their middle, at the border.</summary>
    private Point3 Peak(Point3 unit, int size, double top)
    {
        double least = top - Tolerance(unit) / 2;
        Point3 sum = default;
        int high = 0;
        for (int read = 0; read < size; read++)
            if (_top[_stack[read]] >= least)
            {
                sum += _grid.Centre[_stack[read]];
                high++;
            }

        Point3 middle = 1.0 / high * sum;
        int best = -1;
        double nearest = double.PositiveInfinity;
        for (int read = 0; read < size; read++)
        {
            double distance = (_grid.Centre[_stack[read]] - middle).Length;
            if (_top[_stack[read]] >= least && distance < nearest)
                (best, nearest) = (_stack[read], distance);
        }

        return _grid.Centre[best] + (_top[best] - _grid.Centre[best].Dot(unit)) * unit;
    }
}
