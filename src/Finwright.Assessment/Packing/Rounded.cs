using System.Globalization;

namespace Finwright.Assessment.Packing;

/// <summary>
/// From SI to the units of files and programs, to nine digits: enough to check by, and few enough that the last bits of the
/// arithmetic do not show. People get fewer; the text decides how many.
/// </summary>
public static class Rounded
{
    /// <summary>Metres to millimetres.</summary>
    public static double Mm(double metres) => Digits(metres * 1e3);

    /// <summary>Square metres to square centimetres.</summary>
    public static double Cm2(double squareMetres) => Digits(squareMetres * 1e4);

    /// <summary>Cubic metres to cubic centimetres.</summary>
    public static double Cm3(double cubicMetres) => Digits(cubicMetres * 1e6);

    /// <summary>Radians to degrees.</summary>
    public static double Degrees(double radians) => Digits(double.RadiansToDegrees(radians));

    /// <summary>A share of one to per cent.</summary>
    public static double Percent(double share) => Digits(100 * share);

    /// <summary>A number of any size to nine significant digits.</summary>
    public static double Significant(double value) => double.Parse(value.ToString("g9", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    /// <summary>A number to nine significant digits; what is only rounding error of sizes near one is zero.</summary>
    public static double Digits(double value) =>
        Math.Abs(value) < 1e-12 ? 0 : Significant(value);
}
