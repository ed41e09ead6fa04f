using System.Globalization;
using System.Text;
using Finwright.Design;
using Finwright.Geometry.Files;

namespace Finwright.Making.Motion;

/// <summary>Stops that a part needs in its motion file, for nuts and rods to be put in: whether they are there, and putting them there.</summary>
public static class MotionStops
{
    // Farther away a stop is meant for something else.
    private const int NearLayers = 2;

    private const int LongestLine = 200;

    /// <summary>Words that change what later numbers mean, or how much plastic comes: they must not slip in with a stop.</summary>
    private static readonly int[] Forbidden = [2, 30, 82, 83, 84, 92, 200, 204, 205, 207, 208, 220, 221];

    /// <summary>Compares the stops of a file with those that are needed.</summary>
    /// <param name="summary">The file.</param>
    /// <param name="needed">The stops.</param>
    /// <returns>One answer for each needed stop, in their order.</returns>
    /// <remarks>
    /// A stop at a height comes before the first layer whose middle lies above it: slicing looks at the middle of a layer, so that is the first
    /// layer that closes a pocket which ends there.
    /// </remarks>
    public static IReadOnlyList<StopCheck> Compare(MotionSummary summary, IReadOnlyList<NeededStop> needed)
    {
        ArgumentNullException.ThrowIfNull(summary);
        ArgumentNullException.ThrowIfNull(needed);
        int[] layers = [.. needed.Select(n => LayerAt(summary, n.Height))];
        MotionStop[] free = [.. summary.Stops.Where(s => !layers.Any(k => k > 0 && Precedes(summary, s, k)))];
        return [.. needed.Select((n, i) => Check(summary, n, layers[i], free))];
    }

    /// <summary>Copies a motion file with the stops it lacks, and proves that nothing else was changed.</summary>
    /// <param name="source">The file; it stays as it is.</param>
    /// <param name="target">The copy; written only when the proof holds, and never the same file.</param>
    /// <param name="needed">The stops; those that are there already are left.</param>
    /// <param name="line">The line that stops the printer.</param>
    /// <param name="options">How the file is to be read; the usual when null.</param>
    /// <param name="cancellation">Stops it; then nothing is written.</param>
    /// <returns>What was put in, with the proof; or why nothing was.</returns>
    /// <exception cref="IOException">A file cannot be read or written.</exception>
    public static StopInsertion Insert(string source, string target, IReadOnlyList<NeededStop> needed, string line = "M0", MotionOptions? options = null, CancellationToken cancellation = default)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(source);
        ArgumentException.ThrowIfNullOrWhiteSpace(target);
        if (string.Equals(Path.GetFullPath(source), Path.GetFullPath(target), StringComparison.OrdinalIgnoreCase))
            return Refused("same-file", "The copy would replace the file it is made from.", "Give the copy another name.");
        using FileStream input = new(source, FileMode.Open, FileAccess.Read, FileShare.Read);
        StopInsertion? result = null;
        (Plan? plan, IReadOnlyList<Finding> findings) = Prepare(input, needed, line, options, cancellation);
        if (plan is null)
            return new([], null, findings);
        try
        {
            AtomicFile.Write(target, output =>
            {
                result = Carry(input, output, plan, findings, cancellation);
                if (result.Proof?.Holds is not true)
                    throw new InvalidDataException("The copy differs from the original.");
            });
        }
        catch (InvalidDataException) when (result?.Proof?.Holds is not true)
        {
            // Told by the result's findings.
        }

