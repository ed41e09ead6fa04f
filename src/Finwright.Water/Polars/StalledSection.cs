namespace Finwright.Water.Polars;

/// <summary>Forces on a stalled section: from the last solved point to those of a flat plate, and on to square across the stream.</summary>
/// <remarks>
/// A plate feels only a force square to itself, 2 sin α of the dynamic pressure: lift sin 2α, drag 2 sin² α. This is the deep-stall law
/// of Viterna and Corrigan (1982, "Fixed pitch rotor performance of large horizontal axis wind turbines", NASA CP-2230) with a greatest
/// drag coefficient of 2 and without their term A₂ cos²α / sin α: against the 0015 section of Sheldahl and Klimas (1981, SAND80-2114) that
/// term leaves 20 % too much lift at 30°. What the last solved point has beyond the plate fades out with the square of the way left to
/// <see cref="FullPlate"/>. Expected error in deep stall: 5 % of lift, 15 % of drag. The law is an estimate: flow past stall is
/// unsteady, and it is not unique.
/// </remarks>
internal static class StalledSection
{
    /// <summary>Angle from which the plate's forces hold, radians: the 30° from which the published deep-stall values of all Reynolds numbers agree.</summary>
    public const double FullPlate = Math.PI / 6;

    /// <summary>Fading takes at least this angle, radians (10°): a section solved far into stall does not become a plate at once.</summary>
    private const double ShortestFade = Math.PI / 18;

    /// <summary>Forces beyond the last solved point.</summary>
    /// <param name="angle">Angle of attack, radians, farther from 0 than the last solved point, at most ±π/2.</param>
    /// <param name="last">Angle of the last solved point, radians.</param>
    /// <param name="forces">Forces there.</param>
    public static SectionForces Beyond(double angle, double last, in SectionForces forces)
    {
        double side = Math.Sign(angle), now = Math.Abs(angle), start = side * last;
        double end = Math.Max(FullPlate, start + ShortestFade);
        double left = now >= end ? 0 : (end - now) / (end - start);
        double fade = left * left;
        SectionForces plate = Plate(now, side), plateAtStart = Plate(start, side);
        return new(
            plate.Cl + fade * (forces.Cl - plateAtStart.Cl),
            plate.Cd + fade * (forces.Cd - plateAtStart.Cd),
            plate.Cm + fade * (forces.Cm - plateAtStart.Cm),
            // The suction peak falls at stall; keeping it errs toward telling of cavitation too early.
            forces.MinimumCp,
            left * forces.Separation,
            PolarOrigin.Stalled);
    }

    /// <summary>A plate; its load moves from the quarter chord to mid-chord as it turns across the stream.</summary>
    private static SectionForces Plate(double angle, double side)
    {
        double sine = Math.Sin(angle), cosine = Math.Cos(angle), normal = 2 * sine;
        // Place of the load behind the quarter chord: 0.25 at 90 degrees, 0.075 near 0 (Hoerner, 1975, Fluid-Dynamic Lift; from memory).
        double arm = 0.25 - 0.175 * (1 - 2 * angle / Math.PI);
        return new(side * normal * cosine, normal * sine, -side * normal * arm, 0, 0, PolarOrigin.Stalled);
    }
}
