using Finwright.Geometry.Sections;
using Finwright.Water.Polars;
using Finwright.Water.Sections;

namespace Finwright.Water.Tests.Polars;

/// <summary>A section with forces in closed form: lift rises by 2π, bends over and peaks at a known angle that grows with the Reynolds number.</summary>
internal sealed class StalledThinSection
{
    private const double Slope = 2 * Math.PI;

    /// <summary>Points that are reported as not converged.</summary>
    public Func<double, double, bool> Fails { get; init; } = (_, _) => false;

    /// <summary>Angle without lift, radians.</summary>
    public double ZeroLift { get; init; }

    /// <summary>Angle of greatest lift above the angle without lift, radians.</summary>
    public static double Stall(double reynoldsNumber) => 0.2 + 0.02 * Math.Log10(reynoldsNumber / 1e6);

    /// <summary>Lift: s - (s / s₀)³ s / 4 times the slope has its peak at s₀.</summary>
    public static double Lift(double angle, double reynoldsNumber)
    {
        double stall = Stall(reynoldsNumber), ratio = Math.Abs(angle) / stall;
        return Slope * angle * (1 - ratio * ratio * ratio / 4);
    }

    public static double Drag(double angle, double reynoldsNumber) => 0.006 * Math.Pow(reynoldsNumber / 1e6, -0.2) + 0.4 * angle * angle;

    public SectionCurve Solve(Section section, SectionConditions conditions, IReadOnlyList<double> angles, CancellationToken cancellation)
    {
        cancellation.ThrowIfCancellationRequested();
        double re = conditions.ReynoldsNumber;
        return new() { Conditions = conditions, Points = [.. angles.Select(angle => Point(angle, re))] };
    }

    public SectionPoint Point(double angle, double re) => Fails(angle, re)
        ? new() { AngleOfAttack = angle, Converged = false }
        : new()
        {
            AngleOfAttack = angle,
            Converged = true,
            Cl = Lift(angle - ZeroLift, re),
            Cd = Drag(angle, re),
            CdFriction = 0.005,
            Cm = -0.01 * angle,
            TransitionUpper = Math.Clamp(0.5 - 2 * angle, 0.01, 1),
            TransitionLower = Math.Clamp(0.5 + 2 * angle, 0.01, 1),
            SeparationUpper = Math.Clamp(1.2 - 4 * Math.Max(angle, 0), 0, 1),
            SeparationLower = Math.Clamp(1.2 + 4 * Math.Min(angle, 0), 0, 1),
            MinimumCp = -0.4 - 30 * angle * angle,
            MinimumCpAt = 0.05,
        };

    public SectionCurve Curve(double re, bool half = false) =>
        Solve(new FourDigitSection(0, 0, 10), new() { ReynoldsNumber = re }, PolarGrid.Angles(half), CancellationToken.None);
}
