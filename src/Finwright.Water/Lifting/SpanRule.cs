namespace Finwright.Water.Lifting;

/// <summary>Where the edges of the strips and their middles lie along the span.</summary>
/// <remarks>
/// Cosine spacing with the middle taken in the angle: trailing vortices and control points then form the midpoint rule of Multhopp's integral, which is exact for
/// elliptic loading. At a mirror only the tip is refined, else the root as well, since load falls off at both.
/// </remarks>
internal sealed class SpanRule
{
    private SpanRule(double[] edges, double[] middles) => (Edges, Middles) = (edges, middles);

    /// <summary>Depths of the edges, rising, one more than there are strips.</summary>
    public double[] Edges { get; }

    /// <summary>Depths of the control points.</summary>
    public double[] Middles { get; }

    /// <summary>Number of strips.</summary>
    public int Strips => Middles.Length;

    public static SpanRule TowardTip(double span, int strips) => Of(span, strips, s => Math.Sin(s * Math.PI / 2));

    public static SpanRule TowardBothEnds(double span, int strips) => Of(span, strips, s => (1 - Math.Cos(s * Math.PI)) / 2);

    public static SpanRule Even(double span, int strips) => Of(span, strips, s => s);

    private static SpanRule Of(double span, int strips, Func<double, double> place)
    {
        double[] edges = new double[strips + 1], middles = new double[strips];
        for (int j = 0; j <= strips; j++)
            edges[j] = j == strips ? span : span * place((double)j / strips);
        for (int j = 0; j < strips; j++)
            middles[j] = span * place((j + 0.5) / strips);
        return new(edges, middles);
    }
}
