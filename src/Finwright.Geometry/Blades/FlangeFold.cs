namespace Finwright.Geometry.Blades;

/// <summary>Tells where a flange, moved out square to a hollow of the section, would run through itself.</summary>
/// <remarks>
/// A curve moved out by d runs backwards where it is hollow with a radius below d: each step of it is (1 - d / R) times the step of the curve
/// (Willmore, 1959, "An introduction to differential geometry", on parallel curves; from memory). Only such local folds are looked for.
/// </remarks>
internal static class FlangeFold
{
    private const int SideCells = 160, Depths = 5;

    // With camber the very nose may turn back a little by itself; it is never hollow.
    private const int NoseCells = 8;

    /// <summary>The depth and the radius of the sharpest hollow that is too sharp for the overhang, metres; null when there is none.</summary>
    public static (double Depth, double Radius)? Find(Blade blade, RootFlange flange)
    {
        double[] places = new double[SideCells + 1];
        for (int i = 0; i <= SideCells; i++)
            places[i] = 0.5 * i / SideCells;
        RingTable table = new(blade, places, 1);
        Point2[] points = new Point2[table.Count], normals = new Point2[table.Count];
        (double Depth, double Radius)? worst = null;
        for (int k = 0; k < Depths; k++)
        {
            double depth = flange.Thickness * k / (Depths - 1);
            table.Fill(blade.FrameAt(depth), 0, points, normals);
            for (int j = table.StarboardCorner; j < table.PortCorner; j++)
            {
                Point2 step = points[j + 1] - points[j];
                double square = step.Dot(step), hollow = -step.Dot(normals[j + 1] - normals[j]);
                if (Math.Abs(j + 0.5 - table.Nose) < NoseCells || hollow <= 0 || square >= hollow * (worst?.Radius ?? flange.Overhang))
                    continue;
                worst = (depth, square / hollow);
            }
        }

        return worst;
    }
}
