using System.Runtime.CompilerServices;
using Finwright.Assessment.Afloat;
using Finwright.Assessment.Loaded;
using Finwright.Assessment.Tests.Afloat;
using Finwright.Assessment.Verdicts;
using Finwright.Design;
using Finwright.Geometry.Blades;
using Finwright.Strength.FromDesign;
using Finwright.Strength.Plates;
using Finwright.Water.Sailing;

namespace Finwright.Assessment.Tests.Loaded;

public sealed class LoadedWorkTests
{
    // Held by its bolts alone.
    private static readonly FinDesign Demo = DesignReader.ReadFile(Path.Combine(Path.GetDirectoryName(Here())!, "..", "..", "..", "examples", "fairway-upright.fin.json")).Design!;
    private static readonly FinDesign Design = Demo with { Materials = new(), Shape = Demo.Shape with { Flange = null } };
    private static readonly Blade Blade = SailedFin.Blade(Design);
    private static readonly FinBuilt Built = FinBuilt.Of(Design, Blade);
    private static readonly FinAfloat Sailed = SailedFin.Sail(Design);
    private static readonly FinLoaded Loaded = LoadedWork.Of(Built, Sailed, null, CancellationToken.None);

    [Fact]
    public void Every_case_that_is_sailed_is_loaded_and_balances()
    {
        Assert.Null(Loaded.Problem);
        Assert.Equal(Sailed.Cases.Select(own => own.Load.Kind), Loaded.Cases.Select(own => own.Load.Kind));
        foreach (CaseLoaded own in Loaded.Cases)
        {
            Assert.Equal(PlateStatus.Solved, own.Plate.Status);
            double force = own.Forces.Sum(load => load.Force);
            // The shape is that of the round before: loads agree to one in two thousand.
            Assert.Equal(-force, own.Plate.ReactionForce, 5e-4 * force);
            Assert.Equal(-own.RootMoment, own.Plate.ReactionMomentX, 1e-7 * own.RootMoment);
            Assert.Equal(0, own.Along[0].Depth);
            Assert.Equal(Blade.Span, own.Tip.Depth, 1e-12);
            if (own.Status is not LoadedStatus.Settled)
                continue;
            // Force across the fin against the side force, which is across the stream: cosines of small angles, and drag.
            Assert.Equal(own.Load.SideForce, force, 0.02 * own.Load.SideForce);
            Assert.NotNull(own.BentLeeway);
            Assert.NotNull(own.SideForceShare);
        }

        Assert.Equal(LoadedStatus.Settled, Loaded[LoadCaseKind.Cruise]!.Status);
        Assert.Null(Loaded[LoadCaseKind.Grounding]);
    }

    [Fact]
    public void The_joint_is_loaded_by_the_moment_at_the_hull()
    {
        CaseLoaded cruise = Loaded[LoadCaseKind.Cruise]!;
        Assert.Equal(cruise.RootMoment, cruise.Forces.Sum(load => load.Force * load.Y), 5e-4 * cruise.RootMoment);
        Assert.Equal(Built.Structure!.Root.Under(cruise.RootMoment)!.Status, cruise.Joint!.Status);
        Assert.Equal(2, Loaded.Torques.Count);
    }

    [Fact]
    public void A_strongly_raked_fin_does_not_diverge_and_washes_out()
    {
        FinLoaded raked = LoadedFin.Raked.Load();
        // None, or one that no water reaches: 100 m/s.
        Assert.True(raked.DivergenceSpeed is null or > 100);
        CaseLoaded cruise = raked[LoadCaseKind.Cruise]!;
        Assert.True(cruise.Tip.Twist > 0);
        Assert.True(cruise.BentLeeway > cruise.StiffLeeway);
        Assert.InRange(cruise.SideForceShare!.Value, 0.3, 0.999);
        Assert.True(cruise.EffortShift < 0);
    }

