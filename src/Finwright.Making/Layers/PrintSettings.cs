namespace Finwright.Making.Layers;

/// <summary>How a part is printed, as far as its layers depend on it. SI.</summary>
public sealed record PrintSettings
{
    /// <summary>Height of a layer, metres.</summary>
    public required double LayerHeight { get; init; }

    /// <summary>Width of a printed line, metres.</summary>
    public required double LineWidth { get; init; }

    /// <summary>Lines in each wall, 1 or more.</summary>
    public required int Walls { get; init; }

    /// <summary>Solid layers at every top and bottom of the part, 0 or more.</summary>
    public required int SolidLayers { get; init; }

    /// <summary>Share of the inside that the gyroid fills with plastic, 0 to 0.6.</summary>
    public required double InfillShare { get; init; }

    /// <summary>Density of the plastic, kg/m³.</summary>
    public required double PlasticDensity { get; init; }

    /// <summary>Thickness of the walls, metres.</summary>
    public double WallThickness => Walls * LineWidth;
}
