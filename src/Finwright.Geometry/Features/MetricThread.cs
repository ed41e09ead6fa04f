namespace Finwright.Geometry.Features;

/// <summary>A metric coarse thread with the hardware that belongs to it. Metres.</summary>
/// <remarks>
/// Pitch: ISO 261 coarse series. Clearance: ISO 273 fine, medium and coarse series. Hexagon nut: ISO 4032:2001 (reproduced in
/// BS EN ISO 4032:2001, table 1). Square nuts: DIN 557 and DIN 562, from memory. Cross nuts and sockets: from memory; they
/// differ from maker to maker, so measure yours. M8 throughout: from memory.
/// </remarks>
public sealed record MetricThread
{
    private MetricThread()
    {
    }

    /// <summary>M4 × 0.7.</summary>
    public static MetricThread M4 { get; } = new()
    {
        Name = "M4",
        Diameter = 4e-3,
        Pitch = 0.7e-3,
        FineClearance = 4.3e-3,
        MediumClearance = 4.5e-3,
        CoarseClearance = 4.8e-3,
        HexNut = new(7.00e-3, 6.78e-3, 3.2e-3, 2.9e-3),
        SquareNut = new(7e-3, 7e-3, 3.2e-3, 3.2e-3),
        ThinSquareNut = new(7e-3, 7e-3, 2.2e-3, 2.2e-3),
        CrossNut = new(8e-3, 12e-3),
        SocketDiameter = 10.7e-3,
    };

    /// <summary>M5 × 0.8.</summary>
    public static MetricThread M5 { get; } = new()
    {
        Name = "M5",
        Diameter = 5e-3,
        Pitch = 0.8e-3,
        FineClearance = 5.3e-3,
        MediumClearance = 5.5e-3,
        CoarseClearance = 5.8e-3,
        HexNut = new(8.00e-3, 7.78e-3, 4.7e-3, 4.4e-3),
        SquareNut = new(8e-3, 8e-3, 4e-3, 4e-3),
        ThinSquareNut = new(8e-3, 8e-3, 2.7e-3, 2.7e-3),
        CrossNut = new(10e-3, 12e-3),
        SocketDiameter = 11.7e-3,
    };

    /// <summary>M6 × 1.0.</summary>
    public static MetricThread M6 { get; } = new()
    {
        Name = "M6",
        Diameter = 6e-3,
        Pitch = 1.0e-3,
        FineClearance = 6.4e-3,
        MediumClearance = 6.6e-3,
        CoarseClearance = 7.0e-3,
        HexNut = new(10.00e-3, 9.78e-3, 5.2e-3, 4.9e-3),
        SquareNut = new(10e-3, 10e-3, 5e-3, 5e-3),
        ThinSquareNut = new(10e-3, 10e-3, 3.2e-3, 3.2e-3),
        CrossNut = new(10e-3, 12e-3),
        SocketDiameter = 14.0e-3,
    };

    /// <summary>M8 × 1.25.</summary>
    public static MetricThread M8 { get; } = new()
    {
        Name = "M8",
        Diameter = 8e-3,
        Pitch = 1.25e-3,
        FineClearance = 8.4e-3,
        MediumClearance = 9.0e-3,
        CoarseClearance = 10.0e-3,
        HexNut = new(13.00e-3, 12.73e-3, 6.8e-3, 6.44e-3),
        SquareNut = new(13e-3, 13e-3, 6.5e-3, 6.5e-3),
        ThinSquareNut = new(13e-3, 13e-3, 4e-3, 4e-3),
        CrossNut = new(12e-3, 14e-3),
        SocketDiameter = 17.7e-3,
    };

    /// <summary>All threads, thinnest first.</summary>
    public static IReadOnlyList<MetricThread> All { get; } = [M4, M5, M6, M8];

    /// <summary>Name, for example M6.</summary>
    public string Name { get; private init; } = "";

    /// <summary>Nominal diameter.</summary>
    public double Diameter { get; private init; }

    /// <summary>Pitch of the coarse series.</summary>
    public double Pitch { get; private init; }

    /// <summary>Clearance hole, fine series.</summary>
    public double FineClearance { get; private init; }

    /// <summary>Clearance hole, medium series.</summary>
    public double MediumClearance { get; private init; }

    /// <summary>Clearance hole, coarse series.</summary>
    public double CoarseClearance { get; private init; }

    /// <summary>Hexagon nut.</summary>
    public NutSize HexNut { get; private init; } = new(0, 0, 0, 0);

    /// <summary>Square nut.</summary>
    public NutSize SquareNut { get; private init; } = new(0, 0, 0, 0);

    /// <summary>Thin square nut.</summary>
    public NutSize ThinSquareNut { get; private init; } = new(0, 0, 0, 0);

    /// <summary>Cross nut.</summary>
    public CrossNutSize CrossNut { get; private init; } = new(0, 0);

    /// <summary>Outer diameter of a thin-walled socket that turns the hexagon nut.</summary>
    public double SocketDiameter { get; private init; }

    /// <inheritdoc/>
    public override string ToString() => Name;
}

/// <summary>A hexagon or square nut. Metres.</summary>
/// <param name="AcrossFlats">Greatest distance across flats.</param>
/// <param name="AcrossFlatsMinimum">Least distance across flats.</param>
/// <param name="Height">Greatest height.</param>
/// <param name="HeightMinimum">Least height.</param>
public sealed record NutSize(double AcrossFlats, double AcrossFlatsMinimum, double Height, double HeightMinimum);

/// <summary>A cross nut: a cylinder with the thread through its side. Metres.</summary>
/// <param name="Diameter">Diameter.</param>
/// <param name="Length">Length across the fin.</param>
public sealed record CrossNutSize(double Diameter, double Length);
