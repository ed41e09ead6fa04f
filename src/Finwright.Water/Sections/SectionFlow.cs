using Finwright.Geometry.Sections;
using Finwright.Water.Sections.Coupling;
using Finwright.Water.Sections.Potential;

namespace Finwright.Water.Sections;

/// <summary>How finely a section is computed.</summary>
/// <param name="Fineness">Multiplies the number of panels; 1 is the usual number, about 105.</param>
public sealed record SectionFlowOptions(double Fineness = 1);

/// <summary>
/// The flow past one section with its boundary layers, wake, transition and separation: lift, drag and moment at an angle of attack.
/// </summary>
/// <remarks>
/// Linear vortex panels and two-equation integral layers, solved together (Drela and Giles, 1987, AIAA J. 25(10)). Valid for Reynolds numbers of
/// <see cref="LeastReynolds"/> to <see cref="GreatestReynolds"/>, angles within <see cref="GreatestAngle"/> and thickness ratios of
/// <see cref="LeastThickness"/> to <see cref="GreatestThickness"/>. Past stall the flow is neither steady nor two-dimensional: answers there are rough.
/// Not for use from several threads at once.
/// </remarks>
public sealed class SectionFlow
{
    /// <summary>Lowest Reynolds number.</summary>
    public const double LeastReynolds = 5e4;

    /// <summary>Highest Reynolds number: beyond it the fits were never held against measurements here.</summary>
    public const double GreatestReynolds = 1e7;

    /// <summary>Greatest angle of attack, radians (20 degrees).</summary>
    public const double GreatestAngle = 20 * Math.PI / 180 + 1e-9;

    /// <summary>Least thickness ratio.</summary>
    public const double LeastThickness = 0.04;

    /// <summary>Greatest thickness ratio.</summary>
    public const double GreatestThickness = 0.20;

    private const double ContinuationStep = 1.0 * Math.PI / 180;
    private const double Detour = 0.3 * Math.PI / 180;
    private const double ThicknessRounding = 1e-3;

    private readonly CoupledFlow _coupled;
    private readonly SectionPanels _panels;

    /// <summary>Prepares a section.</summary>
    /// <param name="section">The section.</param>
    /// <param name="options">Fineness; null for the usual one.</param>
    /// <exception cref="ArgumentOutOfRangeException">The thickness ratio is outside the range of the method.</exception>
    /// <exception cref="ArgumentException">The flow past the outline cannot be solved.</exception>
    public SectionFlow(Section section, SectionFlowOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(section);
        if (!(section.ThicknessRatio >= LeastThickness - ThicknessRounding && section.ThicknessRatio <= GreatestThickness + ThicknessRounding))
            throw new ArgumentOutOfRangeException(nameof(section), section.ThicknessRatio, $"The thickness ratio must lie between {LeastThickness} and {GreatestThickness}.");
        _panels = SectionPanels.Of(section, options?.Fineness ?? 1);
        _coupled = new CoupledFlow(new PotentialFlow(_panels));
    }

    /// <summary>Solves one angle, starting afresh.</summary>
    /// <param name="angleOfAttack">Radians, within <see cref="GreatestAngle"/>.</param>
    /// <param name="conditions">Stream and surface.</param>
    /// <param name="withSurface">Whether the answer holds the distributions along the surface.</param>
    /// <exception cref="ArgumentOutOfRangeException">Angle, Reynolds number or n is outside the range of the method.</exception>
    public SectionPoint Solve(double angleOfAttack, SectionConditions conditions, bool withSurface = false)
    {
        Check(angleOfAttack, conditions);
        if (Mirrors(angleOfAttack))
            return Mirrored(Solve(-angleOfAttack, Swapped(conditions), withSurface));
        if (Reach(angleOfAttack, conditions, null))
            return Answer(angleOfAttack, conditions, withSurface);

        // Work up from where the flow is easy, in steps; one that cannot be solved is stepped over.
        int steps = Math.Max(1, (int)Math.Ceiling(Math.Abs(angleOfAttack) / ContinuationStep));
        SolvedFlow? reached = null;
        bool solved = false;
        for (int i = 0; i <= steps; i++)
        {
            double angle = angleOfAttack * i / steps;
            solved = (reached is not null && _coupled.Solve(angle, conditions, reached)) || (i < steps && _coupled.Solve(angle, conditions, null));
            reached = solved ? _coupled.Keep() : reached;
        }

        return solved ? Answer(angleOfAttack, conditions, withSurface) : Unsolved(angleOfAttack);
    }

