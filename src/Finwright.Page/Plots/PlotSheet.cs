namespace Finwright.Page.Plots;

/// <summary>Colour of a line: one of the page's tokens.</summary>
public enum PlotInk
{
    /// <summary>What the plot is about.</summary>
    Water,

    /// <summary>A further line.</summary>
    Ink,

    /// <summary>What stands beside.</summary>
    Quiet,

    /// <summary>Close to a limit.</summary>
    Tight,

    /// <summary>A limit.</summary>
    Fails,

    /// <summary>A third line.</summary>
    Holds,
}

/// <summary>How a line is drawn, so that colour is never all that tells it from the others.</summary>
public enum PlotDash
{
    /// <summary>Whole.</summary>
    Solid,

    /// <summary>Long strokes.</summary>
    Dashed,

    /// <summary>Points.</summary>
    Dotted,

    /// <summary>Strokes and points.</summary>
    DashDot,

    /// <summary>No line: only a mark at each point.</summary>
    Marks,
}

/// <summary>One axis of a plot.</summary>
/// <param name="Title">Quantity, in the reader's language.</param>
/// <param name="Unit">Unit as the reader wants it; empty for a ratio.</param>
/// <param name="Decimals">Decimals that are read off; the axis itself shows round numbers.</param>
public sealed record PlotAxis(string Title, string Unit, int Decimals)
{
    /// <summary>Where it begins; null: where the lines do.</summary>
    public double? Least { get; init; }

    /// <summary>Where it ends; null: where the lines do.</summary>
    public double? Greatest { get; init; }

    /// <summary>Whether it runs the other way.</summary>
    public bool IsReversed { get; init; }

    /// <summary>Whether each ten is as long as the next.</summary>
    public bool IsLogarithmic { get; init; }
}

/// <summary>A point of a line.</summary>
/// <param name="X">Along the first axis, in its unit.</param>
/// <param name="Y">Along the second axis, in its unit.</param>
public readonly record struct PlotPoint(double X, double Y);

/// <summary>A line of a plot.</summary>
/// <param name="Name">What it is, in the reader's language.</param>
/// <param name="Points">Its points, first quantity rising.</param>
/// <param name="Ink">Its colour.</param>
/// <param name="Dash">How it is drawn.</param>
public sealed record PlotLine(string Name, IReadOnlyList<PlotPoint> Points, PlotInk Ink, PlotDash Dash = PlotDash.Solid)
{
    /// <summary>Whether it is of the design beside this one.</summary>
    public bool IsGhost { get; init; }

    /// <summary>The line between two points drawn straight, as the plot draws it; a mark stands only where it is. Null outside the line.</summary>
    /// <param name="x">Place along the first axis.</param>
    public double? At(double x)
    {
        int next = 0;
        while (next < Points.Count && Points[next].X < x)
            next++;
        if (next < Points.Count && Points[next].X.Equals(x))
            return Points[next].Y;
        if (next == 0 || next == Points.Count || Dash is PlotDash.Marks)
            return null;
        PlotPoint before = Points[next - 1], after = Points[next];
        return before.Y + (x - before.X) / (after.X - before.X) * (after.Y - before.Y);
    }
}

/// <summary>The room between two lines, for example between two bounds.</summary>
/// <param name="Upper">Number of one line, from 0.</param>
/// <param name="Lower">Number of the other.</param>
/// <param name="Ink">Its colour.</param>
public sealed record PlotBand(int Upper, int Lower, PlotInk Ink);

/// <summary>A value of the second quantity that is marked all along, or a range of it.</summary>
/// <param name="Name">What it is, in the reader's language.</param>
/// <param name="Value">The value, or the lower end of the range.</param>
/// <param name="Ink">Its colour.</param>
public sealed record PlotLimit(string Name, double Value, PlotInk Ink)
{
    /// <summary>Upper end of a range; null for a single value.</summary>
    public double? To { get; init; }
}

/// <summary>A plot as data, in the reader's units: what is drawn, read out and told as a table is the same.</summary>
/// <param name="Title">What it shows, in a few words.</param>
/// <param name="X">First quantity.</param>
/// <param name="Y">Second quantity.</param>
/// <param name="Lines">The lines.</param>
public sealed record PlotSheet(string Title, PlotAxis X, PlotAxis Y, IReadOnlyList<PlotLine> Lines)
{
    /// <summary>Rooms between lines.</summary>
    public IReadOnlyList<PlotBand> Bands { get; init; } = [];

    /// <summary>Values of the second quantity that are marked.</summary>
    public IReadOnlyList<PlotLimit> Limits { get; init; } = [];

    /// <summary>Whether the first quantity runs down the page, as depth does.</summary>
    public bool IsUpright { get; init; }

    /// <summary>What to know before reading it.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];

    /// <summary>Every place along the first axis where some line has a point, rising.</summary>
    public IReadOnlyList<double> Grid() => [.. Lines.SelectMany(line => line.Points).Select(point => point.X).Distinct().Order()];

    /// <summary>Whether there is anything to draw.</summary>
    public bool HasPoints => Lines.Any(line => line.Points.Count > 0);
}