    [Fact]
    public void An_upright_fin_diverges_at_a_pressure_that_grows_with_its_stiffness()
    {
        FinLoaded upright = LoadedFin.Upright.Load();
        Assert.Equal(upright.DivergencePressure!.Value, 0.5 * LoadedFin.Upright.Afloat.Water.Density * upright.DivergenceSpeed!.Value * upright.DivergenceSpeed.Value, 1e-6 * upright.DivergencePressure.Value);
        FinDesign softer = LoadedFin.Upright.Design with { Materials = new() { WallFactor = 1, CoreFactor = 1 } };
        FinLoaded soft = LoadedWork.Of(FinBuilt.Of(softer, SailedFin.Blade(softer)), LoadedFin.Upright.Afloat, null, TestContext.Current.CancellationToken);
        // A quarter of the stiffness, half the speed.
        Assert.Equal(upright.DivergenceSpeed.Value / 2, soft.DivergenceSpeed!.Value, 1e-6 * upright.DivergenceSpeed.Value);
        // Strip theory of an even wing with the section at half span: (π/2l)² GJ/(c e a₀), e from the shear centre to the quarter chord, a₀ from 3.5 to 2π for a fin of this aspect. Half to twice.
        SectionAtDepth middle = LoadedFin.Upright.Structure.Sections[LoadedFin.Upright.Structure.Sections.Count / 2];
        double span = LoadedFin.Upright.Structure.Plate.Fin.Span, arm = middle.Stiffness.ShearCentre - middle.LeadingEdge - middle.Chord / 4;
        double strips = Math.Pow(Math.PI / (2 * span), 2) * middle.Stiffness.TorsionRigidity / (middle.Chord * arm * 4.5);
        Assert.InRange(upright.DivergencePressure.Value / strips, 0.5, 2);
    }

    [Fact]
    public void Verdicts_have_a_value_or_say_why_not()
    {
        FinVibration vibration = FinVibration.Of(Design.Brief, Blade, Built);
        IReadOnlyList<Verdict> verdicts = StrengthVerdicts.Of(Design, Loaded, vibration);
        string[] always = ["walls-across-layers", "walls-along-layers", "core", "rods", "rod-bond", "tiring", "joint-opening", "joint-hold", "base", "deflection", "twist", "second-opinion", "divergence", "grounding", "hum"];
        foreach (string code in always)
            Assert.Single(verdicts, verdict => verdict.Code == code);
        // With a joint there is no corner.
        Assert.DoesNotContain(verdicts, verdict => verdict.Code == "root-corner");
        Assert.All(verdicts, verdict => Assert.True(verdict.HowSure.Length > 0 && verdict.Why.Length > 0 && verdict.Found.Length > 0));
        Assert.All(verdicts.Where(verdict => verdict.State is VerdictState.Fails or VerdictState.Tight), verdict => Assert.False(string.IsNullOrEmpty(verdict.Change)));
    }

    [Fact]
    public void A_bonded_joint_is_lost_when_bond_and_bolts_have_given()
    {
        Verdict Hold(bool bonded)
        {
            // A flange, so that the bond bears the gust.
            FinDesign design = Demo with { Materials = new() { RootBonded = bonded } };
            return StrengthVerdicts.Of(design, LoadedWork.Of(FinBuilt.Of(design, Blade), Sailed, null, TestContext.Current.CancellationToken), null).Single(verdict => verdict.Code == "joint-hold");
        }

        Verdict bolted = Hold(bonded: false), glued = Hold(bonded: true);
        Assert.Equal("bond", glued.Ground);
        // What holds without a bond holds after it has given: the load is the same but for the stiffness of the root.
        Assert.True(glued.Value!.Value > 0.97 * bolted.Value!.Value, $"{glued.Value.Value} {bolted.Value.Value}");
        Assert.Contains("bolts and rods alone hold with a reserve of", glued.Found, StringComparison.Ordinal);
    }

    [Fact]
    public void A_fin_that_was_not_sailed_says_so_and_is_not_judged_to_break()
    {
        FinLoaded none = LoadedWork.Of(Built, Sailed with { Problem = "no flow", Surface = null, Cases = [] }, null, TestContext.Current.CancellationToken);
        Assert.Equal("no flow", none.Problem);
        Assert.Empty(none.Cases);
        Verdict verdict = Assert.Single(StrengthVerdicts.Of(Design, none, null), own => own.Code == "breaking");
        Assert.Equal(VerdictState.NotKnown, verdict.State);
    }

    [Fact]
    public void Work_that_is_stopped_stops()
    {
        using CancellationTokenSource stop = new();
        stop.Cancel();
        Assert.Throws<OperationCanceledException>(() => LoadedWork.Of(Built, Sailed, null, stop.Token));
    }

    private static string Here([CallerFilePath] string path = "") => path;
}
