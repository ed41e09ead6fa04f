using Finwright.Numerics;

namespace Finwright.Water.Finishes;

/// <summary>How rough a blade may be: the heights that a finish is held against.</summary>
public static class RoughnessHeights
{
    // Schlichting, Boundary-Layer Theory (from memory): below u k/ν = 100 a turbulent layer does not feel the wall's roughness.
    private const double AdmissibleReynoldsNumber = 100;

    private const int Halvings = 60; // beyond the digits of a double

    /// <summary>Height below which roughness does not add to turbulent friction, k = 100 ν/V; m.</summary>
    /// <param name="water">The water.</param>
    /// <param name="speed">m/s, above zero.</param>
    public static double Admissible(WaterProperties water, double speed)
    {
        ArgumentNullException.ThrowIfNull(water);
        return AdmissibleReynoldsNumber * water.KinematicViscosity / Require.Positive(speed);
    }

    /// <summary>Least height that trips a laminar layer, m.</summary>
    /// <param name="water">The water.</param>
    /// <param name="speed">Speed outside the layer, m/s, above zero.</param>
    /// <param name="distance">Distance along the surface from where the layer begins, m, above zero.</param>
    /// <param name="criticalReynoldsNumber">Roughness Reynolds number u_k k/ν at which the elements trip, above zero.</param>
    /// <remarks>
    /// The layer of a flat plate, speed at the elements' height as it was without them. Under the suction peak of a fin at leeway the layer is
    /// about half as thick near the nose; halve the height there. For a plain word beside the section flow, which uses its own layer.
    /// </remarks>
    public static double Tripping(WaterProperties water, double speed, double distance, double criticalReynoldsNumber)
    {
        ArgumentNullException.ThrowIfNull(water);
        double nu = water.KinematicViscosity, perHeight = Math.Sqrt(Require.Positive(speed) / (2 * nu * Require.Positive(distance)));
        double wanted = Require.Positive(criticalReynoldsNumber) * nu / speed;
        // u_k <= V bounds the height from below; the product of height and speed rises with height.
        double low = wanted, high = wanted + 10 / perHeight;
        while (high * BlasiusProfile.Speed(high * perHeight) < wanted)
            high *= 2;
        for (int i = 0; i < Halvings; i++)
        {
            double middle = 0.5 * (low + high);
            if (middle * BlasiusProfile.Speed(middle * perHeight) < wanted)
                low = middle;
            else
                high = middle;
        }

        return 0.5 * (low + high);
    }
}
