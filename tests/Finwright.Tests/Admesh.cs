using System.Diagnostics;
using System.Globalization;
using System.Text.RegularExpressions;

namespace Finwright.Tests;

/// <summary>Asks <c>admesh</c> (Debian package admesh) about an STL file.</summary>
/// <param name="Parts">Separate shells.</param>
/// <param name="DisconnectedFacets">Facets that were found with an open edge before any repair.</param>
/// <param name="FacetsReversed">Facets that pointed inwards.</param>
/// <param name="DegenerateFacets">Facets without area.</param>
/// <param name="VolumeMm3">Enclosed volume.</param>
internal sealed partial record Admesh(int Parts, int DisconnectedFacets, int FacetsReversed, int DegenerateFacets, double VolumeMm3)
{
    public static Admesh Of(string file)
    {
        string report;
        try
        {
            using Process process = Process.Start(new ProcessStartInfo("admesh", [file]) { RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false })!;
            report = process.StandardOutput.ReadToEnd();
            process.WaitForExit();
        }
        catch (System.ComponentModel.Win32Exception missing)
        {
            throw new InvalidOperationException("The program admesh is missing. Install it: apt-get install admesh", missing);
        }

        return new(Whole(report, "Number of parts"), Whole(report, "Total disconnected facets"), Whole(report, "Facets reversed"), Whole(report, "Degenerate facets"), Number(report, "Volume"));
    }

    private static int Whole(string report, string name) => (int)Number(report, name);

    private static double Number(string report, string name) =>
        double.Parse(Value(name).Match(report) is { Success: true } match ? match.Groups["value"].ValueSpan : throw new InvalidOperationException($"admesh said nothing of \"{name}\":\n{report}"), CultureInfo.InvariantCulture);

    private static Regex Value(string name) => new($@"{Regex.Escape(name)}\s*:\s*(?<value>-?[0-9.]+)", RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(1));
}
