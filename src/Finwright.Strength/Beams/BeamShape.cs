using Finwright.Numerics;

namespace Finwright.Strength.Beams;

/// <summary>The beam as its loads have bent it.</summary>
public sealed class BeamShape
{
    private readonly double[] _depths, _axis, _deflection, _turnX, _turnY, _shearSlope;

    internal BeamShape(double[] depths, double[] axis, double[] deflection, double[] turnX, double[] turnY, double[] shearSlope, double rootForce, double rootMomentX, double rootMomentY)
    {
        (_depths, _axis, _deflection, _turnX, _turnY, _shearSlope) = (depths, axis, deflection, turnX, turnY, shearSlope);
        (RootForce, RootMomentX, RootMomentY) = (rootForce, rootMomentX, rootMomentY);
    }

    /// <summary>Depths of stations and loads, m.</summary>
    public IReadOnlyList<double> Depths => _depths;

    /// <summary>Deflection of the line of shear centres at these depths, m, to starboard.</summary>
    public IReadOnlyList<double> Deflection => _deflection;

    /// <summary>Twist of the level sections at these depths, rad, nose to starboard: −∂w/∂x.</summary>
    public IReadOnlyList<double> Twist => _turnY;

    /// <summary>Force that the root carries, N.</summary>
    public double RootForce { get; }

    /// <summary>Moment about the x direction that the root carries, N m.</summary>
    public double RootMomentX { get; }

    /// <summary>Moment about the y direction through the root's shear centre that the root carries, N m.</summary>
    public double RootMomentY { get; }

    /// <summary>Deflection anywhere, m, to starboard; exact at stations and loads, a cubic between.</summary>
    /// <param name="x">Place, m.</param>
    /// <param name="y">Depth, m, root to tip.</param>
    public double DeflectionAt(double x, double y)
    {
        (int i, double u) = Cell(y);
        double height = _depths[i + 1] - _depths[i], run = _axis[i + 1] - _axis[i];
        double from = height * (_turnX[i] + _shearSlope[i]) - run * _turnY[i], to = height * (_turnX[i + 1] + _shearSlope[i]) - run * _turnY[i + 1];
        double v = 1 - u, axis = v * _axis[i] + u * _axis[i + 1];
        double centre = v * v * (1 + 2 * u) * _deflection[i] + u * u * (3 - 2 * u) * _deflection[i + 1] + u * v * (v * from - u * to);
        return centre - TwistAt(y) * (x - axis);
    }

    /// <summary>Twist at a depth, rad, nose to starboard; exact at stations and loads, straight between.</summary>
    /// <param name="y">Depth, m, root to tip.</param>
    public double TwistAt(double y)
    {
        (int i, double u) = Cell(y);
        return (1 - u) * _turnY[i] + u * _turnY[i + 1];
    }

    private (int Cell, double Share) Cell(double y)
    {
        Require.Between(y, _depths[0], _depths[^1]);
        int i = Array.BinarySearch(_depths, y);
        i = Math.Clamp(i < 0 ? ~i - 1 : i, 0, _depths.Length - 2);
        return (i, (y - _depths[i]) / (_depths[i + 1] - _depths[i]));
    }
}
