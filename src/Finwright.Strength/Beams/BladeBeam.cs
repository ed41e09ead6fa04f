using Finwright.Numerics;
using Finwright.Strength.Plates;
using Finwright.Strength.Sections;

namespace Finwright.Strength.Beams;

/// <summary>A level section of the blade and its stiffness.</summary>
/// <param name="Y">Depth, m.</param>
/// <param name="Stiffness">What it resists with.</param>
public sealed record BladeSection(double Y, SectionStiffness Stiffness);

/// <summary>From the blade that the plate sees to the same blade as a beam.</summary>
/// <remarks>
/// Left out: the sheet at the trailing edge, and rods that lean more than 60° from the span. A leaning rod is cut longer and works along the span with the third power of the cosine of its
/// lean in all. Beside the plate the beam is the softer one, since its root does not hold the chord straight: on a tapered fin of twice its chord's length by 5 to 7 % in bending and 9 % in
/// twist, on a delta shorter than its root chord by a third (evidence table).
/// </remarks>
public static class BladeBeam
{
    // Below this share of the greatest chord a tip counts as stiff as here: it carries next to nothing, and has no meaning as a beam.
    private const double LeastChordShare = 0.15;

    private const double LeastRodCosine = 0.5;

    // Halvings that find where the tip begins.
    private const int Halvings = 40;

    /// <summary>The section of a blade at a depth.</summary>
    /// <param name="fin">The blade.</param>
    /// <param name="y">Depth, m, where it has a chord.</param>
    public static CompositeSection SectionAt(PlateFin fin, double y)
    {
        ArgumentNullException.ThrowIfNull(fin);
        double leading = fin.LeadingEdge(y), trailing = fin.TrailingEdge(y);
        return new()
        {
            LeadingX = leading,
            TrailingX = trailing,
            Surface = x =>
            {
                double half = Require.NotNegative(fin.HalfThickness(Math.Clamp(x, leading, trailing), y));
                return (-half, half);
            },
            WallDepth = x => fin.WallDepth(Math.Clamp(x, leading, trailing), y),
            Wall = fin.Wall,
            Core = fin.Core,
            Rods = [.. fin.Rods.Select(rod => Cut(rod, y)).OfType<SectionRod>()],
            Voids = [.. fin.Voids.Select(hollow => Cut(hollow, y)).OfType<SectionVoid>()],
        };
    }

    /// <summary>Sections at even depths from the root to the tip.</summary>
    /// <param name="fin">The blade.</param>
    /// <param name="count">How many, at least 2.</param>
    /// <param name="options">How finely each is divided; null for the usual.</param>
    public static IReadOnlyList<BladeSection> Sections(PlateFin fin, int count = 9, SectionMeshOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(fin);
        Require.AtLeast(count, 2);
        double end = TipBegin(fin);
        BladeSection[] sections = new BladeSection[count];
        for (int i = 0; i < count; i++)
        {
            double y = fin.Span * i / (count - 1);
            sections[i] = new(y, SectionSolver.Of(SectionAt(fin, Math.Min(y, end)), options));
        }

        return sections;
    }

    /// <summary>The beam of such sections, for bending to the side and twisting.</summary>
    public static BeamModel Sideways(IReadOnlyList<BladeSection> sections)
    {
        ArgumentNullException.ThrowIfNull(sections);
        return BeamModel.Create([.. sections.Select(s => new BeamStation(s.Y, s.Stiffness.FlapRigidity, s.Stiffness.TorsionRigidity, s.Stiffness.ShearCentre, s.Stiffness.FlapShearStiffness))]);
    }

    /// <summary>The same sections for bending fore and aft.</summary>
    public static IReadOnlyList<EdgeStation> Edgewise(IReadOnlyList<BladeSection> sections)
    {
        ArgumentNullException.ThrowIfNull(sections);
        return [.. sections.Select(s => new EdgeStation(s.Y, s.Stiffness.EdgeRigidity, s.Stiffness.EdgeShearStiffness))];
    }

    private static double TipBegin(PlateFin fin)
    {
        const int Samples = 64;
        double Chord(double y) => fin.TrailingEdge(y) - fin.LeadingEdge(y);
        double greatest = 0;
        for (int i = 0; i <= Samples; i++)
            greatest = Math.Max(greatest, Chord(fin.Span * i / Samples));
        double least = LeastChordShare * Require.Positive(greatest);
        if (Chord(fin.Span) >= least)
            return fin.Span;
        int last = Samples;
        while (last > 0 && !(Chord(fin.Span * (last - 1) / Samples) >= least))
            last--;
        double wide = fin.Span * Math.Max(last - 1, 0) / Samples, narrow = fin.Span * last / Samples;
        for (int i = 0; i < Halvings; i++)
        {
            double middle = (wide + narrow) / 2;
            if (Chord(middle) >= least)
                wide = middle;
            else
                narrow = middle;
        }

        return wide;
    }

    private static SectionRod? Cut(PlateRod rod, double y)
    {
        double down = rod.ToY - rod.FromY, aft = rod.ToX - rod.FromX, length = double.Hypot(down, aft), share = (y - rod.FromY) / down;
        double cosine = Math.Abs(down) / length;
        if (!(cosine >= LeastRodCosine && share >= 0 && share <= 1))
            return null;
        double taken = cosine * cosine * cosine;
        return new(rod.FromX + share * aft, rod.Z, rod.Diameter, taken * rod.Modulus, rod.ShearModulus, rod.Density / cosine);
    }

    private static SectionVoid? Cut(PlateVoid hollow, double y)
    {
        double away = Math.Abs(y - hollow.Y) / hollow.HalfWidthY;
        if (!(away < 1))
            return null;
        double half = hollow.IsRound ? hollow.HalfWidthX * Math.Sqrt(1 - away * away) : hollow.HalfWidthX;
        return new(hollow.X - half, hollow.X + half, hollow.FromZ, hollow.ToZ);
    }
}
