using CsCheck;
using Finwright.Strength.Materials;
using Finwright.Strength.Plates;
using static Finwright.Strength.Tests.Plates.PlateCases;

namespace Finwright.Strength.Tests.Plates;

public sealed class PlateModelTests
{
    // Rounding: far above the balance the solution holds itself to.
    private const double Rounding = 1e-7;

    private static readonly Gen<(double Sweep, double Taper, double Share, double Depth, double Rod)> Fins =
        Gen.Select(Gen.Double[-0.5, 1.2], Gen.Double[0.05, 1.2], Gen.Double[-0.3, 1.3], Gen.Double[0, 1.1], Gen.Double[0.1, 0.9]);

    [Fact]
    public void Reactions_balance_loads_and_work_is_twice_the_energy() => Fins.Hold(fin =>
    {
        (double sweep, double taper, double share, double depth, double rod) = fin;
        PlateFin plate = PlateFin.Trapezoid(0.2, 0.1, 0.1 * taper, 0.2 * Math.Tan(sweep), 0.011, 0.004, FourDigit, Elasticity.Isotropic(2900e6, 0.35, Density)) with
        {
            Core = Elasticity.Isotropic(1500e6, 0.3, Density),
            WallDepth = (_, _) => 1.2 * Millimetre,
            Voids = [PlateVoid.Circle(0.05, 0.03, 0.01, -0.001, 0.02)],
            Rods = [new(0.05, -0.01, 0.05 + 0.1 * Math.Tan(sweep), 0.2 * rod, 0.001, 0.003, 125e9, 4e9, 1500)],
        };
        if (rod > 0.5)
            plate = plate with { Root = PlateRoot.Elastic(x => new(1e8, x < 0.05 ? 2e4 : 1e3, 1e3)) };
        (double x, double y) = At(plate, share, 0.2 * depth);
        PlateSolution solution = PlateModel.Create(plate).Solve([new(x, y, 100), new(0.03, 0.05, -30)], (_, _) => 2e3);
        Assert.Equal(PlateStatus.Solved, solution.Status);
        Assert.InRange(solution.ForceBalance, 0, PlateSolution.BalanceLimit);
        Assert.InRange(solution.WorkBalance, 0, PlateSolution.BalanceLimit);
        Assert.True(solution.StrainEnergy > 0);

        // Statics, independent of the mesh: loads, their moment about the root and about x = 0; the pressure by its area.
        double area = 0.2 * 0.1 * (1 + taper) / 2;
        Assert.Equal(-70 - 2e3 * area, solution.ReactionForce, 1e-6);
        double armOfArea = 0.2 * (1 + 2 * taper) / (3 * (1 + taper));
        Assert.Equal(-(100 * y - 30 * 0.05) - 2e3 * area * armOfArea, solution.ReactionMomentX, 1e-6);
    }, iter: 24);

    [Fact]
    public void Mirrored_loads_give_mirrored_answers()
    {
        // An upright fin that is the same fore and aft, on an even mesh.
        PlateFin fin = Even(0.2, 0.1, 0, 0.008, 0.35);
        PlateModel model = PlateModel.Create(fin, Evenly(6, 10));
        PlateSolution left = model.Solve([new(0.02, 0.15, 50)]), right = model.Solve([new(0.08, 0.15, 50)]), back = model.Solve([new(0.02, 0.15, -50)]);
        foreach (double x in new[] { 0.0, 0.03, 0.07, 0.1 })
        {
            double size = Math.Abs(left.Deflection(x, 0.2));
            Assert.Equal(left.Deflection(x, 0.2), right.Deflection(0.1 - x, 0.2), Rounding * size);
            Assert.Equal(left.SlopeX(x, 0.1), -right.SlopeX(0.1 - x, 0.1), Rounding * Math.Abs(left.SlopeX(0.1, 0.2)));
            Assert.Equal(left.Deflection(x, 0.2), -back.Deflection(x, 0.2), Rounding * size);
            Assert.Equal(left.Curvature(x, 0.1).XY, -right.Curvature(0.1 - x, 0.1).XY, 1e-6 * Math.Abs(left.Curvature(x, 0.1).Y));
        }
    }

