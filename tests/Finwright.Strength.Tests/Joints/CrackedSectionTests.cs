using CsCheck;
using Finwright.Strength.Joints;

namespace Finwright.Strength.Tests.Joints;

public sealed class CrackedSectionTests
{
    // A root of 110 by 13 mm, printed plastic on printed plastic, bolts of M6 in the middle of the thickness.
    private const double Length = 0.110, Width = 0.013, Modulus = 1.8e9, Gauge = 0.013, Steel = 193e9, StressArea = 20.1e-6;

    private static readonly Footprint Root = Footprint.Rectangle(Length, Width);

    private static readonly Gen<(Footprint, Reinforcement[], JointLoad)> Cases =
        from radii in Gen.Double[0.4, 1].Array[5, 12]
        from stretch in Gen.Double[0.1, 1]
        from ties in Gen.Select(Gen.Double[-0.3, 0.3], Gen.Double[-0.3, 0.3], Gen.Double[500, 5000]).Array[2, 4]
        from load in Gen.Select(Gen.Double[-150, 150], Gen.Double[-150, 150], Gen.Double[-1000, 1000])
        select (
            new Footprint([.. radii.Select((r, i) => new FootprintPoint(0.06 * r * Math.Cos(2 * Math.PI * i / radii.Length), 0.06 * stretch * r * Math.Sin(2 * Math.PI * i / radii.Length)))]),
            ties.Select(t => Bolt(0.06 * t.Item1, 0.06 * stretch * t.Item2, t.Item3)).ToArray(),
            new JointLoad(stretch * load.Item1, load.Item2, load.Item3));

    [Fact]
    public void Solve_rectangle_with_a_row_of_rods_is_the_cracked_reinforced_section()
    {
        // Hand calculation as for reinforced concrete, elastic: width b = Length, rods of area A at d = h/2 from the pressed edge, n = Es/Ec.
        // First moments about the neutral axis: b x²/2 = n A (d - x); I = b x³/3 + n A (d - x)²; pressure M x/I, rod stress n M (d - x)/I.
        const double Moment = 8, Area = 2 * StressArea, Ratio = Steel / Modulus, D = Width / 2;
        double na = Ratio * Area, x = na / Length * (Math.Sqrt(1 + 2 * Length * D / na) - 1);
        double inertia = Length * x * x * x / 3 + na * (D - x) * (D - x);
        Reinforcement rod = Bolt(-0.03, 0, 0) with { FreeLength = Gauge };

        JointState state = new CrackedSection(Root, Modulus, Gauge, [rod, rod with { X = 0.03 }]).Solve(new(Moment, 0, 0));

        // Exact clipping of a linear problem. Tolerance: the balance that Newton leaves, 1e-12, times the condition of 3 equations.
        Assert.Equal(JointStatus.Open, state.Status);
        Assert.Equal(x, state.ContactDepth, 1e-9 * x);
        Assert.Equal(Length, state.ContactLength, 1e-12);
        Assert.Equal(x / Width, state.ContactShare, 1e-9);
        Assert.Equal(Moment * x / inertia, state.GreatestPressure, 1e-9 * Moment * x / inertia);
        Assert.Equal(Width / 2, state.GreatestPressureAt.Z, 1e-12);
        Assert.Equal(Ratio * Moment * (D - x) / inertia * StressArea, state.Tensions[0], 1e-7);
        Assert.Equal(state.Tensions[0], state.Tensions[1], 1e-9);
        // Curvature M/(Ec I) over the gauge length; straight through the origin, so that tangent and secant agree.
        Assert.Equal(Modulus * inertia / Gauge, state.SecantStiffnessX, 1e-8 * state.SecantStiffnessX);
        Assert.Equal(state.SecantStiffnessX, state.TangentStiffnessX, 1e-8 * state.SecantStiffnessX);
    }

