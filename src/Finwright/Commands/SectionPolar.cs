using System.Text.Json.Serialization;
using Finwright.Assessment.Packing;
using Finwright.Geometry.Sections;
using Finwright.Terminal;
using Finwright.Water.Polars;
using Finwright.Water.Sections;

namespace Finwright.Commands;

/// <summary>What a section does in the water at one Reynolds number, as <c>finwright section --reynolds</c> answers it.</summary>
internal sealed record SectionPolar
{
    // A section given by coordinates meets its name within this.
    private const double ThicknessRounding = 5e-4;

    public required double ReynoldsNumber { get; init; }

    public required double CriticalAmplification { get; init; }

    public required double? TripUpper { get; init; }

    public required double? TripLower { get; init; }

    public required string? Finish { get; init; }

    public required int RowsConverged { get; init; }

    /// <summary>Peak of positive lift; null when the angles asked for do not pass over it.</summary>
    public required double? MaximumCl { get; init; }

    /// <summary>Where it is.</summary>
    public required double? StallDegrees { get; init; }

    public required IReadOnlyList<SectionPolarRow> Rows { get; init; }

    /// <summary>Refuses a section that the method cannot take.</summary>
    public static void Check(Section section)
    {
        double thickness = 2 * ThicknessOf(section);
        if (!(thickness >= SectionFlow.LeastThickness - ThicknessRounding && thickness <= SectionFlow.GreatestThickness + ThicknessRounding))
            throw new WrongInputException($"The section is {100 * thickness:0.##} % thick; the flow is worked out for 4 to 20 %, where the method was compared with measurements.", "Give --thickness-percent a value between them, or leave --reynolds out to see the shape alone.");
    }

    /// <summary>Solves the rows.</summary>
    public static SectionPolar Of(Section section, SectionConditions conditions, IReadOnlyList<double> degrees, string? finish, SectionCurveSolver solver, CancellationToken cancellation)
    {
        double[] rising = [.. degrees.Distinct().Order()];
        SectionCurve curve = solver(section, conditions, [.. rising.Select(double.DegreesToRadians)], cancellation);
        SectionStall? stall = SectionPolarTable.IsEnough([curve]) ? new SectionPolarTable([curve]).StallAt(conditions.ReynoldsNumber, positive: true) : null;
        return new()
        {
            ReynoldsNumber = conditions.ReynoldsNumber,
            CriticalAmplification = conditions.CriticalAmplification,
            TripUpper = conditions.Upper.TripAt,
            TripLower = conditions.Lower.TripAt,
            Finish = finish,
            RowsConverged = curve.SolvedCount,
            MaximumCl = stall is { IsReached: true, Cl: > 0 } peak ? Rounded.Digits(peak.Cl) : null,
            StallDegrees = stall is { IsReached: true, Cl: > 0 } at ? Rounded.Degrees(at.AngleOfAttack) : null,
            Rows = [.. degrees.Select(angle => SectionPolarRow.Of(angle, curve.Points[Array.BinarySearch(rising, angle)]))],
        };
    }

    private static double ThicknessOf(Section section) => SectionGeometry.Properties(section).MaximumThickness / 2;
}

/// <summary>One angle of a polar. What did not converge has no numbers.</summary>
internal sealed record SectionPolarRow
{
    [JsonPropertyName("alphaDegrees")]
    public required double AlphaDegrees { get; init; }

    [JsonPropertyName("cl")]
    public required double? Cl { get; init; }

    [JsonPropertyName("cd")]
    public required double? Cd { get; init; }

    [JsonPropertyName("cdFriction")]
    public required double? CdFriction { get; init; }

    [JsonPropertyName("cm")]
    public required double? Cm { get; init; }

    [JsonPropertyName("xTransitionUpper")]
    public required double? TransitionUpper { get; init; }

    [JsonPropertyName("xTransitionLower")]
    public required double? TransitionLower { get; init; }

    [JsonPropertyName("xSeparationUpper")]
    public required double? SeparationUpper { get; init; }

    [JsonPropertyName("xSeparationLower")]
    public required double? SeparationLower { get; init; }

    [JsonPropertyName("cpMinimum")]
    public required double? MinimumCp { get; init; }

    [JsonPropertyName("xCpMinimum")]
    public required double? MinimumCpAt { get; init; }

    [JsonPropertyName("converged")]
    public required bool Converged { get; init; }

    /// <summary>Whether the row has no numbers because the flow has let go at the nose.</summary>
    [JsonPropertyName("noseStall")]
    public required bool NoseStall { get; init; }

    [JsonPropertyName("iterations")]
    public required int Iterations { get; init; }

    public static SectionPolarRow Of(double degrees, SectionPoint point)
    {
        return new()
        {
            AlphaDegrees = degrees,
            Converged = point.IsUsable,
            NoseStall = point.Converged && point.IsPastNoseStall,
            Iterations = point.Iterations,
            Cl = When(point.Cl),
            Cd = When(point.Cd),
            CdFriction = When(point.CdFriction),
            Cm = When(point.Cm),
            TransitionUpper = When(point.TransitionUpper),
            TransitionLower = When(point.TransitionLower),
            SeparationUpper = When(point.SeparationUpper),
            SeparationLower = When(point.SeparationLower),
            MinimumCp = When(point.MinimumCp),
            MinimumCpAt = When(point.MinimumCpAt),
        };

        double? When(double value) => point.IsUsable ? Rounded.Digits(value) : null;
    }
}
