using Finwright.Geometry;
using Finwright.Numerics;

namespace Finwright.Making.Pores;

/// <summary>How surely a port opens both labyrinths of the gyroid.</summary>
/// <param name="Share">Share of the places at which the hole may meet the pattern where both labyrinths are open by at least the area asked for, 0 to 1.</param>
/// <param name="LeastArea">Least open area of the less open labyrinth over these places, m².</param>
/// <param name="MeanArea">Mean open area of one labyrinth, m².</param>
/// <param name="Places">Places tried.</param>
public sealed record OpeningChance(double Share, double LeastArea, double MeanArea, int Places)
{
    /// <summary>Whether every place tried opens both.</summary>
    public bool IsCertain => Share >= 1;
}

/// <summary>
/// Whether a hole drilled into the core opens both labyrinths, wherever it happens to meet the pattern: the part of the hole's surface inside the core
/// that lies in each labyrinth is its opening.
/// </summary>
/// <remarks>
/// The wall is |F| &lt; t with t from the share of plastic (<see cref="Gyroid.Level"/>). All places of the pattern along its three axes are tried on an even
/// grid; the answer is a count over these, so a share near 1 that is not certain may hide rarer places. Lines that stop short of the wall open more.
/// </remarks>
public static class PortOpening
{
    /// <summary>Open area asked of each labyrinth, m²: 1 mm², the bore of a thin needle (judgement).</summary>
    public const double UsualArea = 1e-6;

    // Places along each axis of the pattern.
    private const int Phases = 14;

    // Points of the hole's surface: round it, along it, and rings on its end.
    private const int Around = 24, Along = 12, Rings = 5;

    /// <summary>Chance of a hole.</summary>
    /// <param name="diameter">Diameter of the hole, metres.</param>
    /// <param name="depth">How deep it goes into the core, from the inside of the wall, metres.</param>
    /// <param name="cellEdge">Edge of the gyroid's cubic cell, metres.</param>
    /// <param name="infillShare">Share of the core that is plastic, 0 to 0.6.</param>
    /// <param name="inward">Direction of drilling, layer axes; need not be of unit length.</param>
    /// <param name="area">Open area asked of each labyrinth, m².</param>
    public static OpeningChance Chance(double diameter, double depth, double cellEdge, double infillShare, Point3 inward, double area = UsualArea)
    {
        double scale = 2 * Math.PI / Require.Positive(cellEdge), level = Gyroid.Level(Require.Between(infillShare, 0, 0.6));
        Require.Positive(area);
        (Point3[] points, double[] weights) = Surface(Require.Positive(diameter), Require.Positive(depth), inward);
        int count = points.Length;
        (double Sin, double Cos)[] x = new (double, double)[count], y = new (double, double)[count], z = new (double, double)[count];
        for (int i = 0; i < count; i++)
            (x[i], y[i], z[i]) = (Math.SinCos(scale * points[i].X), Math.SinCos(scale * points[i].Y), Math.SinCos(scale * points[i].Z));

        (double Sin, double Cos)[] phase = new (double, double)[Phases];
        for (int p = 0; p < Phases; p++)
            phase[p] = Math.SinCos((p + 0.5) * 2 * Math.PI / Phases);
        (double Sin, double Cos)[] turnedX = new (double, double)[count], turnedY = new (double, double)[count];
        int good = 0;
        double least = double.PositiveInfinity, sum = 0;
        for (int a = 0; a < Phases; a++)
        {
            Turn(x, phase[a], turnedX);
            for (int b = 0; b < Phases; b++)
            {
                Turn(y, phase[b], turnedY);
                for (int c = 0; c < Phases; c++)
                {
                    double above = 0, below = 0;
                    (double turnSin, double turnCos) = phase[c];
                    for (int i = 0; i < count; i++)
                    {
                        double sinZ = z[i].Sin * turnCos + z[i].Cos * turnSin, cosZ = z[i].Cos * turnCos - z[i].Sin * turnSin;
                        double f = turnedX[i].Sin * turnedY[i].Cos + turnedY[i].Sin * cosZ + sinZ * turnedX[i].Cos;
                        if (f > level)
                            above += weights[i];
                        else if (f < -level)
                            below += weights[i];
                    }

                    double smaller = Math.Min(above, below);
                    least = Math.Min(least, smaller);
                    sum += above + below;
                    if (smaller >= area)
                        good++;
                }
            }
        }

        const int All = Phases * Phases * Phases;
        return new((double)good / All, least, sum / (2 * All), All);
    }

    /// <summary>Least depth from which on a hole is certain to open both labyrinths, metres.</summary>
    /// <param name="diameter">Diameter of the hole, metres.</param>
    /// <param name="cellEdge">Edge of the gyroid's cubic cell, metres.</param>
    /// <param name="infillShare">Share of the core that is plastic, 0 to 0.6.</param>
    /// <param name="inward">Direction of drilling, layer axes.</param>
    /// <param name="area">Open area asked of each labyrinth, m².</param>
    /// <returns>To a fortieth of the cell edge; null when not even a hole as deep as the cell does.</returns>
    public static double? LeastDepth(double diameter, double cellEdge, double infillShare, Point3 inward, double area = UsualArea) =>
        Least(size => Chance(diameter, size, cellEdge, infillShare, inward, area).IsCertain, cellEdge);

    /// <summary>Halves between nothing and the cell edge: a larger hole is taken to open no less.</summary>
    private static double? Least(Func<double, bool> isCertain, double cellEdge)
    {
        const int Steps = 40;
        if (!isCertain(cellEdge))
            return null;
        int fails = 0, holds = Steps;
        while (holds - fails > 1)
        {
            int middle = (fails + holds) / 2;
            if (isCertain(cellEdge * middle / Steps))
                holds = middle;
            else
                fails = middle;
        }

        return cellEdge * holds / Steps;
    }

    private static void Turn((double Sin, double Cos)[] from, (double Sin, double Cos) by, (double Sin, double Cos)[] to)
    {
        for (int i = 0; i < from.Length; i++)
            to[i] = (from[i].Sin * by.Cos + from[i].Cos * by.Sin, from[i].Cos * by.Cos - from[i].Sin * by.Sin);
    }

    /// <summary>Points on the hole's side and end, each with the area it stands for; the middle of the mouth is the origin.</summary>
    private static (Point3[] Points, double[] Weights) Surface(double diameter, double depth, Point3 inward)
    {
        Point3 hint = Math.Abs(inward.Z) < 0.9 * inward.Length ? new(0, 0, 1) : new(1, 0, 0);
        Placement frame = Placement.Along(default, 1 / Require.Positive(inward.Length) * inward, hint);
        double radius = diameter / 2;
        List<Point3> points = [];
        List<double> weights = [];
        for (int a = 0; a < Around; a++)
        {
            (double sin, double cos) = Math.SinCos((a + 0.5) * 2 * Math.PI / Around);
            for (int s = 0; s < Along; s++)
                Add(new(radius * cos, radius * sin, depth * (s + 0.5) / Along), Math.PI * diameter * depth / (Around * Along));
            for (int ring = 0; ring < Rings; ring++)
            {
                double at = radius * (ring + 0.5) / Rings;
                Add(new(at * cos, at * sin, depth), 2 * Math.PI * at * radius / Rings / Around);
            }
        }

        return ([.. points], [.. weights]);

        void Add(Point3 point, double weight)
        {
            points.Add(frame.Apply(point));
            weights.Add(weight);
        }
    }
}
