namespace Finwright.Geometry.Files;

/// <summary>What a mesh file from a stranger may ask of us. Wide enough for any fin, narrow enough for any computer.</summary>
internal static class MeshLimits
{
    /// <summary>Bytes of a file, or of one packed entry after unpacking.</summary>
    public const int Bytes = 256 * 1024 * 1024;

    /// <summary>Triangles of all parts together; a fin at the finest useful tolerance has under half a million.</summary>
    public const int Triangles = 4_000_000;

    /// <summary>Distance of a coordinate from the origin, metres. Beyond it the unit is wrong, not the fin.</summary>
    public const double Coordinate = 100;

    /// <summary>Reads a whole stream, at most <see cref="Bytes"/>.</summary>
    /// <param name="stream">Read from its present place to its end.</param>
    /// <param name="what">What is read, for the message.</param>
    /// <exception cref="FileFormatException">The stream is longer.</exception>
    public static byte[] ReadAll(Stream stream, string what)
    {
        using MemoryStream all = new();
        byte[] block = new byte[81920];
        int read;
        while ((read = stream.Read(block)) > 0)
        {
            if (all.Length + read > Bytes)
                throw new FileFormatException($"{what} is larger than {Bytes / (1024 * 1024)} MB. Reduce its number of triangles.");
            all.Write(block, 0, read);
        }

        return all.ToArray();
    }

    /// <summary>Refuses a coordinate that is not a number or far outside anything a fin can be.</summary>
    /// <param name="value">Metres.</param>
    /// <param name="place">Where it stands, for the message.</param>
    public static double Checked(double value, string place) => Math.Abs(value) <= Coordinate
        ? value
        : throw new FileFormatException(double.IsFinite(value)
            ? $"{place}: a coordinate of {value:g6} m is outside ±{Coordinate} m. Check the unit of the file."
            : $"{place}: a coordinate is not a finite number.");
}
