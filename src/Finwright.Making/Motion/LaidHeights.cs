namespace Finwright.Making.Motion;

/// <summary>Sorts laid paths into layers and spirals while the file goes by.</summary>
/// <remarks>
/// Only paths that lay plastic count, so hops and travels in the air leave no trace. A path at the height of the one before belongs to the same
/// layer. A path that rises while it lays goes on with the one before it as long as the head does not travel in between; so does a level path
/// that begins a fraction of a layer higher, as in spirals whose heights were rounded. A level stretch longer than the climb before it, when that was
/// a layer's, ends the run: a ramp at the seam and the layer behind it. A run that rises by a millimetre or more is a spiral; a shorter one belongs to the
/// layer at its top.
/// </remarks>
internal sealed class LaidHeights
{
    /// <summary>Two heights nearer than this are one: motion files resolve a micrometre, and layers are 40 of these steps thick at least.</summary>
    public const double Same = 2e-6;

    // Thinner than any layer that is printed.
    private const double ThinnestLayer = 0.03e-3;

    // More than any layer is thick.
    private const double SpiralRise = 1e-3;

    // A seam in a spiral may leave a little way without plastic.
    private const double LongestGap = 1e-3;

    private const int Most = 100_000;

    private readonly List<Level> _levels = [];
    private readonly List<MotionSpiral> _spirals = [];
    private bool _running, _rising, _broken;
    private double _base, _volume, _length, _climb, _climbLength, _level;
    private long _firstLine, _leavingLine;
    private Level? _last;
    private double _highest;

    /// <summary>Height laid last, metres; 0 before the first.</summary>
    public double Current { get; private set; }

    /// <summary>Whether plastic was laid more than a millimetre below what was laid before; a priming line may lie a little above the first layer.</summary>
    public bool Returns { get; private set; }

    /// <summary>Whether there are more heights than any part has.</summary>
    public bool Overflow => _levels.Count > Most || _spirals.Count > Most;

    /// <summary>The head moves without laying plastic.</summary>
    /// <param name="length">In the plane, metres.</param>
    public void Travel(double length) => _broken |= length > LongestGap;

    /// <summary>Plastic is laid.</summary>
    /// <param name="from">Height at the start, metres.</param>
    /// <param name="to">Height at the end, metres.</param>
    /// <param name="length">Length of the path, metres.</param>
    /// <param name="volume">Plastic, m³.</param>
    /// <param name="line">Line of the file.</param>
    /// <param name="leavingLine">Line of the first move since the last laid path that changed the height; 0 when none did.</param>
    public void Lay(double from, double to, double length, double volume, long line, long leavingLine)
    {
        bool rises = to > from + Same;
        bool goesOn = _running && (Math.Abs(to - Current) <= Same && !rises
            || to > Current && !_broken && _rising && !(_climb >= ThinnestLayer && _level > _climbLength) && (rises ? Math.Abs(from - Current) <= Same : to - Current < ThinnestLayer)
            || to < Current && to >= _base - Same && from > to + Same);
        if (!goesOn)
        {
            Close();
            (_running, _rising, _broken) = (true, rises, false);
            (_base, _volume, _length, _firstLine, _leavingLine) = (rises ? from : to, 0, 0, line, leavingLine > 0 ? leavingLine : line);
            (_climb, _climbLength, _level) = (rises ? to - from : 0, rises ? length : 0, 0);
            Current = to;
        }
        else if (to > Current)
        {
            (_climb, _climbLength, _level) = (_climb + to - Current, _climbLength + _level + (rises ? length : 0), rises ? 0 : length);
            Current = to;
        }
        else
        {
            _level += length;
        }

        _broken = _broken && !rises;
        _volume += volume;
        _length += length;
    }

    /// <summary>Ends the last run.</summary>
    public void Close()
    {
        if (!_running)
            return;
        _running = false;
        Returns |= _base < _highest - SpiralRise;
        _highest = Math.Max(_highest, Current);
        if (Current - _base >= SpiralRise)
        {
            _spirals.Add(new(_base, Current, _volume, _length, _firstLine));
            return;
        }

        Level level = _last is not null && Math.Abs(_last.Height - Current) <= Same ? _last : Find(Current) ?? Insert();
        level.Volume += _volume;
        level.Length += _length;
        _last = level;
    }

    /// <summary>Takes plastic away that belongs to no part.</summary>
    public void TakeAway(double height, double volume, double length)
    {
        if (Find(height) is not Level level)
            return;
        level.Volume -= volume;
        level.Length -= length;
    }

    /// <summary>The layers from below, without those of which nothing is left.</summary>
    public IReadOnlyList<MotionLayer> Layers() =>
        // What is left after taking away everything is the rounding of sums.
        [.. _levels.Where(l => l.Length > 1e-6).Select(l => new MotionLayer(l.Height, l.Volume, l.Length, l.FirstLine, l.LeavingLine))];

    /// <summary>The spirals in the order of the file.</summary>
    public IReadOnlyList<MotionSpiral> Spirals => _spirals;

    private Level? Find(double height)
    {
        int at = Place(height - Same);
        return at < _levels.Count && _levels[at].Height <= height + Same ? _levels[at] : null;
    }

    private Level Insert()
    {
        Level level = new(Current, _firstLine, _leavingLine);
        _levels.Insert(Place(Current), level);
        return level;
    }

    /// <summary>Number of the first level not below a height.</summary>
    private int Place(double height)
    {
        int low = 0, high = _levels.Count;
        while (low < high)
        {
            int middle = (low + high) / 2;
            if (_levels[middle].Height < height)
                low = middle + 1;
            else
                high = middle;
        }

        return low;
    }

    private sealed class Level(double height, long firstLine, long leavingLine)
    {
        public double Height { get; } = height;

        public long FirstLine { get; } = firstLine;

        public long LeavingLine { get; } = leavingLine;

        public double Volume { get; set; }

        public double Length { get; set; }
    }
}
