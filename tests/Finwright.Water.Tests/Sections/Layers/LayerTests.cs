using Finwright.Numerics.Differentiation;
using Finwright.Water.Sections.Layers;

namespace Finwright.Water.Tests.Sections.Layers;

public sealed class LayerTests
{
    private const double Reynolds = 1e6;

    [Theory]
    [InlineData(1.0)]
    [InlineData(0.5)]
    [InlineData(0.2)]
    [InlineData(0.0)]
    [InlineData(-0.10)]
    [InlineData(-0.18)]
    public void Laminar_closure_agrees_with_the_exact_similar_profiles(double beta)
    {
        // Exact: Falkner and Skan, 1931, Phil. Mag. 12, solved here. The closures are fits to these: H* 0.3 %, dissipation 2 %,
        // friction 0.01 of a plate's 0.22.
        FalknerSkan exact = new(beta);
        Real shape = new(exact.Shape), one = new(1);
        Assert.Equal(exact.EnergyShape, LaminarClosure.EnergyShape(shape).Value, 0.003 * exact.EnergyShape);
        Assert.Equal(exact.HalfFrictionTimesReynolds, LaminarClosure.Friction(shape, one).Value / 2, 0.01);
        Assert.Equal(exact.Dissipation, LaminarClosure.Dissipation(shape, one).Value, 0.02 * exact.Dissipation);
    }

    [Theory]
    [InlineData(4.324, 1.5164, -0.0175, 0.2062)]
    [InlineData(5.320, 1.5351, -0.0507, 0.2010)]
    [InlineData(5.947, 1.5541, -0.0601, 0.1950)]
    [InlineData(7.097, 1.5966, -0.0666, 0.1814)]
    [InlineData(10.056, 1.7257, -0.0625, 0.1454)]
    public void Laminar_closure_agrees_with_profiles_that_flow_backward(double shape, double energyShape, double friction, double dissipation)
    {
        // Numerical reference: lower branch of the Falkner-Skan equation as a boundary-value problem with SciPy's solve_bvp, relative error 1e-7
        // (branch found by Stewartson, 1954, Proc. Camb. Phil. Soc. 50). Tolerances: H* 0.6 %, friction 0.012, dissipation 2 %.
        Real h = new(shape), one = new(1);
        Assert.Equal(energyShape, LaminarClosure.EnergyShape(h).Value, 0.006 * energyShape);
        Assert.Equal(friction, LaminarClosure.Friction(h, one).Value / 2, 0.012);
        Assert.Equal(dissipation, LaminarClosure.Dissipation(h, one).Value, 0.02 * dissipation);
    }

    [Fact]
    public void Plate_without_pressure_gradient_grows_as_blasius_says()
    {
        // Blasius, 1908: θ = 0.66411 √(ν x / U), H = 2.5911, C_f = 0.66411 / √Re_x. Tolerance 0.5 %: the closure's fit.
        PlateMarch march = PlateMarch.Laminar(_ => 1, PlateMarch.Stations(0.01, 1, 40), 0.66411 * Math.Sqrt(0.01 / Reynolds), 2.6, Reynolds);
        Assert.Equal(40, march.X.Count);
        Assert.Equal(0.66411 / Math.Sqrt(Reynolds), march.Momentum[^1], 0.005 * 0.66411 / Math.Sqrt(Reynolds));
        Assert.Equal(2.5911, march.Shape[^1], 0.005 * 2.5911);
        Assert.Equal(0.66411 / Math.Sqrt(Reynolds), march.Friction[^1], 0.005 * 0.66411 / Math.Sqrt(Reynolds));
    }

    [Theory]
    [InlineData(0.5, 0.01)]
    [InlineData(0.2, 0.01)]
    [InlineData(-0.10, 0.01)]
    [InlineData(-0.18, 0.03)]
    public void Similar_layers_stay_similar(double beta, double tolerance)
    {
        // Exact: Falkner and Skan, 1931. Near separation the shape factor is very sensitive to m, hence 3 %.
        FalknerSkan exact = new(beta);
        double scale = exact.MomentumScale * Math.Sqrt(2 / (exact.M + 1) / Reynolds);
        double At(double x) => scale * Math.Sqrt(x / Math.Pow(x, exact.M));
        PlateMarch march = PlateMarch.Laminar(x => Math.Pow(x, exact.M), PlateMarch.Stations(0.01, 1, 80), At(0.01), exact.Shape, Reynolds);
        Assert.Equal(80, march.X.Count);
        Assert.Equal(At(1), march.Momentum[^1], tolerance * At(1));
        Assert.Equal(exact.Shape, march.Shape[^1], tolerance * exact.Shape);
    }

    [Fact]
    public void Logarithmic_differences_meet_power_laws_on_any_spacing()
    {
        // The same similar layer on 6 and on 200 stations: the scheme is exact for power laws.
        FalknerSkan exact = new(0.5);
        double scale = exact.MomentumScale * Math.Sqrt(2 / (exact.M + 1) / Reynolds);
        double Run(int count) => PlateMarch.Laminar(x => Math.Pow(x, exact.M), PlateMarch.Stations(1e-4, 1, count), scale * Math.Sqrt(1e-4 / Math.Pow(1e-4, exact.M)), exact.Shape, Reynolds).Momentum[^1];
        Assert.Equal(Run(200), Run(6), 0.002 * Run(200));
    }

