namespace Finwright.Water.Sections;

/// <summary>
/// Distributions round a section, from the upper trailing edge over the nose to the lower trailing edge; all arrays have the same length.
/// </summary>
/// <param name="X">x/c of the surface points.</param>
/// <param name="Y">y/c of the surface points.</param>
/// <param name="Cp">Pressure coefficient.</param>
/// <param name="Cf">Skin friction over the free stream's dynamic pressure; negative where the flow at the wall runs backward.</param>
/// <param name="DisplacementThickness">δ*/c.</param>
/// <param name="MomentumThickness">θ/c.</param>
public sealed record SectionSurface(
    IReadOnlyList<double> X,
    IReadOnlyList<double> Y,
    IReadOnlyList<double> Cp,
    IReadOnlyList<double> Cf,
    IReadOnlyList<double> DisplacementThickness,
    IReadOnlyList<double> MomentumThickness);
