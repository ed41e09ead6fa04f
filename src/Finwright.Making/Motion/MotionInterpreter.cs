using System.Globalization;
using System.Text;
using Finwright.Design;
using Finwright.Geometry;

namespace Finwright.Making.Motion;

/// <summary>Follows a motion file line by line: where the head goes and what it lays.</summary>
internal sealed class MotionInterpreter
{
    // ±10 m: beyond any printer in a room.
    private const double Farthest = 10;

    // 10 km of filament, or 10 litres.
    private const double LongestExtrusion = 1e4;

    // A plastic length below this is the rounding of registers: files print 1e-5 mm.
    private const double NoLength = 1e-9;

    // Shorter than a motion file resolves.
    private const double NoWay = 1e-7;

    // Flow on shorter paths is the rounding of the E word.
    private const double FlowLength = 1e-3;

    // Start and end radius of an arc, as files with three decimals print them.
    private const double RoundWithin = 5e-5;

    private const int MostStops = 10_000, MostTools = 1000;

    private readonly MotionOptions _options;
    private readonly byte[][] _stopLines;
    private readonly MotionWords _words = new();
    private readonly WordCounts _counts = new();
    private readonly LaidHeights _heights = new();
    private readonly LaidFootprint _footprint = new();
    private readonly PathTimer _timer;
    private readonly List<MotionStop> _stops = [];
    private readonly Dictionary<int, double> _debts = [];
    private readonly double _filamentArea;

    private long _line, _bytes;
    private bool _lastOpen, _numbered, _moved, _blockDelete;
    private int _mode = -1, _plane = 17;
    private double _unit = 1e-3, _feed;
    private bool _relative, _centresAbsolute, _extrusionRelative, _extrusionStated, _positionAfterExtrusion, _unitStated, _volumetric;
    private double _x, _y, _z, _offsetX, _offsetY, _offsetZ, _register, _debt, _greatestDebt, _multiplier = 1;
    private int _tool;
    private double _plastic, _standing, _laid, _travel, _leastTime, _greatestFlow;
    private long _greatestFlowLine, _leavingLine, _mixedLine, _unroundLine, _withoutFeedLine, _multiplierLine, _extruding;
    private int _openStops;

    public MotionInterpreter(MotionOptions options)
    {
        _options = options;
        _stopLines = [.. options.StopLines.Select(s => Encoding.UTF8.GetBytes(s.Trim())).Where(s => s.Length > 0)];
        _timer = new(options.Acceleration, options.CornerSpeed);
        _filamentArea = Math.PI / 4 * options.FilamentDiameter * options.FilamentDiameter;
        _volumetric = options.ExtrusionIsVolume;
    }

    /// <summary>Takes a line.</summary>
    /// <returns>Why the file is refused; null to go on.</returns>
    public Finding? Line(ReadOnlySpan<byte> line, long number, int bytes)
    {
        (_line, _lastOpen) = (number, bytes == line.Length);
        _bytes += bytes;
        if (number is 1 && line.StartsWith("\uFEFF"u8))
            line = line[3..];
        int at = Blank(line, 0);
        if (IsEnd(line, at))
            return null;
        if (_stopLines.Length > 0 && OwnStop(line))
            return null;
        if (line[at] is (byte)'/')
        {
            _blockDelete = true;
            at = Blank(line, at + 1);
        }

        if (at + 1 < line.Length && (line[at] | 0x20) is 'n' && line[at + 1] is >= (byte)'0' and <= (byte)'9')
        {
            _numbered = true;
            for (at++; at < line.Length && line[at] is >= (byte)'0' and <= (byte)'9';)
                at++;
            if (Checksum(line) is Finding damaged)
                return damaged;
            at = Blank(line, at);
            if (IsEnd(line, at))
                return null;
        }

        return Block(line, at);
    }

