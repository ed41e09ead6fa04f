namespace Finwright.Water;

/// <summary>Constants that every part of the water module shares.</summary>
public static class PhysicalConstants
{
    /// <summary>Standard acceleration of free fall, m/s² (exact by definition, ISO 80000-3).</summary>
    public const double Gravity = 9.80665;

    /// <summary>Standard atmosphere, Pa (exact by definition).</summary>
    public const double Atmosphere = 101325;

    /// <summary>0 °C in kelvins (exact by definition).</summary>
    public const double IcePoint = 273.15;
}
