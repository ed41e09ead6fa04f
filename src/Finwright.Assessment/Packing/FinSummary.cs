using System.Text.Json.Serialization;
using Finwright.Assessment.Made;
using Finwright.Design;
using Finwright.Geometry.FromDesign;
using Finwright.Geometry.Outlines;
using Finwright.Geometry.Parts;

namespace Finwright.Assessment.Packing;

/// <summary>
/// A fin in numbers, as <c>summary.json</c> and <c>--json</c> give it. Field names are these properties in lower case with
/// underscores; each carries its unit. Numbers have nine digits.
/// </summary>
public sealed record FinSummary
{
    /// <summary>Says what the file is, so that programs and a later pack recognise it.</summary>
    public string Kind { get; init; } = PackFolder.OfPacks.ListKind;

    /// <summary>Version of this layout; raised when a field changes its meaning or goes.</summary>
    public int Layout { get; init; } = 1;

    /// <summary>Name and version of the program.</summary>
    public required string MadeBy { get; init; }

    /// <summary>Name of the fin; null when the design could not be read.</summary>
    public required string? Name { get; init; }

    /// <summary>SHA-256 of the design's content, whatever the layout of its file.</summary>
    public required string DesignSha256 { get; init; }

    /// <summary>Whether the fin can be made as described.</summary>
    public required bool CanBeMade { get; init; }

    /// <summary>Measures of the outline; null when it could not be drawn.</summary>
    public PlanformSummary? Planform { get; init; }

    /// <summary>The blade at every tenth of its span, root first.</summary>
    public IReadOnlyList<StationSummary> Stations { get; init; } = [];

    /// <summary>The blade with its flange, nothing bored into it.</summary>
    public double? PlainBladeVolumeCm3 { get; init; }

    /// <summary>Printed parts, without the fit gauge.</summary>
    public double? PartsVolumeCm3 { get; init; }

    /// <summary>The parts to print.</summary>
    public IReadOnlyList<PartSummary> Parts { get; init; } = [];

    /// <summary>Number of plates.</summary>
    public int Plates { get; init; }

    /// <summary>What to buy and cut.</summary>
    public IReadOnlyList<HardwareSummary> Hardware { get; init; } = [];

    /// <summary>The print in one sentence; null when it was not worked out.</summary>
    public string? PrintSentence { get; init; }

    /// <summary>The pour in one sentence; null when it was not worked out.</summary>
    public string? PourSentence { get; init; }

    /// <summary>The cure in one sentence; null when it was not worked out.</summary>
    public string? CureSentence { get; init; }

    /// <summary>What it takes, costs, and how long, in one sentence; null when it was not worked out.</summary>
    public string? PlanSentence { get; init; }

    /// <summary>Everything found, worst first.</summary>
    public required IReadOnlyList<FindingSummary> Findings { get; init; }

    /// <summary>Files of the pack; empty when none was written.</summary>
    public IReadOnlyList<FileSummary> Files { get; init; } = [];

    /// <summary>Sums a result up.</summary>
    /// <param name="result">The result.</param>
    /// <param name="programVersion">Version of the program, for example <c>0.1.0</c>.</param>
    public static FinSummary Of(AssessmentResult result, string programVersion)
    {
        ArgumentNullException.ThrowIfNull(result);
        IReadOnlyList<PrintPart> parts = result.Parts?.Parts ?? [];
        MakingResult made = MakingResult.Of(result);
        return new()
        {
            MadeBy = $"Finwright {programVersion}",
            Name = result.Design?.Name,
            DesignSha256 = result.DesignHash,
            CanBeMade = !result.HasErrors,
            Planform = result.Planform is { } planform ? PlanformSummary.Of(planform) : null,
            Stations = [.. result.Stations.Select(StationSummary.Of)],
            PlainBladeVolumeCm3 = result.Skin is { } skin ? Rounded.Cm3(skin.Volume()) : null,
            PartsVolumeCm3 = result.Parts is null ? null : Rounded.Cm3(parts.Where(part => !part.IsGauge).Sum(part => part.Volume)),
            Parts = [.. parts.Select(part => PartSummary.Of(part, result.Parts!.Plates))],
            Plates = result.Parts?.Plates.Count ?? 0,
            Hardware = [.. result.Hardware.Select(HardwareSummary.Of)],
            PrintSentence = made.Printed is null ? null : PrintSummary.Of(made, programVersion).Sentence,
            PourSentence = made.Poured is null ? null : PourSummary.Of(made, programVersion).Sentence,
            CureSentence = made.Cured is null ? null : CureSummary.Of(made, programVersion).Sentence,
            PlanSentence = made.Plan is null ? null : PlanSummary.Of(made, programVersion).Sentence,
            Findings = [.. result.Findings.Select(FindingSummary.Of)],
        };
    }
}

