using Finwright.Geometry.Features;
using Finwright.Numerics;
using Finwright.Strength.Materials;

namespace Finwright.Strength.Joints;

/// <summary>What a bolt carries, and how hard it pulls when it is tightened. Estimates; the bolt maker's data go before them.</summary>
public static class ThreadStrength
{
    /// <summary>Torque over pull and diameter: 0.15 greased to 0.3 dry and seizing, 0.2 between (common practice, no source). Stainless on stainless without grease may lie above.</summary>
    public static Ranged TorqueCoefficient { get; } = new(0.2, 0.15, 0.3);

    /// <summary>Stress area of a thread, m².</summary>
    /// <param name="thread">The thread.</param>
    /// <remarks>ISO 898-1 (from memory): π/4 (d - 0.9382 P)².</remarks>
    public static double StressArea(MetricThread thread)
    {
        ArgumentNullException.ThrowIfNull(thread);
        double mean = thread.Diameter - 0.9382 * thread.Pitch;
        return Math.PI / 4 * mean * mean;
    }

    /// <summary>Tensile stress of a bolt under a pull, Pa, on its stress area; torsion from tightening adds up to a third while it lasts (from memory).</summary>
    /// <param name="thread">The thread.</param>
    /// <param name="pull">Pull, N, not negative.</param>
    public static double Stress(MetricThread thread, double pull) => Require.NotNegative(pull) / StressArea(thread);

    /// <summary>Pull of a tightened bolt, N: torque over coefficient and diameter.</summary>
    /// <param name="thread">The thread.</param>
    /// <param name="torque">Tightening torque, N·m, not negative.</param>
    public static Ranged Preload(MetricThread thread, double torque)
    {
        ArgumentNullException.ThrowIfNull(thread);
        Require.NotNegative(torque);
        double Pull(double coefficient) => torque / (coefficient * thread.Diameter);
        return new(Pull(TorqueCoefficient.Value), Pull(TorqueCoefficient.High), Pull(TorqueCoefficient.Low));
    }

    /// <summary>Torque that gives a pull, N·m.</summary>
    /// <param name="thread">The thread.</param>
    /// <param name="pull">Pull, N, not negative.</param>
    public static Ranged Torque(MetricThread thread, double pull)
    {
        ArgumentNullException.ThrowIfNull(thread);
        Require.NotNegative(pull);
        return TorqueCoefficient.Times(pull * thread.Diameter);
    }

    /// <summary>Pull at which the bolt begins to stretch for good, N.</summary>
    /// <param name="thread">The thread.</param>
    /// <param name="metal">Its metal.</param>
    public static Ranged YieldPull(MetricThread thread, Metal metal)
    {
        ArgumentNullException.ThrowIfNull(metal);
        return metal.Yield.Times(StressArea(thread));
    }
}
