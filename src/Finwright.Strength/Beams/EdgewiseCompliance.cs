using Finwright.Numerics;

namespace Finwright.Strength.Beams;

/// <summary>How the blade resists fore and aft at one depth.</summary>
/// <param name="Y">Depth, m.</param>
/// <param name="EdgeRigidity">EI of bending fore and aft, N m², above 0.</param>
/// <param name="ShearStiffness">Shear stiffness fore and aft, N, above 0.</param>
public sealed record EdgeStation(double Y, double EdgeRigidity, double ShearStiffness);

/// <summary>How far the blade gives way fore and aft where something strikes its leading edge.</summary>
/// <remarks>
/// A cantilever with shear, held at the first station: ∫(y₀ − y)²/EI dy + ∫1/(G A) dy. What gives way at the point of the strike and in the box comes on top. A blade is short for its
/// chord, so shear is a large part, and the root's own give may be more than all of it: an upper bound of stiffness, so of the force of a strike.
/// </remarks>
public static class EdgewiseCompliance
{
    /// <summary>Compliance at a depth.</summary>
    /// <param name="stations">From the root down, at least two, depths rising.</param>
    /// <param name="depth">Where the force acts, m, between the first and the last station.</param>
    /// <returns>Travel aft over force, m/N.</returns>
    public static double At(IReadOnlyList<EdgeStation> stations, double depth)
    {
        ArgumentNullException.ThrowIfNull(stations);
        if (stations.Count < 2)
            throw new ArgumentException("A beam needs at least two stations.", nameof(stations));
        Require.Between(depth, stations[0].Y, stations[^1].Y);
        double sum = 0;
        for (int i = 0; i + 1 < stations.Count && stations[i].Y < depth; i++)
        {
            EdgeStation a = stations[i], b = stations[i + 1];
            Require.Positive(a.EdgeRigidity);
            Require.Positive(b.EdgeRigidity);
            Require.Positive(a.ShearStiffness);
            Require.Positive(b.ShearStiffness);
            Require.Positive(b.Y - a.Y);
            double height = Math.Min(b.Y, depth) - a.Y;
            for (int p = 0; p < RigidityCourse.Places.Length; p++)
            {
                double y = a.Y + RigidityCourse.Places[p] * height, share = (y - a.Y) / (b.Y - a.Y), arm = depth - y;
                sum += RigidityCourse.Weights[p] * height
                    * (arm * arm / RigidityCourse.OfFourthPower(a.EdgeRigidity, b.EdgeRigidity, share) + 1 / RigidityCourse.OfSquare(a.ShearStiffness, b.ShearStiffness, share));
            }
        }

        return sum;
    }
}