/// <summary>Measures of the outline seen from the side.</summary>
public sealed record PlanformSummary
{
    /// <summary>Depth of the tip below the hull.</summary>
    public required double SpanMm { get; init; }

    /// <summary>Area of the blade.</summary>
    public required double AreaCm2 { get; init; }

    /// <summary>Span² over area, of the single fin.</summary>
    public required double AspectRatio { get; init; }

    /// <summary>Area over span.</summary>
    public required double MeanChordMm { get; init; }

    /// <summary>Mean aerodynamic chord.</summary>
    public required double MeanAerodynamicChordMm { get; init; }

    /// <summary>Middle of the area, aft of the root quarter chord.</summary>
    public required double CentroidAftMm { get; init; }

    /// <summary>Middle of the area, below the hull.</summary>
    public required double CentroidDepthMm { get; init; }

    /// <summary>Line from the root's to the tip's quarter chord, from straight down, positive aft.</summary>
    public required double RakeDegrees { get; init; }

    /// <summary>Leading edge at mid-span, from straight down, positive aft.</summary>
    public required double LeadingEdgeSweepDegrees { get; init; }

    internal static PlanformSummary Of(Planform planform) => new()
    {
        SpanMm = Rounded.Mm(planform.Span),
        AreaCm2 = Rounded.Cm2(planform.Area),
        AspectRatio = Rounded.Digits(planform.AspectRatio),
        MeanChordMm = Rounded.Mm(planform.MeanChord),
        MeanAerodynamicChordMm = Rounded.Mm(planform.MeanAerodynamicChord),
        CentroidAftMm = Rounded.Mm(planform.Centroid.X),
        CentroidDepthMm = Rounded.Mm(planform.Centroid.Y),
        RakeDegrees = Rounded.Degrees(planform.Rake),
        LeadingEdgeSweepDegrees = Rounded.Degrees(planform.LeadingEdgeSweep(planform.Span / 2)),
    };
}

/// <summary>The blade at one depth.</summary>
public sealed record StationSummary
{
    /// <summary>Below the hull.</summary>
    public required double DepthMm { get; init; }

    /// <summary>Chord.</summary>
    public required double ChordMm { get; init; }

    /// <summary>Leading edge, aft of the root quarter chord.</summary>
    public required double LeadingEdgeAftMm { get; init; }

    /// <summary>Greatest thickness.</summary>
    public required double ThicknessMm { get; init; }

    /// <summary>Greatest thickness as a share of the chord.</summary>
    public required double ThicknessPercent { get; init; }

    /// <summary>Twist about the quarter chord, positive nose to starboard.</summary>
    public required double TwistDegrees { get; init; }

    /// <summary>Leading edge from straight down, positive aft; 90 where a round tip runs level.</summary>
    public required double LeadingEdgeSweepDegrees { get; init; }

    internal static StationSummary Of(SpanStation station) => new()
    {
        DepthMm = Rounded.Mm(station.Depth),
        ChordMm = Rounded.Mm(station.Chord),
        LeadingEdgeAftMm = Rounded.Mm(station.LeadingEdge),
        ThicknessMm = Rounded.Mm(station.Thickness),
        ThicknessPercent = Rounded.Percent(station.ThicknessRatio),
        TwistDegrees = Rounded.Degrees(station.Twist),
        LeadingEdgeSweepDegrees = Rounded.Degrees(station.LeadingEdgeSweep),
    };
}

