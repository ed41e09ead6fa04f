using Finwright.Strength.Materials;
using Finwright.Strength.Plates;

namespace Finwright.Strength.Margins;

/// <summary>Finds where walls, core and rods of a loaded blade are strained most.</summary>
/// <remarks>
/// Smooth stresses of the plate on an even grid, clear of nose, trailing edge, tip and, by half the root's thickness, of the clamped root, where a plate's stresses are not those of the solid.
/// Along the layers the equivalent stress is that of von Mises. Across them only pull counts, joined with the shear between layers as √(σ² + (τ/0.6)²): layers bear about 0.6 of their strength in shear (judgement).
/// </remarks>
public static class LayerMargins
{
    // How far the grid stays off nose, trailing edge and tip, shares of chord and span.
    private const double EdgeShare = 0.03, TipShare = 0.03;

    private const double ShearShare = 0.6;

    // A rod that ends at the root takes up its moment over this many diameters (judgement).
    private const double TakeUpDiameters = 4;

    // Stress of a rod is judged this many diameters inside its ends.
    private const double EndDiameters = 2;

    private const int ChordSteps = 24, SpanSteps = 48;

    /// <summary>The most strained place of every part.</summary>
    /// <param name="solution">The loaded blade.</param>
    /// <param name="fin">The blade.</param>
    /// <param name="materials">What it is made of.</param>
    /// <param name="direction">How it was printed.</param>
    public static IReadOnlyList<StressPeak> Of(PlateSolution solution, PlateFin fin, FinMaterials materials, PrintDirection direction)
    {
        ArgumentNullException.ThrowIfNull(solution);
        ArgumentNullException.ThrowIfNull(fin);
        ArgumentNullException.ThrowIfNull(materials);
        StressPeak across = new(StressedPart.WallAcrossLayers, "walls between their layers", 0, 0, 0, materials.Printed.StrengthAcross);
        StressPeak along = new(StressedPart.WallAlongLayers, "walls along their layers", 0, 0, 0, materials.Printed.StrengthAlong);
        StressPeak core = new(StressedPart.Core, "core", 0, 0, 0, materials.CoreStrength);
        foreach ((double x, double y) in Grid(fin))
        {
            PlateStress stress = solution.StressAt(x, y);
            along = Worse(along, x, y, Math.Max(stress.Upper.VonMises, stress.Lower.VonMises));
            if (direction is PrintDirection.Standing)
                across = Worse(across, x, y, Math.Max(Between(stress.Upper), Between(stress.Lower)));
            if (stress is { CoreUpper: { } upper, CoreLower: { } lower })
                core = Worse(core, x, y, Math.Max(upper.VonMises, lower.VonMises));
        }

        List<StressPeak> peaks = [along, core];
        if (direction is PrintDirection.Standing)
            peaks.Insert(0, across);
        for (int i = 0; i < fin.Rods.Count; i++)
            peaks.AddRange(OfRod(solution, fin, materials.Rod, i));
        return peaks;
    }

    /// <summary>How strained the walls are at a place: equivalent stress over strength, the worse of both sides and of along and across the layers.</summary>
    /// <param name="solution">The loaded blade.</param>
    /// <param name="materials">What it is made of.</param>
    /// <param name="direction">How it was printed.</param>
    /// <param name="x">Metres aft.</param>
    /// <param name="y">Depth, metres.</param>
    public static double WallUse(PlateSolution solution, FinMaterials materials, PrintDirection direction, double x, double y)
    {
        ArgumentNullException.ThrowIfNull(solution);
        ArgumentNullException.ThrowIfNull(materials);
        PlateStress stress = solution.StressAt(x, y);
        double use = Math.Max(stress.Upper.VonMises, stress.Lower.VonMises) / materials.Printed.StrengthAlong.Value;
        return direction is PrintDirection.Standing
            ? Math.Max(use, Math.Max(Between(stress.Upper), Between(stress.Lower)) / materials.Printed.StrengthAcross.Value)
            : use;
    }

    private static double Between(StressState stress)
    {
        double pull = Math.Max(stress.SigmaY, 0), shear = stress.TauXY / ShearShare;
        return Math.Sqrt(pull * pull + shear * shear);
    }

