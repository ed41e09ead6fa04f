using Finwright.Design;
using Finwright.Geometry.Parts;
using Finwright.Geometry.Solids;

namespace Finwright.Geometry.FromDesign;

/// <summary>Goes through the steps from whole solids to parts on beds.</summary>
internal sealed class PartPlanner(PartWork work, ISolidKernel kernel, IProgress<double>? progress, CancellationToken cancellation)
{
    /// <summary>A part before it is built, with the ways it may rest by the design and the ways it could rest.</summary>
    private readonly record struct Draft(string Name, SolidExpression Solid, IReadOnlyList<Resting> Ways, IReadOnlyList<Resting> AllWays, bool IsBlade, bool IsGauge = false);

    public PartPlan? Plan()
    {
        IReadOnlyList<SolidResult> whole = kernel.Evaluate(work.Solids.Base is { } foot ? [work.Solids.Blade, foot] : [work.Solids.Blade], cancellation);
        if (whole.Any(w => w.Mesh.TriangleCount == 0))
        {
            work.Findings.Add(new("part-empty", Severity.Error, "$.hardware", "Nothing is left of the blade or the base after boring.", "Take out bores and pockets."));
            return null;
        }

        Report(0.3);
        if (CutsFromDesign.Decide(work, whole[0].Mesh) is not { } cuts)
            return null;

        Report(0.4);
        MeshProbe body = new(whole[0].Mesh);
        IReadOnlyList<Dowel> dowels = DowelsFromDesign.Place(work, cuts, body);
        IReadOnlyList<PortDimple> ports = work.Design.Pour.Ports.Dimples ? Ports(cuts, body, dowels, whole.Count > 1 ? whole[1].Mesh : null) : [];

        Report(0.6);
        SolidExpression[] pieces = Pieces(cuts, dowels, ports);
        EngravedText? engraving = EngravingFromDesign.Number(work, pieces[0], kernel, cancellation);
        if (engraving is not null)
            pieces[0] = pieces[0].Without(engraving.Tool());

        Draft[] drafts = [.. Drafts(pieces, cuts, ports)];
        Report(0.7);
        IReadOnlyList<SolidResult> results = kernel.Evaluate([.. drafts.Select(d => d.Solid)], cancellation);
        Report(0.9);
        PrintPart[] parts = [.. drafts.Zip(results, Lay)];
        foreach ((PrintPart part, Draft draft) in parts.Zip(drafts))
            Check(part, draft, whole[0].Mesh, cuts);
        Report(1);
        return new()
        {
            Parts = parts,
            Plates = Plate.Arrange(parts, work.Room, work.PartGap),
            Cuts = cuts,
            CutsAreProposed = work.Design.Parts.Cuts.Count == 0 && cuts.Count > 0,
            Dowels = dowels,
            Ports = ports,
            Engraving = engraving,
        };
    }

    private List<PortDimple> Ports(IReadOnlyList<CutPlane> cuts, MeshProbe body, IReadOnlyList<Dowel> dowels, TriangleMesh? foot)
    {
        List<PortDimple> ports = [];
        for (int i = 0; i <= cuts.Count; i++)
            ports.AddRange(PortsFromDesign.OfBlade(work, ShortName(cuts, i), Before(cuts, i), After(cuts, i), body, dowels));
        ports.AddRange(PortsFromDesign.Further(work, place => ShortName(cuts, cuts.Count(cut => cut.Beyond(place) > 0)), body, dowels));
        if (foot is not null)
            ports.AddRange(PortsFromDesign.OfBase(work, new(foot)));
        return ports;
    }

    /// <summary>The blade's pieces from the root down: dowels and dimples taken out of the whole once, then cut apart.</summary>
    private SolidExpression[] Pieces(IReadOnlyList<CutPlane> cuts, IReadOnlyList<Dowel> dowels, IReadOnlyList<PortDimple> ports)
    {
        SolidExpression marked = work.Solids.Blade.Without([.. dowels.Select(d => d.Tool()), .. ports.Where(IsOnBlade).Select(p => p.Tool())]);
        SolidExpression[] pieces = new SolidExpression[cuts.Count + 1];
        for (int i = 0; i < pieces.Length; i++)
        {
            SolidExpression piece = marked;
            if (Before(cuts, i) is { } before)
                piece = before.TipSide(piece, work.BondGap);
            if (After(cuts, i) is { } after)
                piece = after.RootSide(piece, work.BondGap);
            pieces[i] = piece;
        }

        return pieces;
    }

    private IEnumerable<Draft> Drafts(SolidExpression[] pieces, IReadOnlyList<CutPlane> cuts, IReadOnlyList<PortDimple> ports)
    {
        for (int i = 0; i < pieces.Length; i++)
        {
            string name = pieces.Length == 1 ? work.BladeName : $"{work.BladeName} {i + 1} of {pieces.Length}";
            yield return new(name, pieces[i], work.BladeWays(Before(cuts, i)), work.BladeWays(Before(cuts, i), PrintAttitude.Auto), IsBlade: true);
        }

        if (work.Solids.Base is { } foot)
            yield return new("base", foot.Without([.. ports.Where(p => !IsOnBlade(p)).Select(p => p.Tool())]), work.BaseWays(), work.BaseWays(PrintAttitude.Auto), IsBlade: false);
        if (work.Design.Base.Gauge)
        {
            SolidExpression gauge = FitGauge.Solid(work.Solids.Plan, work.GaugeThickness);
            if (EngravingFromDesign.Allowances(work, gauge, kernel, cancellation) is { } text)
                gauge = gauge.Without(text.Tool());
            yield return new("gauge", gauge, work.GaugeWays(), work.GaugeWays(), IsBlade: false, IsGauge: true);
        }
    }

