using Finwright.Numerics;
using Finwright.Strength.FromDesign;
using Finwright.Strength.Materials;
using Finwright.Strength.Plates;

namespace Finwright.Strength.Margins;

/// <summary>Most strained places of a fin, the corner at its root among them.</summary>
public static class StructureMargins
{
    private const int CutSteps = 24;

    // Peterson (1974), Stress Concentration Factors, shouldered bar in bending: about 1.75 at a fillet of a tenth of the thickness, 1.35 at a quarter (from memory); a power between and beyond, a printed sharp
    // corner taken as one of a line's half width, at most three.
    private const double FilletShare = 0.1, FactorThere = 1.75, Power = -0.283, LeastFillet = 0.2e-3, GreatestFactor = 3;

    /// <summary>Stress at a rounded corner over the smooth stress.</summary>
    /// <param name="fillet">Radius of the corner, metres, 0 or more.</param>
    /// <param name="thickness">Of the thinner side, metres, positive.</param>
    public static double CornerFactor(double fillet, double thickness)
    {
        double share = Math.Max(Require.NotNegative(fillet), LeastFillet) / Require.Positive(thickness);
        return Math.Clamp(FactorThere * Math.Pow(share / FilletShare, Power), 1, GreatestFactor);
    }

    /// <summary>All of them.</summary>
    /// <param name="structure">The fin.</param>
    /// <param name="solution">Its loaded blade.</param>
    public static IReadOnlyList<StressPeak> Of(FinStructure structure, PlateSolution solution)
    {
        ArgumentNullException.ThrowIfNull(structure);
        ArgumentNullException.ThrowIfNull(solution);
        List<StressPeak> peaks = [.. LayerMargins.Of(solution, structure.Plate.Fin, structure.Materials, structure.Direction)];
        for (int i = 0; i < structure.Cuts.Count; i++)
            peaks.Add(AtCut(structure, solution, i));
        if (!structure.EndsInJoint)
            peaks.Add(AtRoot(structure, solution));
        return peaks;
    }

    // Resin in the gap carries what the walls on either side do: the pull along the span at the skin. Dowels and rods are not counted; they hold the pieces when the bond has gone.
    private static StressPeak AtCut(FinStructure structure, PlateSolution solution, int index)
    {
        PlateFin fin = structure.Plate.Fin;
        BondedCut cut = structure.Cuts[index];
        StressPeak peak = new(StressedPart.Cut, structure.Cuts.Count == 1 ? "bond of the cut" : $"bond of cut {index + 1}", 0, cut.Depth, 0, structure.Materials.FaceBond);
        double leading = fin.LeadingEdge(cut.Depth), chord = fin.TrailingEdge(cut.Depth) - leading, quarter = leading + chord / 4;
        for (int i = 1; i < CutSteps; i++)
        {
            double x = leading + chord * i / CutSteps, y = Math.Clamp(cut.Depth + Math.Tan(cut.Slope) * (x - quarter), 0, fin.Span);
            PlateStress stress = solution.StressAt(x, y);
            double pull = Math.Max(stress.Upper.SigmaY, stress.Lower.SigmaY);
            if (pull > peak.Stress)
                peak = peak with { X = x, Y = y, Stress = pull };
        }

        return peak;
    }

    private static StressPeak AtRoot(FinStructure structure, PlateSolution solution)
    {
        SectionAtDepth root = structure.Sections[0];
        PrintedPlastic printed = structure.Materials.Printed;
        double modulus = structure.Materials.WallFactor.Value * (structure.Direction is PrintDirection.Standing ? printed.ModulusAcross.Value : printed.ModulusAlong.Value);
        double smooth = Math.Abs(root.Stiffness.BendingStress(solution.LoadMomentX, root.Stiffness.Centroid, root.Stiffness.NeutralZ + root.Thickness / 2, modulus));
        double stress = CornerFactor(structure.RootFillet, root.Thickness) * smooth;
        return new(StressedPart.RootCorner, "corner at the root", root.Stiffness.Centroid, 0, stress, printed.StrengthAlongSpan(structure.Direction));
    }
}
