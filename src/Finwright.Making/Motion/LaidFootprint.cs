using Finwright.Geometry;

namespace Finwright.Making.Motion;

/// <summary>Tells the part from priming lines and skirts: low paths that nothing laid higher stands on.</summary>
/// <remarks>
/// The bed is divided into cells of a millimetre. Cells touched by paths in the lowest millimetre form patches (neighbours, also across corners,
/// belong together). A patch that no higher path touches is apart: skirts keep more than two cells away from the part, while a brim
/// touches it and counts as part of it. When all paths are low, patches of several heights are the part; when there is only one height, nothing can be told.
/// </remarks>
internal sealed class LaidFootprint
{
    private const double Cell = 1e-3;

    // The lowest millimetre: skirts are a few layers high, parts are higher.
    private const double Low = 1e-3;

    private const int TileBits = 8, TileSize = 1 << TileBits;

    // Cells of one path; a path is a metre long at most on any bed that fits a room.
    private const int MostSamples = 1024;

    private const int MostTraces = 1_000_000;

    // Four square metres of low paths.
    private const int MostLowCells = 4_000_000;

    // Cells are numbered from a corner beyond the farthest place that is accepted.
    private const int Shift = 10_240;

    private readonly CellSet _low = new(), _high = new();
    private readonly Dictionary<(int Cell, double Height), Trace> _traces = [];
    private double _lowTop = double.NaN;
    private Trace _open;
    private bool _isOpen;
    private Box _highBox = Box.Empty, _allBox = Box.Empty;

    /// <summary>Box round everything that is laid.</summary>
    public Bounds? All => _allBox.ToBounds();

    /// <summary>Box round what is laid above the lowest millimetre.</summary>
    public Bounds? Upper => _highBox.ToBounds();

    /// <summary>The head moves without laying plastic.</summary>
    public void Travel()
    {
        if (_isOpen)
            Finish();
    }

    /// <summary>A straight path.</summary>
    public void Line(in Point3 from, in Point3 to, double length, double volume)
    {
        bool low = Begin(from, to, length, volume);
        CellSet cells = low ? _low : _high;
        double x = from.X / Cell + Shift, y = from.Y / Cell + Shift, dx = to.X / Cell + Shift - x, dy = to.Y / Cell + Shift - y;
        double span = Math.Max(Math.Abs(dx), Math.Abs(dy));
        int steps = span < 1 ? 1 : (int)Math.Min(MostSamples, Math.Ceiling(2 * span));
        for (int i = 0; i <= steps; i++)
        {
            double s = (double)i / steps;
            cells.Add((int)(x + s * dx), (int)(y + s * dy));
        }
    }

    /// <summary>A path along an arc.</summary>
    public void Arc(in Point3 from, in Point3 to, in ArcPath arc, double length, double volume)
    {
        bool low = Begin(from, to, length, volume);
        CellSet cells = low ? _low : _high;
        int steps = (int)Math.Min(MostSamples, Math.Ceiling(2 * arc.Length / Cell) + 1);
        cells.Add((int)(from.X / Cell + Shift), (int)(from.Y / Cell + Shift));
        for (int i = 0; i <= steps; i++)
        {
            Point2 at = arc.At((double)i / steps);
            cells.Add((int)(at.X / Cell + Shift), (int)(at.Y / Cell + Shift));
        }

        // The arc's farthest places: where it crosses the axes through its centre.
        double begin = Math.Min(arc.Start, arc.Start + arc.Sweep), end = Math.Max(arc.Start, arc.Start + arc.Sweep);
        for (double k = Math.Ceiling(begin / (Math.PI / 2)); k * Math.PI / 2 <= end; k++)
        {
            (double sin, double cos) = Math.SinCos(k * Math.PI / 2);
            Point3 corner = new(arc.Centre.X + arc.Radius * cos, arc.Centre.Y + arc.Radius * sin, to.Z);
            _allBox.Add(corner);
            if (low)
                _open.Box.Add(corner);
            else
                _highBox.Add(corner);
        }
    }

