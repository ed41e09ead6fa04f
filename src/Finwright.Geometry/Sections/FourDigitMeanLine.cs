namespace Finwright.Geometry.Sections;

/// <summary>The mean line of the four-digit sections: two parabolas that meet, level, at the place of greatest camber.</summary>
/// <remarks>
/// Jacobs, Ward and Pinkerton, 1933, "The characteristics of 78 related airfoil sections from tests in the
/// variable-density wind tunnel", NACA TR-460. The slope is continuous, the curvature jumps at <see cref="Place"/>.
/// </remarks>
internal readonly record struct FourDigitMeanLine
{
    /// <summary>A mean line by its highest point.</summary>
    /// <param name="maximum">Greatest camber over chord, signed.</param>
    /// <param name="place">Where it is, chords from the nose, inside 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The place is not inside the chord, or the camber is not finite.</exception>
    public FourDigitMeanLine(double maximum, double place)
    {
        if (!double.IsFinite(maximum))
            throw new ArgumentOutOfRangeException(nameof(maximum), maximum, "The camber must be finite.");
        if (!(place > 0 && place < 1))
            throw new ArgumentOutOfRangeException(nameof(place), place, "The greatest camber must lie inside the chord.");
        Maximum = maximum;
        Place = place;
    }

    /// <summary>Greatest camber over chord, signed.</summary>
    public double Maximum { get; }

    /// <summary>Where the greatest camber is, chords from the nose.</summary>
    public double Place { get; }

    /// <summary>Camber at x, chords.</summary>
    public double Camber(double x) =>
        x < Place
            ? Maximum / (Place * Place) * x * (2 * Place - x)
            : Maximum / ((1 - Place) * (1 - Place)) * (1 - x) * (1 - 2 * Place + x);

    /// <summary>Slope at x.</summary>
    public double Slope(double x)
    {
        double arm = x < Place ? Place : 1 - Place;
        return 2 * Maximum / (arm * arm) * (Place - x);
    }
}
