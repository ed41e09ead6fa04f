using Finwright.Strength.Sections;
using Finwright.Strength.Tests.Sections;

namespace Finwright.Strength.Tests.Evidence;

/// <summary>Sections beside closed forms and independent finite elements.</summary>
internal static class SectionEvidence
{
    private const string Elements = "Numerical reference: quadratic elements on the section, converged";
    private const string Digits = "last printed digit";

    /// <summary>The cases, each worked out once.</summary>
    public static IReadOnlyList<EvidenceRow> Rows { get; } = [.. ClosedForms(), .. FourDigit(), .. Composite()];

    private static IEnumerable<EvidenceRow> ClosedForms()
    {
        const string Topic = "Torsion of solid sections, 30 × 10 mm";
        double shear = SectionCases.Plain.ShearXY;
        SectionStiffness ellipse = SectionSolver.Of(SectionCases.Ellipse(30e-3, 10e-3)), rectangle = SectionSolver.Of(SectionCases.Rectangle(30e-3, 10e-3), new(24, 2, 4));
        yield return new(Topic, "Ellipse, J, mm⁴", "Saint-Venant, 1855, closed form", 5301.44, ellipse.TorsionRigidity / shear * 1e12, 0.05, "1e-5");
        yield return new(Topic, "Ellipse, greatest shear stress at 1 N m, MPa", "Saint-Venant, 1855, closed form", 1.6977, ellipse.CoreTorsionStress!.PerTorque * 1e-6, 0.003, "0.2 %: read beside the very end of the minor axis");
        double exact = SectionCases.RectangleTorsion(30, 10);
        yield return new(Topic, "Rectangle, J over a b³", "Timoshenko and Goodier, Theory of Elasticity, series, from memory", exact / 30e3, rectangle.TorsionRigidity / shear * 1e12 / 30e3, 3e-5, "1e-4");
    }

    private static IEnumerable<EvidenceRow> FourDigit()
    {
        const string Topic = "Symmetric four-digit sections, open trailing edge, chord 1, one material";
        const string Form = "Integrals of the four-digit thickness form (x⁴ coefficient −0.1015)";
        double shear = SectionCases.Plain.ShearXY, modulus = SectionCases.Plain.ModulusY;
        foreach ((double ratio, double torsion) in new[] { (0.08, 7.991e-5), (0.10, 1.5521e-4), (0.12, 2.6642e-4) })
        {
            SectionStiffness section = SectionSolver.Of(SectionCases.FourDigit(1, ratio));
            if (ratio is 0.12)
            {
                yield return new(Topic, "Area over t", Form, 0.685083, section.Area / ratio, 2e-6, Digits);
                yield return new(Topic, "Second moment about the chord over t³", Form, 0.039408, section.FlapRigidity / modulus / Math.Pow(ratio, 3), 2e-6, Digits);
                yield return new(Topic, "Centroid", Form, 0.42044, section.Centroid, 1e-5, Digits);
                yield return new(Topic, "Shear centre, t = 0.12", Elements, 0.3660, section.ShearCentre, 1e-4, Digits);
            }

            yield return new(Topic, $"J, t = {ratio:0.00}, 10⁻⁴", Elements, torsion * 1e4, section.TorsionRigidity / shear * 1e4, 1e-4 * torsion * 1e4, "1e-4: last printed digit");
        }
    }

    private static IEnumerable<EvidenceRow> Composite()
    {
        const string Topic = "Composite sections";
        const string Foil = "Section 0012, chord 110 mm, wall 1.2 mm of 2.0 GPa, core 2.6 GPa";
        SectionStiffness layered = SectionSolver.Of(SectionCases.Layered);
        yield return new(Topic, Foil + ": EI, N m²", Elements, 22.906, layered.FlapRigidity, 0.003, "1e-4");
        yield return new(Topic, Foil + ": GJ, N m²", Elements, 33.222, layered.TorsionRigidity, 0.004, "1e-4");
        yield return new(Topic, Foil + ": EA, kN", Elements, 2433, layered.AxialStiffness * 1e-3, 1, Digits);
        yield return new(Topic, Foil + ": centroid, mm", Elements, 45.80, layered.Centroid * 1e3, 0.01, Digits);
        yield return new(Topic, Foil + ": shear centre, mm", Elements, 40.09, layered.ShearCentre * 1e3, 0.01, Digits);

        const string Rods = "30 × 10 mm, skins 1.2 mm of 2.0 GPa, core 2.6 GPa, two rods of 4 mm and 125 GPa";
        const string Hand = "Transformed section, worked by hand";
        SectionStiffness rods = SectionSolver.Of(SectionCases.WithRods);
        yield return new(Topic, Rods + ": EI, N m²", Hand, 8.7347, rods.FlapRigidity, 1e-4, Digits);
        yield return new(Topic, Rods + ": EA, kN", Hand, 3813.0, rods.AxialStiffness * 1e-3, 0.1, Digits);
        yield return new(Topic, Rods + ": skin at 10 N m, MPa", Hand, 11.449, rods.BendingStress(10, 0.010, -5.0e-3, 2.0e9) * 1e-6, 0.001, Digits);
        yield return new(Topic, Rods + ": core at 10 N m, MPa", Hand, 11.311, rods.BendingStress(10, 0.010, -3.8e-3, 2.6e9) * 1e-6, 0.001, Digits);
        yield return new(Topic, Rods + ": rod at 10 N m, MPa", Hand, 286.21, rods.BendingStress(10, 0.010, -2.0e-3, 125e9) * 1e-6, 0.01, Digits);
    }
}