    /// <summary>What lies apart, and the box round the rest; takes the plastic apart out of the layers.</summary>
    /// <param name="heights">Loses what lies apart.</param>
    /// <param name="told">Whether the file lets part and rest be told.</param>
    public (MotionApart? Apart, Bounds? Part) Separate(LaidHeights heights, out bool told)
    {
        Travel();
        told = _traces.Count <= MostTraces && _low.Count() <= MostLowCells;
        if (!told || _traces.Count is 0)
            return (null, All);
        Patches patches = new(_low);
        HashSet<int> ofPart = [];
        if (_highBox.IsEmpty)
        {
            Dictionary<int, double> seen = [];
            foreach (((int cell, double height), Trace _) in _traces)
            {
                int patch = patches.Of(cell);
                if (!seen.TryAdd(patch, height) && Math.Abs(seen[patch] - height) > LaidHeights.Same)
                    ofPart.Add(patch);
            }

            told = ofPart.Count > 0;
            if (!told)
                return (null, All);
        }
        else
        {
            foreach (int cell in _low.Cells())
            {
                if (_high.Near(cell))
                    ofPart.Add(patches.Of(cell));
            }

            // Nothing low under what is high: then no patch is known to be the part's, and none to be apart.
            if (ofPart.Count is 0)
            {
                told = false;
                return (null, All);
            }
        }

        Box part = _highBox, apart = Box.Empty;
        double volume = 0, length = 0;
        foreach (((int cell, double height), Trace trace) in _traces)
        {
            if (ofPart.Contains(patches.Of(cell)))
            {
                part.Add(trace.Box);
                continue;
            }

            apart.Add(trace.Box);
            volume += trace.Volume;
            length += trace.Length;
            heights.TakeAway(height, trace.Volume, trace.Length);
        }

        return (apart.ToBounds() is Bounds box ? new(volume, length, box) : null, part.ToBounds());
    }

    private bool Begin(in Point3 from, in Point3 to, double length, double volume)
    {
        if (double.IsNaN(_lowTop))
            _lowTop = to.Z + Low;
        _allBox.Add(from);
        _allBox.Add(to);
        bool low = to.Z <= _lowTop;
        if (!low)
        {
            Travel();
            _highBox.Add(from);
            _highBox.Add(to);
            return false;
        }

        if (_isOpen && Math.Abs(to.Z - _open.Height) > LaidHeights.Same)
        {
            // A ramp at the start of a layer goes on at its height; whatever was level before it is finished.
            if (from.Z > _open.Height - LaidHeights.Same && to.Z > from.Z + LaidHeights.Same && _open.Rises)
                _open.Height = to.Z;
            else
                Finish();
        }

        if (!_isOpen)
        {
            _isOpen = true;
            _open = new() { Cell = CellOf(from), Height = to.Z, Rises = to.Z > from.Z + LaidHeights.Same, Box = Box.Empty };
        }

        _open.Box.Add(from);
        _open.Box.Add(to);
        _open.Volume += volume;
        _open.Length += length;
        return true;
    }

    private void Finish()
    {
        _isOpen = false;
        if (_traces.Count > MostTraces)
            return;
        ref Trace kept = ref System.Runtime.InteropServices.CollectionsMarshal.GetValueRefOrAddDefault(_traces, (_open.Cell, _open.Height), out bool known);
        if (!known)
        {
            kept = _open;
            return;
        }

        kept.Box.Add(_open.Box);
        kept.Volume += _open.Volume;
        kept.Length += _open.Length;
    }

    private static int CellOf(in Point3 at) => CellSet.Number((int)(at.X / Cell + Shift), (int)(at.Y / Cell + Shift));

    private struct Trace
    {
        public int Cell;
        public double Height, Volume, Length;
        public bool Rises;
        public Box Box;
    }

    private struct Box
    {
        private double _x0, _y0, _z0, _x1, _y1, _z1;

        public static Box Empty => new()
        {
            _x0 = double.PositiveInfinity,
            _y0 = double.PositiveInfinity,
            _z0 = double.PositiveInfinity,
            _x1 = double.NegativeInfinity,
            _y1 = double.NegativeInfinity,
            _z1 = double.NegativeInfinity,
        };

