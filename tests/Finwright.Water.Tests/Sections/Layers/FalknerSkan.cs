namespace Finwright.Water.Tests.Sections.Layers;

/// <summary>
/// Exact similar layers: f''' + f f'' + β (1 - f'²) = 0, edge speed ~ x^m with m = β / (2 - β) (Falkner and Skan, 1931, Phil. Mag. 12).
/// Solved by shooting with a fourth-order step.
/// </summary>
internal sealed class FalknerSkan
{
    private const int Steps = 4000;
    private const double Edge = 9;

    public FalknerSkan(double beta)
    {
        Beta = beta;
        // The profile that first reaches the edge speed without passing it lies between a wall slope that falls short and one that overshoots.
        double low = 0, high = 2;
        for (int i = 0; i < 60; i++)
        {
            double middle = 0.5 * (low + high);
            if (Integrate(middle).Overshoots)
                high = middle;
            else
                low = middle;
        }

        WallSlope = 0.5 * (low + high);
        Profile p = Integrate(WallSlope);
        Shape = p.Displacement / p.Momentum;
        EnergyShape = p.Energy / p.Momentum;
        HalfFrictionTimesReynolds = WallSlope * p.Momentum;
        Dissipation = 2 * p.Dissipation * p.Momentum / EnergyShape;
        MomentumScale = p.Momentum;
    }

    public double Beta { get; }

    public double M => Beta / (2 - Beta);

    public double WallSlope { get; }

    public double Shape { get; }

    public double EnergyShape { get; }

    /// <summary>C_f/2 times the momentum Reynolds number.</summary>
    public double HalfFrictionTimesReynolds { get; }

    /// <summary>2 C_D / H* times the momentum Reynolds number.</summary>
    public double Dissipation { get; }

    /// <summary>θ in the similarity coordinate; θ = this · √(2 ν x / ((m + 1) U)).</summary>
    public double MomentumScale { get; }

    private Profile Integrate(double wall)
    {
        double h = Edge / Steps, f = 0, u = 0, s = wall;
        Profile sum = default;
        for (int i = 0; i < Steps; i++)
        {
            (double f1, double u1, double s1) = Slope(f, u, s);
            (double f2, double u2, double s2) = Slope(f + 0.5 * h * f1, u + 0.5 * h * u1, s + 0.5 * h * s1);
            (double f3, double u3, double s3) = Slope(f + 0.5 * h * f2, u + 0.5 * h * u2, s + 0.5 * h * s2);
            (double f4, double u4, double s4) = Slope(f + h * f3, u + h * u3, s + h * s3);
            double nextU = u + h / 6 * (u1 + 2 * u2 + 2 * u3 + u4), nextS = s + h / 6 * (s1 + 2 * s2 + 2 * s3 + s4);
            double middle = u + 0.5 * h * u2, middleS = s + 0.5 * h * s2;
            sum = sum.Plus(h / 6, u, s).Plus(4 * h / 6, middle, middleS).Plus(h / 6, nextU, nextS);
            f += h / 6 * (f1 + 2 * f2 + 2 * f3 + f4);
            (u, s) = (nextU, nextS);
            if (u > 1 + 1e-12)
                return sum with { Overshoots = true };
            if (s < 0)
                break;
        }

        return sum;
    }

    private (double F, double U, double S) Slope(double f, double u, double s) => (u, s, -f * s - Beta * (1 - u * u));

    private readonly record struct Profile(double Displacement, double Momentum, double Energy, double Dissipation, bool Overshoots)
    {
        public Profile Plus(double weight, double u, double s) => this with
        {
            Displacement = Displacement + weight * (1 - u),
            Momentum = Momentum + weight * u * (1 - u),
            Energy = Energy + weight * u * (1 - u * u),
            Dissipation = Dissipation + weight * s * s,
        };
    }
}
