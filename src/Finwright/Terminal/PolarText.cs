using System.Globalization;
using Finwright.Assessment.Packing;
using Finwright.Commands;

namespace Finwright.Terminal;

/// <summary>A polar as plain text: one sentence, then a row for each angle.</summary>
internal static class PolarText
{
    private const string Missing = "-";

    /// <summary>Writes a polar.</summary>
    /// <param name="streams">Where to.</param>
    /// <param name="name">Name of the section.</param>
    /// <param name="polar">The polar.</param>
    public static void Write(TextStreams streams, string name, SectionPolar polar)
    {
        TextWriter o = streams.Out;
        o.WriteLine(Wrapping.Wrap($"{name} at Reynolds number {polar.ReynoldsNumber:#,0}, n = {polar.CriticalAmplification:0.##}{Surface(polar)}", streams.Width));
        o.WriteLine(Wrapping.Wrap(Sentence(polar), streams.Width));
        o.WriteLine();
        o.WriteLine("    angle      lift     drag   moment    transition      separation     lowest");
        o.WriteLine("        °        cl       cd       cm   upper  lower    upper  lower        cp");
        foreach (SectionPolarRow row in polar.Rows)
            o.WriteLine($"{row.AlphaDegrees,9:0.##}{Number(row.Cl, "0.000"),10}{Number(row.Cd, "0.0000"),9}{Number(row.Cm, "0.000"),9}{Number(row.TransitionUpper, "0.000"),8}{Number(row.TransitionLower, "0.000"),7}{Number(row.SeparationUpper, "0.000"),9}{Number(row.SeparationLower, "0.000"),7}{Number(row.MinimumCp, "0.00"),10}");
        o.WriteLine();
        o.WriteLine(Wrapping.Wrap("Forces per chord and dynamic pressure, moment about the quarter chord (nose up positive), places as shares of the chord from the nose. A separation of 1.000 means attached to the trailing edge.", streams.Width));
    }

    private static string Surface(SectionPolar polar)
    {
        List<string> parts = [];
        if (polar.Finish is string finish)
            parts.Add(finish);
        if (polar.TripUpper is double upper && polar.TripLower is double lower && upper.Equals(lower))
            parts.Add($"both sides tripped at {100 * upper:0.##} % of the chord");
        else if (polar.TripUpper is double above && polar.TripLower is double below)
            parts.Add($"tripped at {100 * above:0.##} % (upper side) and {100 * below:0.##} % (lower side) of the chord");
        else if (polar.TripUpper is double alone)
            parts.Add($"upper side tripped at {100 * alone:0.##} % of the chord");
        else if (polar.TripLower is double only)
            parts.Add($"lower side tripped at {100 * only:0.##} % of the chord");
        return parts.Count == 0 ? ", smooth." : $", {string.Join(", ", parts)}.";
    }

    private static string Sentence(SectionPolar polar)
    {
        List<string> parts = [];
        if (polar.MaximumCl is double peak)
            parts.Add($"Lift peaks at {peak:0.00} at {polar.StallDegrees:0.0}°; good to about 10 %.");
        if (polar.Rows.Where(row => row.Converged).MinBy(row => row.Cd) is { } least)
            parts.Add($"Drag is least at {least.AlphaDegrees:0.##}°: {least.Cd:0.0000}.");
        int stalled = polar.Rows.Count(row => row.NoseStall);
        if (stalled > 0)
            parts.Add($"Past the suction peak that noses bear the flow lets go: {stalled} of {polar.Rows.Count} angles {(stalled == 1 ? "lies" : "lie")} beyond and {(stalled == 1 ? "has" : "have")} no numbers.");
        int missing = polar.Rows.Count(row => !row.Converged) - stalled;
        if (missing > 0)
            parts.Add($"{missing} of {polar.Rows.Count} angles did not converge and {(missing == 1 ? "has" : "have")} no numbers.");
        return string.Join(' ', parts);
    }

    private static string Number(double? value, string format) => value is double number ? (number + 0.0).ToString(format, CultureInfo.InvariantCulture) : Missing;
}
