using Finwright.Water.Ventilation;

namespace Finwright.Water.Tests.Ventilation;

/// <summary>Where each margin of ventilation changes its verdict, what it says of its doubt, and the sums behind it.</summary>
public sealed class VentilationLimitTests
{
    private static readonly VentilationCase Usual = new()
    {
        Water = WaterProperties.Sea(15),
        Speed = 8,
        Span = 0.4,
        Area = 0.032,
        SideForce = 300,
        Strips = [new(0.03, 0.05, 0.2, 1, -1, 1000), new(0.2, 0.06, 0.2, 1, -1.3, 500)],
        AirPath = new() { RootGap = 0.0002, BoltHolesSealed = true, HullCover = 0.1, RootChord = 0.1 },
    };

    // The limits are our judgement, stated at the constants and in each explanation: 0.7 and 0.85 of the stall's angle; a value at its limit still keeps its verdict.
    [Theory]
    [InlineData(0.699, MarginState.Holds)]
    [InlineData(0.701, MarginState.Tight)]
    [InlineData(0.849, MarginState.Tight)]
    [InlineData(0.851, MarginState.Fails)]
    public void Attachment_is_judged_by_the_share_of_the_stall_angle(double share, MarginState state)
    {
        Margin margin = VentilationMargins.Of(Usual with { Strips = [Usual.Strips[0] with { AngleOfAttack = share * 0.2 }] }).Attachment;

        Assert.Equal((state, 0.85), (margin.State, margin.Limit!.Value));
        Assert.Equal(0.1 * share, margin.Uncertainty!.Value, 1e-12); // 10 % of the angle: the upper end of what such methods miss the stall by.
    }

    [Fact]
    public void Attachment_takes_the_share_and_not_the_angle_or_the_order()
    {
        // 0.05/0.1 is nearer its stall than 0.08/0.2.
        StripCondition steep = Usual.Strips[0] with { AngleOfAttack = 0.08 }, weak = Usual.Strips[1] with { AngleOfAttack = 0.05, StallAngle = 0.1 };

        Assert.Equal(0.5, VentilationMargins.Of(Usual with { Strips = [steep, weak] }).Attachment.Value!.Value, 1e-12);
        Margin margin = VentilationMargins.Of(Usual with { Strips = [weak, steep] }).Attachment;
        Assert.Equal(0.5, margin.Value!.Value, 1e-12);
        Assert.Contains("At 50", margin.Explanation, StringComparison.Ordinal);
        Assert.Contains("2.9 of the 5.7 degrees", margin.Explanation, StringComparison.Ordinal); // 0.05 and 0.1 radians
    }

    [Fact]
    public void Attachment_of_a_fin_that_does_nothing_never_begins_to_stall()
    {
        Margin margin = VentilationMargins.Of(Usual with { Strips = [Usual.Strips[0] with { AngleOfAttack = 0 }] }).Attachment;

        Assert.Equal((0, MarginState.Holds, null), (margin.Value!.Value, margin.State, margin.Onset));
    }

    [Theory]
    [InlineData(0.89, MarginState.Fails)]
    [InlineData(0.9, MarginState.Tight)]
    [InlineData(0.94, MarginState.Tight)]
    [InlineData(0.95, MarginState.Holds)]
    public void Root_separation_is_judged_by_where_the_flow_leaves(double separation, MarginState state)
    {
        Margin margin = VentilationMargins.Of(Usual with { Strips = [Usual.Strips[0] with { Separation = separation }, Usual.Strips[1]] }).RootSeparation;

        Assert.Equal((state, separation, 0.9, 0.05, true), (margin.State, margin.Value!.Value, margin.Limit!.Value, margin.Uncertainty!.Value, margin.MustStayAbove));
        Assert.Null(margin.Onset);
    }

