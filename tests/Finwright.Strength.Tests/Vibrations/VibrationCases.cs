using Finwright.Strength.Plates;
using Finwright.Strength.Vibrations;

namespace Finwright.Strength.Tests.Vibrations;

/// <summary>Plates that shake in water.</summary>
internal static class VibrationCases
{
    /// <summary>Added mass of a flat rectangle moving square to itself, over ρ π c² L/4, of the length given in chords.</summary>
    public static double Heave(double length, int panels, VibrationRoot root = VibrationRoot.Wall)
    {
        double half = root is VibrationRoot.None ? 1 : 0.5;
        AddedMass water = AddedMass.Create(half * length, _ => 0, _ => 1, root, new(panels, panels));
        return water.Matrix([(_, _) => 1], 1)![0] / (half * length * Math.PI / 4);
    }

    /// <summary>Frequencies of a plate clamped to a wall, in fresh water.</summary>
    public static WetModes Wet(PlateFin fin, PlateModes dry, double density, AddedMassOptions? options = null) =>
        WetModes.Of(dry.AngularFrequencies, dry.Shapes, AddedMass.Create(fin.Span, fin.LeadingEdge, fin.TrailingEdge, VibrationRoot.Wall, options), density)!;
}
