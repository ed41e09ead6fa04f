using Finwright.Assessment.Afloat;
using Finwright.Assessment.Figures;
using Finwright.Water.Lifting;
using Finwright.Water.Polars;
using Finwright.Water.Sailing;

namespace Finwright.Assessment.Packing;

/// <summary>The figures of a pack: polar, span load, forces over leeway, pressure.</summary>
internal static class AfloatFigures
{
    private const double GreatestAngle = 16;
    private const double AngleStep = 0.25;

    // Where along the span the section's polar is shown.
    private const double PolarPlace = 0.4;

    /// <summary>Draws the figures that there is something to draw for.</summary>
    /// <returns>Name of the file, what it shows, the figure.</returns>
    public static IEnumerable<(string File, string What, Figure Figure)> Of(string name, FinAfloat afloat, FinPolars polars)
    {
        if (polars.Family is not { } family || afloat[LoadCaseKind.Cruise] is not { } cruise)
            yield break;
        double span = afloat.Planform.Span;
        LiftingResult at = cruise.UnderHull.Result;
        yield return ("polar.svg", "lift and drag of the section at 40 % of the depth", Polar(name, afloat, family));
        string load = cruise.IsCarried ? $"{cruise.Load.SideForce:0} N at {cruise.Load.Speed:0.#} m/s" : $"at its most, {Math.Abs(at.SideForce):0} N at {cruise.Load.Speed:0.#} m/s";
        yield return ("span-load.svg", "how the side force at cruise is spread over the depth, against an ellipse", SpanLoadFigure.Draw(
            $"{name}: side force over the depth, {load}",
            1e3 * span,
            [.. at.Strips.Select(strip => new SpanLoadSample(1e3 * strip.Depth, 1e-2 * strip.Load, 1e-2 * strip.EllipticLoad))]));
        yield return ("leeway.svg", "side force and drag over leeway at cruise, with the bounds of the hull's effect", LeewayFigure.Draw(
            $"{name}: side force and drag at {cruise.Load.Speed:0.#} m/s",
            [.. Samples(afloat.Sweep)],
            [.. Samples(afloat.SweepUnderMirror)],
            [.. Samples(afloat.SweepUnderBareSurface)],
            cruise.IsCarried ? Sample(at) : null));
        if (afloat.Pressure is { } pressure)
            yield return ("pressure.svg", "pressure along the section at cruise", PressureFigure.Draw($"{name}: pressure {1e3 * pressure.Depth:0} mm below the hull, {load}", pressure.X, pressure.Cp, pressure.BoilingCp));
    }

    private static Figure Polar(string name, FinAfloat afloat, SectionPolarFamily family)
    {
        ISectionPolar polar = family.At(PolarPlace);
        // The section sees the Reynolds number of the strip there, case by case.
        PolarLine[] lines = [.. afloat.Cases
            .Where(own => own.Load.Kind is not LoadCaseKind.Overload)
            .Select(own => Line(polar, own.Load.Speed, own.UnderHull.Result.Strips.MinBy(strip => Math.Abs(strip.Depth - PolarPlace * afloat.Planform.Span))!.ReynoldsNumber))];
        return PolarFigure.Draw($"{name}: section at {100 * PolarPlace:0} % of the depth", lines);
    }

    private static PolarLine Line(ISectionPolar polar, double speed, double reynolds) => new(
        $"{speed:0.#} m/s, Re {reynolds / 1e6:0.00} million",
        [.. Enumerable.Range(0, (int)(GreatestAngle / AngleStep) + 1).Select(i =>
        {
            SectionForces forces = polar.At(double.DegreesToRadians(i * AngleStep), reynolds);
            return new PolarSample(i * AngleStep, forces.Cl, forces.Cd, forces.Origin == PolarOrigin.Solved);
        })]);

    private static IEnumerable<LeewaySample> Samples(IReadOnlyList<LiftingResult> sweep) =>
        sweep.Where(result => result.Status is LiftingStatus.Attached or LiftingStatus.Stalled).Select(Sample);

    private static LeewaySample Sample(LiftingResult result) => new(double.RadiansToDegrees(result.Flow.Leeway), result.SideForce, result.Drag.Total);
}
