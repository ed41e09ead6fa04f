namespace Finwright.Water.Lifting;

/// <summary>The water that the fin meets.</summary>
/// <param name="Speed">Speed through the water, m/s, positive.</param>
/// <param name="Density">Density, kg/m³, positive.</param>
/// <param name="KinematicViscosity">Kinematic viscosity, m²/s, positive.</param>
/// <param name="Leeway">Angle between stream and x axis, radians, within ±<see cref="LargestLeeway"/>; positive when the water comes from port, so that a symmetric fin is pushed to starboard.</param>
public readonly record struct FlowState(double Speed, double Density, double KinematicViscosity, double Leeway)
{
    /// <summary>The wake and the sections' answers are trusted up to here, radians (20 degrees).</summary>
    public const double TrustedLeeway = 20 * Math.PI / 180;

    /// <summary>Beyond this, radians (30 degrees), nothing is computed.</summary>
    public const double LargestLeeway = 30 * Math.PI / 180;

    /// <summary>Dynamic pressure, Pa.</summary>
    public double DynamicPressure => Density * Speed * Speed / 2;

    internal static void Check(FlowState flow)
    {
        Positive(flow.Speed, nameof(Speed), "m/s");
        Positive(flow.Density, nameof(Density), "kg/m³");
        Positive(flow.KinematicViscosity, nameof(KinematicViscosity), "m²/s");
        if (!(Math.Abs(flow.Leeway) <= LargestLeeway))
            throw new ArgumentOutOfRangeException(nameof(flow), flow.Leeway, "The lifting surface works for leeway within 30 degrees either side: beyond that the fin is a bluff body. Give a smaller angle, in radians.");
    }

    private static void Positive(double value, string what, string unit)
    {
        if (!(value > 0 && double.IsFinite(value)))
            throw new ArgumentOutOfRangeException(nameof(value), value, $"A fin needs moving water: {what} must be above 0 {unit}.");
    }
}
