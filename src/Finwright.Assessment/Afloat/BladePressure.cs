using Finwright.Water.Lifting;

namespace Finwright.Assessment.Afloat;

/// <summary>Pressure of the water over both sides of the blade in one load case: sections solved once more at some depths, carried on straight between them.</summary>
/// <remarks>
/// Each section meets the water at the angle that the lifting surface found for its strip. Vortices along a sharp swept nose and round the tip, which the lifting surface adds as forces, are not
/// in it, and neither is what the hull and the water's surface do to the pressure beside what they do to the angle. Beyond the first and last solved depth the pressure of that depth stands.
/// </remarks>
public sealed class BladePressure
{
    // Depths at which sections are solved, and places along the chord at which each is kept: more show nothing new (own comparison).
    private const int Depths = 9, Places = 64;

    private readonly double[] _depths;
    private readonly double[][] _starboard, _port;

    private BladePressure(double[] depths, double[][] starboard, double[][] port, int asked) => (_depths, _starboard, _port, Asked) = (depths, starboard, port, asked);

    /// <summary>Depths at which the flow was to be solved.</summary>
    public int Asked { get; }

    /// <summary>Depths at which it could be solved, rising, metres.</summary>
    public IReadOnlyList<double> Solved => _depths;

    /// <summary>Works the pressure out: a tenth of a second a section.</summary>
    /// <param name="result">A fin whose water was worked out.</param>
    /// <param name="sailed">The load case.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <returns>The pressure; null when no section could be solved.</returns>
    /// <exception cref="OperationCanceledException">The work was stopped.</exception>
    public static BladePressure? Of(AssessmentResult result, CaseAfloat sailed, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(sailed);
        if (result is not { Afloat: { } afloat, Blade: { } blade, Polars.Family: { } family })
            return null;
        LiftingResult flow = sailed.UnderHull.Result;
        if (flow.Status is not (LiftingStatus.Attached or LiftingStatus.Stalled))
            return null;
        StripResult[] strips = [.. Enumerable.Range(0, Depths)
            .Select(i => blade.Span * (1 - Math.Cos((i + 0.5) * Math.PI / Depths)) / 2)
            .Select(depth => flow.Strips.MinBy(strip => Math.Abs(strip.Depth - depth))!)
            .Distinct()
            .OrderBy(strip => strip.Depth)];
        List<(double Depth, double[] Starboard, double[] Port)> rows = [];
        foreach (StripResult strip in strips)
        {
            cancellation.ThrowIfCancellationRequested();
            if (SectionPressure.Along(afloat, blade, family, flow, strip) is not { } along)
                continue;
            int nose = 0;
            for (int i = 1; i < along.X.Count; i++)
                if (along.X[i] < along.X[nose])
                    nose = i;
            double pressure = flow.Flow.DynamicPressure;
            // The upper side of a section is the starboard side of the fin.
            rows.Add((strip.Depth, Side(along, nose, -1, pressure), Side(along, nose, 1, pressure)));
        }

        return rows.Count == 0 ? null : new([.. rows.Select(row => row.Depth)], [.. rows.Select(row => row.Starboard)], [.. rows.Select(row => row.Port)], strips.Length);
    }

    /// <summary>Pressure at a place, Pa: over that of still water at the same depth; negative for suction.</summary>
    /// <param name="share">Place along the chord from the leading edge, 0 to 1.</param>
    /// <param name="depth">Depth, metres.</param>
    /// <param name="isStarboard">On which side.</param>
    public double At(double share, double depth, bool isStarboard)
    {
        double[][] side = isStarboard ? _starboard : _port;
        int last = _depths.Length - 1;
        if (depth <= _depths[0])
            return Along(side[0], share);
        if (depth >= _depths[last])
            return Along(side[last], share);
        int low = 0;
        while (_depths[low + 1] < depth)
            low++;
        double part = (depth - _depths[low]) / (_depths[low + 1] - _depths[low]);
        return (1 - part) * Along(side[low], share) + part * Along(side[low + 1], share);
    }

    // Places crowd at nose and trailing edge, as the pressure changes there.
    private static double Along(double[] kept, double share)
    {
        double place = Math.Acos(1 - 2 * Math.Clamp(share, 0, 1)) / Math.PI * Places;
        int low = Math.Min((int)place, Places - 1);
        return kept[low] + (place - low) * (kept[low + 1] - kept[low]);
    }

    private static double[] Side(PressureAlong along, int nose, int step, double pressure)
    {
        double[] kept = new double[Places + 1];
        int at = nose, end = step < 0 ? 0 : along.X.Count - 1;
        for (int i = 0; i <= Places; i++)
        {
            double x = (1 - Math.Cos(i * Math.PI / Places)) / 2;
            while (at != end && along.X[at + step] < x)
                at += step;
            if (at == end)
            {
                kept[i] = pressure * along.Cp[at];
                continue;
            }

            double from = along.X[at], to = along.X[at + step], part = to > from ? Math.Clamp((x - from) / (to - from), 0, 1) : 0;
            kept[i] = pressure * (along.Cp[at] + part * (along.Cp[at + step] - along.Cp[at]));
        }

        return kept;
    }
}
