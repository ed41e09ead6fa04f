using Finwright.Assessment;
using Finwright.Assessment.Made;
using Finwright.Design;
using Finwright.Geometry;
using Finwright.Geometry.Blades;
using Finwright.Geometry.FromDesign;
using Finwright.Geometry.Outlines;

namespace Finwright.Papers.Templates;

/// <summary>What templates are drawn from.</summary>
internal sealed record TemplateFin(FinDesign Design, Blade Blade, Planform Planform, TriangleMesh Skin, FinSolids Solids, PartPlan Parts, FinPoured? Poured)
{
    /// <summary>Greatest distance between a drawn edge and the true one, metres: far below the width of a pen.</summary>
    public const double Tolerance = 5e-6;

    /// <summary>How far the flange with its fillet reaches down, metres; 0 without one.</summary>
    public double FlangeHeight => Design.Shape.Flange is { } flange ? (flange.ThicknessMm + flange.FilletMm) * 1e-3 : 0;

    /// <summary>How far the strip stands out behind the printed edge, metres; 0 without one.</summary>
    public double Overhang => Solids.Slot is not null && Design.Shape.Strip is { } strip ? strip.OverhangMm * 1e-3 : 0;

    /// <summary>Takes it from a result.</summary>
    /// <exception cref="ArgumentException">The fin has errors, or was not worked out to its parts.</exception>
    public static TemplateFin Of(AssessmentResult result) =>
        !result.HasErrors && result is { Design: { } design, Blade: { } blade, Planform: { } planform, Skin: { } skin, Solids: { } solids, Parts: { } parts }
            ? new(design, blade, planform, skin, solids, parts, result.Poured)
            : throw new ArgumentException("Templates are drawn of a fin without errors that was worked out to its parts.", nameof(result));
}