        return result!;
    }

    /// <summary>The same from stream to stream; what is written must be thrown away when the proof does not hold.</summary>
    /// <param name="input">The file; it can seek, and begins at 0.</param>
    /// <param name="output">Receives the copy; empty, it can read and seek. Nothing is written when there is nothing to put in.</param>
    /// <param name="needed">The stops; those that are there already are left.</param>
    /// <param name="line">The line that stops the printer.</param>
    /// <param name="options">How the file is to be read; the usual when null.</param>
    /// <param name="cancellation">Stops it.</param>
    public static StopInsertion Insert(Stream input, Stream output, IReadOnlyList<NeededStop> needed, string line = "M0", MotionOptions? options = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(input);
        ArgumentNullException.ThrowIfNull(output);
        if (!input.CanSeek)
            throw new ArgumentException("The file must be able to seek.", nameof(input));
        if (!output.CanSeek || !output.CanRead)
            throw new ArgumentException("The copy must be able to seek and to read.", nameof(output));
        (Plan? plan, IReadOnlyList<Finding> findings) = Prepare(input, needed, line, options, cancellation);
        return plan is null ? new([], null, findings) : Carry(input, output, plan, findings, cancellation);
    }

    private static StopInsertion Refused(string code, string message, string remedy) => new([], null, [new(code, Severity.Error, "file", message, remedy)]);

    private static (Plan? Plan, IReadOnlyList<Finding> Findings) Prepare(Stream input, IReadOnlyList<NeededStop> needed, string line, MotionOptions? options, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(needed);
        ArgumentNullException.ThrowIfNull(line);
        if (LineFault(line) is string fault)
            return (null, Refused("bad-stop-line", $"\"{line}\" cannot be the line of a stop: {fault}", "Give the word with which this printer halts, such as M0, M25 or M600.").Findings);
        MotionOptions reading = options ?? new();
        reading = reading with { StopLines = [.. reading.StopLines, line] };
        input.Position = 0;
        MotionReading read = MotionFile.Read(input, reading, cancellation);
        if (read.Summary is not MotionSummary summary)
            return (null, read.Findings);
        if (summary.IsNumbered)
            return (null, Refused("numbered-lines", "The lines of the file carry numbers or checksums, which one more line would spoil.", "Export the file without line numbers.").Findings);
        if (summary.ReturnsToLowerHeights)
            return (null, Refused("not-layer-by-layer", "The file prints parts one after another, so a height comes more than once.", "Print them together, or each from its own file.").Findings);

        List<Finding> findings = [];
        SortedDictionary<long, (double Height, List<NeededStop> Stops)> places = [];
        foreach (StopCheck check in Compare(summary, needed))
        {
            if (check.State is StopState.NotPossible)
                findings.Add(new("stop-not-possible", Severity.Error, "file", $"{check.Needed.What}: {check.Reason}", "Check the height, and whether the file belongs to this part."));
            else if (check.State is StopState.Present)
                findings.Add(new("stop-present", Severity.Note, "file", $"{check.Needed.What}: {check.Reason}", "Nothing.") { Line = MotionFile.ShownLine(check.Found!.Line) });
            else
                Add(check);
        }

        if (findings.Any(f => f.IsError))
            return (null, findings);
        if (places.Count is 0)
            return (null, findings);
        List<Place> offsets = [];
        long offset = 0;
        byte[] end = "\n"u8.ToArray();
        SortedDictionary<long, (double Height, List<NeededStop> Stops)>.Enumerator next = places.GetEnumerator();
        bool more = next.MoveNext();
        input.Position = 0;
        MotionFile.Lines(input, (text, number, bytes) =>
        {
            if (number is 1 && bytes == text.Length + 2)
                end = "\r\n"u8.ToArray();
            if (more && number == next.Current.Key)
            {
                offsets.Add(new(offset, number + offsets.Count, next.Current.Value.Height, next.Current.Value.Stops));
                more = next.MoveNext();
            }

            offset += bytes;
            return null;
        }, cancellation);
        return (new(summary, offsets, [.. Encoding.ASCII.GetBytes(line), .. end], needed, reading), findings);

        void Add(StopCheck check)
        {
            MotionLayer layer = summary.Layers.First(l => l.Height == check.LayerHeight!.Value);
            if (places.TryGetValue(layer.LeavingLine, out (double Height, List<NeededStop> Stops) there))
                there.Stops.Add(check.Needed);
            else
                places.Add(layer.LeavingLine, (layer.Height, [check.Needed]));
        }
    }

    private static StopInsertion Carry(Stream input, Stream output, Plan plan, IReadOnlyList<Finding> findings, CancellationToken cancellation)
    {
        byte[] buffer = new byte[128 * 1024];
        input.Position = 0;
        long at = 0;
        foreach (Place place in plan.Places)
        {
            Copy(place.Offset - at);
            output.Write(plan.Line);
            at = place.Offset;
        }

        Copy(long.MaxValue);
        bool same = SameBytes(input, output, plan, out long compared, cancellation);
        output.Position = 0;
        MotionSummary? after = MotionFile.Read(output, plan.Options, cancellation).Summary;
        MotionSummary before = plan.Before;
        StopProof proof = new(
            compared,
            same,
            after is not null && after.PlasticVolume.Equals(before.PlasticVolume) && after.PartVolume.Equals(before.PartVolume),
            after is not null && after.PartBox.Equals(before.PartBox),
            after is not null && after.LaidLength.Equals(before.LaidLength) && after.TravelLength.Equals(before.TravelLength),
            after is not null && after.Stops.Count == before.Stops.Count + plan.Places.Count && Compare(after, plan.Needed).All(c => c.State is StopState.Present));
        if (!proof.Holds)
        {
            return new([], proof, [.. findings, new("not-proved", Severity.Error, "file", "The copy with the stops is not the original with only these lines added; it was given up.",
                "Keep the original, and report this file.")]);
        }

        return new([.. plan.Places.SelectMany(p => p.Stops.Select(s => new InsertedStop(s, p.Line, p.Height)))], proof, findings);

        void Copy(long bytes)
        {
            while (bytes > 0)
            {
                cancellation.ThrowIfCancellationRequested();
                int read = input.Read(buffer, 0, (int)Math.Min(bytes, buffer.Length));
                if (read is 0)
                    return;
                output.Write(buffer, 0, read);
                bytes -= read;
            }
        }
    }

    /// <summary>Holds the copy, with the added lines left out, against the original byte for byte.</summary>
    private static bool SameBytes(Stream input, Stream output, Plan plan, out long compared, CancellationToken cancellation)
    {
        input.Position = 0;
        output.Position = 0;
        byte[] a = new byte[64 * 1024], b = new byte[64 * 1024];
        compared = 0;
        foreach (Place place in plan.Places)
        {
            if (!Same(place.Offset - compared, ref compared))
                return false;
            int length = output.ReadAtLeast(b.AsSpan(0, plan.Line.Length), plan.Line.Length, throwOnEndOfStream: false);
            if (!b.AsSpan(0, length).SequenceEqual(plan.Line))
                return false;
        }

        return Same(long.MaxValue, ref compared);

        bool Same(long bytes, ref long count)
        {
            while (bytes > 0)
            {
                cancellation.ThrowIfCancellationRequested();
                int most = (int)Math.Min(bytes, a.Length);
                int x = input.ReadAtLeast(a.AsSpan(0, most), most, throwOnEndOfStream: false), y = output.ReadAtLeast(b.AsSpan(0, most), most, throwOnEndOfStream: false);
                if (!a.AsSpan(0, x).SequenceEqual(b.AsSpan(0, y)))
                    return false;
                count += x;
                bytes -= x;
                if (x < most)
                    return bytes > long.MaxValue / 2;
            }

            return true;
        }
    }

    private static StopCheck Check(MotionSummary summary, NeededStop needed, int layer, MotionStop[] free)
    {
        string height = Millimetres(needed.Height);
        if (summary.Spirals.FirstOrDefault(s => needed.Height > s.From && needed.Height < s.To) is MotionSpiral spiral)
            return new(needed, StopState.NotPossible, null, null, $"at {height} the file rises in one spiral from {Millimetres(spiral.From)} to {Millimetres(spiral.To)}, without layers to stop between.");
        if (layer < 0)
            return new(needed, StopState.NotPossible, null, null, $"no layer begins above {height}; the last one ends at {Millimetres(summary.Layers.Count > 0 ? summary.Layers[^1].Height : 0)}.");
        if (layer is 0)
            return new(needed, StopState.NotPossible, null, null, $"{height} lies in the first layer; before it nothing is printed.");
        double top = summary.Layers[layer].Height;
        if (summary.Stops.FirstOrDefault(s => Precedes(summary, s, layer)) is MotionStop found)
            return new(needed, StopState.Present, top, found, $"the file stops before the layer at {Millimetres(top)} ({found.Word}).");
        MotionStop? near = free.Where(s => Math.Abs(LayerOf(summary, s) - layer) <= NearLayers).MinBy(s => Math.Abs(LayerOf(summary, s) - layer));
        return near is null
            ? new(needed, StopState.Missing, top, null, $"the file does not stop before the layer at {Millimetres(top)}.")
            : new(needed, StopState.WrongLayer, top, near, $"the file stops after {Millimetres(near.After)}, but it must before the layer at {Millimetres(top)}.");
    }

    private static int LayerAt(MotionSummary summary, double height)
    {
        double bottom = 0;
        for (int k = 0; k < summary.Layers.Count; k++)
        {
            double top = summary.Layers[k].Height;
            if ((bottom + top) / 2 > height)
                return k;
            bottom = top;
        }

        return -1;
    }

    private static bool Precedes(MotionSummary summary, MotionStop stop, int layer) =>
        LayerOf(summary, stop) == layer && stop.After < summary.Layers[layer].Height - LaidHeights.Same;

    /// <summary>Number of the layer that goes on after a stop; all layers when none does.</summary>
    private static int LayerOf(MotionSummary summary, MotionStop stop)
    {
        if (stop.Before is not double before)
            return summary.Layers.Count;
        int k = 0;
        while (k < summary.Layers.Count && summary.Layers[k].Height < before - LaidHeights.Same)
            k++;
        return k;
    }

    private static string? LineFault(string line)
    {
        if (line.Length is 0 or > LongestLine || line.Any(c => c is < ' ' or > '~') || line != line.Trim())
            return $"it must be one line of 1 to {LongestLine} plain signs.";
        if (line.Contains('*', StringComparison.Ordinal))
            return "a star begins a checksum.";
        if (line[0] is '@' or '_' || line.Length > 1 && char.IsAsciiLetter(line[0]) && (char.IsAsciiLetter(line[1]) || line[1] is '_'))
            return null;
        if (char.ToUpperInvariant(line[0]) is not 'M')
            return "it must begin with an M word or a name.";
        int end = 1;
        while (end < line.Length && char.IsAsciiDigit(line[end]))
            end++;
        if (end is 1 or > 6)
            return "its M has no number.";
        return Forbidden.Contains(int.Parse(line.AsSpan(1, end - 1), CultureInfo.InvariantCulture)) ? "this word changes how the rest of the file is printed." : null;
    }

    private static string Millimetres(double metres) => string.Create(CultureInfo.InvariantCulture, $"{metres * 1e3:0.###} mm");

    private sealed record Place(long Offset, long Line, double Height, IReadOnlyList<NeededStop> Stops);

    private sealed record Plan(MotionSummary Before, IReadOnlyList<Place> Places, byte[] Line, IReadOnlyList<NeededStop> Needed, MotionOptions Options);
}

