using Finwright.Design;

namespace Finwright.Workshop.Starting;

/// <summary>Starting values of a family. Found by trying with the house's own methods: with the brief's own defaults, a middling rider and sail, no verdict on water and strength fails.</summary>
/// <remarks>
/// Plastic is soft: fins as slim and deep as laminated ones twist off or break at the joint by these methods (an upright one of 360 mm and 10 % diverges). So the blades are short, wide and thick, two rods of
/// carbon cross the joint, a flange widens it, and resin bonds it. The wide delta is deeper and raked less than is usual, for below that air runs down it. A test holds that no verdict fails.
/// </remarks>
/// <param name="SpanMm">Depth of the tip below the hull, mm.</param>
/// <param name="AreaCm2">Area seen from the side, cm².</param>
/// <param name="RakeDegrees">Rake, degrees.</param>
/// <param name="TipChordPercent">Chord near the tip, per cent of the root's.</param>
/// <param name="RootThicknessPercent">Thickness ratio at the root, per cent.</param>
/// <param name="TipThicknessPercent">Thickness ratio at the tip, per cent.</param>
/// <param name="Flange">Flange at the root; null for none.</param>
/// <param name="Rods">Carbon rods through the joint, where base and blade are printed apart.</param>
public sealed record UsualFin(double SpanMm, double AreaCm2, double RakeDegrees, double TipChordPercent, double RootThicknessPercent, double TipThicknessPercent, Flange? Flange, IReadOnlyList<CarbonRod> Rods)
{
    /// <summary>Two rods between the box bolts of a usual base; shallow ones, for the blade is thickest near the root.</summary>
    internal static IReadOnlyList<ClampRod> ClampRods { get; } = [new() { FromFrontMm = 58, BladeDepthMm = 25 }, new() { FromFrontMm = 84, BladeDepthMm = 25 }];

    private static readonly Flange BroadFlange = new() { OverhangMm = 8, ThicknessMm = 5, FilletMm = 8 };

    private static readonly CarbonRod[] HoldingRods =
    [
        new() { DiameterMm = 6, RootChordPercent = 30, IntoBaseMm = 25 },
        new() { DiameterMm = 6, RootChordPercent = 50, IntoBaseMm = 25 },
    ];

    /// <summary>What is usual for a family.</summary>
    /// <param name="family">The family; a free outline has nothing that is usual.</param>
    /// <exception cref="ArgumentOutOfRangeException">The family is free.</exception>
    public static UsualFin Of(OutlineFamily family) => family switch
    {
        OutlineFamily.Upright => new(270, 350, 12, 34, 14, 12, BroadFlange, HoldingRods),
        OutlineFamily.Raked => new(250, 320, 20, 38, 13, 11, BroadFlange, HoldingRods),
        OutlineFamily.SteepRake => new(250, 420, 36, 38, 13, 12, BroadFlange, HoldingRods),
        OutlineFamily.WideDelta => new(250, 360, 22, 30, 13, 11, BroadFlange, HoldingRods),
        _ => throw new ArgumentOutOfRangeException(nameof(family), family, "This family has no numbers to start from."),
    };
}
