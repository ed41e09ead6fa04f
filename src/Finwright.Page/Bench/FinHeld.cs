using Finwright.Assessment;
using Finwright.Numerics;
using Finwright.Strength.Bench;
using Finwright.Strength.Files;
using Finwright.Strength.FromDesign;

namespace Finwright.Page.Bench;

/// <summary>A fin held on the bench, ready to be asked what a weight should show.</summary>
public sealed class FinHeld
{
    private readonly Lock _gate = new();
    private readonly Dictionary<BenchMeasurement, Ranged> _known = [];
    private readonly FinStructure? _structure;

    internal FinHeld(AssessmentResult result)
    {
        _structure = result.Built?.Structure;
        Span = result.Blade?.Span;
        Problem = _structure is not null && Span is not null
            ? null
            : result.Built?.Problem ?? result.Findings.FirstOrDefault(finding => finding.IsError)?.Message ?? "The structure could not be worked out.";
    }

    /// <summary>Why nothing can be predicted; null when it can.</summary>
    public string? Problem { get; }

    /// <summary>Depth of the tip, metres; null when the blade cannot be drawn.</summary>
    public double? Span { get; }

    /// <summary>What readings should show: metres or radians with their range.</summary>
    /// <param name="lines">Where is read what, under which weight; what was read does not matter. None beyond the tip.</param>
    /// <returns>For every line, in order; null where nothing can be predicted.</returns>
    public IReadOnlyList<Ranged?> Predict(IReadOnlyList<BenchReadingLine> lines)
    {
        ArgumentNullException.ThrowIfNull(lines);
        if (_structure is null || Span is not double span)
            return [.. lines.Select(_ => (Ranged?)null)];
        BenchMeasurement[] asked = [.. lines.Select(line => Bare(line.Measurements(span).First()))];
        lock (_gate)
        {
            BenchMeasurement[] open = [.. asked.Distinct().Where(own => !_known.ContainsKey(own))];
            if (open.Length > 0 && BenchTest.Readings(_structure, open) is { } ranges)
            {
                foreach ((BenchMeasurement own, Ranged range) in open.Zip(ranges))
                    _known[own] = range;
            }

            return [.. asked.Select(own => _known.TryGetValue(own, out Ranged range) ? range : (Ranged?)null)];
        }
    }

    // The same place under the same weight is the same question, whatever was read.
    private static BenchMeasurement Bare(BenchMeasurement read) => read with { Value = 0, Deviation = 1, Name = "", ReadShare = read.Quantity is BenchQuantity.Twist ? 0.5 : read.ReadShare };
}