    private PrintPart Lay(Draft draft, SolidResult result)
    {
        if (result.Mesh.TriangleCount == 0)
            throw new SolidException($"nothing is left of the {draft.Name}.");
        return new(draft.Name, result.Mesh, result.Volume, result.PieceCount, result.SealedVoidCount, LaidPart.Lay(result.Mesh.Points(), draft.Ways, work.Room)) { IsGauge = draft.IsGauge, Ways = draft.AllWays };
    }

    private void Check(PrintPart part, Draft draft, TriangleMesh wholeBlade, IReadOnlyList<CutPlane> cuts)
    {
        string path = draft.IsBlade ? "$.shape" : "$.base";
        if (MeshChecks.Defects(part.Mesh, 1) is [{ } defect, ..])
        {
            work.Findings.Add(new(
                "part-not-closed", Severity.Error, path, $"The skin of the {part.Name} is not closed: {defect.Message}",
                "Move bores, pockets or cuts that just touch each other or the skin a little apart."));
        }

        if (part.PieceCount != 1)
        {
            work.Findings.Add(new(
                "part-in-pieces", Severity.Error, path, $"The {part.Name} falls into {part.PieceCount} pieces: bores, pockets or cuts part it.",
                "Move what parts it, or make it smaller.")
            { Value = $"{part.PieceCount}", Limit = "1" });
        }

        if (part.SealedVoidCount > 0)
        {
            work.Findings.Add(new(
                "part-sealed-void", Severity.Error, path, $"The {part.Name} holds {part.SealedVoidCount} hollow(s) with no way out: nothing can be put in, and no resin gets there.",
                "Let the pocket open through a bore or a face.")
            { Value = $"{part.SealedVoidCount}", Limit = "0" });
        }

        if (!part.Laid.Fits)
            work.Findings.Add(TooLarge(part, draft, cuts.Count == 0 ? wholeBlade : null));
    }

    private Finding TooLarge(PrintPart part, Draft draft, TriangleMesh? uncut)
    {
        PrintRoom room = work.Room;
        Point3 size = part.Size;
        IEnumerable<string> excess =
            from axis in new[] { (Size: size.X, Room: room.Width, Word: "from left to right"), (Size: size.Y, Room: room.Depth, Word: "from front to back"), (Size: size.Z, Room: room.Height, Word: "in height") }
            where axis.Size > axis.Room
            select $"{PartWork.Mm(axis.Size - axis.Room)} {axis.Word}";
        string attitude = part.Attitude == PrintAttitude.Standing ? "standing" : "lying";
        return new(
            "part-too-large", Severity.Error, draft.IsBlade ? "$.parts.cuts" : "$.print.bed_x_mm",
            $"The {part.Name} does not fit the printer: {attitude} and turned the best way it measures {Text(size)}, the usable room is {Text(new(room.Width, room.Depth, room.Height))}; too much by {string.Join(" and ", excess)}.",
            TooLargeRemedy(part, draft, uncut))
        { Value = Text(size), Limit = Text(new(room.Width, room.Depth, room.Height)) };
    }

    private string TooLargeRemedy(PrintPart part, Draft draft, TriangleMesh? uncut)
    {
        string bed = $"a bed of at least {1000 * (part.Size.X + 2 * work.Room.Edge):0.0} × {1000 * (part.Size.Y + 2 * work.Room.Edge):0.0} mm and {PartWork.Mm(part.Size.Z)} of height";
        if (LaidPart.Lay(part.Mesh.Points(), draft.AllWays, work.Room) is { Fits: true } other)
            return $"Let it print {(other.Attitude == PrintAttitude.Standing ? "standing" : "lying")}, which fits, or use {bed}.";
        if (!draft.IsBlade)
            return $"Use {bed}.";
        if (uncut is null)
            return $"Cut this piece once more, or use {bed}.";
        return CutsFromDesign.Propose(work, uncut) is { Count: > 0 } depths
            ? $"Cut it at {CutsFromDesign.List(depths)} below the hull, or use {bed}."
            : $"Use {bed}; level cuts alone do not make it fit.";
    }

    private string ShortName(IReadOnlyList<CutPlane> cuts, int piece) => cuts.Count == 0 ? work.BladeName : $"{work.BladeName} {piece + 1}";

    private void Report(double share)
    {
        cancellation.ThrowIfCancellationRequested();
        progress?.Report(share);
    }

    private static string Text(Point3 size) => $"{1000 * size.X:0.0} × {1000 * size.Y:0.0} × {1000 * size.Z:0.0} mm";

    private static bool IsOnBlade(PortDimple port) => port.Centre.Y > 0;

    private static CutPlane? Before(IReadOnlyList<CutPlane> cuts, int piece) => piece > 0 ? cuts[piece - 1] : null;

    private static CutPlane? After(IReadOnlyList<CutPlane> cuts, int piece) => piece < cuts.Count ? cuts[piece] : null;
}
