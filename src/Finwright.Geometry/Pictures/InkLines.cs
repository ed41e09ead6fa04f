namespace Finwright.Geometry.Pictures;

/// <summary>Finds where a draughtsman would put lines: where the shape ends, where one part passes in front of another, where a face folds.</summary>
internal static class InkLines
{
    /// <summary>Jump of depth against the run of the nearer surface that means another surface, in samples.</summary>
    private const double DepthJump = 6;

    /// <summary>Cosine of the angle between neighbouring directions that makes a fold.</summary>
    private static readonly double FoldCosine = Math.Cos(25 * Math.PI / 180);

    private const double FoldStrength = 0.85;

    /// <summary>How much ink lies on each sample, 0 to 1.</summary>
    /// <param name="buffer">What is seen.</param>
    /// <param name="outlineWidth">Width of lines where the shape ends, samples.</param>
    /// <param name="foldWidth">Width of lines where a face folds, samples.</param>
    public static float[] Coverage(DepthBuffer buffer, double outlineWidth, double foldWidth)
    {
        float[] ink = new float[buffer.Width * buffer.Height];
        (int, int)[] outlineBrush = Brush(outlineWidth / 2), foldBrush = Brush(foldWidth / 2);
        for (int y = 1; y < buffer.Height - 2; y++)
            for (int x = 1; x < buffer.Width - 2; x++)
            {
                int at = y * buffer.Width + x;
                Boundary found = (Boundary)Math.Max((int)Between(buffer, at, 1), (int)Between(buffer, at, buffer.Width));
                if (found == Boundary.Outline)
                    Dab(ink, buffer, x, y, outlineBrush, 1);
                else if (found == Boundary.Fold)
                    Dab(ink, buffer, x, y, foldBrush, (float)FoldStrength);
            }

        return ink;
    }

    private enum Boundary
    {
        None,
        Fold,
        Outline,
    }

    private static Boundary Between(DepthBuffer buffer, int at, int step)
    {
        int next = at + step;
        if (buffer.IsEmpty(at) && buffer.IsEmpty(next))
            return Boundary.None;
        if (buffer.Mesh(at) != buffer.Mesh(next))
            return Boundary.Outline;
        // The run of depth on either side continues over one surface, however steep; a jump beyond both is another surface.
        double here = buffer.Depth(next) - buffer.Depth(at);
        double before = Run(buffer, at - step, at), after = Run(buffer, next, next + step);
        if (Math.Abs(here) > DepthJump + 2 * Math.Max(Math.Abs(before), Math.Abs(after)))
            return Boundary.Outline;
        return buffer.Normal(at).Dot(buffer.Normal(next)) < FoldCosine ? Boundary.Fold : Boundary.None;
    }

    private static double Run(DepthBuffer buffer, int from, int to) =>
        buffer.IsEmpty(from) || buffer.IsEmpty(to) ? 0 : buffer.Depth(to) - buffer.Depth(from);

    /// <summary>Dots of a round pen about its middle.</summary>
    internal static (int X, int Y)[] Brush(double radius)
    {
        int reach = (int)Math.Ceiling(radius);
        List<(int, int)> dots = [];
        for (int y = -reach; y <= reach; y++)
            for (int x = -reach; x <= reach; x++)
                if (x * x + y * y <= radius * radius)
                    dots.Add((x, y));
        return [.. dots];
    }

    /// <summary>Touches the sheet with a pen; the strongest touch stays.</summary>
    internal static void Dab(float[] ink, DepthBuffer buffer, int x, int y, (int X, int Y)[] brush, float strength)
    {
        foreach ((int dx, int dy) in brush)
        {
            int px = x + dx, py = y + dy;
            if ((uint)px < (uint)buffer.Width && (uint)py < (uint)buffer.Height)
            {
                ref float there = ref ink[py * buffer.Width + px];
                there = Math.Max(there, strength);
            }
        }
    }
}
