namespace Finwright.Geometry.Pictures;

/// <summary>Faint lines where planes at equal distances cut the surface; they show form where a wash cannot.</summary>
/// <param name="Across">Direction square to the planes; unit length.</param>
/// <param name="Spacing">Distance between planes, metres, positive.</param>
public sealed record SectionLines(Point3 Across, double Spacing)
{
    private const float Strength = 0.28f;

    /// <summary>A face nearly along the planes would be all line; there none is drawn. Cosine of the angle between their normals.</summary>
    private const double FlattestFace = 0.995;

    /// <summary>Inks the lines over a picture.</summary>
    internal void Add(float[] ink, DepthBuffer buffer, double width)
    {
        (int, int)[] brush = InkLines.Brush(width / 2);
        for (int y = 0; y < buffer.Height - 1; y++)
            for (int x = 0; x < buffer.Width - 1; x++)
            {
                int at = y * buffer.Width + x;
                if (!buffer.IsEmpty(at) && (Between(buffer, at, at + 1) || Between(buffer, at, at + buffer.Width)))
                    InkLines.Dab(ink, buffer, x, y, brush, Strength);
            }
    }

    private bool Between(DepthBuffer buffer, int at, int next)
    {
        if (buffer.Mesh(at) != buffer.Mesh(next))
            return false;
        return Math.Abs(buffer.Normal(at).Dot(buffer.Seen(Across))) < FlattestFace && Layer(buffer, at) != Layer(buffer, next);
    }

    private double Layer(DepthBuffer buffer, int at) => Math.Floor(buffer.Place(at).Dot(Across) / Spacing);
}
