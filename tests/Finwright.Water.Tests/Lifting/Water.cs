using Finwright.Water.Lifting;

namespace Finwright.Water.Tests.Lifting;

/// <summary>Sea water of 15 °C and angles in degrees.</summary>
internal static class Water
{
    public const double Density = 1026, Viscosity = 1.189e-6;

    public static FlowState At(double speed, double leewayDegrees) => new(speed, Density, Viscosity, Radians(leewayDegrees));

    public static double Radians(double degrees) => degrees * Math.PI / 180;
}
