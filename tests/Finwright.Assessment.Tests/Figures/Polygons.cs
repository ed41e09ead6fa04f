using OxyPlot;

namespace Finwright.Assessment.Tests.Figures;

/// <summary>Measures of closed lines.</summary>
internal static class Polygons
{
    /// <summary>Area within, by the sum of Gauss; its sign tells the way round.</summary>
    public static double Area(IReadOnlyList<DataPoint> line)
    {
        double twice = 0;
        for (int i = 0; i < line.Count; i++)
        {
            DataPoint here = line[i], next = line[(i + 1) % line.Count];
            twice += here.X * next.Y - next.X * here.Y;
        }

        return twice / 2;
    }

    /// <summary>Whether the line runs round a point, as pictures are filled: by the turns it makes.</summary>
    public static bool Holds(IReadOnlyList<DataPoint> line, DataPoint point)
    {
        int turns = 0;
        for (int i = 0; i < line.Count; i++)
        {
            DataPoint here = line[i], next = line[(i + 1) % line.Count];
            double side = (next.X - here.X) * (point.Y - here.Y) - (point.X - here.X) * (next.Y - here.Y);
            if (here.Y <= point.Y && next.Y > point.Y && side > 0)
                turns++;
            else if (here.Y > point.Y && next.Y <= point.Y && side < 0)
                turns--;
        }

        return turns != 0;
    }
}
