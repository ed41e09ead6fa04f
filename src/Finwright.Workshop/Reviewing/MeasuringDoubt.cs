namespace Finwright.Workshop.Reviewing;

/// <summary>How far what a maker measures may be off: scale, measuring cup, clock, thermometer, and what the way of measuring takes along. Two standard deviations, judgement all of it.</summary>
public static class MeasuringDoubt
{
    /// <summary>Plastic by the spool before and after, g: the scale, and what went into brim, purge and skirt.</summary>
    public static double Plastic(double grams) => double.Hypot(2, 0.01 * grams);

    /// <summary>Resin by cup or syringe, ml: the marks, and what was left behind.</summary>
    public static double Resin(double millilitres) => double.Hypot(2, 0.03 * millilitres);

    /// <summary>The finished fin on a kitchen scale, g.</summary>
    public static double Mass(double grams) => double.Hypot(1, 0.005 * grams);

    /// <summary>Time on the printer, h: to a few minutes, heating up or not.</summary>
    public static double Time(double hours) => double.Hypot(0.1, 0.01 * hours);

    /// <summary>A thermometer that may not lie where it is hottest, K.</summary>
    public const double Temperature = 2;
}
