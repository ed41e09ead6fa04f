namespace Finwright.Geometry.Sections;

/// <summary>What the four digits of a section name may be: shared by the plain and the modified four-digit sections.</summary>
internal static class FourDigitName
{
    /// <summary>Beyond this thickness, % of chord, the cambered construction folds at the nose and nobody makes a fin of it.</summary>
    public const int ThickestPercent = 40;

    /// <summary>The name as design files spell it.</summary>
    public static string Of(int camberPercent, int camberTenths, int thicknessPercent) =>
        $"naca-{camberPercent}{camberTenths}{thicknessPercent:00}";

    /// <summary>Says what is wrong with the digits, or null.</summary>
    public static string? Problem(int camberPercent, int camberTenths, int thicknessPercent) =>
        thicknessPercent is < 1 or > ThickestPercent
            ? $"Its thickness is {thicknessPercent} %; it must lie between 1 and {ThickestPercent} %."
            : camberPercent > 0 && camberTenths == 0
                ? $"It has {camberPercent} % camber, but the second digit, the place of the greatest camber in tenths of the chord, is 0."
                : camberPercent == 0 && camberTenths > 0
                    ? $"It has no camber, but the second digit names a place for it, {camberTenths} tenths of the chord."
                    : null;

    /// <summary>Refuses digits that make no section.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range, or camber and its place do not go together.</exception>
    public static void Check(int camberPercent, int camberTenths, int thicknessPercent)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(camberPercent);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(camberPercent, 9);
        ArgumentOutOfRangeException.ThrowIfNegative(camberTenths);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(camberTenths, 9);
        if (Problem(camberPercent, camberTenths, thicknessPercent) is string problem)
            throw new ArgumentOutOfRangeException(nameof(thicknessPercent), thicknessPercent, problem);
    }
}