    private Finding? Block(ReadOnlySpan<byte> line, int at)
    {
        _words.Clear();
        int pending = -1, begin = at;
        ReadOnlySpan<byte> stop = default;
        bool first = true, afterNumber = false, spaced = false;
        while (true)
        {
            int next = Blank(line, at);
            spaced |= !first && next > at;
            afterNumber &= next == at;
            at = next;
            if (IsEnd(line, at))
                break;
            int letter = (line[at] | 0x20) - 'a';
            if (letter is < 0 or > 25)
                return first && line[at] is (byte)'@' or (byte)'_' ? Name(line, at) : BadSign(line, at);
            if (letter is 'g' - 'a' or 'm' - 'a')
            {
                int end = at + 1;
                int tenths = Code(line, ref end);
                if (tenths < 0)
                    return first ? Name(line, at) : Refuse("bad-word", $"\"{Shown(line[at..])}\" is not a word with a number.", "Repair the line, or make the file anew.");
                _counts.Add(letter is 'g' - 'a' ? 'G' : 'M', tenths);
                if (letter is 'g' - 'a')
                {
                    if (tenths is 50 or 51)
                        return Refuse("spline-move", "G5 moves along a spline, which is not read here.", "Export the file without splines.");
                    if (IsMove(tenths))
                    {
                        if (pending >= 0)
                            return Refuse("two-moves", "Two words of motion stand in one line; which of them is meant cannot be told.", "Give each its own line.");
                        pending = tenths;
                    }
                    else if (!ChangesMode(tenths))
                    {
                        if (pending < 0)
                            return null;
                        break;
                    }
                }
                else if (tenths is 2000 or 2210)
                {
                    pending = -tenths;
                }
                else if (tenths is 820 or 830)
                {
                    (_extrusionRelative, _extrusionStated, _positionAfterExtrusion) = (tenths is 830, true, false);
                }
                else
                {
                    if (IsStop(tenths))
                        stop = line[at..end];
                    break;
                }

                (at, first, afterNumber) = (end, false, false);
                continue;
            }

            if (first)
            {
                int end = at + 1;
                bool numbered = MotionWords.TryNumber(line, ref end, out double value) && (end >= line.Length || line[end] != (byte)'_');
                if (letter is 't' - 'a' && numbered)
                    return Tool(value);
                if (!numbered || !IsMotionLetter(letter))
                    return Name(line, begin);
                if (_mode < 0 && letter is not ('f' - 'a'))
                    return Refuse("no-motion-word", $"The line begins with {(char)('A' + letter)}, but no word of motion (G0 to G3) stands before it in the file.", "Write G1 or the word that is meant before it.");
                pending = Math.Max(_mode, 0);
            }

            if (Word(line, ref at, letter, spaced && afterNumber) is Finding wrong)
                return wrong;
            (first, afterNumber) = (false, true);
        }

        Finding? refusal = pending is -1 ? null : Execute(pending);
        if (refusal is null && !stop.IsEmpty)
            Stop(stop);
        return refusal;
    }

    private Finding? Word(ReadOnlySpan<byte> line, ref int at, int letter, bool glued)
    {
        char name = (char)('A' + letter);
        int end = at + 1;
        while (end < line.Length && line[end] is (byte)' ' or (byte)'\t')
            end++;
        if (!MotionWords.TryNumber(line, ref end, out double value))
        {
            at++;
            return _words.AddBare(letter) ? null : Twice(name);
        }

        if (name is 'E' && glued)
        {
            return Refuse("exponent", $"\"{Shown(line[Math.Max(0, at - 8)..])}\": an E behind a number without a space may be an exponent or plastic; printers differ.",
                "Write numbers without exponents, and a space before E.");
        }

        at = end;
        return _words.Add(letter, value) ? null : Twice(name);
    }

    private Finding Twice(char name) => Refuse("word-twice", $"The letter {name} stands twice in one line; which of them is meant cannot be told.", "Make the file anew: it is damaged.");

    private Finding? Execute(int code)
    {
        if (_words.Bare is char bare && code is not (280 or 920 or 921))
        {
            string cut = _lastOpen ? " It is the last line: the file was cut short." : "";
            return Refuse("word-without-number", $"The letter {bare} has no number.{cut}", "Make the file anew: it is damaged.");
        }

        switch (code)
        {
            case <= 30 and >= 0:
                return Move(code / 10);
            case 40:
                _timer.Stand(Pause());
                return null;
            case 280:
                Home();
                return null;
            case 920:
                return SetRegisters();
            case 921:
                (_offsetX, _offsetY, _offsetZ) = (0, 0, 0);
                return null;
            case -2000:
                return Volumetric();
            default:
                if (_words.Has('S') && _words['S'] is > 0 and < 1000)
                {
                    _multiplier = _words['S'] / 100;
                    if (_multiplier is not 1 && _multiplierLine is 0)
                        _multiplierLine = _line;
                }

                return null;
        }
    }

