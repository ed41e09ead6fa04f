using Finwright.Strength.Materials;
using Finwright.Strength.Plates;
using static Finwright.Strength.Tests.Plates.PlateCases;

namespace Finwright.Strength.Tests.Plates;

/// <summary>Strips without contraction whose stiffness through the thickness is known in closed form.</summary>
public sealed class PlateLayerTests
{
    private const double Width = 0.03, Thick = 0.01, Length = 0.2;

    [Fact]
    public void Hole_to_one_side_leaves_a_thinner_strip()
    {
        // Upper half gone: thickness 5 mm about its own middle, D − B²/A exactly: rounding only.
        PlateFin halved = Strip with { Voids = [PlateVoid.Rectangle(-1, 1, -1, 1, 0, 1)] }, thin = Strip with { HalfThickness = (_, _) => Thick / 4 };
        PlateSolution one = PlateModel.Create(halved).Solve(Line(Strip, Length, 5)), two = PlateModel.Create(thin).Solve(Line(Strip, Length, 5));
        Assert.Equal(1, one.Tip(Strip, 0.5) / two.Tip(Strip, 0.5), 1e-7);

        // The lower face is 2.5 mm from the neutral surface.
        Assert.Equal(1, one.StressAt(0.015, 0.1).Lower.SigmaY / two.StressAt(0.015, 0.1).Lower.SigmaY, 1e-7);
    }

    [Fact]
    public void Hole_through_everything_leaves_the_least_thickness()
    {
        PlateModel model = PlateModel.Create(Strip with { Voids = [PlateVoid.Circle(0.015, 0.1, 0.005, -1, 1)] });
        PlateSolution solution = model.Solve(Line(Strip, Length, 20));
        Assert.Equal(PlateStatus.Solved, solution.Status);
        Assert.True(solution.Tip(Strip, 0.5) > 1.01 * PlateModel.Create(Strip).Solve(Line(Strip, Length, 20)).Tip(Strip, 0.5));

        // Mass less the hole's π r² t; 10 %: a circle in 10 × 10 points an element.
        double hole = Math.PI * 0.005 * 0.005 * Thick * Density;
        Assert.Equal(Density * Width * Thick * Length - hole, model.MassProperties.Mass, 0.1 * hole);
    }

    [Fact]
    public void Sheet_stiffens_as_a_layer_at_mid_thickness()
    {
        // E I = b (E_c (t³ − s³) + E_s s³)/12; the sheet all over. Compared through the curvature under an end moment.
        const double SheetThick = 0.004, SheetModulus = 40e9;
        PlateFin fin = Strip with { WallDepth = (_, _) => 0, Sheet = new(SheetThick, Uncontracting(SheetModulus, 4e9), (_, _) => true) };
        double rigidity = Width * (2900e6 * (Math.Pow(Thick, 3) - Math.Pow(SheetThick, 3)) + SheetModulus * Math.Pow(SheetThick, 3)) / 12;
        PlateSolution solution = PlateModel.Create(fin).Solve(EndMoment(10));
        Assert.Equal(10 / rigidity, solution.Curvature(0.015, 0.1).Y, 1e-6 * 10 / rigidity);
    }

    [Fact]
    public void Sheet_along_the_trailing_edge_covers_its_slot()
    {
        PlateSheet sheet = PlateSheet.AlongTrailingEdge(0.001, Strip.Core, y => 0.1 + y, 0.01, 0.05, 0.15);
        Assert.True(sheet.Covers(0.195, 0.1));
        Assert.False(sheet.Covers(0.185, 0.1));
        Assert.False(sheet.Covers(0.145, 0.045));
    }

    [Fact]
    public void Grain_counts_along_its_direction()
    {
        // No contraction: bending along the span knows only the modulus along the span.
        Elasticity grain = new(9e9, 2e9, 0, 1e9, 1e9, 1e9, Density);
        PlateSolution solution = PlateModel.Create(Strip with { Wall = grain }).Solve(EndMoment(10));
        double rigidity = 2e9 * Width * Thick * Thick * Thick / 12;
        Assert.Equal(10 / rigidity, solution.Curvature(0.015, 0.1).Y, 1e-6 * 10 / rigidity);
        Assert.Equal(-10 / rigidity * 2e9 * Thick / 2, solution.StressAt(0.015, 0.1).Upper.SigmaY, 10.0);
    }

    [Fact]
    public void Twist_of_a_wide_strip_follows_Kirchhoff()
    {
        // Plate twisted by forces ±F at its corners: w = F x y/(2 D (1 − ν)) (Kirchhoff; Timoshenko and Woinowsky-Krieger, 1959, from memory). Free of any holding but three corners,
        // here by soft springs under the root, so the corner forces are taken up there: curvature κxy = F/(D (1 − ν)) in the middle, softer by
        // 1/(1 − 0.63 t/b) for the edges, as a thin rectangle in torsion (Saint-Venant; from memory). 0.3 %.
        const double Side = 0.2, T = 0.004, Force = 10;
        PlateFin fin = Even(Side, Side, 0, T, 0.3) with { Root = PlateRoot.Elastic(x => x is < 0.002 or > Side - 0.002 ? new(1e9, 0, 0) : new(0, 1e-3, 1e-3)) };
        PlateSolution solution = PlateModel.Create(fin, Evenly(20, 20)).Solve([new(0, Side, -Force), new(Side, Side, Force)]);
        double rigidity = 1e9 * T * T * T / (12 * (1 - 0.09));
        double expected = Force / (rigidity * 0.7 * (1 - 0.63 * T / Side));
        Assert.Equal(expected, solution.Curvature(Side / 2, Side / 2).XY, 0.003 * expected);
    }

    private static IReadOnlyList<PlateLoad> EndMoment(double moment) => [.. Line(Strip, Length, -moment), .. Line(Strip, Length, moment).Select(load => load with { Y = Length + 1 })];
}
