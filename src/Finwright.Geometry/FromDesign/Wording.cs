using Finwright.Design;

namespace Finwright.Geometry.FromDesign;

/// <summary>How lengths and places are put in words for findings.</summary>
internal static class Wording
{
    /// <summary>A length in millimetres, at most two decimals.</summary>
    public static string Mm(double metres) => FormattableString.Invariant($"{metres * 1e3:0.##} mm");

    /// <summary>An angle in degrees, at most one decimal.</summary>
    public static string Degrees(double radians) => FormattableString.Invariant($"{radians * 180 / Math.PI:0.#} degrees");

    /// <summary>Where a point lies: depth and side, or in the base.</summary>
    public static string Whereabouts(Point3 p)
    {
        string side = p.Z > 1e-5 ? ", starboard side" : p.Z < -1e-5 ? ", port side" : "";
        return p.Y < 0 ? $"{Mm(-p.Y)} up in the base{side}" : $"{Mm(p.Y)} depth{side}";
    }

    /// <summary>A name at the start of a sentence.</summary>
    public static string Capital(string name) => name.Length == 0 ? name : char.ToUpperInvariant(name[0]) + name[1..];

    /// <summary>How much a wall of a given thickness matters for a given width of printed line; null when it is thick enough.</summary>
    /// <remarks>Less than half a line is not printed at all; less than a line is printed thin and may leak resin.</remarks>
    public static Severity? JudgeWall(double wall, double line) =>
        wall < line / 2 ? Severity.Error : wall < line - Hair ? Severity.Caution : null;

    /// <summary>Differences below this are rounding, metres.</summary>
    public const double Hair = 1e-7;
}