    private Finding? Volumetric()
    {
        if (_words.Has('D'))
            _volumetric = _words['D'] > 0;
        if (_words.Has('S'))
            _volumetric = _words['S'] > 0;
        return null;
    }

    private double Pause()
    {
        double seconds = (_words.Has('S') ? Math.Max(0, _words['S']) : 0) + (_words.Has('P') ? Math.Max(0, _words['P']) * 1e-3 : 0);
        _leastTime += seconds;
        return seconds;
    }

    private void Home()
    {
        bool all = !_words.Names('X') && !_words.Names('Y') && !_words.Names('Z');
        if (all || _words.Names('X'))
            (_x, _offsetX) = (0, 0);
        if (all || _words.Names('Y'))
            (_y, _offsetY) = (0, 0);
        if (all || _words.Names('Z'))
        {
            (_z, _offsetZ) = (0, 0);
            _leavingLine = _leavingLine is 0 ? _line : _leavingLine;
        }

        Leave(1);
        _timer.Stand(0);
    }

    private Finding? SetRegisters()
    {
        bool all = !_words.Any;
        double Given(char letter) => _words.Has(letter) ? _words[letter] * _unit : 0;
        if (Math.Abs(Given('X')) > Farthest || Math.Abs(Given('Y')) > Farthest || Math.Abs(Given('Z')) > Farthest || Math.Abs(Given('E')) > LongestExtrusion)
            return TooFar();
        if (all || _words.Names('X'))
            _offsetX = _x - Given('X');
        if (all || _words.Names('Y'))
            _offsetY = _y - Given('Y');
        if (all || _words.Names('Z'))
            _offsetZ = _z - Given('Z');
        if (all || _words.Names('E'))
            _register = Given('E');
        return null;
    }

    private Finding? Move(int kind)
    {
        (_mode, _moved) = (10 * kind, true);
        if (_words.Has('F') && _words['F'] > 0)
            _feed = _words['F'] * _unit / 60;
        Point3 from = new(_x, _y, _z);
        Point3 to = new(Target('X', _x, _offsetX), Target('Y', _y, _offsetY), Target('Z', _z, _offsetZ));
        // The negated comparison also refuses what is not a number.
        if (!(Math.Abs(to.X) <= Farthest && Math.Abs(to.Y) <= Farthest && Math.Abs(to.Z) <= Farthest))
            return TooFar();
        double extruded = 0;
        if (_words.Has('E'))
        {
            if (_volumetric && _unit > 1e-3)
                return Refuse("inch-volume", "Plastic as a volume and lengths in inches cannot be told together.", "Export the file in millimetres.");
            double given = _words['E'] * _unit;
            bool relative = _extrusionStated ? _extrusionRelative : _relative;
            if (_positionAfterExtrusion && relative != _relative && _mixedLine is 0)
                _mixedLine = _line;
            extruded = relative ? given : given - _register;
            _register = relative ? _register + given : given;
            if (!(Math.Abs(extruded) <= LongestExtrusion && Math.Abs(_register) <= 1000 * LongestExtrusion))
                return TooFar();
            _extruding++;
        }

        if (kind < 2)
        {
            Straight(from, to, extruded);
        }
        else if (Arc(from, to, extruded, kind is 3) is Finding refusal)
        {
            return refusal;
        }

        (_x, _y, _z) = (to.X, to.Y, to.Z);
        return _heights.Overflow ? Refuse("too-many-heights", "Plastic is laid at more than 100,000 heights; no part has as many layers.", "Check that this is a motion file for a printer.") : null;
    }

    private double Target(char letter, double now, double offset)
    {
        if (!_words.Has(letter))
            return now;
        double given = _words[letter] * _unit;
        return _relative ? now + given : given + offset;
    }

