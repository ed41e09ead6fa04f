using System.Globalization;
using System.Text.RegularExpressions;
using Finwright.Geometry.Files;

namespace Finwright.Geometry.Tests;

/// <summary>Asks the independent mesh checker <c>admesh</c> about a mesh, through a binary STL file in millimetres.</summary>
internal static class Admesh
{
    private static readonly string[] Faults =
        ["Total disconnected facets", "Degenerate facets", "Edges fixed", "Facets removed", "Facets added", "Facets reversed", "Backwards edges"];

    /// <summary>Fails the test unless the checker finds every facet joined to its three neighbours, with nothing to repair.</summary>
    /// <returns>The volume it computes, m³.</returns>
    public static double AssertWatertight(TriangleMesh mesh)
    {
        using TemporaryFolder folder = new();
        using (FileStream file = File.Create(folder["mesh.stl"]))
            StlFile.Write(file, mesh, "mesh");
        string report = ExternalTool.Run("admesh", "admesh", folder["mesh.stl"]);
        Assert.Equal(mesh.TriangleCount, Number(report, "Number of facets"));
        foreach (string fault in Faults)
            Assert.True(Number(report, fault) == 0, $"admesh counts {fault}: {Number(report, fault)}.\n{report}");
        return Number(report, "Volume") * 1e-9;
    }

    private static double Number(string report, string label)
    {
        Match match = Regex.Match(report, Regex.Escape(label) + @"\s*:\s*(-?[\d.]+(?:e[+-]?\d+)?)", RegexOptions.None, TimeSpan.FromSeconds(5));
        Assert.True(match.Success, $"admesh did not report {label}:\n{report}");
        return double.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture);
    }
}
