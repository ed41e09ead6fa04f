using Finwright.Assessment.Made;
using Finwright.Design;
using Finwright.Geometry;

namespace Finwright.Assessment.Tests.Made;

/// <summary>A box of 32 × 26 × 16 mm worked out as a part of its own, in still air.</summary>
internal static class BoxPart
{
    public const double X = 32e-3, Y = 26e-3, Z = 16e-3;

    public static PartSettings Settings { get; } = new()
    {
        Print = new() { Walls = 2, SolidLayers = 4, LayerMm = 0.2, LineWidthMm = 0.5, InfillPercent = 20 },
        Pour = new() { Cooling = Cooling.StillAir },
    };

    /// <summary>Printed, poured and cured; worked out once.</summary>
    public static MakingResult Cured => Result.Value;

    private static readonly Lazy<MakingResult> Result = new(() => Make(Settings, AssessmentDepth.Cure));

    /// <summary>Walls of 2 × 0.5 mm, four solid layers of 0.2 mm below and above, 20 % of plastic: exact.</summary>
    public static double ExactPores => (X - 2e-3) * (Y - 2e-3) * (Z - 1.6e-3) * 0.8;

    public static MakingResult Make(PartSettings settings, AssessmentDepth depth)
    {
        using Assessor assessor = new();
        return assessor.Make("box", Mesh(), new(settings, []), depth, null, TestContext.Current.CancellationToken);
    }

    public static TriangleMesh Mesh()
    {
        double[] points = [.. Enumerable.Range(0, 8).SelectMany(i => new[] { (i & 1) * X, (i >> 1 & 1) * Y, (i >> 2 & 1) * Z })];
        // Corners of each side, counter-clockwise from outside.
        int[][] sides = [[0, 2, 3, 1], [4, 5, 7, 6], [0, 1, 5, 4], [2, 6, 7, 3], [0, 4, 6, 2], [1, 3, 7, 5]];
        return new(points, [.. sides.SelectMany(s => new[] { s[0], s[1], s[2], s[0], s[2], s[3] })]);
    }
}
