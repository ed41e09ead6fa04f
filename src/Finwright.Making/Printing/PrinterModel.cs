namespace Finwright.Making.Printing;

/// <summary>What a printer does in a second. SI. The defaults are a common printer with a 0.4 mm nozzle, driven gently.</summary>
public sealed record PrinterModel
{
    /// <summary>Speed of the outermost wall line, m/s. 40 to 60 mm/s is usual for PETG, the outside slowest (common practice, no source).</summary>
    public double OuterWallSpeed { get; init; } = 0.040;

    /// <summary>Speed of the other wall lines, m/s (common practice, no source).</summary>
    public double InnerWallSpeed { get; init; } = 0.060;

    /// <summary>Speed of solid layers, m/s (common practice, no source).</summary>
    public double SolidSpeed { get; init; } = 0.060;

    /// <summary>Speed of the gyroid, m/s (common practice, no source).</summary>
    public double InfillSpeed { get; init; } = 0.060;

    /// <summary>Speed of moves that lay nothing, m/s (from memory).</summary>
    public double TravelSpeed { get; init; } = 0.150;

    /// <summary>Most plastic that the nozzle melts, m³/s. 8 to 15 mm³/s with a common nozzle (from memory).</summary>
    public double FlowLimit { get; init; } = 10e-9;

    /// <summary>Acceleration, m/s² (from memory).</summary>
    public double Acceleration { get; init; } = 1.5;

    /// <summary>Length of moves that lay nothing over the length of lines laid (our estimate: one crossing of the part for every twenty lines).</summary>
    public double TravelShare { get; init; } = 0.05;

    /// <summary>Time lost between two layers, s: lift, travel, prime (from memory).</summary>
    public double LayerChange { get; init; } = 1.5;

    /// <summary>Least time that a layer takes so that it can set, s (common practice, no source).</summary>
    public double LeastLayerTime { get; init; } = 10;

    /// <summary>Heating up and levelling before the first layer, s (from memory).</summary>
    public double StartTime { get; init; } = 480;

    /// <summary>Speed of the first layer over that of the others. Half, so that it holds to the bed (common practice, no source).</summary>
    public double FirstLayerFactor { get; init; } = 0.5;
}