    [Fact]
    public void Opening_of_a_preloaded_rectangle_is_preload_times_a_sixth_of_the_width()
    {
        // Kern of a rectangle: the edge is without pressure when P/A = M/W, so M = P h/6. Tolerance: rounding.
        const double Preload = 4000;
        CrackedSection joint = new(Root, Modulus, Gauge, [Bolt(-0.03, 0, Preload / 2), Bolt(0.03, 0, Preload / 2)]);
        double opening = Preload * Width / 6;
        Assert.Equal(opening, joint.OpeningFactor(new(1, 0, 0)), 1e-10 * opening);
        Assert.Equal(1.5, joint.PreloadFactorToStayClosed(new(1.5 * opening, 0, 0)), 1e-10);

        JointState half = joint.Solve(new(0.5 * opening, 0, 0)), below = joint.Solve(new(0.999 * opening, 0, 0)), above = joint.Solve(new(1.001 * opening, 0, 0));
        Assert.Equal(JointStatus.Closed, half.Status);
        Assert.Equal(JointStatus.Closed, below.Status);
        Assert.Equal(JointStatus.Open, above.Status);
        // Linear until it opens, bolts in the middle unmoved: I Ec / L.
        double stiffness = Modulus * Length * Math.Pow(Width, 3) / 12 / Gauge;
        Assert.Equal(stiffness, half.SecantStiffnessX, 1e-8 * stiffness);
        Assert.Equal(stiffness, below.SecantStiffnessX, 1e-8 * stiffness);
        Assert.Equal(Preload / 2, below.Tensions[0], 1e-6);
        Assert.True(joint.Solve(new(3 * opening, 0, 0)).TangentStiffnessX < 0.5 * stiffness);
    }

    [Theory]
    [InlineData(0.1)]
    [InlineData(0.2)]
    [InlineData(0.3)]
    [InlineData(0.45)]
    public void Solve_pressed_off_centre_without_bolts_gives_the_triangle_of_pressure(double eccentricity)
    {
        // Closed form of a footing without tension: depth 3 (h/2 - e), greatest pressure 2 N/(b depth); inside the kern N/A (1 + 6 e/h).
        const double Force = 1000;
        JointState state = new CrackedSection(Root, Modulus, Gauge, []).Solve(new(Force * eccentricity * Width, 0, -Force));
        double depth = Math.Min(Width, 3 * Width * (0.5 - eccentricity));
        double pressure = eccentricity < 1.0 / 6 ? Force / (Length * Width) * (1 + 6 * eccentricity) : 2 * Force / (Length * depth);
        Assert.Equal(depth, state.ContactDepth, 1e-8 * Width);
        Assert.Equal(pressure, state.GreatestPressure, 1e-8 * pressure);
    }

    [Theory]
    [InlineData(10, 0, -100)]
    [InlineData(0, 0, 100)]
    [InlineData(1, 0, 0)]
    public void Solve_without_bolts_and_outside_the_face_says_that_nothing_holds(double momentX, double momentZ, double axial)
    {
        JointState state = new CrackedSection(Root, Modulus, Gauge, []).Solve(new(momentX, momentZ, axial));
        Assert.Equal(JointStatus.NotHeld, state.Status);
        Assert.False(state.HasAnswer);
        Assert.Equal(0, state.GreatestPressure);
    }

    [Fact]
    public void Solve_on_a_hard_face_bolts_pull_on_the_lever_to_the_edge()
    {
        // Limit of a face that does not yield: it turns about its edge, M = T h/2.
        Reinforcement bolt = Bolt(0, 0, 0) with { FreeLength = 0.06 };
        double former = double.PositiveInfinity;
        foreach (double hardness in new[] { 1e1, 1e3, 1e5 })
        {
            JointState state = new CrackedSection(Root, hardness * Modulus, Gauge, [bolt]).Solve(new(5, 0, 0));
            double beyond = state.Tensions[0] / (5 / (Width / 2)) - 1;
            Assert.InRange(beyond, 0, former);
            former = beyond;
        }

        Assert.InRange(former, 0, 0.002);
    }

