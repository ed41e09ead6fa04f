using Finwright.Strength.Plates;
using static Finwright.Strength.Tests.Plates.PlateCases;

namespace Finwright.Strength.Tests.Plates;

public sealed class PlateConvergenceTests
{
    [Fact]
    public void Solve_tapered_strip_converges_with_the_fourth_order()
    {
        // Strip without contraction, thickness H (1 − y/2L): w = 12 F/(E b H³) ∫ (L − y)²/(1 − y/2L)³ dy + F/(5/6 G b H) ∫ dy/(1 − y/2L)
        // = 12 F L³/(E b H³) (8 ln 2 − 5) + 2 F L ln 2/(5/6 G b H), by integration. Quadratic elements: error of an energy as the fourth power of their length.
        const double Length = 0.2, Width = 0.03, Thick = 0.01, Force = 20, Modulus = 2900e6, Shear = Modulus / 2.7;
        double exact = 12 * Force * Math.Pow(Length, 3) / (Modulus * Width * Math.Pow(Thick, 3)) * (8 * Math.Log(2) - 5) + 2 * Force * Length * Math.Log(2) / (5.0 / 6 * Shear * Width * Thick);
        PlateFin fin = PlateFin.Trapezoid(Length, Width, Width, 0, Thick, Thick / 2, _ => 0.5, Uncontracting(Modulus, Shear));
        double Error(int elements) => Math.Abs(PlateModel.Create(fin, Evenly(2, elements)).Solve(Line(fin, Length, Force)).Deflection(Width / 2, Length) / exact - 1);
        Assert.InRange(Math.Log2(Error(4) / Error(8)), 3.5, 4.5);
        Assert.InRange(Error(16), 0, 5e-6);
    }

    [Fact]
    public void Modes_converge_with_at_least_the_third_order()
    {
        // Square cantilever plate, third mode, against a mesh of 16 × 16. The corners at the clamp are singular, so it is less than the fourth.
        double Value(int n) => Frequencies(1, 0, 3, Evenly(n, n))[2];
        double exact = Value(16), coarse = Value(2) - exact, fine = Value(4) - exact;
        Assert.True(coarse > 0 && fine > 0);
        Assert.InRange(Math.Log2(coarse / fine), 3, 6);
    }

    [Fact]
    public void Usual_mesh_agrees_with_one_twice_as_fine()
    {
        // 0.5 %, asked for; stress 1 %.
        PlateOptions usual = new(), finer = new() { ChordElements = 2 * usual.ChordElements, SpanElements = 2 * usual.SpanElements };
        PlateFin rods = Layered with { Rods = [new(0.03, 0, 0.08, 0.15, 0, 0.004, 125e9, 4.2e9, 1500), new(0.05, 0, 0.09, 0.12, 0, 0.004, 125e9, 4.2e9, 1500)] };
        foreach (PlateFin fin in new[] { Tapered, Delta, Layered, RoundTip, rods })
        {
            PlateModel model = PlateModel.Create(fin), other = PlateModel.Create(fin, finer);
            PlateSolution one = model.Solve(Pressure), two = other.Solve(Pressure);
            double y = 0.9 * fin.Span;
            (double x, _) = At(fin, 0.5, y);
            Assert.InRange(one.Deflection(x, y) / two.Deflection(x, y), 0.995, 1.005);
            Assert.InRange(one.SlopeX(x, y) / two.SlopeX(x, y), 0.995, 1.005);
            Assert.InRange(one.Stress(fin, 0.3 * fin.Span) / two.Stress(fin, 0.3 * fin.Span), 0.99, 1.01);
        }

        IReadOnlyList<double> first = PlateModel.Create(Tapered).Modes(6).AngularFrequencies, second = PlateModel.Create(Tapered, finer).Modes(6).AngularFrequencies;
        for (int m = 0; m < 6; m++)
            Assert.InRange(first[m] / second[m], 0.995, 1.005);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(Math.PI / 6)]
    public void Thin_plates_do_not_lock(double skew)
    {
        // Deflection times rigidity does not depend on the thickness once shear is nothing: 0.1 % from 1/100 down, on a coarse mesh; shear adds to it at 1/10.
        double Scaled(double thickness)
        {
            PlateFin fin = Even(1, 1, skew, thickness, 0.3);
            PlateModel model = PlateModel.Create(fin, new PlateOptions { ChordElements = 4, SpanElements = 4, NoseGrading = 0, LeastThickness = 1e-6 });
            (double x, double y) = At(fin, 0.5, fin.Span);
            return model.Solve((_, _) => 1).Deflection(x, y) * thickness * thickness * thickness;
        }

        double thin = Scaled(1e-4);
        Assert.InRange(Scaled(1e-3) / thin, 0.999, 1.001);
        Assert.InRange(Scaled(1e-2) / thin, 0.999, 1.003);
        Assert.InRange(Scaled(1e-1) / thin, 1.002, 1.06);
    }
}
