namespace Finwright.Geometry.Sections;

/// <summary>A section as class function times shape function: a handful of coefficients, smooth everywhere.</summary>
/// <remarks>
/// Kulfan, 2008, "Universal parametric geometry representation method", Journal of Aircraft 45(1), 142. Half thickness
/// √x (1-x) Σ Aᵢ Bᵢ,ₙ(x) + x te/2 + L x (1-x)^(n+1/2), the last being an optional term that loosens the nose. Where the paper
/// gives each side its own coefficients, the camber line here is x (1-x) Σ Cⱼ Bⱼ,ₘ(x): both sides then share one nose radius
/// and the camber slope stays finite. Thickness is laid along y.
/// </remarks>
public sealed class ClassShapeSection : Section
{
    private readonly double[] _thickness, _camber, _camberRate;
    private readonly double _trailingEdge, _nose;

    /// <summary>A section by its coefficients.</summary>
    /// <param name="name">Name.</param>
    /// <param name="thickness">A₀ to Aₙ, at least one; the half thickness they give must be positive inside the chord.</param>
    /// <param name="camber">C₀ to Cₘ; empty for a symmetric section.</param>
    /// <param name="trailingEdge">Thickness of the trailing edge, chords, not negative.</param>
    /// <param name="nose">L, the factor of the nose term; 0 for none.</param>
    /// <exception cref="ArgumentException">There is no thickness coefficient, or a number is not finite, or the trailing edge is negative.</exception>
    public ClassShapeSection(string name, IReadOnlyList<double> thickness, IReadOnlyList<double> camber, double trailingEdge, double nose = 0)
    {
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(thickness);
        ArgumentNullException.ThrowIfNull(camber);
        if (thickness.Count == 0)
            throw new ArgumentException("A class-shape section needs at least one thickness coefficient.", nameof(thickness));
        if (!thickness.All(double.IsFinite) || !camber.All(double.IsFinite) || !double.IsFinite(nose))
            throw new ArgumentException("A coefficient is not finite.", nameof(thickness));
        if (!(trailingEdge >= 0 && double.IsFinite(trailingEdge)))
            throw new ArgumentOutOfRangeException(nameof(trailingEdge), trailingEdge, "The trailing edge cannot be thinner than nothing.");
        Name = name;
        _thickness = [.. thickness];
        _camber = [.. camber];
        _camberRate = Bernstein.Derivative(_camber);
        _trailingEdge = trailingEdge;
        _nose = nose;
        ThicknessRatio = 2 * ChordPeak.Of(HalfThickness).Value;
        if (_camber.Length > 0)
        {
            (_, double high) = ChordPeak.Of(Camber);
            (_, double low) = ChordPeak.Of(x => -Camber(x));
            MaximumCamber = high >= low ? high : -low;
        }
    }

    /// <inheritdoc/>
    public override string Name { get; }

    /// <inheritdoc/>
    public override double ThicknessRatio { get; }

    /// <inheritdoc/>
    public override double MaximumCamber { get; }

    /// <summary>A₀ to Aₙ.</summary>
    public IReadOnlyList<double> ThicknessCoefficients => _thickness;

    /// <summary>C₀ to Cₘ; empty for a symmetric section.</summary>
    public IReadOnlyList<double> CamberCoefficients => _camber;

    /// <summary>L, the factor of the nose term.</summary>
    public double NoseCoefficient => _nose;

    /// <inheritdoc/>
    public override double HalfThickness(double x)
    {
        x = Math.Clamp(x, 0, 1);
        double half = Math.Sqrt(x) * (1 - x) * Bernstein.Value(_thickness, x) + x * _trailingEdge / 2;
        return _nose is 0 ? half : half + _nose * NoseTerm(x, _thickness.Length - 1);
    }

    /// <inheritdoc/>
    public override double Camber(double x)
    {
        x = Math.Clamp(x, 0, 1);
        return x * (1 - x) * Bernstein.Value(_camber, x);
    }

    /// <inheritdoc/>
    public override double CamberSlope(double x)
    {
        x = Math.Clamp(x, 0, 1);
        return (1 - 2 * x) * Bernstein.Value(_camber, x) + x * (1 - x) * Bernstein.Value(_camberRate, x);
    }

    /// <summary>The nose term for unit factor.</summary>
    internal static double NoseTerm(double x, int order) => x * Math.Pow(1 - x, order + 0.5);
}