    /// <summary>Solves many angles, each from its neighbour, from the one nearest zero outward on both sides.</summary>
    /// <param name="angles">Radians, in any order.</param>
    /// <param name="conditions">Stream and surface.</param>
    /// <param name="withSurface">Whether the answers hold the distributions along the surface.</param>
    /// <param name="cancellation">Stops between angles.</param>
    /// <returns>One answer for each angle, in the order asked. The same list always gives the same answers.</returns>
    public IReadOnlyList<SectionPoint> Sweep(IReadOnlyList<double> angles, SectionConditions conditions, bool withSurface = false, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(angles);
        foreach (double angle in angles)
            Check(angle, conditions);
        SectionPoint[] answers = new SectionPoint[angles.Count];
        int[] outward = [.. Enumerable.Range(0, angles.Count).OrderBy(i => Math.Abs(angles[i])).ThenBy(i => angles[i])];
        foreach (bool positive in (ReadOnlySpan<bool>)[true, false])
        {
            SolvedFlow? near = null;
            foreach (int i in outward)
            {
                double angle = angles[i];
                if (positive != angle >= 0)
                    continue;
                cancellation.ThrowIfCancellationRequested();
                if (Mirrors(angle))
                {
                    int twin = Array.FindIndex(outward, j => angles[j] == -angle && answers[j] is not null);
                    answers[i] = twin >= 0 && conditions.Upper == conditions.Lower ? Mirrored(answers[outward[twin]]) : Solve(angle, conditions, withSurface);
                    continue;
                }

                bool solved = Reach(angle, conditions, near);
                answers[i] = solved ? Answer(angle, conditions, withSurface) : Unsolved(angle);
                near = solved ? _coupled.Keep() : near;
            }
        }

        return answers;
    }

    /// <summary>Solves an angle afresh, from a solution near it, or by a detour over an angle beside it.</summary>
    private bool Reach(double angle, SectionConditions conditions, SolvedFlow? near) =>
        _coupled.Solve(angle, conditions, null)
        || (near is not null && _coupled.Solve(angle, conditions, near))
        || (_coupled.Solve(angle + Detour, conditions, null) && _coupled.Solve(angle, conditions, _coupled.Keep()))
        || (_coupled.Solve(angle - Detour, conditions, null) && _coupled.Solve(angle, conditions, _coupled.Keep()));

    private static void Check(double angle, SectionConditions conditions)
    {
        ArgumentNullException.ThrowIfNull(conditions);
        if (!(Math.Abs(angle) <= GreatestAngle))
            throw new ArgumentOutOfRangeException(nameof(angle), angle, "The angle of attack must lie within 20 degrees of the stream.");
        if (!(conditions.ReynoldsNumber is >= LeastReynolds and <= GreatestReynolds))
            throw new ArgumentOutOfRangeException(nameof(conditions), conditions.ReynoldsNumber, $"The Reynolds number must lie between {LeastReynolds} and {GreatestReynolds}.");
        if (!(conditions.CriticalAmplification is >= 1 and <= 16))
            throw new ArgumentOutOfRangeException(nameof(conditions), conditions.CriticalAmplification, "The critical amplification n must lie between 1 and 16.");
    }

    /// <summary>A section of equal sides at a negative angle is the mirror of itself at the positive one, exactly.</summary>
    private bool Mirrors(double angle) => _panels.IsSymmetric && angle < 0;

    private static SectionConditions Swapped(SectionConditions conditions) => conditions with { Upper = conditions.Lower, Lower = conditions.Upper };

    private static SectionPoint Unsolved(double angle) => new() { AngleOfAttack = angle, Converged = false };

    private static SectionPoint Mirrored(SectionPoint point) => point with
    {
        AngleOfAttack = -point.AngleOfAttack,
        Cl = -point.Cl,
        Cm = -point.Cm,
        TransitionUpper = point.TransitionLower,
        TransitionLower = point.TransitionUpper,
        SeparationUpper = point.SeparationLower,
        SeparationLower = point.SeparationUpper,
        Surface = point.Surface is SectionSurface s
            ? new([.. s.X.Reverse()], [.. s.Y.Reverse().Select(y => -y)], [.. s.Cp.Reverse()], [.. s.Cf.Reverse()], [.. s.DisplacementThickness.Reverse()], [.. s.MomentumThickness.Reverse()])
            : null,
    };