    [Fact]
    public void Twice_the_size_bends_half_as_far_under_the_same_force()
    {
        // Same material, all lengths × 2: stiffness × 2, stress / 4, frequency / 2, mass × 8.
        PlateFin Fin(double k) => PlateFin.Trapezoid(0.2 * k, 0.11 * k, 0.06 * k, 0.09 * k, 0.0132 * k, 0.006 * k, FourDigit, Elasticity.Isotropic(2900e6, 0.35, Density)) with
        {
            Core = Elasticity.Isotropic(1500e6, 0.3, 1000),
            WallDepth = (_, _) => 0.0012 * k,
            Rods = [new(0.03 * k, 0, 0.06 * k, 0.1 * k, 0.0005 * k, 0.004 * k, 125e9, 4e9, 1500)],
            Voids = [PlateVoid.Rectangle(0.05 * k, 0.07 * k, 0.05 * k, 0.06 * k, 0, 0.02 * k)],
        };
        PlateOptions options = new();
        PlateModel one = PlateModel.Create(Fin(1), options), two = PlateModel.Create(Fin(2), options with { LeastThickness = 2 * options.LeastThickness });
        PlateSolution small = one.Solve([new(0.1, 0.18, 50)]), large = two.Solve([new(0.2, 0.36, 50)]);
        Assert.Equal(0.5, large.Deflection(0.24, 0.4) / small.Deflection(0.12, 0.2), Rounding);
        Assert.Equal(0.25, large.StressAt(0.1, 0.12).Upper.SigmaY / small.StressAt(0.05, 0.06).Upper.SigmaY, Rounding);
        Assert.Equal(0.25, large.RodStations(0)[20].BendingStress / small.RodStations(0)[20].BendingStress, Rounding);
        Assert.Equal(8, two.MassProperties.Mass / one.MassProperties.Mass, Rounding);
        Assert.Equal(0.5, two.Modes(2).AngularFrequencies[1] / one.Modes(2).AngularFrequencies[1], Rounding);
    }

    [Fact]
    public void Flexibility_is_reciprocal_also_beyond_the_edges()
    {
        // Maxwell: deflection at A for a unit load at B is that at B for one at A; B lies behind the trailing edge, as on an overhanging strip.
        PlateModel model = PlateModel.Create(Tapered);
        (double, double)[] places = [(0.06, 0.1), (0.17, 0.2), (0.14, 0.225)];
        PlateFlexibility flexibility = model.Flexibility([.. places.Select(p => new[] { new PlateLoad(p.Item1, p.Item2, 1) })], places);
        Assert.Equal(PlateStatus.Solved, flexibility.Status);
        for (int i = 0; i < 3; i++)
        {
            for (int j = 0; j < i; j++)
                Assert.Equal(1, flexibility.Deflections[3 * i + j] / flexibility.Deflections[3 * j + i], Rounding);
        }
    }

    [Fact]
    public void Solve_load_off_the_edge_acts_with_its_moment()
    {
        // A force behind the edge is the force at the edge and a couple: the couple from two opposite forces far off.
        PlateModel model = PlateModel.Create(Tapered);
        double y = 0.15, edge = Tapered.TrailingEdge(y);
        PlateSolution off = model.Solve([new(edge + 0.02, y, 10)]), on = model.Solve([new(edge, y, 10), new(edge, y, -1), new(edge + 0.2, y, 1)]);
        Assert.Equal(1, off.Deflection(0.1, 0.2) / on.Deflection(0.1, 0.2), Rounding);
        Assert.Equal(10 * (edge + 0.02), off.LoadMomentY, 1e-9);
        Assert.Equal(-off.LoadMomentY, off.ReactionMomentY, 1e-7);
    }

    private const double HardSprings = 1e-5;

    [Fact]
    public void Factors_scale_the_parts()
    {
        PlateFin fin = Layered with { Rods = [new(0.03, 0, 0.09, 0.18, 0, 0.004, 125e9, 4e9, 1500)], Root = PlateRoot.Elastic(_ => new(1e12, 5e3, 1e9)) };
        PlateModel model = PlateModel.Create(fin);
        PlateSolution one = model.Solve(Point(fin));
        double tip = one.Tip(fin, 0.5);
        // The factor of the root is that of bending alone; its springs against moving and twisting are so stiff here that they take no part.
        Assert.Equal(0.5, model.With(new(2, 2, 2, 2)).Solve(Point(fin)).Tip(fin, 0.5) / tip, HardSprings);
        Assert.Equal(1, model.With(new(2, 2, 2, 2)).Solve(Point(fin)).Stress(fin, 0.06) / one.Stress(fin, 0.06), HardSprings);
        Assert.Equal(tip, model.With(new(3, 1, 1, 1)).With(StiffnessFactors.One).Solve(Point(fin)).Tip(fin, 0.5), Rounding * tip);

        // The energy falls in parts: −d(work)/d(factor) is twice the energy of the part, and they add up to the work (Clapeyron).
        const double Step = 1e-4;
        double Work(StiffnessFactors factors) => model.With(factors).Solve(Point(fin)).ExternalWork;
        double sum = 0;
        foreach ((StiffnessFactors more, StiffnessFactors less) in new[]
        {
            (new StiffnessFactors(Wall: 1 + Step), new StiffnessFactors(Wall: 1 - Step)), (new(Core: 1 + Step), new(Core: 1 - Step)),
            (new(Rod: 1 + Step), new(Rod: 1 - Step)), (new(Root: 1 + Step), new(Root: 1 - Step)),
        })
        {
            double part = (Work(less) - Work(more)) / (2 * Step);
            Assert.InRange(part / one.ExternalWork, 0.005, 0.9);
            sum += part;
        }

        // Central difference: Step².
        Assert.Equal(1, sum / one.ExternalWork, HardSprings);

        // The same as a plate made of what the factors say.
        PlateModel made = PlateModel.Create(fin with { Wall = Elasticity.Isotropic(3000e6, 0.35, Density) });
        Assert.Equal(1, model.With(new(Wall: 1.5)).Solve(Point(fin)).Tip(fin, 0.5) / made.Solve(Point(fin)).Tip(fin, 0.5), 1e-4);
    }

