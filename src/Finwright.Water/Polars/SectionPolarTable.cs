namespace Finwright.Water.Polars;

/// <summary>One section with one finish over Reynolds number and angle of attack: solved curves, made continuous.</summary>
/// <remarks>
/// Cubic pieces without overshoot over the angle and over the logarithm of the Reynolds number (Fritsch and Butland, 1984). Points that did
/// not converge are bridged when the gap is no wider than 3°, and the answer says so; beyond the last solved angle the law of
/// <see cref="StalledSection"/> holds; outside the Reynolds numbers of the table its nearest edge stands in. Immutable; safe for
/// use from several threads.
/// </remarks>
public sealed class SectionPolarTable : ISectionPolar
{
    /// <summary>Least that maximum lift may be multiplied by; more would be another section.</summary>
    public const double LeastLiftFactor = 0.7;

    // Far above the rounding of a logarithm, far below any difference that matters.
    private const double Rounding = 1e-9;

    private readonly PolarCurve[] _curves;
    private readonly double[] _logs;

    // Whether a curve between this one and the one before gave too few points.
    private readonly bool[] _missingBefore;

    /// <summary>Builds a table.</summary>
    /// <param name="curves">Curves of one section, Reynolds numbers rising.</param>
    /// <param name="maximumLiftFactor">
    /// What maximum lift is multiplied by, <see cref="LeastLiftFactor"/> to 1. Integral methods predict 5 to 10 % too much (from
    /// memory); 1 leaves the lift as solved. The lift slope near zero stays as it is.
    /// </param>
    /// <exception cref="ArgumentException">Reynolds numbers do not rise, or no curve has enough converged points; see <see cref="IsEnough"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The factor is out of range.</exception>
    public SectionPolarTable(IReadOnlyList<SectionCurve> curves, double maximumLiftFactor = 1)
    {
        ArgumentNullException.ThrowIfNull(curves);
        if (!(maximumLiftFactor >= LeastLiftFactor && maximumLiftFactor <= 1))
            throw new ArgumentOutOfRangeException(nameof(maximumLiftFactor), maximumLiftFactor, $"The factor of maximum lift must lie between {LeastLiftFactor} and 1.");
        for (int i = 0; i < curves.Count; i++)
            if (!(curves[i].Conditions.ReynoldsNumber > (i == 0 ? 0 : curves[i - 1].Conditions.ReynoldsNumber)))
                throw new ArgumentException($"Reynolds numbers must rise; curve {i} has {curves[i].Conditions.ReynoldsNumber}.", nameof(curves));
        (Curves, MaximumLiftFactor) = (curves, maximumLiftFactor);
        List<PolarCurve> made = [];
        List<double> logs = [];
        List<bool> missing = [];
        bool gap = false;
        foreach (SectionCurve curve in curves)
        {
            if (PolarCurve.Of(curve, maximumLiftFactor) is not { } whole)
            {
                gap = true;
                continue;
            }

            made.Add(whole);
            logs.Add(Math.Log(curve.Conditions.ReynoldsNumber));
            missing.Add(gap);
            gap = false;
        }

        if (made.Count == 0)
            throw new ArgumentException("No curve has enough converged points.", nameof(curves));
        (_curves, _logs, _missingBefore) = ([.. made], [.. logs], [.. missing]);
    }

    /// <summary>The curves as solved.</summary>
    public IReadOnlyList<SectionCurve> Curves { get; }

    /// <summary>What maximum lift was multiplied by; 1 for as solved.</summary>
    public double MaximumLiftFactor { get; }

    /// <summary>Least Reynolds number that can be read without <see cref="PolarOrigin.BeyondTable"/>.</summary>
    public double LeastReynoldsNumber => Math.Exp(_logs[0]);

    /// <summary>Greatest Reynolds number that can be read without <see cref="PolarOrigin.BeyondTable"/>.</summary>
    public double GreatestReynoldsNumber => Math.Exp(_logs[^1]);

    /// <summary>Whether the points of some curve are enough for a table.</summary>
    public static bool IsEnough(IReadOnlyList<SectionCurve> curves)
    {
        ArgumentNullException.ThrowIfNull(curves);
        return curves.Any(curve => PolarCurve.Of(curve, 1) is not null);
    }

