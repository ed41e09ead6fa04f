using Finwright.Numerics;

namespace Finwright.Water.Lifting;

/// <summary>
/// Brings lattice and sections together: every strip is turned (decambered) until it lifts as its own section does at the angle the strip then works at; the flexible strip bends to balance its load.
/// </summary>
/// <remarks>
/// After Mukherjee and Gopalarathnam (2006), "Poststall prediction of multiple-lifting-surface configurations using a decambering approach", J. Aircraft 43, with one turn per strip; the section's
/// moment is added to the forces afterwards. Newton's method with limited and halved steps; falling lift slopes are left out of the Jacobian, which turns the method into an under-relaxed
/// iteration past stall. Past stall the answer need not be the only one.
/// </remarks>
internal sealed class StripCoupling
{
    /// <summary>Accuracy of the lift coefficients: a hundredth of what a polar can be trusted to.</summary>
    public const double Tolerance = 1e-6;

    private const int LargestIterations = 80;
    private const int Halvings = 5;
    // A turn of more than this in one step would jump over a stall.
    private const double LargestTurn = 3 * Math.PI / 180;
    // Steps that do not improve are taken at this share, in the hope of leaving a kink of a polar.
    private const double StuckShare = 0.3;

    private readonly FinLattice _lattice;
    private readonly LiftingModes _modes;
    private readonly StripGeometry _geometry;
    private readonly StripSection?[] _sections;
    private readonly double[] _sheetGain;
    private readonly double[] _residual;
    private readonly double[] _trial;
    private readonly double[] _jacobian;
    private readonly DenseLu _factor;

    public StripCoupling(LiftingModes modes, StripGeometry geometry, FinLattice lattice, FlowState flow)
    {
        (_lattice, _modes, _geometry) = (lattice, modes, geometry);
        int strips = lattice.Strips, unknowns = modes.Count - 2;
        (Weights, Angles) = (new double[modes.Count], new double[strips]);
        (_residual, _trial, _jacobian, _factor) = (new double[unknowns], new double[modes.Count], new double[unknowns * unknowns], new(unknowns));
        _sections = new StripSection?[strips];
        _sheetGain = new double[strips];
        Reynolds = new double[strips];
        for (int j = 0; j < strips; j++)
        {
            double cos = geometry.CosSweep[j], chord = lattice.Chords[j];
            Reynolds[j] = flow.Speed * chord * cos * cos / flow.KinematicViscosity;
            if (geometry.Polars[j] is { } polar)
                _sections[j] = new(polar, Reynolds[j], cos, geometry.VortexShare[j], geometry.CamberAngle[j]);
            if (modes.Hinges[j] < 1)
                _sheetGain[j] = flow.Density * flow.Speed * flow.Speed * BentSheet.EdgeSlope * (1 - modes.Hinges[j]) * chord / lattice.Fin.Strip!.FlexuralRigidity;
        }

        Weights[0] = Math.Cos(flow.Leeway);
        Weights[1] = Math.Sin(flow.Leeway);
    }

    /// <summary>Weights of the modes: stream, turns of the strips, edge slopes of the flexible sheet.</summary>
    public double[] Weights { get; }

    /// <summary>Angle of attack of each strip's section, from its chord.</summary>
    public double[] Angles { get; }

    /// <summary>Reynolds number of each strip, square to the quarter-chord line.</summary>
    public double[] Reynolds { get; }

    public int Iterations { get; private set; }

    public double Residual { get; private set; }

    public bool Converged => Residual <= Tolerance;

    public StripSection? Section(int strip) => _sections[strip];

    /// <summary>Lift coefficient of a strip on the whole stream.</summary>
    public double Cl(int strip) => Cl(strip, Weights);

    /// <summary>Solves from the turns that stand in the weights.</summary>
    public void Solve()
    {
        Iterations = 0;
        Residual = Evaluate(Weights);
        int unknowns = _residual.Length;
        double[] step = new double[unknowns], down = new double[unknowns];
        for (; Iterations < LargestIterations && Residual > Tolerance; Iterations++)
        {
            FillJacobian();
            if (!_factor.Factor(_jacobian))
                break;
            for (int i = 0; i < unknowns; i++)
                down[i] = -_residual[i];
            _factor.Solve(down, step);
            double largest = 0;
            for (int j = 0; j < _lattice.Strips; j++)
                largest = Math.Max(largest, Math.Abs(step[j]));
            double share = largest > LargestTurn ? LargestTurn / largest : 1, before = Residual;
            bool better = false;
            for (int h = 0; h < Halvings && !better; h++, share /= 2)
            {
                Take(step, share);
                Residual = Evaluate(_trial);
                better = Residual < before;
            }

            if (!better)
            {
                Take(step, StuckShare * (largest > LargestTurn ? LargestTurn / largest : 1));
                Residual = Evaluate(_trial);
            }

            _trial.CopyTo(Weights, 0);
        }

        if (!double.IsFinite(Residual))
            Residual = double.MaxValue;
    }

    private void Take(double[] step, double share)
    {
        Weights.CopyTo(_trial, 0);
        for (int i = 0; i < step.Length; i++)
            _trial[2 + i] += share * step[i];
    }

    private double Cl(int strip, double[] weights) => 2 * _modes.Row(_modes.Circulation, strip, weights) / _lattice.Chords[strip];

    private double Evaluate(double[] weights)
    {
        int strips = _lattice.Strips;
        double worst = 0;
        for (int j = 0; j < strips; j++)
        {
            double cos = _geometry.CosSweep[j], normal = Cl(j, weights) / (cos * cos), turn = weights[2 + j];
            Angles[j] = normal / (2 * Math.PI) - _geometry.CamberAngle[j] - turn / cos;
            _residual[j] = _sections[j] is { } section ? section.Cl(Angles[j]) - normal : turn;
            worst = Math.Max(worst, Math.Abs(_residual[j]));
            if (_residual.Length > strips)
            {
                _residual[strips + j] = weights[2 + strips + j] + _sheetGain[j] * _modes.Row(_modes.HingeMoment, j, weights);
                worst = Math.Max(worst, Math.Abs(_residual[strips + j]));
            }
        }

        return worst;
    }

    private void FillJacobian()
    {
        int strips = _lattice.Strips, unknowns = _residual.Length, count = _modes.Count;
        Array.Clear(_jacobian);
        for (int j = 0; j < strips; j++)
        {
            double cos = _geometry.CosSweep[j], perCirculation = 2 / (_lattice.Chords[j] * cos * cos);
            Span<double> row = _jacobian.AsSpan(j * unknowns, unknowns);
            if (_sections[j] is { } section)
            {
                double slope = Math.Max(section.Slope(Angles[j]), 0);
                for (int k = 0; k < unknowns; k++)
                    row[k] = (slope / (2 * Math.PI) - 1) * perCirculation * _modes.Circulation[j * count + 2 + k];
                row[j] -= slope / cos;
            }
            else
            {
                row[j] = 1;
            }

            if (unknowns == strips)
                continue;
            Span<double> sheet = _jacobian.AsSpan((strips + j) * unknowns, unknowns);
            for (int k = 0; k < unknowns; k++)
                sheet[k] = _sheetGain[j] * _modes.HingeMoment[j * count + 2 + k];
            sheet[strips + j] += 1;
        }
    }
}