    [Fact]
    public void Root_springs_reach_from_clamped_to_loose()
    {
        PlateFin Sprung(RootSpring spring) => Strip with { Root = PlateRoot.Elastic(_ => spring) };
        IReadOnlyList<PlateLoad> load = Line(Strip, 0.2, 20);
        double clamped = PlateModel.Create(Strip).Solve(load).Tip(Strip, 0.5);
        Assert.Equal(clamped, PlateModel.Create(Sprung(new(1e13, 1e10, 1e10))).Solve(load).Tip(Strip, 0.5), 1e-4 * clamped);

        // Root that moves by F/(k b) and turns by F L/(c b), as springs in series with the beam: closed form.
        PlateSolution soft = PlateModel.Create(Sprung(new(1e6, 1e4, 1e4))).Solve(load);
        Assert.Equal(PlateStatus.Solved, soft.Status);
        Assert.Equal(clamped + 1e3 * (20 / (1e6 * 0.03) + 20 * 0.2 * 0.2 / (1e4 * 0.03)), soft.Tip(Strip, 0.5), 1e-5 * clamped);
        Assert.Equal(-20, soft.RootReactions.Sum(r => r.Force), 1e-7);

        PlateModel loose = PlateModel.Create(Sprung(new(1e6, 0, 0)));
        Assert.Equal(PlateStatus.NotHeld, loose.Status);
        Assert.Equal(PlateStatus.NotHeld, loose.Solve(load).Status);
        Assert.Empty(loose.Modes(2).AngularFrequencies);
    }

    [Fact]
    public void Round_tip_ends_the_mesh_early_and_keeps_its_area()
    {
        PlateModel model = PlateModel.Create(RoundTip);
        Assert.InRange(model.MeshEnd, 0.99 * RoundTip.Span, RoundTip.Span - 1e-6);

        // Quarter ellipse π/4 · 0.2 · 0.1; 0.5 %: parabolas at the tip.
        Assert.Equal(Math.PI / 4 * 0.02, model.Area, 0.005 * Math.PI / 4 * 0.02);
        PlateSolution solution = model.Solve([new(RoundTip.LeadingEdge(0.2), 0.2, 10)]);
        Assert.Equal(PlateStatus.Solved, solution.Status);
        Assert.Equal(2, solution.LoadMomentX, 1e-9);
    }

    [Fact]
    public void Pointed_delta_is_solved()
    {
        PlateFin fin = PlateFin.Trapezoid(0.16, 0.22, 0, 0.22, 0.0176, 0.0004, FourDigit, Elasticity.Isotropic(2900e6, 0.35, Density));
        PlateModel model = PlateModel.Create(fin);
        Assert.Equal(0.98 * 0.16, model.MeshEnd, 1e-6);
        PlateSolution solution = model.Solve(Pressure);
        Assert.Equal(PlateStatus.Solved, solution.Status);
        Assert.Equal(3, model.Modes(3).AngularFrequencies.Count(double.IsFinite));
    }

    [Fact]
    public void Create_refuses_what_is_no_plate()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => PlateModel.Create(Strip with { Span = 0 }));
        Assert.Throws<ArgumentException>(() => PlateModel.Create(Strip with { TrailingEdge = _ => -1 }));
        Assert.Throws<ArgumentException>(() => PlateModel.Create(Strip with { HalfThickness = (_, _) => double.NaN }));
        Assert.Throws<ArgumentException>(() => PlateModel.Create(Strip with { WallDepth = (_, _) => double.NaN }));
        Assert.Throws<ArgumentOutOfRangeException>(() => PlateModel.Create(Strip with { Wall = Strip.Wall with { ModulusX = -1 } }));
        Assert.Throws<ArgumentOutOfRangeException>(() => PlateModel.Create(Strip with { Rods = [new(0, 0, 0, 0, 0, 1, 1, 1, 1)] }));
        Assert.Throws<ArgumentOutOfRangeException>(() => PlateModel.Create(Strip).Solve([new(0, 0, double.NaN)]));
        Assert.Throws<ArgumentOutOfRangeException>(() => PlateModel.Create(Strip).Solve((_, _) => double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => PlateModel.Create(Strip).With(new(Wall: 0)));
    }
}
