namespace Finwright.Water.Lifting;

/// <summary>Normal force of the flow that goes round the tip.</summary>
/// <remarks>
/// Cross-flow form of Whicker and Fehlner (1958), DTMB 933, eq. [1]: CL = (C_Dc / a_e) α², a_e = 2 span²/area. C_Dc = 0.1 + 1.6 λ for square and 0.1 + 0.7 λ for faired tips, λ the taper ratio (from memory; 0.8 at
/// λ 0.45 and square tips as in the report). A round outline has no taper ratio; that of the trapezoid with the same root chord and area stands in.
/// Side-edge suction: Lamar (1974), NASA TN D-8062 (from memory): the suction of the tip's edge turned into normal force; strength of the edge from the lattice's last strip.
/// </remarks>
internal static class TipEdge
{
    /// <summary>Cross-flow drag coefficient of a tip.</summary>
    public static double CrossFlow(TipForm tip, double span, double rootChord, double area)
    {
        double taper = Math.Clamp(2 * area / (span * rootChord) - 1, 0, 1);
        return tip switch
        {
            TipForm.Faired => 0.1 + 0.7 * taper,
            TipForm.Square => 0.1 + 1.6 * taper,
            _ => 0,
        };
    }

    /// <summary>Suction of the tip's edge over density, of vortex strengths in m²/s: m⁴/s².</summary>
    /// <remarks>Near the edge the circulation ahead of x grows as 2 K √d with distance d from the edge; suction per length is (π/4) ρ K².</remarks>
    public static double Suction(FinLattice lattice, ReadOnlySpan<double> vortices)
    {
        int rows = lattice.Rows, last = lattice.Strips - 1;
        double tipChord = Math.Max(lattice.Fin.Chord(lattice.Fin.Span), 0);
        double distance = lattice.Fin.Span - lattice.Span.Middles[last], ahead = 0, sum = 0;
        for (int k = 0; k + 1 < rows; k++)
        {
            ahead += vortices[last * rows + k];
            double length = (lattice.Chord.Vortices[k + 1] - lattice.Chord.Vortices[k]) * tipChord;
            sum += Math.PI / 4 * ahead * ahead / (4 * distance) * length;
        }

        ahead += vortices[last * rows + rows - 1];
        return sum + Math.PI / 4 * ahead * ahead / (4 * distance) * (1 - lattice.Chord.Vortices[rows - 1]) * tipChord;
    }
}
