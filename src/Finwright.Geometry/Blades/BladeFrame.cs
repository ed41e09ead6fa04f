namespace Finwright.Geometry.Blades;

/// <summary>Everything about the section at one depth that does not depend on the place round it; metres.</summary>
internal readonly record struct BladeFrame
{
    /// <summary>Depth.</summary>
    public required double Y { get; init; }

    /// <summary>x of the quarter chord.</summary>
    public required double QuarterChord { get; init; }

    /// <summary>Chord.</summary>
    public required double Chord { get; init; }

    /// <summary>Cosine and sine of the twist.</summary>
    public required double Cosine { get; init; }

    /// <summary>Sine of the twist.</summary>
    public required double Sine { get; init; }

    /// <summary>Station form above this depth, and the next one's weight.</summary>
    public required int Form { get; init; }

    /// <summary>Weight of the next form, 0 to 1.</summary>
    public required double Weight { get; init; }

    /// <summary>Factor of the form's half thickness.</summary>
    public required double Thickness { get; init; }

    /// <summary>Factor of the form's blunting.</summary>
    public required double Blunting { get; init; }

    /// <summary>Factor of the form's camber.</summary>
    public required double Camber { get; init; }

    /// <summary>Share of the thickness laid square to the camber line.</summary>
    public required double SquareShare { get; init; }

    /// <summary>Point of one side: X aft of the root quarter chord, Y to starboard (z of the design axes).</summary>
    /// <param name="station">Place on the chord, 0 to 1.</param>
    /// <param name="ordinates">Blended ordinates there.</param>
    /// <param name="side">+1 starboard, -1 port.</param>
    public Point2 Point(double station, in FormOrdinates ordinates, double side)
    {
        double half = side * (Thickness * ordinates.Half + Blunting * ordinates.Blunting);
        double along = (station - 0.25) * Chord, across = Camber * ordinates.Camber;
        if (SquareShare > 0 && Chord > 0)
        {
            double slope = Camber / Chord * ordinates.Slope;
            double cosine = 1 / Math.Sqrt(1 + slope * slope);
            along -= SquareShare * half * slope * cosine;
            across += half * (1 - SquareShare + SquareShare * cosine);
        }
        else
        {
            across += half;
        }

        return new(QuarterChord + along * Cosine + across * Sine, across * Cosine - along * Sine);
    }

    /// <summary>Unit normal of the blunt trailing edge's face, pointing aft: X aft, Y to starboard.</summary>
    /// <param name="edge">Blended ordinates at the trailing edge.</param>
    public Point2 EdgeNormal(in FormOrdinates edge)
    {
        // The face runs along the direction in which thickness is laid; see Point.
        double slope = SquareShare > 0 && Chord > 0 ? Camber / Chord * edge.Slope : 0;
        double cosine = 1 / Math.Sqrt(1 + slope * slope);
        double along = 1 - SquareShare + SquareShare * cosine, across = SquareShare * slope * cosine;
        double length = Math.Sqrt(along * along + across * across);
        return new((along * Cosine + across * Sine) / length, (across * Cosine - along * Sine) / length);
    }
}
