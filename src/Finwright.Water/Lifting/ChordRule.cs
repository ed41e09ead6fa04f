namespace Finwright.Water.Lifting;

/// <summary>
/// Where vortices and control points lie along a chord, and what sums over them mean in thin-section theory.
/// </summary>
/// <remarks>
/// Semi-circle rule of Lan (1974), "A quasi-vortex-lattice method in thin wing theory", J. Aircraft 11: vortices at
/// (1 - cos θ)/2 with θ = (2k - 1)π/2N, control points at θ = iπ/N, the last at the trailing edge. In two dimensions
/// lift and moment come out exact for every mean line of a polynomial of low degree. The plain rule (vortex at a quarter, control point at three
/// quarters of equal panels) is kept for checks against coarse published lattices.
/// </remarks>
internal sealed class ChordRule
{
    private const int HingeSteps = 64;

    public ChordRule(int rows, bool even = false)
    {
        Rows = rows;
        IsEven = even;
        (Vortices, Controls) = (new double[rows], new double[rows]);
        (LiftWeights, MomentWeights, SuctionWeights) = (new double[rows], new double[rows], new double[rows]);
        for (int k = 0; k < rows; k++)
        {
            double vortex = (2 * k + 1) * Math.PI / (2 * rows), control = (k + 1) * Math.PI / rows;
            Vortices[k] = even ? (k + 0.25) / rows : (1 - Math.Cos(vortex)) / 2;
            Controls[k] = even ? (k + 0.75) / rows : (1 - Math.Cos(control)) / 2;
            if (even)
                control = Math.Acos(1 - 2 * Controls[k]);
            // Trapezoid over θ; the last point carries half a step, and 1 - cos θ = 2 there. The equal panels take the midpoint of theirs.
            double step = even
                ? Math.Acos(1 - 2.0 * (k + 1) / rows) - Math.Acos(1 - 2.0 * k / rows)
                : Math.PI / rows * (k == rows - 1 ? 0.5 : 1);
            LiftWeights[k] = step * (1 - Math.Cos(control)) / Math.PI;
            MomentWeights[k] = step * (Math.Cos(2 * control) - Math.Cos(control)) / 2;
            SuctionWeights[k] = SuctionWeight(k);
        }
    }

    /// <summary>Number of vortices along the chord.</summary>
    public int Rows { get; }

    public bool IsEven { get; }

    /// <summary>Places of the vortices, x/c.</summary>
    public double[] Vortices { get; }

    /// <summary>Places of the control points, x/c.</summary>
    public double[] Controls { get; }

    /// <summary>Sum of -dz/dx at the control points times these: the angle at which a flat section would lift as much, radians.</summary>
    public double[] LiftWeights { get; }

    /// <summary>Sum of dz/dx at the control points times these: moment coefficient about the quarter chord, positive nose up.</summary>
    public double[] MomentWeights { get; }

    /// <summary>Sum of vortex strengths times these, over speed and chord: A0, the strength of the suction at the nose.</summary>
    public double[] SuctionWeights { get; }

    /// <summary>
    /// Sum of vortex strengths times these, times density, speed and chord: the moment per span of the load behind a hinge about it, positive to starboard load.
    /// </summary>
    /// <param name="hinge">Place of the hinge, x/c, in 0 to 1.</param>
    public double[] HingeWeights(double hinge)
    {
        // γ sin θ is a polynomial in cos θ through its values at the vortices; the moment is its integral behind the hinge.
        double[] weights = new double[Rows];
        double hingeAngle = Math.Acos(1 - 2 * hinge), step = (Math.PI - hingeAngle) / HingeSteps;
        for (int s = 0; s < HingeSteps; s++)
        {
            double angle = hingeAngle + (s + 0.5) * step, arm = (Math.Cos(hingeAngle) - Math.Cos(angle)) / 2;
            for (int k = 0; k < Rows; k++)
                weights[k] += step * arm * Interpolation(k, angle);
        }

        return weights;
    }

    // Γ_k = (c/2)(π/N) γ sin θ there, and γ sin θ → 4 V A0 at the nose: A0 = Σ Γ_k 2N/(4π c V) times the interpolation to θ = 0.
    private double SuctionWeight(int k) => Interpolation(k, 0) / 2;

    // Cosine series through the N vortices, as a factor of Γ_k: value at an angle of Σ b_m cos mθ, in units of γ sin θ c/2.
    private double Interpolation(int k, double angle)
    {
        double at = IsEven ? Math.Acos(1 - 2 * Vortices[k]) : (2 * k + 1) * Math.PI / (2 * Rows), sum = 1;
        for (int m = 1; m < Rows; m++)
            sum += 2 * Math.Cos(m * at) * Math.Cos(m * angle);
        return sum / Math.PI;
    }
}
