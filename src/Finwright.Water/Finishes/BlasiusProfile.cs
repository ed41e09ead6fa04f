namespace Finwright.Water.Finishes;

/// <summary>Speed in the laminar layer of a flat plate: f''' + f f'' = 0.</summary>
internal static class BlasiusProfile
{
    // Wall shear of the profile (Blasius; Howarth, 1938). The table ends where the profile has reached the stream to ten digits.
    private const double WallShear = 0.469599988;
    private const double Step = 0.01, End = 7;

    private static readonly double[] Speeds = Integrate();

    /// <summary>Speed over that of the stream.</summary>
    /// <param name="eta">Height y √(U / 2 ν x), 0 or more.</param>
    public static double Speed(double eta)
    {
        double place = eta / Step;
        if (place >= Speeds.Length - 1)
            return 1;
        int i = (int)place;
        return Speeds[i] + (place - i) * (Speeds[i + 1] - Speeds[i]); // curvature times step² / 8: below 5e-6
    }

    private static double[] Integrate()
    {
        int n = (int)Math.Round(End / Step);
        double[] speeds = new double[n + 1];
        double f = 0, g = 0, h = WallShear;
        for (int i = 1; i <= n; i++)
        {
            // Classical Runge-Kutta of fourth order for f' = g, g' = h, h' = -f h.
            (double g1, double h1, double k1) = (g, h, -f * h);
            (double g2, double h2) = (g + Step / 2 * h1, h + Step / 2 * k1);
            double k2 = -(f + Step / 2 * g1) * h2;
            (double g3, double h3) = (g + Step / 2 * h2, h + Step / 2 * k2);
            double k3 = -(f + Step / 2 * g2) * h3;
            (double g4, double h4) = (g + Step * h3, h + Step * k3);
            double k4 = -(f + Step * g3) * h4;
            f += Step / 6 * (g1 + 2 * g2 + 2 * g3 + g4);
            g += Step / 6 * (h1 + 2 * h2 + 2 * h3 + h4);
            h += Step / 6 * (k1 + 2 * k2 + 2 * k3 + k4);
            speeds[i] = g;
        }

        return speeds;
    }
}
