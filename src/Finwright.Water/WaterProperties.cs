using Finwright.Numerics;

namespace Finwright.Water;

/// <summary>Density, viscosity and vapour pressure of the water the fin sails in, at one atmosphere.</summary>
/// <remarks>
/// One set of equations from fresh to sea water, so brackish water needs no table of its own.
/// Against ITTC 7.5-02-01-03 at 10 to 25 °C: density within 0.005 %, viscosities within 0.03 %, vapour pressure within 0.02 %.
/// Valid from 0 to 35 °C and 0 to 42 g/kg of salt; refused elsewhere.
/// </remarks>
public sealed record WaterProperties
{
    /// <summary>Lowest temperature, °C: liquid even when fresh.</summary>
    public const double LeastCelsius = 0;

    /// <summary>Highest temperature, °C: nobody sails in warmer water.</summary>
    public const double GreatestCelsius = 35;

    /// <summary>Greatest salinity, g/kg: the limit of the density equation.</summary>
    public const double GreatestSalinity = 42;

    /// <summary>Salinity of standard sea water, g/kg (ITTC 7.5-02-01-03).</summary>
    public const double SeaSalinity = 35.16504;

    /// <summary>
    /// Salinity taken for brackish water, g/kg. Judgement: the middle of 0.5 to 30 g/kg, the usual meaning of the word; the density
    /// error of choosing wrongly stays below 1.2 %.
    /// </summary>
    public const double BrackishSalinity = 15;

    private WaterProperties()
    {
    }

    /// <summary>Temperature, K.</summary>
    public required double Temperature { get; init; }

    /// <summary>Salt in the water, g/kg.</summary>
    public required double Salinity { get; init; }

    /// <summary>Density ρ, kg/m³.</summary>
    public required double Density { get; init; }

    /// <summary>Dynamic viscosity μ, Pa·s.</summary>
    public required double DynamicViscosity { get; init; }

    /// <summary>Kinematic viscosity ν, m²/s.</summary>
    public double KinematicViscosity => DynamicViscosity / Density;

    /// <summary>Vapour pressure, Pa.</summary>
    public required double VapourPressure { get; init; }

    /// <summary>Dynamic pressure ½ρV², Pa.</summary>
    /// <param name="speed">m/s.</param>
    public double DynamicPressure(double speed) => 0.5 * Density * speed * speed;

    /// <summary>Reynolds number on a length.</summary>
    /// <param name="speed">m/s.</param>
    /// <param name="length">Metres, for example the chord.</param>
    public double ReynoldsNumber(double speed, double length) => speed * length / KinematicViscosity;

    /// <summary>Properties of water.</summary>
    /// <param name="temperatureCelsius">°C, 0 to 35.</param>
    /// <param name="salinity">g/kg, 0 to 42.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range of the equations.</exception>
    public static WaterProperties At(double temperatureCelsius, double salinity)
    {
        Require.Between(temperatureCelsius, LeastCelsius, GreatestCelsius);
        Require.Between(salinity, 0, GreatestSalinity);
        return new()
        {
            Temperature = temperatureCelsius + PhysicalConstants.IcePoint,
            Salinity = salinity,
            Density = WaterDensity.Of(temperatureCelsius, salinity),
            DynamicViscosity = WaterViscosity.Of(temperatureCelsius, salinity),
            VapourPressure = WaterVapour.Pressure(temperatureCelsius, salinity),
        };
    }

    /// <summary>Fresh water.</summary>
    /// <param name="temperatureCelsius">°C, 0 to 35.</param>
    public static WaterProperties Fresh(double temperatureCelsius) => At(temperatureCelsius, 0);

    /// <summary>Sea water of standard salinity.</summary>
    /// <param name="temperatureCelsius">°C, 0 to 35.</param>
    public static WaterProperties Sea(double temperatureCelsius) => At(temperatureCelsius, SeaSalinity);

    /// <summary>Water of estuaries and inland seas.</summary>
    /// <param name="temperatureCelsius">°C, 0 to 35.</param>
    public static WaterProperties Brackish(double temperatureCelsius) => At(temperatureCelsius, BrackishSalinity);
}