    private static StressPeak Worse(StressPeak peak, double x, double y, double stress) => stress > peak.Stress ? peak with { X = x, Y = y, Stress = stress } : peak;

    /// <summary>Where walls and core are judged.</summary>
    /// <param name="fin">The blade.</param>
    public static JudgedZone Judged(PlateFin fin)
    {
        ArgumentNullException.ThrowIfNull(fin);
        double rootChord = fin.TrailingEdge(0) - fin.LeadingEdge(0), thickest = 0;
        for (int i = 1; i < ChordSteps; i++)
            thickest = Math.Max(thickest, fin.HalfThickness(fin.LeadingEdge(0) + rootChord * i / ChordSteps, 0));
        return new(thickest, fin.Span * (1 - TipShare), EdgeShare, ChordSteps, SpanSteps);
    }

    private static IEnumerable<(double X, double Y)> Grid(PlateFin fin)
    {
        JudgedZone zone = Judged(fin);
        for (int j = 0; j <= zone.SpanSteps; j++)
        {
            double y = zone.FromDepth + (zone.ToDepth - zone.FromDepth) * j / zone.SpanSteps, leading = fin.LeadingEdge(y), chord = fin.TrailingEdge(y) - leading;
            for (int i = 0; i <= zone.ChordSteps; i++)
                yield return (leading + chord * (zone.EdgeShare + (1 - 2 * zone.EdgeShare) * i / zone.ChordSteps), y);
        }
    }

    private static IEnumerable<StressPeak> OfRod(PlateSolution solution, PlateFin fin, Rod rod, int index)
    {
        IReadOnlyList<RodStation> stations = solution.RodStations(index);
        if (stations.Count == 0)
            yield break;
        string name = fin.Rods.Count == 1 ? "carbon rod" : $"carbon rod {index + 1}";
        double diameter = fin.Rods[index].Diameter, face = Math.PI * diameter * diameter / 4;
        // Right at its ends a plate's curvature is that of the mesh; what the rod bears there the bond hands over.
        double first = stations[0].Distance + EndDiameters * diameter, last = stations[^1].Distance - EndDiameters * diameter;
        RodStation bent = stations.Where(station => station.Distance >= first && station.Distance <= last).DefaultIfEmpty(stations[stations.Count / 2]).MaxBy(station => station.BendingStress)!;
        yield return new(StressedPart.Rod, name, bent.X, bent.Y, bent.BendingStress, rod.CompressiveStrength);

        // Pull on the bond that changes as cos φ round the rod makes a moment per length of τ π r², so τ = (dM/ds)/(π r²).
        RodStation eased = stations.Where(station => station.Distance >= first && station.Distance <= last).DefaultIfEmpty(bent).MaxBy(station => Math.Abs(station.MomentChange))!;
        (RodStation at, double stress) = (eased, Math.Abs(eased.MomentChange) / face);
        foreach (RodStation end in (RodStation[])[stations[0], stations[^1]])
        {
            bool continues = end == stations[0] && Math.Min(fin.Rods[index].FromY, fin.Rods[index].ToY) < -TakeUpDiameters * diameter;
            double takeUp = continues ? 0 : Math.Abs(end.Moment) / (TakeUpDiameters * diameter) / face;
            if (takeUp > stress)
                (at, stress) = (end, takeUp);
        }

        yield return new(StressedPart.RodBond, $"bond of the {name}", at.X, at.Y, stress, rod.BondStrength);
    }
}

/// <summary>Where walls and core are judged: an even grid, clear of the edges, the tip and the clamped root.</summary>
/// <param name="FromDepth">First depth, metres.</param>
/// <param name="ToDepth">Last depth, metres.</param>
/// <param name="EdgeShare">How far it stays off both edges, share of the chord.</param>
/// <param name="ChordSteps">Steps along the chord.</param>
/// <param name="SpanSteps">Steps along the span.</param>
public readonly record struct JudgedZone(double FromDepth, double ToDepth, double EdgeShare, int ChordSteps, int SpanSteps);
