using Finwright.Design;
using Finwright.Design.Fields;
using Finwright.Geometry.Bases;
using Finwright.Workshop.Library;

namespace Finwright.Page.Libraries;

/// <summary>One step of measuring a box.</summary>
public enum MeasuringStep
{
    /// <summary>What is needed.</summary>
    Ready,

    /// <summary>Length at the hull.</summary>
    Length,

    /// <summary>Depth at both ends.</summary>
    Depth,

    /// <summary>How the ends lean.</summary>
    Ends,

    /// <summary>Width at the hull and deep.</summary>
    Width,

    /// <summary>Bolts and corners.</summary>
    Bolts,

    /// <summary>What came of it.</summary>
    Result,
}

/// <summary>A bolt as it is measured, mm and degrees.</summary>
public sealed class BoltMeasure
{
    /// <summary>Distance behind the front corner at the hull; null while it is not measured.</summary>
    public double? FromFrontMm { get; set; }

    /// <summary>Lean from square to the hull, positive aft going up.</summary>
    public double LeanDegrees { get; set; }

    /// <summary>Thread.</summary>
    public Design.Thread Thread { get; set; } = Design.Thread.M6;
}

/// <summary>A fin box being measured, number by number; what is said against them is said at once.</summary>
public sealed class BoxMeasuring
{
    // So near to the known box a caliper cannot tell them apart, and its drawing is the better measure.
    private const double NearMm = 0.6;

    private static readonly Dictionary<MeasuringStep, string[]> Needs = new()
    {
        [MeasuringStep.Length] = ["hull_length_mm"],
        [MeasuringStep.Depth] = ["front_depth_mm", "rear_depth_mm"],
        [MeasuringStep.Ends] = ["deep_length_mm", "front_angle_degrees", "rear_angle_degrees"],
        [MeasuringStep.Width] = ["hull_width_mm", "deep_width_mm"],
        [MeasuringStep.Bolts] = ["corner_radius_mm", "clearance_mm", "bolts"],
    };

    private readonly Dictionary<string, double> _numbers = new(StringComparer.Ordinal) { ["corner_radius_mm"] = 6.35, ["clearance_mm"] = 0.1 };

    /// <summary>The step that is shown.</summary>
    public MeasuringStep Step { get; private set; }

    /// <summary>Whether the ends are measured as angles; else as the length at the deep end.</summary>
    public bool ByAngles { get; set; }

    /// <summary>The bolts, front first.</summary>
    public IList<BoltMeasure> Bolts { get; } = [];

    /// <summary>A measure; null while it is not given.</summary>
    /// <param name="key">Its field in the design file.</param>
    public double? this[string key]
    {
        get => _numbers.TryGetValue(key, out double number) ? number : null;
        set
        {
            if (value is double number)
                _numbers[key] = number;
            else
                _numbers.Remove(key);
        }
    }

    /// <summary>The field of a measure.</summary>
    public static Field FieldOf(string key) => RecordForm.Of(typeof(MeasuredBox)).Find(key) ?? throw new ArgumentException($"A measured box has no {key}.", nameof(key));

    /// <summary>The measures of a step.</summary>
    public static IReadOnlyList<string> Keys(MeasuringStep step) => Needs.TryGetValue(step, out string[]? keys) ? keys : [];

    /// <summary>The box as far as it is measured; null while something is missing that must be there.</summary>
    public MeasuredBox? Box =>
        this["hull_length_mm"] is double length && this["hull_width_mm"] is double width && this["front_depth_mm"] is double depth && Bolts.All(bolt => bolt.FromFrontMm is not null)
            ? new()
            {
                HullLengthMm = length,
                HullWidthMm = width,
                FrontDepthMm = depth,
                RearDepthMm = this["rear_depth_mm"],
                DeepLengthMm = ByAngles ? null : this["deep_length_mm"],
                FrontAngleDegrees = ByAngles ? this["front_angle_degrees"] : null,
                RearAngleDegrees = ByAngles ? this["rear_angle_degrees"] : null,
                DeepWidthMm = this["deep_width_mm"],
                CornerRadiusMm = this["corner_radius_mm"] ?? 0,
                ClearanceMm = this["clearance_mm"] ?? 0,
                Bolts = [.. Bolts.Select(bolt => new MeasuredBolt { FromFrontMm = bolt.FromFrontMm!.Value, LeanDegrees = bolt.LeanDegrees, Thread = bolt.Thread })],
            }
            : null;

