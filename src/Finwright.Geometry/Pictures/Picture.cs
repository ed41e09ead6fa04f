using BigGustave;

namespace Finwright.Geometry.Pictures;

/// <summary>A picture of whole pixels.</summary>
/// <param name="width">Pixels across.</param>
/// <param name="height">Pixels down.</param>
public sealed class Picture(int width, int height)
{
    private readonly Ink[] _pixels = new Ink[width * height];

    /// <summary>Pixels across.</summary>
    public int Width => width;

    /// <summary>Pixels down.</summary>
    public int Height => height;

    /// <summary>A pixel; (0, 0) is top left.</summary>
    public Ink this[int x, int y]
    {
        get => _pixels[y * width + x];
        set => _pixels[y * width + x] = value;
    }

    /// <summary>The picture in PNG form (ISO/IEC 15948), three bytes a pixel.</summary>
    public byte[] ToPng()
    {
        PngBuilder png = PngBuilder.Create(width, height, hasAlphaChannel: false);
        for (int y = 0; y < height; y++)
            for (int x = 0; x < width; x++)
            {
                Ink ink = this[x, y];
                png.SetPixel(ink.Red, ink.Green, ink.Blue, x, y);
            }

        return png.Save(new PngBuilder.SaveOptions { AttemptCompression = true });
    }
}
