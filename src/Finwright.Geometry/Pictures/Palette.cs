namespace Finwright.Geometry.Pictures;

/// <summary>The inks of every drawing of ours, light tokens; sRGB bytes.</summary>
public static class Palette
{
    /// <summary>The sheet.</summary>
    public static Ink Paper { get; } = new(0xfb, 0xfa, 0xf6);

    /// <summary>Lines.</summary>
    public static Ink Line { get; } = new(0x14, 0x27, 0x3a);

    /// <summary>Dimensions and notes.</summary>
    public static Ink Quiet { get; } = new(0x5b, 0x6b, 0x78);

    /// <summary>Rules and grids.</summary>
    public static Ink Rule { get; } = new(0xd8, 0xd5, 0xcb);

    /// <summary>What holds; the line to check a print against.</summary>
    public static Ink Holds { get; } = new(0x2f, 0x6b, 0x4f);

    /// <summary>Water, and the light tone of the fin.</summary>
    public static Ink Water { get; } = new(0x1f, 0x6f, 0x8b);
}

/// <summary>A colour.</summary>
/// <param name="Red">0 to 255.</param>
/// <param name="Green">0 to 255.</param>
/// <param name="Blue">0 to 255.</param>
public readonly record struct Ink(byte Red, byte Green, byte Blue)
{
    /// <summary>The colour as files for drawings spell it, for example <c>#14273a</c>.</summary>
    public string Hex => $"#{Red:x2}{Green:x2}{Blue:x2}";

    /// <summary>This colour with some of another laid over it.</summary>
    /// <param name="other">What is laid over.</param>
    /// <param name="share">0: nothing of it, 1: only it.</param>
    public Ink Under(Ink other, double share)
    {
        byte Mix(byte a, byte b) => (byte)Math.Round(a + (b - a) * share);
        return new(Mix(Red, other.Red), Mix(Green, other.Green), Mix(Blue, other.Blue));
    }
}
