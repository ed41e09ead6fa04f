using Finwright.Design;
using Finwright.Geometry;

namespace Finwright.Making.Motion;

/// <summary>What came of reading a motion file.</summary>
/// <param name="Summary">What the file does; null when it cannot be read.</param>
/// <param name="Findings">Why it cannot be read (one error), or what to know about it.</param>
public sealed record MotionReading(MotionSummary? Summary, IReadOnlyList<Finding> Findings);

/// <summary>What a motion file does. SI; positions in the axes of the printer's bed, z up.</summary>
public sealed record MotionSummary
{
    /// <summary>Lines in the file.</summary>
    public required long Lines { get; init; }

    /// <summary>Bytes in the file.</summary>
    public required long Bytes { get; init; }

    /// <summary>Heights at which plastic is laid, from the bed up. What was told apart (<see cref="Apart"/>) is left out.</summary>
    public required IReadOnlyList<MotionLayer> Layers { get; init; }

    /// <summary>Paths that rise all the time while they lay plastic, for a height of a millimetre or more.</summary>
    public required IReadOnlyList<MotionSpiral> Spirals { get; init; }

    /// <summary>Whether a height is taken up again after a greater one was laid: parts printed one after another.</summary>
    public required bool ReturnsToLowerHeights { get; init; }

    /// <summary>All plastic that leaves the nozzle, m³: every forward length after what was drawn back has been made good.</summary>
    public required double PlasticVolume { get; init; }

    /// <summary>Plastic laid along paths of the part, m³.</summary>
    public required double PartVolume { get; init; }

    /// <summary>Plastic pressed out while the nozzle stands, m³; in neither the part nor <see cref="Apart"/>.</summary>
    public required double StandingVolume { get; init; }

    /// <summary>Priming lines and skirts: low paths that touch nothing that is laid higher; null when there are none, or when the file does not let them be told.</summary>
    public required MotionApart? Apart { get; init; }

    /// <summary>Box round the middles of the lines of the part, metres; null when no plastic is laid.</summary>
    public required Bounds? PartBox { get; init; }

    /// <summary>The same without the lowest millimetre, where a brim would be; null when nothing is laid higher.</summary>
    public required Bounds? UpperBox { get; init; }

    /// <summary>Length of all paths that lay plastic, metres.</summary>
    public required double LaidLength { get; init; }

    /// <summary>Length of all other moves of the head, metres.</summary>
    public required double TravelLength { get; init; }

    /// <summary>Time by the feed rates alone, s: no printer is faster.</summary>
    public required double LeastTime { get; init; }

    /// <summary>Time with the given acceleration, s: see <see cref="PathTimer"/>. Heating and homing are not in it.</summary>
    public required double Time { get; init; }

    /// <summary>Greatest flow of plastic on a path of a millimetre or more, m³/s.</summary>
    public required double GreatestFlow { get; init; }

    /// <summary>Line on which the greatest flow is asked for; 0 when no plastic is laid.</summary>
    public required long GreatestFlowLine { get; init; }

    /// <summary>Greatest length of filament drawn back at once, metres (m³ when E is a volume).</summary>
    public required double GreatestRetraction { get; init; }

    /// <summary>How often each word stands in the file; whole lines that are no motion words by their first word.</summary>
    public required IReadOnlyDictionary<string, long> Words { get; init; }

    /// <summary>Lines that stop the printer until someone goes on.</summary>
    public required IReadOnlyList<MotionStop> Stops { get; init; }

    /// <summary>Whether lines carry numbers or checksums: then none can be added without spoiling them.</summary>
    public required bool IsNumbered { get; init; }
}

/// <summary>One height at which plastic is laid.</summary>
/// <param name="Height">Height of the nozzle, metres: the top of the layer.</param>
/// <param name="Volume">Plastic laid at it, m³.</param>
/// <param name="LaidLength">Length of the paths, metres.</param>
/// <param name="FirstLine">Line of its first path.</param>
/// <param name="LeavingLine">Line of the first move after the layer before that leaves its height; the first path itself when there is none.</param>
public sealed record MotionLayer(double Height, double Volume, double LaidLength, long FirstLine, long LeavingLine);

/// <summary>A path that rises all the time.</summary>
/// <param name="From">Height at its beginning, metres.</param>
/// <param name="To">Height at its end, metres.</param>
/// <param name="Volume">Plastic laid along it, m³.</param>
/// <param name="LaidLength">Its length, metres.</param>
/// <param name="FirstLine">Line of its first path.</param>
public sealed record MotionSpiral(double From, double To, double Volume, double LaidLength, long FirstLine);

/// <summary>Plastic laid beside the part.</summary>
/// <param name="Volume">m³.</param>
/// <param name="LaidLength">Metres.</param>
/// <param name="Box">Box round the middles of its lines, metres.</param>
public sealed record MotionApart(double Volume, double LaidLength, Bounds Box);

/// <summary>A line that stops the printer.</summary>
/// <param name="Line">Its number.</param>
/// <param name="Word">Its word.</param>
/// <param name="After">Height laid last before it, metres; 0 when nothing was.</param>
/// <param name="Before">Height laid next after it, metres; null when nothing is.</param>
public sealed record MotionStop(long Line, string Word, double After, double? Before);
