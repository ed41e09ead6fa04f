using Finwright.Assessment.Afloat;
using Finwright.Design;
using Finwright.Geometry.Blades;
using Finwright.Geometry.FromDesign;
using Finwright.Geometry.Sections;
using Finwright.Water.Polars;
using Finwright.Water.Sections;

namespace Finwright.Assessment.Tests.Afloat;

/// <summary>Fins sailed with sections in closed form, so that nothing here waits for the flow past real ones.</summary>
internal static class SailedFin
{
    /// <summary>Lift slope 2π, peak at 12°, drag with the square of the angle.</summary>
    private const double Stall = 12 * Math.PI / 180;

    public static FinDesign Design { get; } = new()
    {
        Name = "test fin",
        Shape = new() { Outline = new() { Family = OutlineFamily.Upright, SpanMm = 360, RootChordMm = 130 } },
        Brief = new() { RiderMassKg = 80 },
    };

    public static SectionCurve Solve(Section section, SectionConditions conditions, IReadOnlyList<double> angles, CancellationToken cancellation) =>
        new() { Conditions = conditions, Points = [.. angles.Select(Point)] };

    public static FinPolars Polars(FinDesign design, SectionCurveSolver? solver = null) =>
        PolarsOfBlade.Solve(design, Blade(design), solver ?? Solve, null, TestContext.Current.CancellationToken);

    public static FinAfloat Sail(FinDesign design, SectionCurveSolver? solver = null) =>
        AfloatWork.Of(design, Blade(design), Polars(design, solver), null, TestContext.Current.CancellationToken);

    public static Blade Blade(FinDesign design)
    {
        List<Finding> findings = [];
        Blade? blade = BladeFromDesign.Create(design, findings);
        Assert.True(blade is not null, string.Join('\n', findings));
        return blade;
    }

    private static SectionPoint Point(double angle)
    {
        double ratio = Math.Abs(angle) / Stall;
        return new()
        {
            AngleOfAttack = angle,
            Converged = Math.Abs(angle) < 0.3,
            Cl = 2 * Math.PI * angle * (1 - ratio * ratio * ratio / 4),
            Cd = 0.007 + 0.2 * angle * angle,
            SeparationUpper = Math.Clamp(1.3 - 2.5 * angle, 0, 1),
            SeparationLower = Math.Clamp(1.3 + 2.5 * angle, 0, 1),
            MinimumCp = -0.4 - 40 * angle * angle,
        };
    }
}
