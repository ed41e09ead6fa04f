using System.Buffers.Binary;
using System.Text;

namespace Finwright.Geometry.Files;

/// <summary>
/// Stereolithography files: bare triangles without a unit; millimetres here, as everywhere in printing.
/// Written in the binary form, read in the binary and the text form.
/// </summary>
/// <remarks>Layout: 3D Systems, Inc., "StereoLithography Interface Specification", 1989 (from memory).</remarks>
public static class StlFile
{
    private const int HeaderLength = 80;
    private const int RecordLength = 50;
    private const double MetresPerMillimetre = 1e-3;

    /// <summary>Writes a mesh in the binary form. Same mesh and title, same bytes.</summary>
    /// <param name="stream">Receives the file.</param>
    /// <param name="mesh">Metres; at least one triangle.</param>
    /// <param name="title">What the mesh is; goes into the header as far as it fits, other than plain characters as "?".</param>
    /// <exception cref="ArgumentException">A coordinate is too large for single precision, or no triangle is left after rounding.</exception>
    public static void Write(Stream stream, TriangleMesh mesh, string title)
    {
        ArgumentNullException.ThrowIfNull(stream);
        ArgumentNullException.ThrowIfNull(title);
        RoundedMesh rounded = RoundedMesh.From(mesh);
        int count = rounded.Triangles.Length / 3;
        byte[] bytes = new byte[HeaderLength + sizeof(int)];
        // Starting with our own name also keeps it from starting with "solid", which marks the text form.
        string heading = string.Concat($"Finwright, millimetres: {title}".Select(c => c is >= ' ' and <= '~' ? c : '?'));
        Encoding.ASCII.GetBytes(heading.AsSpan(0, Math.Min(heading.Length, HeaderLength)), bytes);
        BinaryPrimitives.WriteInt32LittleEndian(bytes.AsSpan(HeaderLength), count);
        stream.Write(bytes);

        Span<byte> record = stackalloc byte[RecordLength];
        record.Clear();
        Span<Point3> corners = stackalloc Point3[3];
        for (int i = 0; i < count; i++)
        {
            for (int k = 0; k < 3; k++)
            {
                ReadOnlySpan<float> v = rounded.Vertices.AsSpan(3 * rounded.Triangles[3 * i + k], 3);
                corners[k] = new(v[0], v[1], v[2]);
                WritePoint(record[(12 + 12 * k)..], corners[k]);
            }

            Point3 normal = (corners[1] - corners[0]).Cross(corners[2] - corners[0]);
            double length = normal.Length;
            WritePoint(record, length > 0 ? 1 / length * normal : default);
            stream.Write(record);
        }
    }

    private static void WritePoint(Span<byte> to, Point3 p)
    {
        // Adding zero turns -0 into +0.
        BinaryPrimitives.WriteSingleLittleEndian(to, (float)p.X + 0f);
        BinaryPrimitives.WriteSingleLittleEndian(to[4..], (float)p.Y + 0f);
        BinaryPrimitives.WriteSingleLittleEndian(to[8..], (float)p.Z + 0f);
    }

    /// <summary>
    /// Reads a mesh; corners at equal places become one vertex, triangles with two equal corners are left out.
    /// Whether the mesh is closed is not judged here.
    /// </summary>
    /// <param name="stream">Read to its end; at most 256 MB and four million triangles.</param>
    /// <returns>The mesh, metres.</returns>
    /// <exception cref="FileFormatException">The file is not such a file, is cut short or has a bad number; the message says where.</exception>
    public static TriangleMesh Read(Stream stream)
    {
        ArgumentNullException.ThrowIfNull(stream);
        byte[] bytes = MeshLimits.ReadAll(stream, "The STL file");
        // The length decides: many writers begin binary headers with "solid" too.
        long count = bytes.Length >= HeaderLength + sizeof(int) ? BinaryPrimitives.ReadUInt32LittleEndian(bytes.AsSpan(HeaderLength)) : 0;
        long expected = HeaderLength + sizeof(int) + RecordLength * count;
        StlCollector found = new();
        if (bytes.Length >= HeaderLength + sizeof(int) && bytes.Length == expected)
            ReadBinary(bytes, (int)count, found);
        else if (StlText.IsLikely(bytes))
            StlText.Read(bytes, found);
        else if (bytes.Length < HeaderLength + sizeof(int))
            throw new FileFormatException($"The STL file has {bytes.Length} bytes; even an empty one has 84. It is cut short or of another kind.");
        else
            throw new FileFormatException($"The STL file says {count} triangles, which take {expected} bytes, but has {bytes.Length}. It is cut short or of another kind.");
        return found.ToMesh();
    }

    private static void ReadBinary(byte[] bytes, int count, StlCollector found)
    {
        Span<float> corners = stackalloc float[9];
        for (int i = 0; i < count; i++)
        {
            ReadOnlySpan<byte> record = bytes.AsSpan(HeaderLength + sizeof(int) + RecordLength * i, RecordLength);
            for (int k = 0; k < 9; k++)
                corners[k] = BinaryPrimitives.ReadSingleLittleEndian(record[(12 + 4 * k)..]);
            found.Add(corners, $"Triangle {i + 1} of the STL file");
        }
    }

    /// <summary>Gathers triangles from either form.</summary>
    internal sealed class StlCollector
    {
        private readonly VertexWelder _welder = new(1024);
        private readonly List<int> _triangles = [];
        private int _count;

        /// <summary>Takes a triangle.</summary>
        /// <param name="corners">Nine coordinates, millimetres.</param>
        /// <param name="place">Where it stands in the file.</param>
        public void Add(ReadOnlySpan<float> corners, string place)
        {
            if (++_count > MeshLimits.Triangles)
                throw new FileFormatException($"The STL file has more than {MeshLimits.Triangles} triangles. Reduce their number.");
            foreach (float value in corners)
                MeshLimits.Checked(value * MetresPerMillimetre, place);
            int a = _welder.Add(corners[0], corners[1], corners[2]);
            int b = _welder.Add(corners[3], corners[4], corners[5]);
            int c = _welder.Add(corners[6], corners[7], corners[8]);
            if (a != b && b != c && c != a)
                _triangles.AddRange([a, b, c]);
        }

        /// <summary>What was gathered.</summary>
        public TriangleMesh ToMesh() => _triangles.Count > 0
            ? new RoundedMesh(_welder.Vertices, [.. _triangles]).ToMetres()
            : throw new FileFormatException("The STL file has no triangle with an area.");
    }
}