    /// <inheritdoc/>
    /// <remarks>Beyond ±π/2, where only a search on its way can be, the forces there.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">The angle is not a number, or the Reynolds number not above 0.</exception>
    public SectionForces At(double angleOfAttack, double reynoldsNumber)
    {
        if (!double.IsFinite(angleOfAttack))
            throw new ArgumentOutOfRangeException(nameof(angleOfAttack), angleOfAttack, "The angle must be a number.");
        angleOfAttack = Math.Clamp(angleOfAttack, -Math.PI / 2, Math.PI / 2);
        Place place = PlaceOf(reynoldsNumber);
        SectionForces own = _curves[place.Low].At(angleOfAttack);
        if (place.Share <= 0)
            return own with { Origin = Worse(own.Origin, place.Origin) };
        SectionForces next = _curves[place.Low + 1].At(angleOfAttack);
        SectionForces before = place.Low > 0 ? _curves[place.Low - 1].At(angleOfAttack) : own;
        SectionForces after = place.Low + 2 < _curves.Length ? _curves[place.Low + 2].At(angleOfAttack) : next;
        return new(
            Mix(place, before.Cl, own.Cl, next.Cl, after.Cl),
            Mix(place, before.Cd, own.Cd, next.Cd, after.Cd),
            Mix(place, before.Cm, own.Cm, next.Cm, after.Cm),
            Mix(place, before.MinimumCp, own.MinimumCp, next.MinimumCp, after.MinimumCp),
            Mix(place, before.Separation, own.Separation, next.Separation, after.Separation),
            Worse(Worse(own.Origin, next.Origin), place.Origin));
    }

    /// <inheritdoc/>
    /// <exception cref="ArgumentOutOfRangeException">The Reynolds number is not above 0.</exception>
    public SectionStall StallAt(double reynoldsNumber, bool positive)
    {
        Place place = PlaceOf(reynoldsNumber);
        SectionStall own = Peak(place.Low);
        if (place.Share <= 0)
            return own;
        SectionStall next = Peak(place.Low + 1);
        SectionStall before = place.Low > 0 ? Peak(place.Low - 1) : own, after = place.Low + 2 < _curves.Length ? Peak(place.Low + 2) : next;
        return new(
            Mix(place, before.AngleOfAttack, own.AngleOfAttack, next.AngleOfAttack, after.AngleOfAttack),
            Mix(place, before.Cl, own.Cl, next.Cl, after.Cl),
            own.IsReached && next.IsReached);

        SectionStall Peak(int i) => positive ? _curves[i].Up : _curves[i].Down;
    }

    private static PolarOrigin Worse(PolarOrigin a, PolarOrigin b) => a > b ? a : b;

    private Place PlaceOf(double reynoldsNumber)
    {
        if (!(reynoldsNumber > 0 && double.IsFinite(reynoldsNumber)))
            throw new ArgumentOutOfRangeException(nameof(reynoldsNumber), reynoldsNumber, "The Reynolds number must be above 0.");
        double log = Math.Log(reynoldsNumber);
        int last = _logs.Length - 1;
        if (log <= _logs[0])
            return new(0, 0, log < _logs[0] - Rounding ? PolarOrigin.BeyondTable : PolarOrigin.Solved);
        if (log >= _logs[last])
            return new(last, 0, log > _logs[last] + Rounding ? PolarOrigin.BeyondTable : PolarOrigin.Solved);
        int low = 0;
        while (_logs[low + 1] <= log)
            low++;
        double share = (log - _logs[low]) / (_logs[low + 1] - _logs[low]);
        return new(low, share, _missingBefore[low + 1] && share > 0 ? PolarOrigin.Bridged : PolarOrigin.Solved);
    }

    /// <summary>Cubic piece over the logarithm of the Reynolds number through four curves; at the ends of the table the missing neighbour is not used.</summary>
    private double Mix(in Place place, double before, double own, double next, double after)
    {
        int k = place.Low;
        double width = _logs[k + 1] - _logs[k], slope = (next - own) / width;
        bool hasBefore = k > 0, hasAfter = k + 2 < _logs.Length;
        double widthBefore = hasBefore ? _logs[k] - _logs[k - 1] : 0, widthAfter = hasAfter ? _logs[k + 2] - _logs[k + 1] : 0;
        double slopeBefore = hasBefore ? (own - before) / widthBefore : 0, slopeAfter = hasAfter ? (after - next) / widthAfter : 0;
        double first = hasBefore ? MonotoneCubic.Inner(widthBefore, width, slopeBefore, slope) : hasAfter ? MonotoneCubic.End(width, widthAfter, slope, slopeAfter) : slope;
        double second = hasAfter ? MonotoneCubic.Inner(width, widthAfter, slope, slopeAfter) : hasBefore ? MonotoneCubic.End(width, widthBefore, slope, slopeBefore) : slope;
        return MonotoneCubic.Value(place.Share, width, own, next, first, second);
    }

    private readonly record struct Place(int Low, double Share, PolarOrigin Origin);
}
