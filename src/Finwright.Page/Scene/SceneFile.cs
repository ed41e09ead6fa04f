using System.Buffers.Binary;
using System.Runtime.InteropServices;
using System.Text.Json;
using Finwright.Geometry;

namespace Finwright.Page.Scene;

/// <summary>What the browser draws in three dimensions, as one file: a short header in JSON, then plain arrays that it takes over as they are.</summary>
/// <remarks>
/// Layout, little-endian: the letters FWS1; length of the header, uint32; the header in UTF-8, padded with spaces to a multiple of four;
/// the arrays, each at a multiple of four. The header names each array by its offset behind the header, bytes, and its count.
/// Positions are float32, metres, in design axes: x aft, y down, z to starboard. Parts on the bed or held for the pour come turned so that up is −y.
/// </remarks>
public sealed class SceneFile
{
    /// <summary>Stands for a value that is not known: no number that a scale could show.</summary>
    public const float NotKnown = -1e30f;

    private static readonly JsonSerializerOptions Form = new(JsonSerializerDefaults.Web);

    private readonly List<object> _parts = [];
    private readonly List<object> _labels = [];
    private readonly List<byte[]> _arrays = [];
    private int _length;

    /// <summary>What is told beside the parts: scale, version, and words, as the browser's module expects them; null for nothing.</summary>
    public object? About { get; set; }

    /// <summary>Adds a mesh.</summary>
    /// <param name="name">What it is, for the reader.</param>
    /// <param name="tone">How it is painted: "blade", "base", "metal", "rod", "ghost", "air", "move", "clear".</param>
    /// <param name="mesh">The mesh, metres.</param>
    /// <param name="values">A value a vertex for the scale of colours, as it is shown; empty for the plain tone. NaN where it is not known.</param>
    /// <param name="shifts">Where each vertex moves to, x, y, z a vertex, metres; empty when it stays.</param>
    public void Add(string name, string tone, TriangleMesh mesh, ReadOnlySpan<double> values = default, ReadOnlySpan<double> shifts = default)
    {
        ArgumentNullException.ThrowIfNull(mesh);
        _parts.Add(new
        {
            name,
            tone,
            position = Put(Singles(mesh.Coordinates)),
            index = Put(MemoryMarshal.AsBytes(mesh.Corners).ToArray()),
            value = values.IsEmpty ? null : (object)Put(Singles(values)),
            shift = shifts.IsEmpty ? null : (object)Put(Singles(shifts)),
        });
    }

    /// <summary>Adds lines.</summary>
    /// <param name="name">What they are.</param>
    /// <param name="tone">How they are drawn: "ink", "quiet", "move", "water".</param>
    /// <param name="points">Pairs of ends, x, y, z each, metres.</param>
    public void AddLines(string name, string tone, ReadOnlySpan<double> points) => _parts.Add(new { name, tone, lines = Put(Singles(points)) });

    /// <summary>Adds a closed line through points.</summary>
    /// <param name="name">What it is.</param>
    /// <param name="tone">How it is drawn: see <see cref="AddLines"/>.</param>
    /// <param name="ring">The points, metres; the first is not repeated.</param>
    public void AddRing(string name, string tone, IReadOnlyList<Point3> ring)
    {
        ArgumentNullException.ThrowIfNull(ring);
        double[] points = new double[6 * ring.Count];
        for (int i = 0; i < ring.Count; i++)
        {
            Point3 from = ring[i], to = ring[(i + 1) % ring.Count];
            (points[6 * i], points[6 * i + 1], points[6 * i + 2]) = (from.X, from.Y, from.Z);
            (points[6 * i + 3], points[6 * i + 4], points[6 * i + 5]) = (to.X, to.Y, to.Z);
        }

        AddLines(name, tone, points);
    }

    /// <summary>Adds a word at a place, with a mark that tells by its form what it is.</summary>
    /// <param name="words">The words.</param>
    /// <param name="mark">"disc", "ring", "cross", "none".</param>
    /// <param name="at">The place, metres.</param>
    public void AddLabel(string words, string mark, Point3 at) => _labels.Add(new { words, mark, at = new[] { at.X, at.Y, at.Z } });

    /// <summary>The file.</summary>
    public byte[] ToBytes()
    {
        byte[] header = JsonSerializer.SerializeToUtf8Bytes(new { parts = _parts, labels = _labels, about = About }, Form);
        int padded = (header.Length + 3) & ~3;
        byte[] file = new byte[8 + padded + _length];
        "FWS1"u8.CopyTo(file);
        BinaryPrimitives.WriteUInt32LittleEndian(file.AsSpan(4), (uint)padded);
        file.AsSpan(8, padded).Fill((byte)' ');
        header.CopyTo(file, 8);
        int at = 8 + padded;
        foreach (byte[] array in _arrays)
        {
            array.CopyTo(file, at);
            at += array.Length;
        }

        return file;
    }

    private object Put(byte[] array)
    {
        int at = _length;
        _arrays.Add(array);
        _length += array.Length;
        return new { at, count = array.Length / 4 };
    }

    private static byte[] Singles(ReadOnlySpan<double> values)
    {
        float[] singles = new float[values.Length];
        for (int i = 0; i < singles.Length; i++)
            singles[i] = double.IsNaN(values[i]) ? NotKnown : (float)values[i];
        return MemoryMarshal.AsBytes(singles.AsSpan()).ToArray();
    }
}
