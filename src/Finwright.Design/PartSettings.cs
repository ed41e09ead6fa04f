namespace Finwright.Design;

/// <summary>
/// How a part that comes as a mesh is printed, poured and cured: the content of a <c>*.part.json</c> file. The groups are those of a design file.
/// </summary>
/// <remarks>
/// The mesh lies as it is printed, z up. Pour attitudes speak of the fin's own axes: x aft, y from the hull to the tip, z to starboard;
/// for a part that is no fin leave the attitude at "auto".
/// </remarks>
public sealed record PartSettings
{
    /// <summary>The format version that this program writes.</summary>
    public const int CurrentFormat = 1;

    /// <summary>Version of the file format.</summary>
    [Input("Version of the format of part settings.", Minimum = CurrentFormat, Maximum = CurrentFormat, Reason = "Written by this program.")]
    public int Format { get; init; } = CurrentFormat;

    /// <summary>Name of the part.</summary>
    [Input("Name of the part, as it appears in answers.", MaximumLength = 60, Reason = "Left out: the name of its file.")]
    public string? Name { get; init; }

    /// <summary>Printer, filament and settings.</summary>
    [Input("Printer, filament, walls and infill.", Reason = "A common mid-size printer with a 0.4 mm nozzle.")]
    public Print Print { get; init; } = new();

    /// <summary>The printed plastic.</summary>
    [Input("The printed plastic, for the temperature at which it softens.", Reason = "Printed PETG.")]
    public MaterialChoice Printed { get; init; } = new();

    /// <summary>Resin and cooling.</summary>
    [Input("Resin, room and cooling.", Reason = "Slow resin in a water bath, the cautious way.")]
    public Pour Pour { get; init; } = new();

    /// <summary>Where ports are drilled.</summary>
    [Input("Where ports are drilled; each place is moved to the nearest skin.", MaximumLength = 12, Reason = "Fewer than two given: places are suggested, and the air is judged with them.")]
    public IReadOnlyList<MeshPort> Ports { get; init; } = [];

    /// <summary>What things cost.</summary>
    [Input("What material and electricity cost.", Reason = "Middling prices, from memory: write in your own.")]
    public Prices Prices { get; init; } = new();
}

/// <summary>A port in a mesh.</summary>
public sealed record MeshPort
{
    /// <summary>Place along x, mm.</summary>
    [Input("Place along x in the axes of the mesh.", Minimum = -2000, Maximum = 2000)]
    public required double XMm { get; init; }

    /// <summary>Place along y, mm.</summary>
    [Input("Place along y in the axes of the mesh.", Minimum = -2000, Maximum = 2000)]
    public required double YMm { get; init; }

    /// <summary>Place along z, mm.</summary>
    [Input("Place along z in the axes of the mesh.", Minimum = -2000, Maximum = 2000)]
    public required double ZMm { get; init; }
}
