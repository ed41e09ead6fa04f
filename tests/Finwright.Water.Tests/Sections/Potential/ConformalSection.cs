using System.Numerics;
using Finwright.Geometry;

namespace Finwright.Water.Tests.Sections.Potential;

/// <summary>
/// A Karman-Trefftz section with its exact flow: the flow past a circle through (1, 0), mapped (Milne-Thomson, 1973, Theoretical
/// Aerodynamics, ch. 6 and 7). A trailing edge angle of zero gives the Joukowski section.
/// </summary>
internal sealed class ConformalSection
{
    private readonly Complex _centre;
    private readonly double _radius, _exponent, _scale, _shift;

    public ConformalSection(double centreX, double centreY, double edgeAngle)
    {
        _centre = new(centreX, centreY);
        _radius = Complex.Abs(1 - _centre);
        _exponent = 2 - edgeAngle / Math.PI;
        (_scale, _shift) = (1, 0);
        double left = double.MaxValue, right = double.MinValue;
        for (int i = 0; i < 200_000; i++)
        {
            double x = Map(Circle(2 * Math.PI * i / 200_000)).Real;
            (left, right) = (Math.Min(left, x), Math.Max(right, x));
        }

        (_scale, _shift) = (right - left, left);
    }

    /// <summary>Chord before it is made 1.</summary>
    public double Chord => _scale;

    /// <summary>Exact lift coefficient.</summary>
    public double Cl(double alpha) => 8 * Math.PI * _radius / _scale * Math.Sin(alpha + Beta);

    /// <summary>Exact pressure coefficient at a place of the circle.</summary>
    public double Cp(double theta, double alpha)
    {
        Complex zeta = Circle(theta), s = zeta - _centre;
        Complex turn = Complex.Exp(new(0, -alpha));
        Complex velocity = turn - Complex.Conjugate(turn) * _radius * _radius / (s * s)
            + new Complex(0, 2 * _radius * Math.Sin(alpha + Beta)) / s;
        double q = Complex.Abs(velocity / Slope(zeta));
        return 1 - q * q;
    }

    /// <summary>Point of the section of chord 1 at a place of the circle; 0 is the trailing edge.</summary>
    public Point2 Point(double theta)
    {
        Complex z = Map(Circle(theta));
        return new((z.Real - _shift) / _scale, z.Imaginary / _scale);
    }

    /// <summary>Place of the circle for a node of a set spaced closer at both edges, upper trailing edge first.</summary>
    public static double Theta(int i, int panels) => 2 * Math.PI * i / panels;

    public Point2[] Nodes(int panels) => [.. Enumerable.Range(0, panels + 1).Select(i => Point(Theta(i, panels)))];

    private double Beta => Math.Asin(_centre.Imaginary / _radius);

    private Complex Circle(double theta) => _centre + _radius * Complex.Exp(new(0, theta - Beta));

    private Complex Map(Complex zeta)
    {
        Complex a = Complex.Pow(zeta + 1, _exponent), b = Complex.Pow(zeta - 1, _exponent);
        return zeta == 1 ? _exponent : _exponent * (a + b) / (a - b);
    }

    private Complex Slope(Complex zeta)
    {
        Complex a = Complex.Pow(zeta + 1, _exponent), b = Complex.Pow(zeta - 1, _exponent);
        return 4 * _exponent * _exponent * Complex.Pow(zeta * zeta - 1, _exponent - 1) / ((a - b) * (a - b));
    }
}
