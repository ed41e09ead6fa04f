namespace Finwright.Geometry.Blades;

/// <summary>How a blade is turned into a mesh.</summary>
public sealed record LoftOptions
{
    /// <summary>Greatest distance between the true skin and its facets, metres, positive. Default 0.02 mm.</summary>
    public double Tolerance { get; init; } = 2e-5;

    /// <summary>Flange at the root; null for none.</summary>
    public RootFlange? Flange { get; init; }

    /// <summary>
    /// How far the root section is drawn on straight into the base, to y = -RootExtension, so that blade and base overlap when they are
    /// joined; metres, 0 or more.
    /// </summary>
    public double RootExtension { get; init; }
}

/// <summary>
/// A plate round the root section with a fillet into the blade. At every depth its edge follows the section there, moved out square to
/// the skin: by the overhang over the thickness of the plate, then along a quarter circle from the plate to the skin. A raked fin's flange
/// leans with it.
/// </summary>
/// <param name="Overhang">How far the plate stands out, metres, positive.</param>
/// <param name="Thickness">Thickness of the plate, metres, positive.</param>
/// <param name="FilletRadius">Radius of the fillet, metres, 0 to the overhang.</param>
public sealed record RootFlange(double Overhang, double Thickness, double FilletRadius)
{
    /// <summary>Depth at which the fillet has run into the skin, metres.</summary>
    public double Height => Thickness + FilletRadius;
}
