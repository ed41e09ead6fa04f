using Finwright.Numerics;

namespace Finwright.Making.Pores;

/// <summary>
/// The gyroid as infill: how fine it is, how much of the room it takes, how easily resin passes. Level set
/// F = sin x cos y + sin y cos z + sin z cos x with x = 2π X / a, a the edge of its cubic cell.
/// </summary>
/// <remarks>
/// Its pores are two equal labyrinths, F above and F below the wall, that never meet: each needs its own way in
/// and out (<see cref="PortOpening"/>).
/// </remarks>
public static class Gyroid
{
    /// <summary>Length of the printed lines on each area, times the cell edge: mean area of the surface, 3.0915 a² in a cell, times the mean of how steep it stands, 0.795.</summary>
    /// <remarks>Area from memory; steepness and product: numerical reference, numpy. They hold within 0.5 % for lines up to a fifth of the cell edge.</remarks>
    public const double LineFactor = 2.46;

    /// <summary>Area of the gyroid in its cell, over the cell edge squared (minimal surface, from memory).</summary>
    public const double AreaFactor = 3.0915;

    /// <summary>Level at which the necks of a labyrinth close and it falls apart into pockets, √2 (from memory); the pockets close at 1.5, the greatest F.</summary>
    public static readonly double PinchOff = Math.Sqrt(2);

    /// <summary>Least share of plastic for which a printed gyroid's numbers hold here.</summary>
    public const double LeastShare = 0.03;

    /// <summary>Greatest share of plastic for which a printed gyroid's numbers hold here: lines of a fifth of the cell edge.</summary>
    public const double GreatestShare = 0.5;

    // Euler number of the gyroid in its cubic cell, −8; with Steiner's formula the wall's volume loses (π/6) 8 r³.
    private const double SteinerCubic = 8 * Math.PI / 6;

    // Greatest curvature of the surface times the cell edge, 5.377 (numerical reference, numpy): a wall thicker than 2/5.377 of the edge folds over itself.
    private const double GreatestUniformRatio = 0.37;

    private const int QuadraturePoints = 256;

    /// <summary>Edge of the cubic cell of a gyroid printed as lines of constant width in each layer, metres: a = 2.46 w / f.</summary>
    /// <param name="lineWidth">Width of a line, metres.</param>
    /// <param name="infillShare">Share of the room that is plastic, <see cref="LeastShare"/> to <see cref="GreatestShare"/>.</param>
    public static double CellEdge(double lineWidth, double infillShare) =>
        LineFactor * Require.Positive(lineWidth) / Require.Between(infillShare, LeastShare, GreatestShare);

    /// <summary>Share of the room that lines of constant width take, 0 to 1.</summary>
    /// <param name="lineWidth">Width of a line, metres; at most a fifth of the cell edge.</param>
    /// <param name="cellEdge">Edge of the cubic cell, metres.</param>
    public static double InfillShare(double lineWidth, double cellEdge)
    {
        double ratio = Require.Positive(lineWidth) / Require.Positive(cellEdge);
        return LineFactor * Require.Between(ratio, 0, 0.21);
    }

    /// <summary>Share of the room where F lies above a level: one labyrinth.</summary>
    /// <param name="level">Level, at least 0, below √2.</param>
    /// <returns>0.5 at level 0, 0.017 at √2; good to 2e-4.</returns>
    /// <remarks>Along z the level set is A + R cos(z − φ): its share is an arc, and only the mean over x and y is left to sum.</remarks>
    public static double NetworkShare(double level)
    {
        Require.Between(level, 0, PinchOff);
        double sum = 0;
        for (int i = 0; i < QuadraturePoints; i++)
        {
            (double sinX, double cosX) = Math.SinCos((i + 0.5) * 2 * Math.PI / QuadraturePoints);
            for (int j = 0; j < QuadraturePoints; j++)
            {
                (double sinY, double cosY) = Math.SinCos((j + 0.5) * 2 * Math.PI / QuadraturePoints);
                double swing = Math.Sqrt(sinY * sinY + cosX * cosX), need = level - sinX * cosY;
                sum += need >= swing ? 0 : need <= -swing ? Math.PI : Math.Acos(need / swing);
            }
        }

        return sum / (Math.PI * QuadraturePoints * QuadraturePoints);
    }

    /// <summary>Share of the room where |F| lies below a level: the wall between the labyrinths.</summary>
    /// <param name="level">Level, at least 0, below √2.</param>
    public static double SheetShare(double level) => 1 - 2 * NetworkShare(level);

    /// <summary>The level t at which the wall |F| &lt; t takes a share of the room.</summary>
    /// <param name="sheetShare">Share of the wall, at least 0, at most 0.95.</param>
    public static double Level(double sheetShare)
    {
        Require.Between(sheetShare, 0, 0.95);
        double low = 0, high = PinchOff;
        // The share grows with the level throughout; 30 halvings leave 1e-9.
        for (int i = 0; i < 30; i++)
        {
            double middle = (low + high) / 2;
            if (SheetShare(middle) < sheetShare)
                low = middle;
            else
                high = middle;
        }

        return (low + high) / 2;
    }

    /// <summary>Share of the room that a wall of the same thickness everywhere takes: 3.0915 r − 4.1888 r³, r the thickness over the cell edge.</summary>
    /// <param name="thickness">Thickness of the wall square to itself, metres; at most 0.37 of the cell edge.</param>
    /// <param name="cellEdge">Edge of the cubic cell, metres.</param>
    /// <remarks>Steiner's formula for parallel surfaces with the gyroid's Euler number −8 in a cell; beyond 0.37 the parallel surface folds over itself.</remarks>
    public static double UniformWallShare(double thickness, double cellEdge)
    {
        double ratio = Require.Between(Require.NotNegative(thickness) / Require.Positive(cellEdge), 0, GreatestUniformRatio);
        return AreaFactor * ratio - SteinerCubic * ratio * ratio * ratio;
    }

    /// <summary>Permeability of the open gyroid, m²: k/a² = 4.39e-3 (1 − f)^2.70.</summary>
    /// <param name="cellEdge">Edge of the cubic cell, metres.</param>
    /// <param name="infillShare">Share of the room that is plastic.</param>
    /// <returns>Value and range; null outside shares of 0.05 to 0.3, where nothing was computed.</returns>
    /// <remarks>
    /// Numerical reference: creeping flow through the level set's sheet at shares 0.10 and 0.20, 4 % for its steps. Printed lines are squashed and
    /// stepped: the range allows a quarter less and a tenth more (judgement).
    /// </remarks>
    public static Ranged? Permeability(double cellEdge, double infillShare)
    {
        Require.Positive(cellEdge);
        Require.Between(infillShare, 0, 1);
        if (infillShare is < 0.05 or > 0.3)
            return null;
        double k = 4.39e-3 * Math.Pow(1 - infillShare, 2.70) * cellEdge * cellEdge;
        return new Ranged(k, 0.75 * k, 1.1 * k);
    }
}
