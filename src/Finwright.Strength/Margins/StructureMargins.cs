using Finwright.Numerics;
using Finwright.Strength.FromDesign;
using Finwright.Strength.Materials;
using Finwright.Strength.Plates;

namespace Finwright.Strength.Margins;

/// <summary>Most strained places of a fin, the corner at its root among them.</summary>
public static class StructureMargins
{
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
        IReadOnlyList<StressPeak> peaks = LayerMargins.Of(solution, structure.Plate.Fin, structure.Materials, structure.Direction);
        if (structure.EndsInJoint)
            return peaks;
        SectionAtDepth root = structure.Sections[0];
        PrintedPlastic printed = structure.Materials.Printed;
        double modulus = structure.Materials.WallFactor.Value * (structure.Direction is PrintDirection.Standing ? printed.ModulusAcross.Value : printed.ModulusAlong.Value);
        double smooth = Math.Abs(root.Stiffness.BendingStress(solution.LoadMomentX, root.Stiffness.Centroid, root.Stiffness.NeutralZ + root.Thickness / 2, modulus));
        double stress = CornerFactor(structure.RootFillet, root.Thickness) * smooth;
        return [.. peaks, new(StressedPart.RootCorner, "corner at the root", root.Stiffness.Centroid, 0, stress, printed.StrengthAlongSpan(structure.Direction))];
    }
}