    [Theory]
    // The root zone is the top 15 % of the span, 60 mm of 400 mm.
    [InlineData(0.06, 0.5)]
    [InlineData(0.0601, 1)]
    public void Root_separation_counts_strips_in_the_top_of_the_span(double depth, double expected)
    {
        StripCondition[] strips = [Usual.Strips[0], Usual.Strips[1] with { Depth = depth, Separation = 0.5 }];

        Assert.Equal(expected, VentilationMargins.Of(Usual with { Strips = strips }).RootSeparation.Value);
        Assert.Equal(expected, VentilationMargins.Of(Usual with { Strips = [.. strips.Reverse()] }).RootSeparation.Value);
    }

    [Theory]
    [InlineData(0.69, MarginState.Holds)]
    [InlineData(0.71, MarginState.Tight)]
    [InlineData(0.99, MarginState.Tight)]
    [InlineData(1.01, MarginState.Fails)]
    public void Cavitation_is_judged_by_the_share_of_the_drop_to_boiling(double share, MarginState state)
    {
        double cp = -share * Cavitation.Number(Usual.Water, 0.03, 8);

        Margin margin = VentilationMargins.Of(Usual with { Strips = [Usual.Strips[0] with { MinimumCp = cp }] }).Cavitation;

        Assert.Equal((state, 1), (margin.State, margin.Limit!.Value));
        Assert.Equal(share, margin.Value!.Value, 1e-12);
        Assert.Equal(0.2 * share, margin.Uncertainty!.Value, 1e-12); // a fifth: our judgement of nicks and method
    }

    [Fact]
    public void Cavitation_number_is_the_pressure_left_above_boiling_over_the_dynamic_pressure()
    {
        // 101325 Pa + ρ g 0.5 m less the water's own vapour pressure, over ½ ρ V².
        WaterProperties water = Usual.Water;
        double head = 101325 + water.Density * 9.80665 * 0.5 - water.VapourPressure;

        Assert.Equal(head / (0.5 * water.Density * 64), Cavitation.Number(water, 0.5, 8), 1e-9);
        Assert.Null(Cavitation.InceptionSpeed(water, 0.5, 0));
    }

    [Fact]
    public void Cavitation_without_suction_is_none()
    {
        Margin margin = VentilationMargins.Of(Usual with { Strips = [Usual.Strips[0] with { MinimumCp = 0.2 }] }).Cavitation;

        Assert.Equal((0, MarginState.Holds, null), (margin.Value!.Value, margin.State, margin.Onset));
    }

    [Theory]
    [InlineData(0.0005, MarginState.Holds)]
    [InlineData(0.00051, MarginState.Tight)]
    [InlineData(0.001, MarginState.Tight)]
    [InlineData(0.00101, MarginState.Fails)]
    public void Seal_is_judged_by_the_gap_at_the_root(double gap, MarginState state)
    {
        Margin margin = VentilationMargins.Of(Usual with { AirPath = Usual.AirPath! with { RootGap = gap, BoltHolesSealed = null } }).Seal;

        Assert.Equal((state, gap, 0.001, 0.00025), (margin.State, margin.Value!.Value, margin.Limit!.Value, margin.Uncertainty!.Value));
    }