    [Fact]
    public void Solve_mirrored_load_gives_the_mirrored_answer()
    {
        CrackedSection joint = new(Root, Modulus, Gauge, [Bolt(-0.03, 0, 1000), Bolt(0.03, 0, 1000)]);
        JointState one = joint.Solve(new(9, 20, 100)), sideways = joint.Solve(new(-9, 20, 100)), lengthwise = joint.Solve(new(9, -20, 100));
        Assert.Equal(JointStatus.Open, one.Status);
        Assert.Equal(one.GreatestPressure, sideways.GreatestPressure, 1e-6);
        Assert.Equal(one.ContactShare, lengthwise.ContactShare, 1e-9);
        Assert.Equal(one.RotationX, -sideways.RotationX, 1e-12);
        Assert.Equal(one.RotationZ, -lengthwise.RotationZ, 1e-12);
        Assert.Equal(one.Tensions[0], lengthwise.Tensions[1], 1e-6);
        // A moment about z by the right hand, positive, comes from a force forward on the blade: the front end is pressed, the aft bolt pulled.
        Assert.True(one.GreatestPressureAt.X < 0 && one.Tensions[1] > one.Tensions[0]);
        Assert.True(one.GreatestPressureAt.Z > 0);
    }

    [Fact]
    public void Solve_square_on_its_diagonal_gives_the_same_answer_for_both_axes()
    {
        CrackedSection joint = new(Footprint.Rectangle(0.02, 0.02), Modulus, Gauge, [Bolt(0, 0, 1000)]);
        JointState state = joint.Solve(new(5, -5, 0));
        Assert.Equal(JointStatus.Open, state.Status);
        Assert.Equal(state.ContactLength, state.ContactDepth, 1e-12);
        Assert.Equal(state.RotationX, -state.RotationZ, 1e-12);
        Assert.Equal(state.TangentStiffnessX, state.TangentStiffnessZ, 1e-6 * state.TangentStiffnessX);
    }

    [Fact]
    public void Solve_any_face_and_load_is_in_balance_when_summed_over_fibres() => Cases.Hold(
        (Footprint footprint, Reinforcement[] ties, JointLoad load) =>
        {
            CrackedSection joint = new(footprint, Modulus, Gauge, ties);
            JointState state = joint.Solve(load);
            Assert.True(state.HasAnswer, $"{state.Status}");
            Assert.InRange(state.Residual, 0, 1e-8);

            // Second method: the pressure at many fibres, from the answer's greatest pressure and tilt, must carry the load and what the bolts pull.
            (double force, double aboutX, double aboutZ, double share) = Fibres.Sum(footprint, joint, state, ties, load);
            double pulls = state.Tensions.Sum(Math.Abs) + Math.Abs(load.AxialForce);
            // 400 fibres each way: the edge is known to half a fibre, so the sums to some 0.5 %.
            Assert.Equal(0, force, 0.01 * pulls);
            Assert.Equal(0, aboutX, 0.01 * pulls * 0.06);
            Assert.Equal(0, aboutZ, 0.01 * pulls * 0.06);
            Assert.Equal(share, state.ContactShare, 0.01);
        },
        60);

    [Fact]
    public void Solve_hard_faces_and_loads_far_beyond_opening_still_balance() => Gen.Select(Gen.Double[0, 2], Gen.Double[-0.4, 0.4], Gen.Double[-0.4, 0.4], Gen.Double[0, 3], Gen.Double[-1, 1], Gen.Double[-1, 1]).Hold(
        (double hardness, double x, double z, double load, double momentX, double momentZ) =>
        {
            CrackedSection joint = new(Root, Modulus * Math.Pow(10, hardness), Gauge, [Bolt(x * Length, z * Width, 1000), Bolt(-0.03, 0, 0) with { CarriesCompression = true }]);
            double size = Math.Pow(10, load);
            JointState state = joint.Solve(new(size * momentX, size * momentZ, size * (momentX - momentZ)));
            Assert.True(state.HasAnswer, $"{state.Status}");
            Assert.InRange(state.Residual, 0, 1e-8);
        },
        500);