    private void Straight(in Point3 from, in Point3 to, double extruded)
    {
        double dx = to.X - from.X, dy = to.Y - from.Y, dz = to.Z - from.Z;
        double flat = Math.Sqrt(dx * dx + dy * dy), length = Math.Sqrt(flat * flat + dz * dz);
        double volume = Plastic(extruded);
        if (length < NoWay)
        {
            Standing(extruded, volume);
            return;
        }

        if (volume > 0 && flat > NoWay)
        {
            _footprint.Line(from, to, length, volume);
            Laid(from.Z, to.Z, length, volume, _feed);
        }
        else
        {
            _standing += volume;
            Empty(from, to, flat, length);
        }

        double ux = dx / length, uy = dy / length, uz = dz / length;
        if (HasFeed())
        {
            _leastTime += length / _feed;
            _timer.Move(length, _feed, ux, uy, uz, ux, uy, uz);
        }
    }

    private Finding? Arc(in Point3 from, in Point3 to, double extruded, bool counterClockwise)
    {
        if (_plane is not 17)
            return Refuse("arc-plane", $"An arc in the plane of G{_plane} stands upright, which is not read here.", "Export the file with arcs in the plane of the bed (G17), or without arcs.");
        if (_words.Has('P') && _words['P'] > 1)
            return Refuse("arc-turns", "An arc of several turns (P) is not read here.", "Export the file with one turn a line.");
        Point2 a = new(from.X, from.Y), b = new(to.X, to.Y);
        ArcPath arc;
        if (_words.Has('R'))
        {
            if (_words.Has('I') || _words.Has('J'))
                return Refuse("arc-centre", "The arc has both a radius (R) and a centre (I, J).", "Give one of them.");
            if (ArcPath.WithRadius(a, b, _words['R'] * _unit, counterClockwise) is not ArcPath found)
                return Refuse("arc-radius", $"No arc of radius {Millimetres(_words['R'] * _unit)} reaches from start to end, {Millimetres((b - a).Length)} apart.", "Check R; a full circle needs I and J.");
            arc = found;
        }
        else if (_words.Has('I') || _words.Has('J'))
        {
            double i = _words.Has('I') ? _words['I'] * _unit : 0, j = _words.Has('J') ? _words['J'] * _unit : 0;
            Point2 centre = _centresAbsolute
                ? new(_words.Has('I') ? i + _offsetX : from.X, _words.Has('J') ? j + _offsetY : from.Y)
                : new(from.X + i, from.Y + j);
            if (!((a - centre).Length is > 0 and <= 2 * Farthest))
                return Refuse("arc-centre", "The arc's centre is its start, or farther away than 20 m.", "Check I and J.");
            arc = ArcPath.Round(a, b, centre, counterClockwise, !_words.Has('X') && !_words.Has('Y'));
            if (Math.Abs((b - centre).Length - arc.Radius) > RoundWithin && _unroundLine is 0)
                _unroundLine = _line;
        }
        else
        {
            return Refuse("arc-centre", "The arc has neither a centre (I, J) nor a radius (R).", "Give one of them.");
        }

        double rise = to.Z - from.Z, flat = arc.Length, length = Math.Sqrt(flat * flat + rise * rise), volume = Plastic(extruded);
        double speed = Math.Min(_feed, Math.Sqrt(_options.Acceleration * arc.Radius));
        if (volume > 0)
        {
            _footprint.Arc(from, to, arc, length, volume);
            Laid(from.Z, to.Z, length, volume, _feed);
        }
        else
        {
            Empty(from, to, flat, length);
        }

        if (HasFeed())
        {
            Point2 start = arc.Direction(0), end = arc.Direction(1);
            double share = flat / length, up = rise / length;
            _leastTime += length / _feed;
            _timer.Move(length, speed, share * start.X, share * start.Y, up, share * end.X, share * end.Y, up);
        }

        return null;
    }

    private void Laid(double from, double to, double length, double volume, double feed)
    {
        _laid += length;
        _heights.Lay(from, to, length, volume, _line, _leavingLine);
        _leavingLine = 0;
        for (; _openStops > 0; _openStops--)
            _stops[^_openStops] = _stops[^_openStops] with { Before = to };
        double flow = volume / length * feed;
        if (length >= FlowLength && flow > _greatestFlow)
            (_greatestFlow, _greatestFlowLine) = (flow, _line);
    }

