using CsCheck;
using Finwright.Strength.Beams;

namespace Finwright.Strength.Tests.Beams;

public sealed class BeamModelTests
{
    private const double Span = 0.22, Bending = 60, Torsion = 80, Shear = 1e6;

    // Two lengths of uniform beam are integrated exactly; what is left is rounding.
    private const int Digits = 10;

    [Fact]
    public void Solve_uniform_cantilever_under_a_tip_force_gives_the_closed_form()
    {
        // F l³/3 EI + F l/(G A); midway F (l/2)² (3 l − l/2)/6 EI + F l/2/(G A).
        BeamShape shape = Uniform(0).Solve([new(0, Span, 100)]);
        Assert.Equal(100 * Math.Pow(Span, 3) / (3 * Bending) + 100 * Span / Shear, shape.DeflectionAt(0.05, Span), Digits);
        Assert.Equal(100 * Span * Span / 4 * 2.5 * Span / (6 * Bending) + 50 * Span / Shear, shape.DeflectionAt(0, Span / 2), Digits);
        Assert.Equal(0, shape.TwistAt(Span), Digits);
        Assert.Equal((100, 100 * Span, 0), (shape.RootForce, shape.RootMomentX, shape.RootMomentY));
    }

    [Fact]
    public void Solve_uniform_cantilever_under_many_forces_goes_to_the_even_load_with_the_second_order()
    {
        // p l⁴/8 EI + p l²/(2 G A). Forces at the middles of n strips: midpoint rule.
        double exact = 500 * Math.Pow(Span, 4) / (8 * Bending) + 500 * Span * Span / (2 * Shear);
        double Miss(int n) => Math.Abs(Uniform(0).Solve([.. Enumerable.Range(0, n).Select(i => new BeamLoad(0, Span * (i + 0.5) / n, 500 * Span / n))]).DeflectionAt(0, Span) - exact);
        Assert.InRange(Math.Log2(Miss(10) / Miss(20)), 1.95, 2.05);
        Assert.True(Miss(40) < 3e-4 * exact);
    }

    [Fact]
    public void Solve_force_off_the_axis_twists_by_its_torque()
    {
        BeamShape shape = Uniform(0).Solve([new(-0.02, 0.15, 100)]);
        Assert.Equal(100 * 0.02 * 0.15 / Torsion, shape.TwistAt(Span), Digits);
        Assert.Equal(100 * 0.02 * 0.10 / Torsion, shape.TwistAt(0.10), Digits);
        // Ahead of the axis the nose goes to starboard with the force: more of w there.
        Assert.Equal(shape.TwistAt(Span) * 0.05, shape.DeflectionAt(-0.05, Span) - shape.DeflectionAt(0, Span), Digits);
    }

    [Fact]
    public void Solve_swept_beam_bends_along_its_axis_and_turns_its_level_sections()
    {
        // Length l/cos; tip slope along the axis F s²/2 EI; the level section sees −sin of it.
        const double Sweep = 0.4;
        double length = Span / Math.Cos(Sweep);
        BeamShape shape = Uniform(Sweep, BeamCut.SquareToAxis).Solve([new(Span * Math.Tan(Sweep), Span, 100)]);
        Assert.Equal(100 * Math.Pow(length, 3) / (3 * Bending) + 100 * length / Shear, shape.DeflectionAt(Span * Math.Tan(Sweep), Span), Digits);
        Assert.Equal(-Math.Sin(Sweep) * 100 * length * length / (2 * Bending), shape.TwistAt(Span), Digits);
    }

    [Fact]
    public void Solve_swept_beam_of_level_sections_is_softer_by_the_cosine()
    {
        const double Sweep = 0.4;
        BeamLoad load = new(Span * Math.Tan(Sweep), Span, 100, 1, 2);
        BeamShape square = Uniform(Sweep, BeamCut.SquareToAxis).Solve([load]), level = Uniform(Sweep).Solve([load]);
        Assert.Equal(1 / Math.Cos(Sweep), level.DeflectionAt(0.1, Span) / square.DeflectionAt(0.1, Span), Digits);
        Assert.Equal(1 / Math.Cos(Sweep), level.TwistAt(Span) / square.TwistAt(Span), Digits);
    }

    [Fact]
    public void Solve_torque_about_a_swept_axis_twists_without_bending()
    {
        const double Sweep = -0.3;
        BeamShape shape = Uniform(Sweep, BeamCut.SquareToAxis).Solve([new(Span * Math.Tan(Sweep), Span, 0, 5 * Math.Sin(Sweep), 5 * Math.Cos(Sweep))]);
        Assert.Equal(0, shape.DeflectionAt(Span * Math.Tan(Sweep), Span), Digits);
        Assert.Equal(5 * Span / Math.Cos(Sweep) / Torsion * Math.Cos(Sweep), shape.TwistAt(Span), Digits);
    }