    [Fact]
    public void Solve_bonded_face_stays_whole_until_the_bond_is_strong_no_more()
    {
        // Uncracked section without preload: greatest pull M/W, W = b h²/6.
        double section = Length * Width * Width / 6, moment = 20, pull = moment / section;
        JointState holds = new CrackedSection(Root, Modulus, Gauge, [], 1.01 * pull).Solve(new(moment, 0, 0));
        Assert.Equal(JointStatus.Bonded, holds.Status);
        Assert.Equal(pull, holds.BondStress, 1e-8 * pull);
        Assert.Equal(1, holds.ContactShare, 1e-12);
        Assert.Equal(0, holds.Gap);

        JointState lets = new CrackedSection(Root, Modulus, Gauge, [Bolt(0, 0, 0)], 0.7 * pull).Solve(new(moment, 0, 0));
        Assert.Equal(JointStatus.Open, lets.Status);
        Assert.True(lets.BondBroke);
        Assert.True(lets.Gap > 0 && lets.ContactShare < 0.5);
    }

    [Fact]
    public void Solve_doubled_in_size_and_force_scales_as_it_must()
    {
        // Lengths × 2, forces × 4, moments × 8, same moduli: pressures and turns stay, gaps and contact grow by 2.
        JointState small = new CrackedSection(Root, Modulus, Gauge, [Bolt(0.01, 0, 1000)]).Solve(new(6, 2, 10));
        Reinforcement large = Bolt(0.02, 0, 4000) with { Area = 4 * StressArea, FreeLength = 2 * Bolt(0, 0, 0).FreeLength };
        JointState twice = new CrackedSection(Footprint.Rectangle(2 * Length, 2 * Width), Modulus, 2 * Gauge, [large]).Solve(new(48, 16, 40));
        Assert.Equal(small.GreatestPressure, twice.GreatestPressure, 1e-7 * small.GreatestPressure);
        Assert.Equal(small.RotationX, twice.RotationX, 1e-10);
        Assert.Equal(2 * small.Gap, twice.Gap, 1e-12);
        Assert.Equal(4 * small.Tensions[0], twice.Tensions[0], 1e-5);
    }

    [Fact]
    public void Tangent_is_the_slope_of_moment_over_turn()
    {
        CrackedSection joint = new(Root, Modulus, Gauge, [Bolt(-0.03, 0, 800), Bolt(0.03, 0, 1500)]);
        const double Moment = 12, Step = 1e-4;
        double slope = 2 * Step / (joint.Solve(new(Moment + Step, 3, 0)).RotationX - joint.Solve(new(Moment - Step, 3, 0)).RotationX);
        double tangent = joint.Solve(new(Moment, 3, 0)).TangentStiffnessX;
        // Central difference: second order in a step of 1e-5 of the moment, and rounding of the turns.
        Assert.Equal(slope, tangent, 1e-5 * tangent);
    }

    [Fact]
    public void Solve_face_with_a_hole_and_turned_corners_agrees_with_the_closed_form()
    {
        // Square of 20 mm with a square hole of 10 mm, pressed with N: opens when M = N W/A, W = (a⁴ - b⁴)/(6 a), A = a² - b². Corners given the other way round.
        FootprintPoint[] Square(double a) => [new(a, a), new(a, -a), new(-a, -a), new(-a, a)];
        Footprint face = new(Square(0.010), [Square(0.005)]);
        const double A = 0.020, B = 0.010;
        double opening = 1000 * (Math.Pow(A, 4) - Math.Pow(B, 4)) / (6 * A) / (A * A - B * B);
        CrackedSection joint = new(face, Modulus, Gauge, [Bolt(0, 0, 1000)]);
        Assert.Equal(A * A - B * B, face.Area, 1e-15);
        Assert.Equal(opening, joint.OpeningFactor(new(1, 0, 0)), 1e-9 * opening);
        Assert.Equal(opening, joint.OpeningFactor(new(0, 1, 0)), 1e-9 * opening);
    }

