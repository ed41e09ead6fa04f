using Finwright.Assessment.Stages;
using Finwright.Design;
using Finwright.Geometry;
using Finwright.Geometry.Solids;
using Finwright.Making.FromDesign;
using Finwright.Making.Resins;
using Finwright.Strength.FromDesign;

namespace Finwright.Assessment.Made;

/// <summary>A closed mesh that takes the place of a part of a fin: printed, poured and cured by its own settings.</summary>
internal static class ImportedPart
{
    private const double Millimetres = 1e-3;

    // The skin to which a port is moved may be this far from the place given, metres: farther, the place is wrong.
    private const double FarthestPort = 10e-3;

    /// <summary>Works the part out as far as asked.</summary>
    public static MakingResult Make(
        string name, TriangleMesh mesh, PartSettings settings, string? folder, AssessmentDepth depth, Func<ISolidKernel> kernel, List<Finding> findings, IProgress<StageProgress>? progress, CancellationToken cancellation)
    {
        MakingResult nothing = new() { Name = name, Findings = [], InputIsWrong = true };
        Pour pour = ResinFromDesign.Embed(settings.Pour, folder, findings);
        MaterialChoice printed = MaterialFiles.Embed(settings.Printed, folder, "$.printed.file", findings);
        ResinSystem? resin = ResinFromDesign.Of(pour.System, findings);
        double? softening = MaterialsFromDesign.Printed(printed, "$.printed", findings)?.SofteningTemperature.Value;
        Refuse(mesh, findings);
        if (resin is null || softening is not double soft || findings.Exists(finding => finding.IsError))
            return nothing;

        PartToMake part = new(name, mesh, Placement.Identity)
        {
            IsImported = true,
            Ports = [.. Ports(mesh, settings, pour, findings)],
            // As it comes, and on each of its other sides.
            Ways =
            [
                new(PrintAttitude.Standing, new(0, 0, -1)), new(PrintAttitude.Standing, new(0, 0, 1)),
                new(PrintAttitude.Lying, new(0, -1, 0)), new(PrintAttitude.Lying, new(0, 1, 0)), new(PrintAttitude.Lying, new(-1, 0, 0)), new(PrintAttitude.Lying, new(1, 0, 0)),
            ],
        };
        try
        {
            FinPrinted print = PrintWork.Of(settings.Print, settings.Prices, [part], [], kernel(), findings, Share("printed", "laying the part down layer by layer", 0, 0.2), cancellation);
            if (depth == AssessmentDepth.Print)
                return nothing with { InputIsWrong = false, Printed = print };
            FinPoured poured = PourWork.Of(pour, resin, print.Parts, findings, Share("poured", "filling the pores", 0.2, 0.4), cancellation);
            FinCured? cured = depth == AssessmentDepth.Pour ? null : CureWork.Of(pour, settings.Print, poured, soft, Share("cured", "letting the resin cure", 0.4, 1), cancellation);
            return nothing with { InputIsWrong = false, Printed = print, Poured = poured, Cured = cured };
        }
        catch (SolidException problem)
        {
            findings.Add(new("solid-failed", Severity.Error, "$", $"The mesh could not be cut into layers: {problem.Message}", "Repair the mesh where it was made: closed, no surface through another."));
            return nothing;
        }

        IProgress<double>? Share(string stage, string words, double from, double to) => progress is null ? null : new Part(progress, stage, words, from, to);
    }

    private static void Refuse(TriangleMesh mesh, List<Finding> findings)
    {
        if (MeshChecks.Defects(mesh, 1) is [{ } defect, ..])
            findings.Add(new("mesh-not-closed", Severity.Error, "$", $"The mesh is not closed: {defect.Message}", "Repair it where it was made; every edge must join exactly two triangles."));
        else if (mesh.Volume() <= 0)
            findings.Add(new("mesh-inside-out", Severity.Error, "$", "The mesh encloses no volume, or is inside out.", "Turn its triangles round where it was made."));
    }

    /// <summary>Ports where the settings put them, each on the nearest skin.</summary>
    private static IEnumerable<PortToDrill> Ports(TriangleMesh mesh, PartSettings settings, Pour pour, List<Finding> findings)
    {
        MeshSkin skin = new(mesh);
        foreach ((int index, MeshPort port) in settings.Ports.Index())
        {
            Point3 wanted = Millimetres * new Point3(port.XMm, port.YMm, port.ZMm);
            (Point3 place, Point3 outward) = skin.Nearest(wanted);
            if ((place - wanted).Length > FarthestPort)
            {
                findings.Add(new("port-off-skin", Severity.Error, $"$.ports[{index}]", $"The port lies {1e3 * (place - wanted).Length:0.0} mm from the skin of the part.", $"Give a place on the skin; the nearest is x {1e3 * place.X:0.0}, y {1e3 * place.Y:0.0}, z {1e3 * place.Z:0.0} mm.") { Value = $"{1e3 * (place - wanted).Length:0.0} mm", Limit = $"{1e3 * FarthestPort:0} mm" });
                continue;
            }

            yield return new($"port {index + 1}", place, outward, pour.Ports.DiameterMm * Millimetres);
        }
    }

    private sealed class Part(IProgress<StageProgress> whole, string stage, string words, double from, double to) : IProgress<double>
    {
        public void Report(double value) => whole.Report(new(stage, from + (to - from) * value, words));
    }
}
