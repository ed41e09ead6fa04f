using MathNet.Numerics.Integration;

namespace Finwright.Strength.Plates;

/// <summary>A rod on the mesh: the elements it crosses, with points to integrate along it.</summary>
internal sealed class RodPath
{
    // Steps that look for the next element; a crossing shorter than one step is missed without harm, since it is integrated in its neighbour's rule.
    private const int Steps = 400;
    private const int Halvings = 40;
    private const int PointsEach = 3;

    public RodPath(PlateRod rod, PlateMesh mesh)
    {
        double dx = rod.ToX - rod.FromX, dy = rod.ToY - rod.FromY;
        Length = Math.Sqrt(dx * dx + dy * dy);
        Direction = (dx / Length, dy / Length);
        MeshPlace At(double t) => mesh.Find(rod.FromX + t * dx, rod.FromY + t * dy);

        // −1 outside, else the element.
        int Where(double t) => At(t) is { IsInside: true } place ? place.Element : -1;
        GaussLegendreRule rule = new(0, 1, PointsEach);
        List<RodPoint> points = [];
        double start = 0;
        int current = Where(0.5 / Steps);
        void Close(double end)
        {
            if (current >= 0)
            {
                for (int q = 0; q < PointsEach; q++)
                {
                    double t = start + (end - start) * rule.Abscissas[q], length = (end - start) * rule.Weights[q] * Length;
                    points.Add(new(At(t), length));
                    Inside += length;
                }
            }

            start = end;
        }

        for (int i = 1; i < Steps; i++)
        {
            double low = (i - 0.5) / Steps, high = (i + 0.5) / Steps;
            int next = Where(high);
            if (next == current)
                continue;
            for (int k = 0; k < Halvings; k++)
            {
                double middle = (low + high) / 2;
                (low, high) = Where(middle) == current ? (middle, high) : (low, middle);
            }

            Close(high);
            current = next;
        }

        Close(1);
        Points = points;
    }

    /// <summary>Unit vector along the rod.</summary>
    public (double X, double Y) Direction { get; }

    /// <summary>Length from end to end, metres.</summary>
    public double Length { get; }

    /// <summary>Length of what lies on the mesh, metres.</summary>
    public double Inside { get; private set; }

    public IReadOnlyList<RodPoint> Points { get; }
}

/// <summary>A point of a rod's integration.</summary>
/// <param name="Place">Where.</param>
/// <param name="Length">Length it stands for, metres.</param>
internal readonly record struct RodPoint(MeshPlace Place, double Length);
