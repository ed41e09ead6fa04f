using Finwright.Assessment.Made;
using Finwright.Assessment.Tests.Made;
using Finwright.Assessment.Verdicts;
using Finwright.Making.Cure;
using Finwright.Making.Pores;

namespace Finwright.Assessment.Tests.Verdicts;

/// <summary>Verdicts on print, pour and cure, a case on each side of each limit; the limits are the code's own judgement, so these hold what it says it does.</summary>
public sealed class MakingVerdictsTests
{
    private static readonly FinPoured Poured = BoxPart.Cured.Poured!;
    private static readonly FinCured Cured = BoxPart.Cured.Cured!;

    [Fact]
    public void Every_verdict_says_what_why_and_how_sure_and_the_bad_ones_what_to_change()
    {
        foreach (Verdict verdict in BoxPart.Cured.PrintVerdicts.Concat(BoxPart.Cured.PourVerdicts).Concat(BoxPart.Cured.CureVerdicts).Concat(PourVerdicts.Of(WithAir(0.1))).Concat(CureVerdicts.Of(Softening(293))))
        {
            Assert.NotEmpty(verdict.Checked);
            Assert.EndsWith(".", verdict.Found, StringComparison.Ordinal);
            Assert.EndsWith(".", verdict.Why, StringComparison.Ordinal);
            Assert.EndsWith(".", verdict.HowSure, StringComparison.Ordinal);
            Assert.True(verdict.State is VerdictState.Holds || verdict.Change.EndsWith('.'), verdict.Code);
            Assert.DoesNotContain("NaN", verdict.Found + verdict.Numbers, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData(0.0099, VerdictState.Holds)]
    [InlineData(0.0101, VerdictState.Tight)]
    [InlineData(0.0299, VerdictState.Tight)]
    [InlineData(0.0301, VerdictState.Fails)]
    public void Air_that_stays_is_judged_by_its_share_of_the_pores(double share, VerdictState state) =>
        Assert.Equal(state, PourVerdicts.Of(WithAir(share)).Single(verdict => verdict.Code == "trapped-air").State);

    [Theory]
    [InlineData(0.049, VerdictState.Holds)]
    [InlineData(0.051, VerdictState.Tight)]
    [InlineData(0.251, VerdictState.NotKnown)]
    public void Thin_core_is_told_and_beyond_a_quarter_nothing_is_known(double share, VerdictState state)
    {
        PartPoured part = Poured.Parts[0];
        FinPoured thin = Poured with { Parts = [part with { Thin = part.Thin with { Volume = share * part.Layers.CoreVolume, Share = share } }] };
        Assert.Equal(state, PourVerdicts.Of(thin).Single(verdict => verdict.Code == "thin-core").State);
    }

    [Theory]
    [InlineData(1.04, VerdictState.Holds)]
    [InlineData(0.93, VerdictState.Tight)]
    [InlineData(1.12, VerdictState.Fails)]
    public void Boxes_and_slices_that_differ_are_told(double ratio, VerdictState state)
    {
        PartPoured part = Poured.Parts[0];
        FinPoured differing = Poured with { Parts = [part with { Air = part.Air with { Total = ratio * part.Pores.Pores.Value } }] };
        Assert.Equal(state, PourVerdicts.Of(differing).Single(verdict => verdict.Code == "pore-opinion").State);
        // As it is worked out both agree.
        Assert.Equal(VerdictState.Holds, PourVerdicts.Of(Poured).Single(verdict => verdict.Code == "pore-opinion").State);
    }

    [Fact]
    public void Filling_is_judged_by_the_share_of_a_cup_s_working_time()
    {
        PartPoured part = Poured.Parts[0];
        double use = Math.Max(part.Batches.Batches[0].PouringTime, part.Fill!.Time!.Value / part.Batches.Batches.Count);
        Assert.Equal(VerdictState.Holds, State(use / 0.49));
        Assert.Equal(VerdictState.Tight, State(use / 0.51));
        Assert.Equal(VerdictState.Fails, State(use / 1.01));
        Assert.Equal(VerdictState.Fails, PourVerdicts.Of(Poured with { Parts = [part with { Fill = part.Fill with { Status = FillStatus.TooLittlePressure, Time = null } }] }).Single(verdict => verdict.Code == "fill-time").State);
        Assert.Equal(VerdictState.NotKnown, PourVerdicts.Of(Poured with { Parts = [part with { Fill = null }] }).Single(verdict => verdict.Code == "fill-time").State);

        VerdictState State(double life) => PourVerdicts.Of(Poured with { Parts = [part with { CupLife = life }] }).Single(verdict => verdict.Code == "fill-time").State;
    }

    [Fact]
    public void A_port_must_open_both_labyrinths()
    {
        PartPoured part = Poured.Parts[0];
        PouredPort port = part.Ports[0];
        FinPoured half = Poured with { Parts = [part with { Ports = [port with { Opening = port.Opening with { Share = 0.5 } }, .. part.Ports.Skip(1)] }] };
        FinPoured most = Poured with { Parts = [part with { Ports = [port with { Opening = port.Opening with { Share = 0.95 } }, .. part.Ports.Skip(1)] }] };
        Assert.Equal(VerdictState.Fails, PourVerdicts.Of(half).Single(verdict => verdict.Code == "ports-open-both").State);
        Assert.Equal(VerdictState.Tight, PourVerdicts.Of(most).Single(verdict => verdict.Code == "ports-open-both").State);
    }

    [Fact]
    public void Walls_are_judged_by_the_warm_end_and_fail_when_even_the_nominal_case_softens_them()
    {
        PartCureBand band = Cured.Parts[0].Band;
        double nominal = band.Nominal.WallInside.Temperature, warmest = Math.Max(nominal, Math.Max(band.Slow.WallInside.Temperature, band.Fast.WallInside.Temperature));
        Assert.Equal(VerdictState.Holds, State(warmest + 6));
        Assert.Equal(VerdictState.Tight, State(band.Fast.WallInside.Temperature + 4 > nominal ? band.Fast.WallInside.Temperature + 4 : nominal + 0.1));
        Assert.Equal(VerdictState.Fails, State(nominal - 0.1));

        VerdictState State(double softening) => CureVerdicts.Of(Softening(softening)).Single(verdict => verdict.Code == "softening").State;
    }

    [Fact]
    public void A_cure_that_could_not_be_followed_is_not_known()
    {
        PartCured part = Cured.Parts[0];
        FinCured lost = Cured with { Parts = [part with { Band = part.Band with { Fast = part.Band.Fast with { Status = CureStatus.StepTooShort } } }] };
        Assert.Equal(VerdictState.NotKnown, Assert.Single(CureVerdicts.Of(lost)).State);
    }

    [Fact]
    public void Parts_that_are_not_poured_have_no_verdicts()
    {
        Assert.Empty(PourVerdicts.Of(Poured with { Parts = [] }));
        Assert.Empty(CureVerdicts.Of(Cured with { Parts = [] }));
    }

    private static FinPoured WithAir(double share)
    {
        PartPoured part = Poured.Parts[0];
        return Poured with { Parts = [part with { Air = part.Air with { Volume = share * part.Air.Total } }] };
    }

    private static FinCured Softening(double softening) => Cured with { Softening = softening };
}
