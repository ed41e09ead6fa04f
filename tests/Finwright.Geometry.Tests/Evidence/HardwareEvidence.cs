using Finwright.Geometry.Features;

namespace Finwright.Geometry.Tests.Evidence;

/// <summary>Nuts and holes beside the standards.</summary>
internal static class HardwareEvidence
{
    public static IReadOnlyList<EvidenceRow> Rows { get; } = [.. Threads()];

    private static IEnumerable<EvidenceRow> Threads()
    {
        const string Topic = "Nuts and clearance holes, mm", Printed = "as printed", Nuts = "BS EN ISO 4032:2001, table 1", Holes = "ISO 273, medium fit";
        foreach ((string name, double flats, double height, double hole) in new[] { ("M4", 7.00, 3.2, 4.5), ("M5", 8.00, 4.7, 5.5), ("M6", 10.00, 5.2, 6.6) })
        {
            MetricThread own = MetricThread.All.Single(thread => thread.Name == name);
            yield return new(Topic, $"{name}, across flats", Nuts, flats, 1e3 * own.HexNut.AcrossFlats, 1e-9, Printed);
            yield return new(Topic, $"{name}, height", Nuts, height, 1e3 * own.HexNut.Height, 1e-9, Printed);
            yield return new(Topic, $"{name}, hole", Holes, hole, 1e3 * own.MediumClearance, 1e-9, Printed);
        }
    }
}
