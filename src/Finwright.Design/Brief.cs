namespace Finwright.Design;

/// <summary>How much weed floats where the fin is used.</summary>
public enum Weed
{
    /// <summary>Clean water.</summary>
    [Input("Clean water.")]
    None,

    /// <summary>Single strands.</summary>
    [Input("Single strands.")]
    Some,

    /// <summary>Mats and long strands.</summary>
    [Input("Mats and long strands.")]
    Thick,
}

/// <summary>The water the fin sails in; decides density, viscosity and vapour pressure.</summary>
public enum WaterKind
{
    /// <summary>Sea water, 35 g of salt a kilogram.</summary>
    [Input("Sea water, 35 g of salt a kilogram.")]
    Sea,

    /// <summary>Mixed water of estuaries and inland seas.</summary>
    [Input("Mixed water of estuaries and inland seas.")]
    Brackish,

    /// <summary>Lakes and rivers.</summary>
    [Input("Lakes and rivers.")]
    Fresh,
}

/// <summary>How disturbed the water is; decides how long the flow over the blade stays laminar.</summary>
public enum WaterState
{
    /// <summary>Mirror-smooth, close under the shore.</summary>
    [Input("Mirror-smooth, close under the shore.")]
    Glassy,

    /// <summary>Ripples, no waves.</summary>
    [Input("Ripples, no waves.")]
    Ripples,

    /// <summary>Short chop, as a planing wind raises.</summary>
    [Input("Short chop, as a planing wind raises.")]
    Chop,

    /// <summary>Steep chop, current or broken waves.</summary>
    [Input("Steep chop, current or broken waves.")]
    Rough,
}

/// <summary>Who sails the fin, on what, and where.</summary>
public sealed record Brief
{
    /// <summary>Mass of the rider with gear, kg.</summary>
    [Input("Mass of the rider with harness and wetsuit.", Minimum = 30, Maximum = 160, Reason = "Common for an adult (common practice, no source).")]
    public double RiderMassKg { get; init; } = 80;

    /// <summary>Distance of the rider's centre of mass from the board's centre line, mm.</summary>
    [Input("How far the rider's weight hangs out from the centre line of the board.", Minimum = 200, Maximum = 1600, Reason = "Hanging in the harness, feet in the outer straps: 0.9 to 1.0 m (common practice, no source).")]
    public double HangOutMm { get; init; } = 950;

    /// <summary>Greatest width of the board, mm.</summary>
    [Input("Greatest width of the board.", Minimum = 350, Maximum = 1100, Reason = "A middling freeride board (common practice, no source).")]
    public double BoardWidthMm { get; init; } = 700;

    /// <summary>Width of the board above the fin, mm.</summary>
    [Input("Width of the board's bottom where the fin stands.", Minimum = 150, Maximum = 1000, Reason = "About six tenths of the greatest width (common practice, no source).")]
    public double TailWidthMm { get; init; } = 430;

    /// <summary>Distance from the fin to the end of the board, mm.</summary>
    [Input("Distance from the middle of the fin box to the tail end of the board.", Minimum = 50, Maximum = 800, Reason = "Common for production boards (common practice, no source).")]
    public double FinToTailMm { get; init; } = 180;

    /// <summary>Sail area, m².</summary>
    [Input("Area of the sail most used with this fin.", Minimum = 1.5, Maximum = 14, Reason = "A middling sail (common practice, no source).")]
    public double SailAreaM2 { get; init; } = 6.2;

    /// <summary>Height of the sail's centre of effort above the board, mm.</summary>
    [Input("Height of the sail's centre of effort above the board.", Minimum = 800, Maximum = 3000, Reason = "1.7 to 2.0 m for usual sails (common practice, no source).")]
    public double SailEffortHeightMm { get; init; } = 1850;

    /// <summary>Side force the fin must carry, N; null when it is to be derived from the rider's leverage.</summary>
    [Input("Side force the fin must carry; leave it out to have it derived from rider and sail.", Minimum = 20, Maximum = 2000, Reason = "Left out: derived from the rider's leverage, which is what limits it.")]
    public double? SideForceN { get; init; }

    /// <summary>Speed when the board starts to plane, m/s.</summary>
    [Input("Speed at which the board starts to plane.", Minimum = 1, Maximum = 12, Reason = "8 to 12 knots (from memory).")]
    public double GettingGoingSpeedMPerS { get; init; } = 5;

    /// <summary>Usual speed, m/s.</summary>
    [Input("Usual speed once planing.", Minimum = 2, Maximum = 25, Reason = "About 18 knots, mid of recreational planing (from memory).")]
    public double CruiseSpeedMPerS { get; init; } = 9;

    /// <summary>Highest speed hoped for, m/s.</summary>
    [Input("Highest speed hoped for.", Minimum = 3, Maximum = 30, Reason = "About 27 knots (from memory).")]
    public double TopSpeedMPerS { get; init; } = 14;

    /// <summary>Greatest depth below the hull that the spot allows, mm; null when the spot is deep.</summary>
    [Input("Greatest depth of fin that the spot allows; leave it out where the water is deep.", Minimum = 80, Maximum = 1000, Reason = "Left out: no limit.")]
    public double? DraughtLimitMm { get; init; }

    /// <summary>Weed at the spot.</summary>
    [Input("How much weed floats at the spot.", Reason = "The maker knows when there is weed.")]
    public Weed Weed { get; init; } = Weed.None;

    /// <summary>Kind of water.</summary>
    [Input("Sea, brackish or fresh water.", Reason = "Most spots with steady wind are on the coast (common practice, no source).")]
    public WaterKind Water { get; init; } = WaterKind.Sea;

    /// <summary>Water temperature, °C.</summary>
    [Input("Water temperature.", Minimum = 0, Maximum = 35, Reason = "The standard temperature of model-basin work (ITTC 7.5-02-01-03).")]
    public double WaterTemperatureCelsius { get; init; } = 15;

    /// <summary>How disturbed the water is.</summary>
    [Input("How disturbed the water is; decides how long the flow over the blade stays laminar.", Reason = "A wind that lets a board plane raises chop (common practice, no source).")]
    public WaterState WaterState { get; init; } = WaterState.Chop;
}