    [Fact]
    public void Linearly_retarded_stream_separates_where_howarth_says()
    {
        // Howarth, 1938, Proc. Roy. Soc. A 164: u = 1 - x, separation at x = 0.1199 (from memory). With the speed given the equations end there
        // in a singularity; 3 %.
        PlateMarch march = PlateMarch.Laminar(x => 1 - x, [.. Enumerable.Range(1, 1500).Select(i => i * 1e-4)], 0.66411 * Math.Sqrt(1e-4 / Reynolds), 2.6, Reynolds);
        int last = march.Friction.FindLastIndex(f => f > 0);
        Assert.Equal(0.1199, march.X[last], 0.03 * 0.1199);
    }

    [Theory]
    [InlineData(1e6, 0.004409)]
    [InlineData(2e6, 0.003872)]
    [InlineData(5e6, 0.003294)]
    [InlineData(1e7, 0.002934)]
    public void Turbulent_plate_has_schoenherrs_friction(double reynolds, double total)
    {
        // Schoenherr, 1932: 0.242 / √C = lg(Re C), total friction of one side. Tolerance 5 %: the scatter of the data behind the line
        // and of lines of different authors (Prandtl-Schlichting differs by 1.5 to 2.5 %).
        PlateMarch march = PlateMarch.Turbulent(_ => 1, PlateMarch.Stations(2e4 / reynolds, 1, 200), 0.004408 * 2e4 / reynolds * 0.8, reynolds);
        Assert.Equal(total, 2 * march.Momentum[^1], 0.05 * total);
    }

    [Theory]
    [InlineData(1000, 0.00845)]
    [InlineData(2000, 0.00710)]
    [InlineData(5000, 0.00573)]
    public void Fully_rough_plate_has_the_friction_of_sand(double lengthOverSand, double total)
    {
        // Schlichting, Boundary-Layer Theory: C = (1.89 + 1.62 lg(l/k))^-2.5 for sand, values computed from it. At this Reynolds number k+ is far above 70.
        // Tolerance 15 %: the roughness function is the gradual one of finished surfaces, and the shape factor follows the smooth layer's lag;
        // grains here stand out a thousandfold farther than on any finish of a fin.
        // Starts behind the first twentieth, where the grains stand out of the layer, with the law's own momentum thickness.
        const double High = 1e8, Start = 0.05;
        double thickness = 0.5 * Start * Math.Pow(1.89 + 1.62 * Math.Log10(Start * lengthOverSand), -2.5);
        PlateMarch march = PlateMarch.Turbulent(_ => 1, PlateMarch.Stations(Start, 1, 200), thickness, High, 1 / lengthOverSand);
        Assert.Equal(total, 2 * march.Momentum[^1], 0.15 * total);
    }

    [Theory]
    [InlineData(9, 2.78e6)]
    [InlineData(6, 1.52e6)]
    [InlineData(4, 0.89e6)]
    public void Waves_on_a_plate_grow_to_n_where_the_envelope_says(double n, double place)
    {
        // Numerical reference: the envelope formula integrated on the exact plate by an independent code. Tolerance 5 %: our layer's θ and H are fits, and H moves the onset.
        const double High = 5e6;
        PlateMarch march = PlateMarch.Laminar(_ => 1, PlateMarch.Stations(0.002, 1, 400), 0.66411 * Math.Sqrt(0.002 / High), 2.59, High);
        int at = march.Amplification.FindIndex(a => a >= n);
        Assert.True(at > 0);
        Assert.Equal(place, march.X[at] * High, 0.05 * place);
    }

    [Theory]
    [InlineData(200, 4.302, 0.03954)]
    [InlineData(800, 4.302, 0.04302)]
    [InlineData(400, 4.604, 0.04485)]
    [InlineData(1600, 4.930, 0.04962)]
    [InlineData(100, 5.270, 0.04399)]
    [InlineData(400, 5.270, 0.04950)]
    [InlineData(1600, 5.270, 0.05161)]
    [InlineData(100, 6.207, 0.04759)]
    [InlineData(800, 6.207, 0.05386)]
    public void Waves_on_a_layer_that_leaves_the_surface_grow_as_orr_and_sommerfeld_say(double reynolds, double shape, double growth)
    {
        // Numerical reference: spatial eigenvalue of the Orr-Sommerfeld equation, 91 Chebyshev points, on the Falkner-Skan profiles (SciPy's solve_bvp), greatest over the
        // frequency. The same code gives c = 0.36412 + 0.00796i for Blasius' profile at Re 998, alpha 0.308 (Jordinson, 1970, J. Fluid Mech. 43, from memory). Tolerance 5 %: the fit.
        Assert.Equal(growth, Amplification.Growth(new Real(shape), new Real(reynolds)).Value, 0.05 * growth);
    }
}
