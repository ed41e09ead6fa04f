namespace Finwright.Assessment.Packing;

/// <summary>From SI to the units of files, rounded to what a maker can use. Adding zero turns -0 into 0.</summary>
internal static class Rounded
{
    /// <summary>Millimetres to a thousandth.</summary>
    public static double Mm(double metres) => Math.Round(metres * 1e3, 3) + 0.0;

    /// <summary>Cubic centimetres to a hundredth.</summary>
    public static double Cm3(double cubicMetres) => Math.Round(cubicMetres * 1e6, 2) + 0.0;

    /// <summary>Degrees to a hundredth.</summary>
    public static double Degrees(double radians) => Math.Round(double.RadiansToDegrees(radians), 2) + 0.0;
}
