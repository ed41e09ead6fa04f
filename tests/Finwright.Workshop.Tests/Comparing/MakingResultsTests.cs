using Finwright.Assessment;
using Finwright.Assessment.Made;
using Finwright.Design;
using Finwright.Geometry;
using Finwright.Workshop.Comparing;

namespace Finwright.Workshop.Tests.Comparing;

/// <summary>Results of print, pour and cure, of a part that can be reckoned by hand.</summary>
public sealed class MakingResultsTests
{
    private const double X = 32, Y = 26, Z = 16;

    [Fact]
    public void Of_a_box_gives_the_plastic_and_the_pores_that_its_walls_leave()
    {
        FinResults results = FinResults.Of(Box());
        Assert.Equal([ResultGroup.Print, ResultGroup.Pour, ResultGroup.Cure, ResultGroup.Verdicts], results.Groups);
        // Walls of 2 × 0.5 mm, four solid layers of 0.2 mm below and above, a fifth of plastic inside; to 0.2 % for cut corners.
        double pores = 1e-3 * (X - 2) * (Y - 2) * (Z - 1.6) * 0.8;
        Assert.Equal(pores, results[ResultKeys.Pores]!.Value!.Value, 2e-3 * pores);
        // What is not pores is plastic, of 1.27 g/cm³; lines do not overlap, so corners are the tolerance.
        double plastic = 1.27 * (1e-3 * X * Y * Z - pores);
        ResultLine laid = results[ResultKeys.Plastic]!;
        Assert.Equal(plastic, laid.Value!.Value, 0.03 * plastic);
        double infill = 1.27 * 0.25 * pores;
        Assert.Equal(double.Hypot(0.035 * laid.Value.Value, 0.1 * infill), laid.High!.Value - laid.Value.Value, 0.02 * plastic);
        Assert.Equal(laid.Value, results[ResultKeys.PlasticOf("box")]!.Value);
        // What is poured stands in the reservoirs too.
        Assert.True(results[ResultKeys.ResinPoured]!.Value > results[ResultKeys.ResinInFin]!.Value && results[ResultKeys.ResinInFin]!.Value > results[ResultKeys.Pores]!.Value);
        ResultLine peak = results[ResultKeys.Peak]!;
        Assert.Equal((peak.Value, peak.Low, peak.High), (results["cure.box.peak"]!.Value, results["cure.box.peak"]!.Low, results["cure.box.peak"]!.High));
        // Warmer than the room of 20 °C, and in its walls no warmer than in its resin.
        Assert.True(peak.Value > 20 && results["cure.box.wall_peak"]!.Value <= peak.Value && peak.Low <= peak.Value && peak.Value <= peak.High);
        Assert.All(results.Lines.Where(line => line.Group is ResultGroup.Verdicts), line => Assert.NotNull(line.Word));
    }

    private static AssessmentResult Box()
    {
        PartSettings settings = new() { Print = new() { Walls = 2, SolidLayers = 4, LayerMm = 0.2, LineWidthMm = 0.5, InfillPercent = 20 }, Pour = new() { Cooling = Cooling.StillAir } };
        double[] points = [.. Enumerable.Range(0, 8).SelectMany(i => new[] { 1e-3 * (i & 1) * X, 1e-3 * (i >> 1 & 1) * Y, 1e-3 * (i >> 2 & 1) * Z })];
        int[][] sides = [[0, 2, 3, 1], [4, 5, 7, 6], [0, 1, 5, 4], [2, 6, 7, 3], [0, 4, 6, 2], [1, 3, 7, 5]];
        TriangleMesh mesh = new(points, [.. sides.SelectMany(s => new[] { s[0], s[1], s[2], s[0], s[2], s[3] })]);
        using Assessor assessor = new();
        MakingResult made = assessor.Make("box", mesh, new(settings, []), AssessmentDepth.Cure, null, TestContext.Current.CancellationToken);
        return new() { Design = null, DesignHash = "", Findings = [], InputIsWrong = false, Printed = made.Printed, Poured = made.Poured, Cured = made.Cured };
    }
}
