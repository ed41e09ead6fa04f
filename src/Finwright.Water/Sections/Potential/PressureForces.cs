namespace Finwright.Water.Sections.Potential;

/// <summary>Forces from pressures on a section's panels, per chord and dynamic pressure.</summary>
/// <param name="Cl">Lift coefficient.</param>
/// <param name="Cd">Drag coefficient of the pressures.</param>
/// <param name="Cm">Moment about the quarter chord, positive nose up.</param>
internal readonly record struct PressureForces(double Cl, double Cd, double Cm)
{
    private const double QuarterChord = 0.25;

    /// <summary>Integrates pressures that run linearly along each panel.</summary>
    /// <param name="panels">Panels of the section.</param>
    /// <param name="cp">Pressure coefficient at each node.</param>
    /// <param name="angleOfAttack">Radians.</param>
    public static PressureForces Of(SectionPanels panels, ReadOnlySpan<double> cp, double angleOfAttack)
    {
        double alongChord = 0, acrossChord = 0, moment = 0;
        int n = panels.Count;
        for (int k = 0; k < n; k++)
        {
            // The last turn closes the outline over the trailing edge.
            int next = (k + 1) % n;
            double dx = panels.X[next] - panels.X[k], dy = panels.Y[next] - panels.Y[k];
            double mean = 0.5 * (cp[k] + cp[next]), change = (cp[next] - cp[k]) / 12;
            double x = 0.5 * (panels.X[k] + panels.X[next]) - QuarterChord, y = 0.5 * (panels.Y[k] + panels.Y[next]);
            // Pressure pushes inward, against the outer normal (dy, -dx) of an outline traversed with its inside on the left.
            alongChord -= mean * dy;
            acrossChord += mean * dx;
            moment -= (mean * x + change * dx) * dx + (mean * y + change * dy) * dy;
        }

        double cosine = Math.Cos(angleOfAttack), sine = Math.Sin(angleOfAttack);
        return new(acrossChord * cosine - alongChord * sine, alongChord * cosine + acrossChord * sine, moment);
    }
}
