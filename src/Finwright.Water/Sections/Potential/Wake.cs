using Finwright.Geometry;

namespace Finwright.Water.Sections.Potential;

/// <summary>
/// The middle line of the wake: stations along the frictionless streamline from the trailing edge, close behind it and wider apart downstream.
/// </summary>
internal sealed class Wake
{
    /// <summary>Stations, the first at the trailing edge.</summary>
    public const int Count = 20;

    // Behind one chord the layer's shape is close to that far downstream, and Squire and Young's formula bridges the rest.
    private const double Reach = 1.0;

    // Thickness of the wake at the edge, chords: between Reynolds numbers of 1e5 and 1e7 two to four hundredths.
    private const double WakeThickness = 0.03;

    private Wake(Point2[] points, double[] length, double[] turn) => (Points, Length, Turn) = (points, length, turn);

    /// <summary>The stations.</summary>
    public Point2[] Points { get; }

    /// <summary>Length from each station to the next, chords.</summary>
    public double[] Length { get; }

    /// <summary>Angle by which the stream turns, toward the upper side, from each station to the next, radians.</summary>
    public double[] Turn { get; }

    /// <summary>Direction of the wake at a station, aft.</summary>
    public Point2 Direction(int station)
    {
        Point2 along = Points[Math.Min(station + 1, Count - 1)] - Points[Math.Max(station - 1, 0)];
        return (1 / along.Length) * along;
    }

    /// <summary>Follows the stream from the trailing edge.</summary>
    /// <param name="flow">The flow past the section.</param>
    /// <param name="angleOfAttack">Radians.</param>
    /// <param name="strengths">Node strengths at that angle.</param>
    public static Wake Follow(PotentialFlow flow, double angleOfAttack, ReadOnlySpan<double> strengths)
    {
        SectionPanels panels = flow.Panels;
        double first = 0.5 * (panels.Length[0] + panels.Length[^1]);
        double ratio = Ratio(first);
        Point2[] points = new Point2[Count];
        double[] length = new double[Count - 1], turn = new double[Count - 1];
        points[0] = new(0.5 * (panels.X[0] + panels.X[^1]), 0.5 * (panels.Y[0] + panels.Y[^1]));
        Point2 along = panels.Bisector;
        double step = first;
        for (int i = 0; i + 1 < Count; i++)
        {
            // Heun's step: the direction halfway between both ends.
            Point2 guess = points[i] + step * along;
            Point2 velocity = flow.Velocity(guess, angleOfAttack, strengths);
            Point2 ahead = (1 / velocity.Length) * velocity;
            Point2 mean = along + ahead;
            points[i + 1] = points[i] + (step / mean.Length) * mean;
            length[i] = step;
            turn[i] = Math.Atan2(along.X * ahead.Y - along.Y * ahead.X, along.X * ahead.X + along.Y * ahead.Y);
            along = ahead;
            step *= ratio;
        }

        SpreadFirstTurn(length, turn);
        return new(points, length, turn);
    }

    /// <summary>
    /// The frictionless stream bends without limit right behind the edge; a wake of finite thickness bends evenly over about its own thickness.
    /// </summary>
    private static void SpreadFirstTurn(double[] length, double[] turn)
    {
        int end = 0;
        double run = 0, sum = 0;
        while (end < length.Length && run < WakeThickness)
        {
            run += length[end];
            sum += turn[end++];
        }

        for (int i = 0; i < end; i++)
            turn[i] = sum * length[i] / run;
    }

    /// <summary>Growth of the steps with which they reach <see cref="Reach"/>.</summary>
    private static double Ratio(double first)
    {
        double low = 1, high = 3;
        for (int i = 0; i < 50; i++)
        {
            double middle = 0.5 * (low + high);
            double sum = first * (Math.Pow(middle, Count - 1) - 1) / (middle - 1);
            (low, high) = sum < Reach ? (middle, high) : (low, middle);
        }

        return 0.5 * (low + high);
    }
}