    [Fact]
    public void Refuses_faces_that_are_none()
    {
        Assert.Throws<ArgumentException>(() => new Footprint([new(0, 0), new(1, 0)]));
        Assert.Throws<ArgumentException>(() => new Footprint([new(0, 0), new(1, 0), new(2, 0)]));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Footprint([new(0, 0), new(1, double.NaN), new(2, 0)]));
        Assert.Throws<ArgumentOutOfRangeException>(() => new CrackedSection(Root, Modulus, Gauge, []).Solve(new(double.NaN, 0, 0)));
        Assert.Throws<ArgumentOutOfRangeException>(() => new CrackedSection(Root, Modulus, Gauge, [Bolt(0, 0, -1)]));
    }

    internal static Reinforcement Bolt(double x, double z, double preload) =>
        new() { X = x, Z = z, Area = StressArea, Modulus = Steel, FreeLength = 0.05, Preload = preload };

    private static class Fibres
    {
        private const int Count = 400;

        public static (double Force, double AboutX, double AboutZ, double Share) Sum(Footprint footprint, CrackedSection joint, JointState state, Reinforcement[] ties, JointLoad load)
        {
            (double a, double b, double c) = Pressure(footprint, joint, state);
            double left = footprint.Rings[0].Min(p => p.X), right = footprint.Rings[0].Max(p => p.X), low = footprint.Rings[0].Min(p => p.Z), high = footprint.Rings[0].Max(p => p.Z);
            double dx = (right - left) / Count, dz = (high - low) / Count, force = load.AxialForce, aboutX = -load.MomentX, aboutZ = load.MomentZ, share = 0;
            for (int i = 0; i < Count; i++)
            {
                for (int j = 0; j < Count; j++)
                {
                    double x = left + (i + 0.5) * dx, z = low + (j + 0.5) * dz, pressure = a + b * x + c * z;
                    if (pressure <= 0 || !Holds(footprint.Rings[0], x, z))
                        continue;
                    double push = pressure * dx * dz;
                    force += push;
                    aboutX += push * z;
                    aboutZ += push * x;
                    share += dx * dz / footprint.Area;
                }
            }

            for (int i = 0; i < ties.Length; i++)
            {
                force -= state.Tensions[i];
                aboutX -= state.Tensions[i] * (ties[i].Z - footprint.Centroid.Z);
                aboutZ -= state.Tensions[i] * (ties[i].X - footprint.Centroid.X);
            }

            return (force, aboutX, aboutZ, share);
        }

        // The plane of the pressure from its greatest value and from how far the joint is tilted, tightened and then loaded.
        private static (double A, double B, double C) Pressure(Footprint footprint, CrackedSection joint, JointState state)
        {
            double k = Modulus / Gauge;
            (double b0, double c0) = joint.TightenedTilt;
            double b = k * (b0 - state.RotationZ), c = k * (c0 + state.RotationX);
            FootprintPoint at = state.GreatestPressureAt;
            double a = state.GreatestPressure - b * (at.X - footprint.Centroid.X) - c * (at.Z - footprint.Centroid.Z);
            return (a, b, c);
        }

        private static bool Holds(FootprintPoint[] ring, double x, double z)
        {
            bool inside = false;
            for (int i = 0, j = ring.Length - 1; i < ring.Length; j = i++)
            {
                if (ring[i].Z > z != ring[j].Z > z && x < (ring[j].X - ring[i].X) * (z - ring[i].Z) / (ring[j].Z - ring[i].Z) + ring[i].X)
                    inside = !inside;
            }

            return inside;
        }
    }
}
