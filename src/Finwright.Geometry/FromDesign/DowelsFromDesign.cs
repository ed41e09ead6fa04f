using Finwright.Design;
using Finwright.Geometry.Parts;

namespace Finwright.Geometry.FromDesign;

/// <summary>Puts the dowels of a design across its cuts.</summary>
internal static class DowelsFromDesign
{
    /// <summary>The dowels of all cuts.</summary>
    public static IReadOnlyList<Dowel> Place(PartWork work, IReadOnlyList<CutPlane> cuts, MeshProbe body)
    {
        int wanted = work.Design.Parts.DowelsPerCut;
        List<Dowel> dowels = [];
        for (int i = 0; i < cuts.Count; i++)
        {
            DowelRow row = DowelPlacer.Place(i, cuts[i], work.Blade, body, wanted, work.DowelBore, work.DowelLength, work.LeastPlastic, [.. cuts.Where((_, j) => j != i)]);
            dowels.AddRange(row.Dowels);
            if (row.Dowels.Count < wanted)
                work.Findings.Add(NoRoom(work, i, cuts[i], row, wanted));
        }

        return dowels;
    }

    private static Finding NoRoom(PartWork work, int number, CutPlane cut, DowelRow row, int wanted)
    {
        double largest = row.GreatestBore - (work.DowelBore - work.Dowel);
        string best = largest > 0
            ? $"The best place left takes a dowel of {PartWork.Mm(largest)}."
            : "No place is left for any dowel of this length.";
        return new(
            "dowel-no-room", Severity.Caution, "$.parts.dowel_mm",
            $"Cut {number + 1} at {PartWork.Mm(cut.Through.Y)}: {row.Dowels.Count} of {wanted} dowels found room. A bore of {PartWork.Mm(work.DowelBore)}, {PartWork.Mm(work.DowelLength + DowelPlacer.EndRoom)} long, with {PartWork.Mm(work.LeastPlastic)} of plastic round it does not fit beside the skin, the rods and the slot. {best}",
            "Use thinner or shorter dowels, fewer of them, or move the cut to where the blade is thicker.")
        { Value = PartWork.Mm(Math.Max(0, largest)), Limit = PartWork.Mm(work.Dowel) };
    }
}