        public readonly bool IsEmpty => _x0 > _x1;

        public void Add(in Point3 p)
        {
            if (p.X < _x0)
                _x0 = p.X;
            if (p.X > _x1)
                _x1 = p.X;
            if (p.Y < _y0)
                _y0 = p.Y;
            if (p.Y > _y1)
                _y1 = p.Y;
            if (p.Z < _z0)
                _z0 = p.Z;
            if (p.Z > _z1)
                _z1 = p.Z;
        }

        public void Add(in Box other)
        {
            if (other.IsEmpty)
                return;
            Add(new Point3(other._x0, other._y0, other._z0));
            Add(new Point3(other._x1, other._y1, other._z1));
        }

        public readonly Bounds? ToBounds() => IsEmpty ? null : new(new(_x0, _y0, _z0), new(_x1, _y1, _z1));
    }

    /// <summary>A set of cells, kept as bits in square tiles: 50 MB when every cell within ten metres is touched.</summary>
    private sealed class CellSet
    {
        private readonly Dictionary<int, ulong[]> _tiles = [];
        private int _lastKey = -1;
        private ulong[] _lastTile = [];

        public static int Number(int x, int y) => x << 16 | y;

        public void Add(int x, int y)
        {
            int key = x >> TileBits << TileBits | y >> TileBits;
            if (key != _lastKey)
            {
                if (!_tiles.TryGetValue(key, out ulong[]? tile))
                    _tiles.Add(key, tile = new ulong[TileSize * TileSize / 64]);
                (_lastKey, _lastTile) = (key, tile);
            }

            int bit = (y & TileSize - 1) * TileSize + (x & TileSize - 1);
            _lastTile[bit >> 6] |= 1ul << bit;
        }

        public long Count() => _tiles.Values.Sum(tile => tile.Sum(word => (long)System.Numerics.BitOperations.PopCount(word)));

        public bool Has(int x, int y)
        {
            int key = x >> TileBits << TileBits | y >> TileBits;
            if (!_tiles.TryGetValue(key, out ulong[]? tile))
                return false;
            int bit = (y & TileSize - 1) * TileSize + (x & TileSize - 1);
            return (tile[bit >> 6] & 1ul << bit) != 0;
        }

        public bool Near(int cell)
        {
            int x = cell >> 16, y = cell & 0xFFFF;
            for (int j = -1; j <= 1; j++)
            {
                for (int i = -1; i <= 1; i++)
                {
                    if (Has(x + i, y + j))
                        return true;
                }
            }

            return false;
        }

        public IEnumerable<int> Cells()
        {
            foreach ((int key, ulong[] tile) in _tiles)
            {
                int left = key >> TileBits << TileBits, top = (key & TileSize - 1) << TileBits;
                for (int word = 0; word < tile.Length; word++)
                {
                    for (ulong bits = tile[word]; bits != 0; bits &= bits - 1)
                    {
                        int bit = (word << 6) + System.Numerics.BitOperations.TrailingZeroCount(bits);
                        yield return Number(left + (bit & TileSize - 1), top + (bit >> TileBits));
                    }
                }
            }
        }
    }

    /// <summary>Patches of neighbouring cells.</summary>
    private sealed class Patches
    {
        private readonly Dictionary<int, int> _patch = [];

        public Patches(CellSet cells)
        {
            Stack<int> open = [];
            int count = 0;
            foreach (int first in cells.Cells())
            {
                if (_patch.ContainsKey(first))
                    continue;
                _patch[first] = count;
                open.Push(first);
                while (open.TryPop(out int cell))
                {
                    int x = cell >> 16, y = cell & 0xFFFF;
                    for (int j = -1; j <= 1; j++)
                    {
                        for (int i = -1; i <= 1; i++)
                        {
                            if (cells.Has(x + i, y + j) && _patch.TryAdd(CellSet.Number(x + i, y + j), count))
                                open.Push(CellSet.Number(x + i, y + j));
                        }
                    }
                }

                count++;
            }
        }

        public int Of(int cell) => _patch[cell];
    }
}
