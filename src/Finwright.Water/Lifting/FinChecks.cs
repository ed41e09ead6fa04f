namespace Finwright.Water.Lifting;

/// <summary>What a fin and its root must be before a lattice is laid on it.</summary>
internal static class FinChecks
{
    private const int Samples = 41;

    // A mean surface steeper than this is not a section seen edge on.
    private const double LargestSlope = 1;

    public static void Check(LiftingFin fin, RootCondition root)
    {
        Positive(fin.Span, "span", "Give the depth of the tip in metres.");
        if (!(root.Gap >= 0 && root.Gap <= fin.Span))
            throw new ArgumentException($"The gap at the root is {root.Gap} m; it must lie between 0 and the span, {fin.Span} m.", nameof(root));
        if (root is FiniteHull hull)
        {
            Positive(hull.HalfWidth, "hull's half width", "Give half the wetted width over the fin in metres.");
            if (!(hull.Ahead >= 0 && hull.Behind >= 0 && double.IsFinite(hull.Ahead + hull.Behind)))
                throw new ArgumentException($"The hull reaches {hull.Ahead} m ahead of the fin and {hull.Behind} m behind it; both must be 0 or more.", nameof(root));
        }

        if (fin.Strip is { } strip)
        {
            Positive(strip.FreeLength, "free length of the flexible strip", "Give it in metres, or leave the strip out.");
            Positive(strip.FlexuralRigidity, "stiffness of the flexible strip", "Give E t³/12(1 - ν²) in newton metres.");
            if (!(strip.FromDepth >= 0 && strip.ToDepth > strip.FromDepth))
                throw new ArgumentException($"The flexible strip runs from {strip.FromDepth} m to {strip.ToDepth} m; depths must rise from 0.", nameof(fin));
        }

        double widest = 0;
        for (int i = 0; i < Samples; i++)
        {
            double y = fin.Span * i / (Samples - 1), leading = fin.LeadingEdge(y), chord = fin.Chord(y), ratio = fin.ThicknessRatio(y);
            bool inside = i > 0 && i < Samples - 1;
            if (!double.IsFinite(leading) || !double.IsFinite(chord) || chord < (inside ? double.Epsilon : -1e-9 * fin.Span))
                throw new ArgumentException($"At depth {y} m the chord is {chord} m: the trailing edge must lie behind the leading edge all along the fin.", nameof(fin));
            if (!(ratio >= 0 && ratio < 1))
                throw new ArgumentException($"At depth {y} m the thickness ratio is {ratio}; it must lie between 0 and 1.", nameof(fin));
            widest = Math.Max(widest, chord);
            for (int k = 0; inside && fin.MeanSurface is not null && k <= 4; k++)
            {
                double fore = fin.MeanSurface(leading + chord * Math.Max(k - 1, 0) / 4, y), z = fin.MeanSurface(leading + chord * k / 4, y);
                if (!double.IsFinite(z) || Math.Abs(z - fore) > LargestSlope * chord / 4)
                    throw new ArgumentException($"At depth {y} m and {25 * k} % of the chord the mean surface lies at z = {z} m, {z - fore} m from the point a quarter chord ahead: it must be finite and slope by less than 45 degrees.", nameof(fin));
            }
        }

        if (root is FiniteHull && fin.Chord(0) <= 1e-6 * widest)
            throw new ArgumentException("The fin has no chord at its root, so it does not stand on the hull. Use the bare surface, or give the root a chord.", nameof(fin));
    }

    private static void Positive(double value, string what, string remedy)
    {
        if (!(value > 0 && double.IsFinite(value)))
            throw new ArgumentException($"The {what} is {value}; it must be above 0. {remedy}", nameof(value));
    }
}