    [Theory]
    // The root chord is 100 mm: a quarter and three quarters of it.
    [InlineData(0.0249, MarginState.Fails)]
    [InlineData(0.025, MarginState.Tight)]
    [InlineData(0.0749, MarginState.Tight)]
    [InlineData(0.076, MarginState.Holds)]
    public void Hull_cover_is_judged_in_root_chords(double cover, MarginState state)
    {
        Margin margin = VentilationMargins.Of(Usual with { AirPath = Usual.AirPath! with { HullCover = cover } }).HullCover;

        Assert.Equal((state, 0.25, 0.125, true), (margin.State, margin.Limit!.Value, margin.Uncertainty!.Value, margin.MustStayAbove));
        Assert.Equal(cover / 0.1, margin.Value!.Value, 1e-12);
        Assert.Contains($"{cover * 1000:0} mm", margin.Explanation, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_board_and_box_the_hull_is_not_known() =>
        Assert.Equal(MarginState.NotKnown, VentilationMargins.Of(Usual with { AirPath = null }).HullCover.State);

    [Theory]
    // On each side of the two published bounds, met at the fin's own lift coefficient.
    [InlineData(0.99, 0.5, CavityFate.WashesOut, MarginState.Holds)]
    [InlineData(1.01, 0.5, CavityFate.MayStay, MarginState.Tight)]
    [InlineData(0, 0.99, CavityFate.MayStay, MarginState.Tight)]
    [InlineData(0, 1.01, CavityFate.Stays, MarginState.Tight)]
    public void Recovery_is_judged_by_the_bounds_of_washout_and_full_ventilation(double shareOfWashout, double shareOfFull, CavityFate fate, MarginState state)
    {
        const double lift = 0.5;
        double washout = DepthFroude.Washout(5, lift), full = DepthFroude.FullVentilation(lift);
        double speed = DepthFroude.Speed(shareOfWashout > 0 ? shareOfWashout * washout : shareOfFull * full, 0.4);
        double force = lift * 0.5 * Usual.Water.Density * speed * speed * 0.032;

        VentilationMargins margins = VentilationMargins.Of(Usual with { Speed = speed, SideForce = force });

        Assert.Equal((fate, state), (margins.Fate, margins.Recovery.State));
        Assert.Equal(washout, margins.Recovery.Limit!.Value, 1e-9);
        Assert.Equal(washout * 0.33, margins.Recovery.Uncertainty!.Value, 1e-9); // a third: our judgement
        Assert.Equal(DepthFroude.Speed(washout, 0.4), margins.Recovery.Onset!.Value.Speed, 1e-9);
    }

    [Theory]
    [InlineData(0.3, true)]
    [InlineData(0.299, false)]
    [InlineData(12, true)]
    [InlineData(12.1, false)]
    public void Recovery_is_not_known_outside_the_aspect_ratios_of_the_bound(double aspectRatio, bool isKnown)
    {
        // A span of half a metre, whose square is exact.
        VentilationMargins margins = VentilationMargins.Of(Usual with { Span = 0.5, Area = 0.25 / aspectRatio });

        Assert.Equal(isKnown, margins.Recovery.State != MarginState.NotKnown);
        Assert.Equal(isKnown, margins.SideForceToRecover is not null);
        Assert.Equal(DepthFroude.Number(8, 0.5), margins.Recovery.Value!.Value, 1e-12);
    }

    [Fact]
    public void Strips_count_by_their_load()
    {
        // Suction of 0.02 is under the atmosphere's pressure at 1 cm (2 g d/V² = 0.0031) but not at 20 cm (0.0613): 3 of 4 parts of the load.
        VentilationCase state = Usual with { Strips = [new(0.01, 0, 0.2, 1, -0.02, 300), new(0.2, 0, 0.2, 1, -0.02, 100)] };

        VentilationMargins margins = VentilationMargins.Of(state);

        Assert.Equal(0.75, margins.SuctionShare!.Value, 1e-12);
        Assert.Equal(1, margins.SideForceKept!.Value, 1e-12); // no angle, no cavity
        VentilationMargins unloaded = VentilationMargins.Of(state with { Strips = [state.Strips[0] with { Load = 0 }] });
        Assert.Null(unloaded.SuctionShare);
    }

    [Fact]
    public void Side_force_kept_follows_the_cavity_of_each_strip()
    {
        // Harwood, Young and Ceccio (2016): cavity number, then length, then lift slope; joined here from their published pieces.
        double One(double depth, double angle) => VentilatedCavity.LiftKept(VentilatedCavity.Length(2 * 9.80665 * depth / 64, angle), 5);
        double expected = (1000 * One(0.03, 0.05) + 500 * One(0.2, 0.06)) / 1500;

        Assert.Equal(expected, VentilationMargins.Of(Usual).SideForceKept!.Value, 1e-9);
        Assert.InRange(expected, 0.25, 0.99);
    }

    [Theory]
    [InlineData(0.3)]
    [InlineData(12)]
    public void Washout_takes_the_ends_of_its_range(double aspectRatio)
    {
        // Their bound written out: Fn = π/4 √[(8A + 18A² - 4A³ + π/2 A⁴) / (2.31 CL (4 + 3πA - 2πA² + πA³))].
        double a = aspectRatio;
        double above = 8 * a + 18 * a * a - 4 * a * a * a + Math.PI / 2 * a * a * a * a;
        double below = 2.31 * 0.4 * (4 + Math.PI * (3 * a - 2 * a * a + a * a * a));

        Assert.Equal(Math.PI / 4 * Math.Sqrt(above / below), DepthFroude.Washout(a, 0.4), 1e-12);
    }

    [Theory]
    // Measured up to 1.5 of span over chord: 0.4 m over 0.032 m² is 5, over 0.16 m² is 1, over 0.16/1.5 m² just 1.5.
    [InlineData(0.032, true)]
    [InlineData(0.4 * 0.4 / 1.5, false)]
    [InlineData(0.16, false)]
    public void Recovery_says_when_its_bound_is_drawn_on(double area, bool isDrawnOn) =>
        Assert.Equal(isDrawnOn, VentilationMargins.Of(Usual with { Area = area }).Recovery.Explanation.Contains("Measured up to 1.5", StringComparison.Ordinal));

    [Fact]
    public void Explanations_tell_shares_in_per_cent_and_ways_in_millimetres()
    {
        VentilationMargins margins = VentilationMargins.Of(Usual with { Strips = [Usual.Strips[0] with { Depth = 0.1 }] });

        // 0.1 of 0.4 m; the share of the drop as the value says.
        Assert.Matches($@"at 25\s?% of the span, uses up {100 * margins.Cavitation.Value!.Value:0}\s?% of the drop", margins.Cavitation.Explanation);
        Assert.StartsWith("Gap between hull and root 0.2 mm. The bolt holes are sealed.", margins.Seal.Explanation, StringComparison.Ordinal);
        Assert.Contains("it is 100 mm, 1.0 root chords", margins.HullCover.Explanation, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_refuses_numbers_that_describe_no_fin()
    {
        StripCondition strip = Usual.Strips[0];
        VentilationCase[] cases =
        [
            Usual with { Speed = 0 }, Usual with { Span = 0 }, Usual with { Area = 0 }, Usual with { SideForce = -1 }, Usual with { RootSeparationAngleRatio = 0 },
            With(strip with { AngleOfAttack = -0.1 }), With(strip with { AngleOfAttack = 1.6 }), With(strip with { StallAngle = 0 }), With(strip with { Separation = 1.1 }),
            With(strip with { MinimumCp = double.NaN }), With(strip with { Load = -1 }),
            Usual with { AirPath = Usual.AirPath! with { RootGap = -1 } }, Usual with { AirPath = Usual.AirPath! with { HullCover = double.NaN } }, Usual with { AirPath = Usual.AirPath! with { RootChord = 0 } },
        ];
        Assert.All(cases, state => Assert.Throws<ArgumentOutOfRangeException>(() => VentilationMargins.Of(state)));
        Assert.Throws<ArgumentNullException>(() => VentilationMargins.Of(null!));

        static VentilationCase With(StripCondition strip) => Usual with { Strips = [strip] };
    }

    [Fact]
    public void LiftSlope_of_half_a_chord_is_the_published_ratio() =>
        // Harwood, Young and Ceccio (2016): (1 + 4.5 L - 2 L² + π/2 L³)/(1/(2π) + 0.75 L - L² + L³) at L = 0.5 by hand: 2.946350/0.409155.
        Assert.Equal(7.20106, VentilatedCavity.LiftSlope(0.5), 2e-5);

    [Theory]
    // Their fit of the length, scaled to meet the theories at 1.25 and 0.5 chords, with the share of Ψ between the two; angle 0.01, worked out apart (python).
    [InlineData(3, 0.946334373307)]
    [InlineData(4, 0.751659744909)]
    [InlineData(5, 0.602949644503)]
    public void Length_between_the_theories_is_the_scaled_fit(double psi, double length) => Assert.Equal(length, VentilatedCavity.Length(2 * psi * 0.01, 0.01), 1e-9);
}