    private SectionPoint Answer(double angle, SectionConditions conditions, bool withSurface)
    {
        int nodes = _panels.Count;
        double[] cp = new double[nodes];
        int lowest = 0;
        for (int i = 0; i < nodes; i++)
        {
            cp[i] = 1 - _coupled.Stations.Speed[i] * _coupled.Stations.Speed[i];
            if (cp[i] < cp[lowest])
                lowest = i;
        }

        PressureForces forces = PressureForces.Of(_panels, cp, angle);
        bool still = angle is 0 && _panels.IsSymmetric && conditions.Upper == conditions.Lower;
        return new SectionPoint
        {
            AngleOfAttack = angle,
            Converged = true,
            IsPastNoseStall = NoseStall.IsPast(cp[lowest], _panels.X[lowest], conditions.ReynoldsNumber),
            Iterations = _coupled.Steps,
            // Both sides of a symmetric section along the stream are the same flow; rounding must not say otherwise.
            Cl = still ? 0 : forces.Cl,
            Cm = still ? 0 : forces.Cm,
            Cd = WakeDrag(),
            CdFriction = FrictionDrag(angle),
            TransitionUpper = PlaceAt(+1, _coupled.Residuals.TransitionUpper),
            TransitionLower = PlaceAt(-1, _coupled.Residuals.TransitionLower),
            SeparationUpper = Separation(+1),
            SeparationLower = Separation(-1),
            MinimumCp = cp[lowest],
            MinimumCpAt = _panels.X[lowest],
            Surface = withSurface ? SurfaceOf(cp) : null,
        };
    }

    /// <summary>Drag from the momentum lost in the wake, carried to far downstream (Squire and Young, 1938, ARC R&amp;M 1838).</summary>
    private double WakeDrag()
    {
        LayerStations s = _coupled.Stations;
        int last = s.Count - 1;
        double shape = s.Displacement(last) / s.Momentum[last];
        return 2 * s.Momentum[last] * Math.Pow(s.Speed[last], 0.5 * (shape + 5));
    }

    private double FrictionDrag(double angle)
    {
        double sum = 0, cosine = Math.Cos(angle), sine = Math.Sin(angle);
        for (int k = 0; k + 1 < _panels.Count; k++)
        {
            double along = (_panels.X[k + 1] - _panels.X[k]) * cosine + (_panels.Y[k + 1] - _panels.Y[k]) * sine;
            // The stream runs against the order of the nodes on the upper side.
            sum += 0.5 * (SignedFriction(k) + SignedFriction(k + 1)) * along;
        }

        return sum;
    }

    private double SignedFriction(int node) =>
        (node <= _coupled.Sides.LastUpper ? -1 : 1) * _coupled.Residuals.Friction[node] * _coupled.Stations.Speed[node] * _coupled.Stations.Speed[node];

    /// <summary>x/c at a length from the stagnation point.</summary>
    private double PlaceAt(int side, double length)
    {
        Sides sides = _coupled.Sides;
        int count = sides.CountOf(side);
        for (int order = 1; order < count; order++)
        {
            int a = sides.Station(side, order - 1), b = sides.Station(side, order);
            if (length >= sides.Length[b])
                continue;
            double share = (length - sides.Length[a]) / (sides.Length[b] - sides.Length[a]);
            return Math.Clamp(_panels.X[a] + share * (_panels.X[b] - _panels.X[a]), 0, 1);
        }

        return 1;
    }

    private double Separation(int side)
    {
        Sides sides = _coupled.Sides;
        double place = 1;
        double[] friction = _coupled.Residuals.Friction;
        for (int order = sides.CountOf(side) - 1; order > 0; order--)
        {
            int station = sides.Station(side, order), before = sides.Station(side, order - 1);
            if (friction[station] >= 0)
                return place;
            double share = friction[before] > 0 ? friction[before] / (friction[before] - friction[station]) : 0;
            place = Math.Clamp(_panels.X[before] + share * (_panels.X[station] - _panels.X[before]), 0, 1);
        }

        return place;
    }

    private SectionSurface SurfaceOf(double[] cp)
    {
        LayerStations s = _coupled.Stations;
        int n = _panels.Count;
        return new(
            [.. _panels.X],
            [.. _panels.Y],
            cp,
            [.. Enumerable.Range(0, n).Select(i => _coupled.Residuals.Friction[i] * s.Speed[i] * s.Speed[i])],
            [.. Enumerable.Range(0, n).Select(s.Displacement)],
            [.. Enumerable.Range(0, n).Select(i => s.Momentum[i])]);
    }
}