    /// <summary>A design with the box; null while it is not whole.</summary>
    public FinDesign? Carrier
    {
        get
        {
            FinDesign blank = PartFields.Blank();
            return Box is { } box ? blank with { Base = blank.Base with { Box = BoxKind.Measured, Measured = box } } : null;
        }
    }

    /// <summary>What is to be said against the measures so far: each by itself, and together once they are all there.</summary>
    public IReadOnlyList<Finding> Findings
    {
        get
        {
            List<Finding> findings = [.. _numbers.Where(number => !IsUnused(number.Key)).SelectMany(number => Range(number.Key, number.Value))];
            if (findings.Count > 0 || Carrier is not { } carrier || !AreEndsGiven)
                return findings;
            findings.AddRange(DesignReader.Read(DesignWriter.Write(carrier)).Findings.Where(finding => finding.Path.StartsWith("$.base.measured", StringComparison.Ordinal)));
            if (!findings.Exists(finding => finding.IsError))
                findings.AddRange(BoxGauge.Plan(carrier).Findings);
            return findings;
        }
    }

    /// <summary>What is to be said at a step.</summary>
    public IReadOnlyList<Finding> Of(MeasuringStep step) => step is MeasuringStep.Result
        ? Findings
        : [.. Findings.Where(finding => Needs.GetValueOrDefault(step, []).Any(key => finding.Path.StartsWith($"$.base.measured.{key}", StringComparison.Ordinal)))];

    /// <summary>Whether everything is there and nothing is wrong.</summary>
    public bool IsWhole => Carrier is not null && AreEndsGiven && !Findings.Any(finding => finding.IsError);

    /// <summary>Whether a step says all that it must.</summary>
    public bool IsDone(MeasuringStep step) => !Of(step).Any(finding => finding.IsError) && step switch
    {
        MeasuringStep.Ready => true,
        MeasuringStep.Length => this["hull_length_mm"] is not null,
        MeasuringStep.Depth => this["front_depth_mm"] is not null,
        MeasuringStep.Ends => AreEndsGiven,
        MeasuringStep.Width => this["hull_width_mm"] is not null,
        MeasuringStep.Bolts => Bolts.All(bolt => bolt.FromFrontMm is not null),
        _ => IsWhole,
    };

    /// <summary>Whether the measures are those of the tapered two-bolt box, as nearly as a caliper tells.</summary>
    public bool LooksTwoBolt => Box is { } box && AreEndsGiven
        && Math.Abs(box.HullLengthMm - 1000 * TwoBoltBase.HullLength) < 2 * NearMm
        && Math.Abs(box.HullWidthMm - 1000 * TwoBoltBase.Thickness) < NearMm
        && (!ByAngles || Math.Abs((box.FrontAngleDegrees ?? 10) - 10) < 1.5);

    /// <summary>Goes on; stays when the step is not done.</summary>
    /// <returns>Whether it went on.</returns>
    public bool Next()
    {
        if (Step is MeasuringStep.Result || !IsDone(Step))
            return false;
        Step++;
        return true;
    }

    /// <summary>Goes back; every number stays.</summary>
    public void Back()
    {
        if (Step > MeasuringStep.Ready)
            Step--;
    }

    /// <summary>Goes to a step that was reached, or could be.</summary>
    public void GoTo(MeasuringStep step)
    {
        while (Step < step && Next())
        {
        }

        if (step < Step)
            Step = step;
    }

    private bool AreEndsGiven => ByAngles ? this["front_angle_degrees"] is not null && this["rear_angle_degrees"] is not null : this["deep_length_mm"] is not null;

    private bool IsUnused(string key) => key switch
    {
        "deep_length_mm" => ByAngles,
        "front_angle_degrees" or "rear_angle_degrees" => !ByAngles,
        _ => false,
    };

    private static IEnumerable<Finding> Range(string key, double value)
    {
        Field field = FieldOf(key);
        if (value < field.Minimum || value > field.Maximum)
            yield return new("out-of-range", Severity.Error, $"$.base.measured.{key}", FormattableString.Invariant($"{value} {field.Unit} cannot be meant: it must lie between {field.Minimum} and {field.Maximum} {field.Unit}."), "Measure again, and mind the unit.");
    }
}