    private void Empty(in Point3 from, in Point3 to, double flat, double length)
    {
        _travel += length;
        if (flat > NoWay)
            Leave(flat);
        if (_leavingLine is 0 && Math.Abs(to.Z - from.Z) > LaidHeights.Same)
            _leavingLine = _line;
    }

    private void Leave(double flat)
    {
        _heights.Travel(flat);
        _footprint.Travel();
    }

    private void Standing(double extruded, double volume)
    {
        _standing += volume;
        double length = Math.Abs(extruded);
        if (length < NoLength || _volumetric || !HasFeed())
            return;
        _leastTime += length / _feed;
        _timer.Stand(PathTimer.Duration(length, 0, 0, _feed, _options.Acceleration));
    }

    /// <summary>The plastic that comes out for a step of the E register, m³: what was drawn back is made good first.</summary>
    private double Plastic(double extruded)
    {
        if (extruded is 0)
            return 0;
        _debt -= extruded;
        if (_debt >= -NoLength)
        {
            _debt = Math.Max(0, _debt);
            _greatestDebt = Math.Max(_greatestDebt, _debt);
            return 0;
        }

        // Millimetres read as lengths: a volume in mm³ arrives here as a thousandth.
        double volume = -_debt * (_volumetric ? 1e-6 : _filamentArea) * _multiplier;
        _debt = 0;
        _plastic += volume;
        return volume;
    }

    private bool HasFeed()
    {
        if (_feed > 0)
            return true;
        _withoutFeedLine = _withoutFeedLine is 0 ? _line : _withoutFeedLine;
        return false;
    }

    private Finding? Tool(double value)
    {
        _counts.Add("T"u8);
        if (value is < 0 or > 1e6)
            return null;
        if (_debts.Count > MostTools)
            return Refuse("too-many-tools", $"The file changes between more than {MostTools} tools.", "Check that this is a motion file for a printer.");
        _debts[_tool] = _debt;
        _tool = (int)value;
        _debt = _debts.GetValueOrDefault(_tool);
        _debts[_tool] = _debt;
        _timer.Stand(0);
        return null;
    }

    private bool OwnStop(ReadOnlySpan<byte> line)
    {
        int comment = line.IndexOf((byte)';');
        ReadOnlySpan<byte> text = Trim(comment > 0 ? line[..comment] : line), whole = Trim(line);
        foreach (byte[] stop in _stopLines)
        {
            if (!text.SequenceEqual(stop) && !whole.SequenceEqual(stop))
                continue;
            // The usual words are counted as such.
            int end = 1;
            if (text[0] is (byte)'M' or (byte)'m' && IsStop(Code(text, ref end)))
                return false;
            _counts.Add(stop);
            Stop(stop);
            return true;
        }

        return false;
    }

    private void Stop(ReadOnlySpan<byte> word)
    {
        _timer.Stand(0);
        if (_stops.Count >= MostStops)
            return;
        _stops.Add(new(_line, Shown(word).ToUpperInvariant(), _heights.Current, null));
        _openStops++;
    }

    private Finding? Name(ReadOnlySpan<byte> line, int at)
    {
        int end = at;
        while (end < line.Length && line[end] is (byte)'_' or (byte)'.' or (byte)'@' or >= (byte)'0' and <= (byte)'9' or >= (byte)'A' and <= (byte)'Z' or >= (byte)'a' and <= (byte)'z')
            end++;
        _counts.Add(line[at..end]);
        return null;
    }

    private bool ChangesMode(int tenths)
    {
        switch (tenths)
        {
            case 170 or 180 or 190:
                _plane = tenths / 10;
                return true;
            case 200 or 210:
                (_unit, _unitStated) = (tenths is 200 ? 0.0254 : 1e-3, true);
                return true;
            case 900 or 910:
                _relative = tenths is 910;
                _positionAfterExtrusion = _extrusionStated;
                return true;
            case 901 or 911:
                _centresAbsolute = tenths is 901;
                return true;
            default:
                // Words of ISO 6983 that stand beside others and change nothing here: compensation off, offsets, feed a minute.
                return tenths is 400 or 490 or 530 or (>= 540 and <= 599) or 610 or 640 or 800 or 940;
        }
    }

    private static bool IsMove(int tenths) => tenths is 0 or 10 or 20 or 30 or 40 or 280 or 920 or 921;

