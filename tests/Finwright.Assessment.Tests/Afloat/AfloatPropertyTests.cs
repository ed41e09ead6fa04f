using CsCheck;
using Finwright.Assessment.Afloat;
using Finwright.Assessment.Packing;
using Finwright.Assessment.Verdicts;
using Finwright.Design;
using Finwright.Geometry.Blades;
using Finwright.Geometry.FromDesign;

namespace Finwright.Assessment.Tests.Afloat;

/// <summary>Fins of any proportions that a design may have: an answer or a problem in words, never a fault, never a number that is none.</summary>
public sealed class AfloatPropertyTests
{
    [Fact]
    public void Any_fin_that_can_be_drawn_is_sailed_or_says_why_not() =>
        Gen.Select(Gen.Enum<OutlineFamily>().Where(family => family != OutlineFamily.Free), Gen.Double[40, 800], Gen.Double[20, 400], Gen.Double[-30, 70], Gen.Double[5, 120], Gen.Double[4, 20], Gen.Double[-4, 4], Gen.Double[-10, 10])
            .Select(Gen.Double[1, 12], Gen.Double[0, 14], Gen.Double[30, 160], Gen.Double[150, 1000], Gen.Bool, Gen.Bool)
            .Hold(
                pick =>
                {
                    ((OutlineFamily family, double span, double root, double rake, double tip, double thickness, double camber, double twist), double slow, double more, double mass, double tail, bool strip, bool flat) = pick;
                    FinDesign design = new()
                    {
                        Name = "any",
                        Shape = new()
                        {
                            Outline = new() { Family = family, SpanMm = span, RootChordMm = root, RakeDegrees = rake, TipChordPercent = tip },
                            Sections = [new() { AtPercent = 0, Section = "naca-2412", ThicknessPercent = thickness, CamberPercent = camber, TwistDegrees = twist }],
                            Strip = strip ? new() : null,
                            Tip = flat ? TipStyle.Flat : TipStyle.Rounded,
                        },
                        Brief = new() { GettingGoingSpeedMPerS = slow, CruiseSpeedMPerS = slow + more / 2, TopSpeedMPerS = slow + more, RiderMassKg = mass, TailWidthMm = tail },
                    };
                    Blade? blade = BladeFromDesign.Create(design, []);
                    if (blade is null)
                        return;
                    FinPolars polars = PolarsOfBlade.Solve(design, blade, SailedFin.Solve, null, CancellationToken.None);
                    FinAfloat afloat = AfloatWork.Of(design, blade, polars, null, CancellationToken.None);
                    string text = AnswerJson.Write(WaterSummary.Of(
                        new() { Design = design, DesignHash = "", Findings = [], InputIsWrong = false, Polars = polars, Afloat = afloat, Verdicts = WaterVerdicts.Of(design, afloat) },
                        "0"));
                    Assert.True(afloat.Problem is { Length: > 20 } || afloat.Cases.Count == 4);
                    Assert.DoesNotContain("NaN", text, StringComparison.Ordinal);
                },
                iter: 12,
                threads: 2);
}
