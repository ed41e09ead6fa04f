namespace Finwright.Workshop.Exchange.Archives;

/// <summary>Numbers of the zip format that reader and writer share.</summary>
/// <remarks>ZIP file format specification, APPNOTE 6.3: local header 4.3.7, central directory 4.3.12, its end 4.3.16, flags 4.4.4, methods 4.4.5.</remarks>
internal static class ZipForm
{
    /// <summary>First four bytes of a local header.</summary>
    public const uint Local = 0x04034b50;

    /// <summary>First four bytes of a header in the central directory.</summary>
    public const uint Central = 0x02014b50;

    /// <summary>First four bytes of the end of the central directory.</summary>
    public const uint End = 0x06054b50;

    /// <summary>Bytes of a local header before its name.</summary>
    public const int LocalLength = 30;

    /// <summary>Bytes of a header in the central directory before its name.</summary>
    public const int CentralLength = 46;

    /// <summary>Bytes of the end before its comment.</summary>
    public const int EndLength = 22;

    /// <summary>Method: as it is.</summary>
    public const ushort Stored = 0;

    /// <summary>Method: deflate (RFC 1951).</summary>
    public const ushort Deflated = 8;

    /// <summary>Flags of encryption: bits 0, 6 and 13.</summary>
    public const ushort Encrypted = 0x2041;

    /// <summary>Flag: sizes and check sum follow the data; the central directory has them too.</summary>
    public const ushort SizesBehind = 0x0008;

    /// <summary>Flags that say nothing about how to read: bits 1 and 2 (how hard the packer tried) and 11 (names in UTF-8).</summary>
    public const ushort Harmless = 0x0806;
}