    private static bool IsStop(int tenths) => tenths is 0 or 10 or 250 or 2260 or 6000 or 6010;

    private static bool IsMotionLetter(int letter) => (char)('A' + letter) is 'X' or 'Y' or 'Z' or 'E' or 'F' or 'I' or 'J' or 'R';

    /// <summary>Number of a G or M word in tenths; -1 when it has none that fits.</summary>
    private static int Code(ReadOnlySpan<byte> line, ref int at)
    {
        int i = at;
        while (i < line.Length && line[i] is (byte)' ' or (byte)'\t')
            i++;
        int first = i, number = 0;
        for (; i < line.Length && line[i] is >= (byte)'0' and <= (byte)'9'; i++)
        {
            if (number > 9999)
                return -1;
            number = 10 * number + line[i] - '0';
        }

        if (i == first || number > (line[at - 1] is (byte)'G' or (byte)'g' ? 999 : 9999))
            return -1;
        int tenths = 10 * number;
        if (i < line.Length && line[i] is (byte)'.')
        {
            i++;
            if (i < line.Length && line[i] is >= (byte)'0' and <= (byte)'9')
                tenths += line[i++] - '0';
            if (i < line.Length && line[i] is >= (byte)'0' and <= (byte)'9')
                return -1;
        }

        if (i < line.Length && line[i] is (byte)'_')
            return -1;
        at = i;
        return tenths;
    }

    /// <summary>Past spaces and comments in brackets.</summary>
    private static int Blank(ReadOnlySpan<byte> line, int at)
    {
        for (; at < line.Length; at++)
        {
            byte c = line[at];
            if (c is (byte)'(')
            {
                int close = line[at..].IndexOf((byte)')');
                if (close < 0)
                    return line.Length;
                at += close;
            }
            else if (c is not ((byte)' ' or (byte)'\t' or 11 or 12))
            {
                return at;
            }
        }

        return at;
    }

    private static bool IsEnd(ReadOnlySpan<byte> line, int at) => at >= line.Length || line[at] is (byte)';' or (byte)'*' or (byte)'%';

    private static ReadOnlySpan<byte> Trim(ReadOnlySpan<byte> line) => line.Trim(" \t\v\f"u8);

    private Finding? Checksum(ReadOnlySpan<byte> line)
    {
        int comment = line.IndexOf((byte)';');
        ReadOnlySpan<byte> words = comment < 0 ? line : line[..comment];
        int star = words.LastIndexOf((byte)'*');
        if (star < 0)
            return null;
        int at = star + 1, sum = 0;
        foreach (byte b in words[..star])
            sum ^= b;
        if (MotionWords.TryNumber(words, ref at, out double stated) && stated == sum && Blank(words, at) == words.Length)
            return null;
        return Refuse("checksum", $"The line's checksum says {Shown(words[(star + 1)..])}, but its signs give {sum}: the file is damaged.", "Make the file anew.");
    }

    /// <summary>What the file did.</summary>
    public MotionReading Finish()
    {
        if (!_moved)
            return new(null, [new("no-motion", Severity.Error, "file", "No line of the file moves anything (G0 to G3): this is not a motion file.", "Give the file that goes to the printer, as plain text.")]);
        _timer.Stand(0);
        _heights.Close();
        (MotionApart? apart, Bounds? part) = _footprint.Separate(_heights, out bool told);
        IReadOnlyList<MotionLayer> layers = _heights.Layers();
        SortedDictionary<string, long> words = _counts.ToDictionary();
        MotionSummary summary = new()
        {
            Lines = _line,
            Bytes = _bytes,
            Layers = layers,
            Spirals = _heights.Spirals,
            ReturnsToLowerHeights = _heights.Returns || Returns(layers, _heights.Spirals),
            PlasticVolume = _plastic,
            PartVolume = layers.Sum(l => l.Volume) + _heights.Spirals.Sum(s => s.Volume),
            StandingVolume = _standing,
            Apart = apart,
            PartBox = part,
            UpperBox = _footprint.Upper,
            LaidLength = _laid,
            TravelLength = _travel,
            LeastTime = _leastTime,
            Time = _timer.Seconds,
            GreatestFlow = _greatestFlow,
            GreatestFlowLine = _greatestFlowLine,
            GreatestRetraction = _greatestDebt,
            Words = words,
            Stops = _stops,
            IsNumbered = _numbered,
        };
        return new(summary, Findings(summary, told));
    }

