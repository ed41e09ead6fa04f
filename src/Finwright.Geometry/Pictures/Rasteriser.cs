namespace Finwright.Geometry.Pictures;

/// <summary>
/// Draws meshes as ink on paper: thin lines where a shape ends or folds, a light wash that follows the form, nothing hidden shown.
/// </summary>
/// <remarks>
/// A depth buffer finer than the picture holds what is nearest at each place; lines are found in it where depth or direction jumps, so they
/// are as even on a faceted skin as on a plane. Wash and lines are then averaged to pixels.
/// </remarks>
public static class Rasteriser
{
    /// <summary>Samples a pixel along each side.</summary>
    private const int Fineness = 4;

    /// <summary>Part of the picture's sides left free round the meshes.</summary>
    private const double Margin = 0.06;

    /// <summary>Largest side of a picture, pixels.</summary>
    private const int LargestSide = 4096;

    /// <summary>Draws meshes so that they fill the picture.</summary>
    /// <param name="meshes">What to draw, metres, placed; at least one with a triangle.</param>
    /// <param name="view">Where it is seen from.</param>
    /// <param name="width">Pixels across, 16 to 4096.</param>
    /// <param name="height">Pixels down, 16 to 4096.</param>
    /// <param name="sections">Sections drawn as faint lines over the form, as on the lines plan of a boat; none when null.</param>
    public static Picture Draw(IReadOnlyList<TriangleMesh> meshes, View view, int width, int height, SectionLines? sections = null)
    {
        ArgumentNullException.ThrowIfNull(meshes);
        ArgumentOutOfRangeException.ThrowIfLessThan(width, 16);
        ArgumentOutOfRangeException.ThrowIfLessThan(height, 16);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(width, LargestSide);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(height, LargestSide);
        if (sections != null)
            ArgumentOutOfRangeException.ThrowIfNegativeOrZero(sections.Spacing, nameof(sections));
        DepthBuffer buffer = DepthBuffer.Filled(meshes, view, width * Fineness, height * Fineness, Margin);
        // Lines keep their weight against the sheet: about 1.5 pixels at 800 pixels, never thinner than can be seen.
        double outline = Fineness * Math.Max(1.0, 1.7 * Math.Min(width, height) / 600.0);
        float[] ink = InkLines.Coverage(buffer, outline, 0.6 * outline);
        sections?.Add(ink, buffer, 0.4 * outline);

        Picture picture = new(width, height);
        for (int y = 0; y < height; y++)
            for (int x = 0; x < width; x++)
                picture[x, y] = Average(buffer, ink, x, y);
        return picture;
    }

    private static Ink Average(DepthBuffer buffer, float[] ink, int x, int y)
    {
        double red = 0, green = 0, blue = 0;
        for (int j = 0; j < Fineness; j++)
            for (int i = 0; i < Fineness; i++)
            {
                int at = (y * Fineness + j) * buffer.Width + x * Fineness + i;
                Ink colour = buffer.IsEmpty(at) ? Palette.Paper : Wash.Of(buffer.Normal(at));
                colour = colour.Under(Palette.Line, ink[at]);
                red += colour.Red;
                green += colour.Green;
                blue += colour.Blue;
            }

        const double Share = 1.0 / (Fineness * Fineness);
        return new((byte)Math.Round(red * Share), (byte)Math.Round(green * Share), (byte)Math.Round(blue * Share));
    }
}