/// <summary>A stop that a part needs.</summary>
/// <param name="Height">Height above the bed at which the layer begins before which to stop, metres.</param>
/// <param name="What">What it is for, in words.</param>
public sealed record NeededStop(double Height, string What);

/// <summary>How a file stands to a needed stop.</summary>
public enum StopState
{
    /// <summary>The file stops there.</summary>
    Present,

    /// <summary>The file stops a few layers off.</summary>
    WrongLayer,

    /// <summary>The file does not stop there.</summary>
    Missing,

    /// <summary>The file has no place for it.</summary>
    NotPossible,
}

/// <summary>A needed stop held against a file.</summary>
/// <param name="Needed">The stop.</param>
/// <param name="State">How the file stands to it.</param>
/// <param name="LayerHeight">Nozzle height of the layer before which it comes, metres; null when it is not possible.</param>
/// <param name="Found">The file's stop, there or nearby; null when there is none.</param>
/// <param name="Reason">Half a sentence for a maker.</param>
public sealed record StopCheck(NeededStop Needed, StopState State, double? LayerHeight, MotionStop? Found, string Reason);

/// <summary>A stop that was put in.</summary>
/// <param name="Needed">What it is for.</param>
/// <param name="Line">Its line in the copy.</param>
/// <param name="LayerHeight">Nozzle height of the layer it comes before, metres.</param>
public sealed record InsertedStop(NeededStop Needed, long Line, double LayerHeight);

/// <summary>That a copy is the original with the added lines and nothing else.</summary>
/// <param name="BytesCompared">Bytes of the original that were compared.</param>
/// <param name="SameBytes">The copy is the original byte for byte when the added lines are left out.</param>
/// <param name="SamePlastic">Both lay the same plastic.</param>
/// <param name="SameBox">Both have the same box round the part.</param>
/// <param name="SameWay">Both have the same laid and empty way.</param>
/// <param name="StopsFound">The copy, read anew, stops everywhere it should, and nowhere else than before.</param>
public sealed record StopProof(long BytesCompared, bool SameBytes, bool SamePlastic, bool SameBox, bool SameWay, bool StopsFound)
{
    /// <summary>Whether all of it holds.</summary>
    public bool Holds => SameBytes && SamePlastic && SameBox && SameWay && StopsFound;
}

/// <summary>What came of putting stops into a file.</summary>
/// <param name="Inserted">The stops that were put in; empty when none were missing, or something stood against it.</param>
/// <param name="Proof">The proof; null when nothing was written.</param>
/// <param name="Findings">What stood against it, or what to know.</param>
public sealed record StopInsertion(IReadOnlyList<InsertedStop> Inserted, StopProof? Proof, IReadOnlyList<Finding> Findings);