    // A priming line above the first layer is no return: only layers that are left count, and the file's order is that of their first lines.
    private static bool Returns(IReadOnlyList<MotionLayer> layers, IReadOnlyList<MotionSpiral> spirals)
    {
        long line = 0;
        foreach ((double _, long first) in layers.Select(l => (l.Height, l.FirstLine)).Concat(spirals.Select(s => (s.From + LaidHeights.Same, s.FirstLine))).OrderBy(p => p.Item1))
        {
            if (first < line)
                return true;
            line = first;
        }

        return false;
    }

    private List<Finding> Findings(MotionSummary summary, bool told)
    {
        List<Finding> findings = [];
        if (_lastOpen)
            Tell("last-line-open", Severity.Note, _line, "The last line has no end: the file may have been cut short.", "Compare its size with the original.");
        if (!_unitStated)
            Tell("unit-not-stated", Severity.Note, 0, "The file does not say its unit (G20 or G21); it is taken as millimetres.", "Check that the box has the part's size.");
        if (_extruding is 0)
            Tell("no-extrusion", Severity.Caution, 0, "No line has an E word: nothing is laid.", "Check that the file is for a printer that lays filament.");
        if (_mixedLine > 0)
        {
            Tell("modes-mixed", Severity.Caution, _mixedLine, "After M82 or M83 the file changes between G90 and G91. Some printers let that change the meaning of E too; here only M82 and M83 do.",
                "Compare the plastic with what is planned.");
        }

        if (_withoutFeedLine > 0)
            Tell("no-feed", Severity.Caution, _withoutFeedLine, "A move comes before any feed rate (F); its time is not counted.", "Check the start of the file.");
        if (_unroundLine > 0)
            Tell("arc-not-round", Severity.Caution, _unroundLine, "An arc's start and end are not equally far from its centre; its start counts.", "Check the arcs, or export without them.");
        if (_multiplierLine > 0)
            Tell("flow-changed", Severity.Note, _multiplierLine, "The file changes the flow (M221); the plastic is counted with it.", "Nothing, when that is meant.");
        if (_debts.Count > 1)
            Tell("several-tools", Severity.Note, 0, $"The file uses {_debts.Count} tools; their plastic is counted together.", "Nothing, when that is meant.");
        if (_blockDelete)
            Tell("block-delete", Severity.Note, 0, "Lines that begin with a stroke may be left out by a printer; here they count.", "Take them out or the stroke away.");
        if (!told && summary.PlasticVolume > 0)
            Tell("part-not-told", Severity.Note, 0, "Priming lines and skirts cannot be told from the part in this file; everything counts as the part.", "Look at the box and the plastic with that in mind.");
        return findings;

        void Tell(string code, Severity severity, long line, string message, string remedy) =>
            findings.Add(new(code, severity, "file", message, remedy) { Line = line > 0 ? MotionFile.ShownLine(line) : null });
    }

    private Finding TooFar() => Refuse("too-far", "The line goes beyond ten metres, or asks for more than ten kilometres of filament: the file is damaged, or not for a printer.", "Make the file anew.");

    private Finding BadSign(ReadOnlySpan<byte> line, int at) =>
        Refuse("bad-word", $"\"{Shown(line[at..])}\" is not a word of motion: a letter and a number.", "Give a motion file in plain text; if it is one, the line is damaged.");

    private Finding Refuse(string code, string message, string remedy) => new(code, Severity.Error, "file", $"Line {_line}: {message}", remedy) { Line = MotionFile.ShownLine(_line) };

    // A stranger's text, cut and cleaned for a message.
    private static string Shown(ReadOnlySpan<byte> text)
    {
        StringBuilder shown = new();
        foreach (byte b in Trim(text)[..Math.Min(40, Trim(text).Length)])
            shown.Append(b is >= 32 and < 127 ? (char)b : '\uFFFD');
        return shown.ToString();
    }

    private static string Millimetres(double metres) => string.Create(CultureInfo.InvariantCulture, $"{metres * 1e3:0.###} mm");
}
