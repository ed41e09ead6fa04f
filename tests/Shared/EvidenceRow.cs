using System.Globalization;

namespace Finwright;

/// <summary>One published or exact value beside what the program finds.</summary>
/// <param name="Topic">Heading it stands under.</param>
/// <param name="What">The case, with its conditions.</param>
/// <param name="Source">Author, year, title or report, table or page; how it was come by.</param>
/// <param name="Expected">The value of the source.</param>
/// <param name="Computed">The value found here.</param>
/// <param name="Tolerance">Greatest distance between both that we defend.</param>
/// <param name="Reason">Why that much.</param>
/// <param name="Miss">Why the value lies outside the tolerance; null where it lies inside.</param>
/// <param name="KnownMiss">For a miss: the distance that must not grow unnoticed.</param>
public sealed record EvidenceRow(string Topic, string What, string Source, double Expected, double Computed, double Tolerance, string Reason, string? Miss = null, double KnownMiss = 0)
{
    /// <summary>Whether the value lies where we defend it.</summary>
    public bool IsWithin => Math.Abs(Computed - Expected) <= Tolerance;

    /// <summary>Whether the document tells it as a miss.</summary>
    public bool IsMissed => Miss is not null && !IsWithin;

    /// <summary>Holds the row: inside its tolerance, or outside it as the document says and no farther.</summary>
    public void Hold()
    {
        double distance = Math.Abs(Computed - Expected);
        if (Miss is null)
            Assert.True(distance <= Tolerance, $"{What}: {Computed} is farther than {Tolerance} from {Expected} ({Source}).");
        else
            Assert.True(distance <= KnownMiss, $"{What}: {Computed} has moved farther than {KnownMiss} away from {Expected} ({Source}).");
    }

    /// <summary>The row of the document's table.</summary>
    /// <param name="withTopic">Whether it stands apart from its topic, and names it.</param>
    public string Text(bool withTopic)
    {
        string miss = Expected is 0 || Math.Abs(Expected) < 2 * Tolerance && Math.Abs(Expected) < 0.1
            ? Number(Computed - Expected)
            : string.Create(CultureInfo.InvariantCulture, $"{100 * (Computed / Expected - 1):+0.0;-0.0;0.0} %");
        string verdict = IsMissed ? $"**missed**: {Miss}" : $"within {Number(Tolerance)} ({Reason})";
        return $"| {(withTopic ? Topic + ": " : "")}{What} | {Source} | {Number(Expected)} | {Number(Computed)} | {miss} | {verdict} |";
    }

    // Four digits: more would change with the processor.
    private static string Number(double x)
    {
        if (x is 0)
            return "0";
        int digits = Math.Clamp(3 - (int)Math.Floor(Math.Log10(Math.Abs(x))), 0, 6);
        return x.ToString("F" + digits, CultureInfo.InvariantCulture);
    }
}