    [Fact]
    public void Solve_tapered_beam_gives_the_closed_form()
    {
        // EI = EI₀ (1 − k y/l)⁴, tip force: with r = 1 − k, w = F l³/(3 EI₀ r), the integral of (l − y)²/EI: ∫(1 − u)²/(1 − k u)⁴ du = 1/(3 (1 − k)).
        const double Tip = 0.4;
        BeamModel beam = BeamModel.Create([.. Enumerable.Range(0, 9).Select(i => new BeamStation(Span * i / 8, Bending * Math.Pow(1 - (1 - Tip) * i / 8, 4), Torsion, 0, 1e12))]);
        double exact = 100 * Math.Pow(Span, 3) / (3 * Bending * Tip);
        // Gauss's four points on each of eight lengths.
        Assert.Equal(1, beam.Solve([new(0, Span, 100)]).DeflectionAt(0, Span) / exact, 7);
    }

    [Fact]
    public void Solve_moves_at_one_load_from_another_as_the_other_way_round()
    {
        // Maxwell: both displacements are equal, whatever the axis.
        Gen.Select(Gen.Double[-0.5, 0.5], Gen.Double[0.02, Span], Gen.Double[0.02, Span], Gen.Double[-0.05, 0.05], Gen.Double[-0.05, 0.05], Gen.Double[0.1, 1]).Hold((kink, y1, y2, x1, x2, taper) =>
        {
            BeamModel beam = BeamModel.Create([new(0, 60, 80, 0.03, 1e6), new(0.1, 60 * taper, 50, 0.03 + kink * 0.1, 1e6 * taper), new(Span, 20 * taper, 10, 0.08, 3e5)]);
            double first = beam.Solve([new(x1, y1, 1), new(0, y2, 0)]).DeflectionAt(x2, y2), second = beam.Solve([new(x2, y2, 1), new(0, y1, 0)]).DeflectionAt(x1, y1);
            Assert.InRange(first - second, -1e-9 * Math.Abs(first) - 1e-16, 1e-9 * Math.Abs(first) + 1e-16);
            // And the force works on the way it makes.
            Assert.True(beam.Solve([new(x1, y1, 1)]).DeflectionAt(x1, y1) > 0);
        });
    }

    [Fact]
    public void TwistFlexibility_is_the_twist_of_each_load_alone()
    {
        BeamModel beam = Uniform(0.2);
        double[] flexibility = beam.TwistFlexibility([new(0, 0.1, 1), new(0, 0.2, 0, 0, 1)], [0.05, 0.15, 0.22]);
        Assert.Equal(6, flexibility.Length);
        Assert.Equal(beam.Solve([new(0, 0.2, 0, 0, 1), new(0, 0.15, 0)]).TwistAt(0.15), flexibility[3], Digits);
    }

    [Fact]
    public void At_of_edgewise_compliance_is_the_cantilever_with_shear()
    {
        EdgeStation[] stations = [new(0, 5000, 1e6), new(0.1, 5000, 1e6), new(Span, 5000, 1e6)];
        Assert.Equal(Math.Pow(0.15, 3) / (3 * 5000) + 0.15 / 1e6, EdgewiseCompliance.At(stations, 0.15), 15);
        Assert.Equal(0, EdgewiseCompliance.At(stations, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => EdgewiseCompliance.At(stations, 0.3));
    }

    [Fact]
    public void Create_impossible_beams_says_what_is_wrong()
    {
        Assert.Throws<ArgumentException>(() => BeamModel.Create([new(0, 1, 1, 0, 1)]));
        Assert.Throws<ArgumentException>(() => BeamModel.Create([new(0, 1, 1, 0, 1), new(0, 1, 1, 0, 1)]));
        Assert.Throws<ArgumentOutOfRangeException>(() => BeamModel.Create([new(0, 1, 1, 0, 1), new(1, 0, 1, 0, 1)]));
        Assert.Throws<ArgumentOutOfRangeException>(() => Uniform(0).Solve([new(0, 0.3, 1)]));
        Assert.Throws<ArgumentOutOfRangeException>(() => Uniform(0).Solve([new(0, 0.1, double.NaN)]));
    }

    private static BeamModel Uniform(double sweep, BeamCut cut = BeamCut.Level) =>
        BeamModel.Create([new(0, Bending, Torsion, 0, Shear), new(Span, Bending, Torsion, Span * Math.Tan(sweep), Shear)], cut);
}