/// <summary>A part to print.</summary>
public sealed record PartSummary
{
    /// <summary>Name.</summary>
    public required string Name { get; init; }

    /// <summary>Its STL file in the pack.</summary>
    public required string File { get; init; }

    /// <summary>Number of the plate that it lies on, from 1; null when it does not fit the printer.</summary>
    public required int? Plate { get; init; }

    /// <summary>How it lies on the bed.</summary>
    public required PrintAttitude Attitude { get; init; }

    /// <summary>Size on the bed, left to right.</summary>
    public required double SizeXMm { get; init; }

    /// <summary>Size on the bed, front to back.</summary>
    public required double SizeYMm { get; init; }

    /// <summary>Height.</summary>
    public required double SizeZMm { get; init; }

    /// <summary>Volume enclosed by the skin: plastic, air and resin together.</summary>
    public required double VolumeCm3 { get; init; }

    internal static PartSummary Of(PrintPart part, IReadOnlyList<Plate> plates) => new()
    {
        Name = part.Name,
        File = PackContents.FileOf(part),
        Plate = plates.FirstOrDefault(plate => plate.Parts.Any(placed => ReferenceEquals(placed.Part, part)))?.Number,
        Attitude = part.Attitude,
        SizeXMm = Rounded.Mm(part.Size.X),
        SizeYMm = Rounded.Mm(part.Size.Y),
        SizeZMm = Rounded.Mm(part.Size.Z),
        VolumeCm3 = Rounded.Cm3(part.Volume),
    };
}

/// <summary>One line of the list of what to buy and cut.</summary>
public sealed record HardwareSummary
{
    /// <summary>What it is.</summary>
    public required HardwareKind Item { get; init; }

    /// <summary>Size in words.</summary>
    public required string Size { get; init; }

    /// <summary>Length to cut or buy; null when the size says it all.</summary>
    public required double? LengthMm { get; init; }

    /// <summary>How many.</summary>
    public required int Count { get; init; }

    /// <summary>Where it goes.</summary>
    public required string Place { get; init; }

    /// <summary>The line as a person reads it.</summary>
    [JsonIgnore]
    public string Words => $"{Count} x {Size}{(LengthMm is double length ? $", {length} mm long" : "")} ({Place})";

    internal static HardwareSummary Of(HardwareItem item) => new()
    {
        Item = item.Kind,
        Size = item.Size,
        LengthMm = item.Length > 0 ? Math.Round(item.Length * 1e3, 1) : null,
        Count = item.Count,
        Place = item.Place,
    };
}

/// <summary>One thing found.</summary>
public sealed record FindingSummary
{
    /// <summary>Stable name of the check.</summary>
    public required string Code { get; init; }

    /// <summary>How much it matters.</summary>
    public required Severity Severity { get; init; }

    /// <summary>JSON path in the design file.</summary>
    public required string Path { get; init; }

    /// <summary>Line in the design file; null when the value is a default.</summary>
    public required int? Line { get; init; }

    /// <summary>What is wrong and why.</summary>
    public required string Message { get; init; }

    /// <summary>What to do.</summary>
    public required string Remedy { get; init; }

    /// <summary>The value found, with its unit.</summary>
    public required string? Value { get; init; }

    /// <summary>The limit, with its unit.</summary>
    public required string? Limit { get; init; }

    internal static FindingSummary Of(Finding finding) => new()
    {
        Code = finding.Code,
        Severity = finding.Severity,
        Path = finding.Path,
        Line = finding.Line,
        Message = finding.Message,
        Remedy = finding.Remedy,
        Value = finding.Value,
        Limit = finding.Limit,
    };
}

/// <summary>A file of the pack.</summary>
/// <param name="File">Path within the pack.</param>
/// <param name="What">What it is.</param>
public sealed record FileSummary(string File, string What);
