namespace Finwright.Workshop.Exchange.Archives;

/// <summary>The check sum of zip files.</summary>
/// <remarks>Polynomial and bit order of ISO 3309 and ITU-T V.42, as the ZIP file format specification (APPNOTE 6.3) demands in section 4.4.7.</remarks>
internal static class Crc32
{
    private const uint Polynomial = 0xEDB88320;

    private static readonly uint[] Table = MakeTable();

    /// <summary>The check sum of bytes.</summary>
    public static uint Of(ReadOnlySpan<byte> bytes)
    {
        uint sum = uint.MaxValue;
        foreach (byte own in bytes)
            sum = Table[(byte)(sum ^ own)] ^ (sum >> 8);
        return ~sum;
    }

    private static uint[] MakeTable()
    {
        uint[] table = new uint[256];
        for (uint i = 0; i < table.Length; i++)
        {
            uint value = i;
            for (int bit = 0; bit < 8; bit++)
                value = (value & 1) != 0 ? Polynomial ^ (value >> 1) : value >> 1;
            table[i] = value;
        }

        return table;
    }
}
