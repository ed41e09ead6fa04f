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

    // No printer for the home has half of that room: what is larger has its unit wrong.
    private const double Largest = 2;

    // As for the skin of a blade: rounding of mesh files stays below.
    private const double LargestFold = 1e-3;

    /// <summary>Works the part out as far as asked.</summary>
    public static MakingResult Make(
        string name, TriangleMesh mesh, PartSettings settings, string? folder, AssessmentDepth depth, Func<ISolidKernel> kernel, List<Finding> findings, IProgress<StageProgress>? progress, CancellationToken cancellation)
    {
        MakingResult nothing = new() { Name = name, Findings = [], InputIsWrong = true };
        Pour pour = ResinFromDesign.Embed(settings.Pour, folder, findings);
        MaterialChoice printed = MaterialFiles.Embed(settings.Printed, folder, "$.printed.file", findings);
        ResinSystem? resin = ResinFromDesign.Of(pour.System, findings);
        double? softening = MaterialsFromDesign.Printed(printed, "$.printed", findings)?.SofteningTemperature.Value;
        Refuse(mesh, settings.Print, findings);
        IReadOnlyList<PortToDrill> ports = findings.Exists(finding => finding.IsError) ? [] : [.. Ports(mesh, settings, pour, findings)];
        if (resin is null || softening is not double soft || findings.Exists(finding => finding.IsError))
            return nothing;

        PartToMake part = new(name, mesh, Placement.Identity)
        {
            IsImported = true,
            Ports = ports,
            // As it comes, and on each of its other sides.
            Ways =
            [
                new(PrintAttitude.Standing, new(0, 0, -1)), new(PrintAttitude.Standing, new(0, 0, 1)),
                new(PrintAttitude.Lying, new(0, -1, 0)), new(PrintAttitude.Lying, new(0, 1, 0)), new(PrintAttitude.Lying, new(-1, 0, 0)), new(PrintAttitude.Lying, new(1, 0, 0)),
            ],
        };
        try
        {
            if (IsFolded(mesh, kernel(), findings, cancellation))
                return nothing;
            FinPrinted print = PrintWork.Of(settings.Print, [part], [], kernel(), findings, Share("printed", "laying the part down layer by layer", 0, 0.2), cancellation);
            Fits(print.Parts[0], settings.Print, findings);
            if (depth == AssessmentDepth.Print)
                return nothing with { InputIsWrong = false, Pour = pour, Prices = settings.Prices, Printed = print };
            FinPoured poured = PourWork.Of(pour, resin, print.Parts, findings, Share("poured", "filling the pores", 0.2, 0.4), cancellation);
            FinCured? cured = depth == AssessmentDepth.Pour ? null : CureWork.Of(pour, settings.Print, poured, soft, Share("cured", "letting the resin cure", 0.4, 1), cancellation);
            return nothing with { InputIsWrong = false, Pour = pour, Prices = settings.Prices, Printed = print, Poured = poured, Cured = cured };
        }
        catch (SolidException problem)
        {
            findings.Add(new("solid-failed", Severity.Error, "$", $"The mesh could not be cut into layers: {problem.Message}", "Repair the mesh where it was made: closed, no surface through another."));
            return nothing;
        }

        IProgress<double>? Share(string stage, string words, double from, double to) => progress is null ? null : new Part(progress, stage, words, from, to);
    }

    private static void Refuse(TriangleMesh mesh, Print print, List<Finding> findings)
    {
        Point3 size = mesh.Bounds().Size;
        string shown = $"{1e3 * size.X:0.##} × {1e3 * size.Y:0.##} × {1e3 * size.Z:0.##} mm";
        const string unit = "Check the unit in which it was written: STL is taken as millimetres.";
        if (MeshChecks.Defects(mesh, 1) is [{ } defect, ..])
            findings.Add(new("mesh-not-closed", Severity.Error, "$", $"The mesh is not closed: {defect.Message}", "Repair it where it was made; every edge must join exactly two triangles."));
        else if (mesh.Volume() <= 0)
            findings.Add(new("mesh-inside-out", Severity.Error, "$", "The mesh encloses no volume, or is inside out.", "Turn its triangles round where it was made."));
        else if (Math.Max(size.X, Math.Max(size.Y, size.Z)) > Largest)
            findings.Add(new("mesh-too-large", Severity.Error, "$", $"The mesh measures {shown}; no printer that this is meant for prints more than {Largest:0} m.", unit) { Value = shown, Limit = $"{Largest:0} m" });
        else if (Math.Min(size.X, size.Y) < print.LineWidthMm * Millimetres || size.Z < print.LayerMm * Millimetres)
            findings.Add(new("mesh-too-small", Severity.Error, "$", $"The mesh measures {shown}, less than one printed line ({print.LineWidthMm} mm wide, {print.LayerMm} mm high).", unit) { Value = shown, Limit = $"{print.LineWidthMm} mm" });
    }

    /// <summary>Whether the surface runs through itself; then layers would be filled twice or not at all.</summary>
    private static bool IsFolded(TriangleMesh mesh, ISolidKernel kernel, List<Finding> findings, CancellationToken cancellation)
    {
        if (FoldCheck.Worst(kernel, mesh, cancellation: cancellation) is not { Share: > LargestFold } fold)
            return false;
        findings.Add(new("mesh-runs-through-itself", Severity.Error, "$", $"The surface of the mesh runs through itself near {"xyz"[fold.Axis]} = {fold.Height / Millimetres:0.0} mm: {100 * fold.Share:0.##} % of the slice there counts twice or inside out.", "Join its bodies into one where it was made.") { Value = $"{100 * fold.Share:0.##} %", Limit = $"{100 * LargestFold:0.##} %" });
        return true;
    }

    /// <summary>Says when the part does not fit the printer as it lies.</summary>
    private static void Fits(PartPrinted part, Print print, List<Finding> findings)
    {
        if (part.AsLaid.Laid.Fits)
            return;
        Point3 size = part.Layers.Size;
        string shown = $"{1e3 * size.X:0.0} × {1e3 * size.Y:0.0} × {1e3 * size.Z:0.0} mm", bed = $"{print.BedXMm} × {print.BedYMm} × {print.BedZMm} mm";
        findings.Add(new("part-too-large", Severity.Error, "$.print", $"As it lies the part measures {shown}; the printer takes {bed} with {print.EdgeMarginMm} mm left free at each edge of the bed.", part.Orientations[0].Laid.Fits ? "Turn it on another side; the print plan says which fit." : "Cut it where it was made, or give your printer's own size (print.bed_x_mm and its neighbours).") { Value = shown, Limit = bed });
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
