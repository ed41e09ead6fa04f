using Finwright.Numerics;
using Finwright.Water.Sections.Layers;
using Finwright.Water.Sections.Potential;

namespace Finwright.Water.Sections.Coupling;

/// <summary>
/// One Newton step for the layers and the outer flow together. Momentum thickness and the third unknown follow from station to station and are
/// eliminated on the way; what remains is one full system for the masses alone.
/// </summary>
internal sealed class CoupledSystem
{
    private readonly int _stations;
    private readonly Sides _sides;
    private readonly DenseLu _factors;
    private readonly double[] _matrix, _right, _influence, _speedMiss, _shift;
    private readonly double[] _momentumRows, _thirdRows, _momentumStart, _thirdStart;
    private readonly double[] _equations;

    public CoupledSystem(Sides sides, int stations)
    {
        (_sides, _stations) = (sides, stations);
        _factors = new DenseLu(stations);
        _matrix = new double[stations * stations];
        _influence = new double[stations * stations];
        _momentumRows = new double[stations * stations];
        _thirdRows = new double[stations * stations];
        _right = new double[stations];
        _speedMiss = new double[stations];
        _shift = new double[stations];
        _momentumStart = new double[stations];
        _thirdStart = new double[stations];
        _equations = new double[LayerEquations.Count * stations];
        Momentum = new double[stations];
        Third = new double[stations];
        Mass = new double[stations];
        Speed = new double[stations];
    }

    /// <summary>Step of θ.</summary>
    public double[] Momentum { get; }

    /// <summary>Step of n or √C_τ.</summary>
    public double[] Third { get; }

    /// <summary>Step of speed · δ*.</summary>
    public double[] Mass { get; }

    /// <summary>Step of the edge speed.</summary>
    public double[] Speed { get; }

    /// <summary>How far the edge speeds are from what the outer flow says.</summary>
    public ReadOnlySpan<double> SpeedMiss => _speedMiss;

    /// <summary>Lays down the outer flow for the sides as they are parted.</summary>
    /// <param name="influence">Signed influence of the masses.</param>
    /// <param name="frictionless">Frictionless signed speeds, wake included.</param>
    /// <param name="residuals">The layers' equations at these stations.</param>
    /// <param name="state">The stations.</param>
    public void SetOuterFlow(DisplacementInfluence influence, ReadOnlySpan<double> frictionless, LayerResiduals residuals, LayerStations state)
    {
        // δ* + θ over δ* in the wake; its slow change from step to step needs no derivative.
        double whole = WakeAttachment.Share(state, _sides, residuals);
        Span<double> flux = stackalloc double[Wake.Count];
        for (int w = 0; w < Wake.Count; w++)
            flux[w] = whole * (1 + state.Momentum[_sides.Nodes + w] / state.Displacement(_sides.Nodes + w));
        for (int i = 0; i < _stations; i++)
        {
            int sign = _sides.SpeedSign(i);
            ReadOnlySpan<double> signed = influence.Row(i);
            Span<double> row = Influence(i);
            double speed = sign * frictionless[i];
            for (int j = 0; j < _stations; j++)
                row[j] = j <= _sides.LastUpper ? -sign * signed[j] : sign * signed[j];
            ReadOnlySpan<double> bends = influence.BendRow(i);
            for (int k = 0; k < DisplacementInfluence.Bends; k++)
            {
                row[_sides.Nodes + k] += 0.5 * sign * bends[k] * flux[k];
                row[_sides.Nodes + k + 1] += 0.5 * sign * bends[k] * flux[k + 1];
            }

            for (int j = 0; j < _stations; j++)
                speed += row[j] * state.Mass[j];

            _speedMiss[i] = speed - state.Speed[i];
        }
    }

    /// <summary>Solves for one step.</summary>
    /// <returns>False when the system is singular.</returns>
    public bool Solve(LayerResiduals residuals, LayerStations state)
    {
        _shift.AsSpan().Clear();
        DenseLu.Subtract(_shift, -_sides.MoveByUpper, Influence(_sides.LastUpper));
        DenseLu.Subtract(_shift, -_sides.MoveByLower, Influence(_sides.LastUpper + 1));
        double shiftMiss = _sides.MoveByUpper * _speedMiss[_sides.LastUpper] + _sides.MoveByLower * _speedMiss[_sides.LastUpper + 1];

        for (int side = 1; side >= -1; side -= 2)
        {
            int before = -1, farther = -1;
            for (int order = 0; order < _sides.CountOf(side); order++)
            {
                int station = _sides.Station(side, order);
                AddStation(residuals, state, station, before, farther, shiftMiss);
                (farther, before) = (before, station);
            }
        }

        StartWake(residuals, state);
        for (int w = 1; w < Wake.Count; w++)
            AddStation(residuals, state, _sides.Nodes + w, _sides.Nodes + w - 1, -1, 0);

        if (!_factors.Factor(_matrix))
            return false;
        _factors.Solve(_right, Mass);
        for (int i = 0; i < _stations; i++)
        {
            Speed[i] = _speedMiss[i] + Dot(Influence(i), Mass);
            Momentum[i] = _momentumStart[i] + Dot(Row(_momentumRows, i), Mass);
            Third[i] = _thirdStart[i] + Dot(Row(_thirdRows, i), Mass);
        }

        return true;
    }

    private void AddStation(LayerResiduals residuals, LayerStations state, int station, int before, int farther, double shiftMiss)
    {
        Span<double> a = stackalloc double[LayerEquations.Count], b = stackalloc double[LayerEquations.Count], right = stackalloc double[LayerEquations.Count];
        for (int q = 0; q < LayerEquations.Count; q++)
        {
            int at = station * LayerEquations.Count + q;
            Span<double> row = Equation(q);
            row.Clear();
            ReadOnlySpan<double> down = residuals.Downstream.AsSpan(at * LayerResiduals.Unknowns, LayerResiduals.Unknowns);
            (a[q], b[q]) = (down[0], down[2]);
            right[q] = -residuals.Value[at];
            right[q] -= AddDisplacementAndSpeed(row, state, station, down[1], down[3]);
            if (before >= 0)
                right[q] -= AddEarlier(row, state, before, residuals.Upstream.AsSpan(at * LayerResiduals.Unknowns, LayerResiduals.Unknowns));
            if (farther >= 0)
                right[q] -= AddEarlier(row, state, farther, residuals.Farther.AsSpan(at * LayerResiduals.Unknowns, LayerResiduals.Unknowns));

            double shift = residuals.ByShift[at];
            if (shift is not 0)
            {
                DenseLu.Subtract(row, -shift, _shift);
                right[q] -= shift * shiftMiss;
            }
        }

        Eliminate(station, a, b, right);
    }

    /// <summary>Adds terms in all four unknowns of a station upstream; returns their part that no mass changes.</summary>
    private double AddEarlier(Span<double> row, LayerStations state, int station, ReadOnlySpan<double> by)
    {
        if (by[0] is 0 && by[1] is 0 && by[2] is 0 && by[3] is 0)
            return 0;
        DenseLu.Subtract(row, -by[0], Row(_momentumRows, station));
        DenseLu.Subtract(row, -by[2], Row(_thirdRows, station));
        return AddDisplacementAndSpeed(row, state, station, by[1], by[3]) + by[0] * _momentumStart[station] + by[2] * _thirdStart[station];
    }

    /// <summary>Solves two of the three equations for θ and the third unknown; the last is the station's equation for the masses.</summary>
    private void Eliminate(int station, Span<double> a, Span<double> b, Span<double> right)
    {
        int first = Largest(a, 0, 1, 2);
        int second = (first + 1) % 3, third = (first + 2) % 3;
        Combine(second, first, a[second] / a[first], b, right);
        Combine(third, first, a[third] / a[first], b, right);
        if (Math.Abs(b[third]) > Math.Abs(b[second]))
            (second, third) = (third, second);
        Combine(third, second, b[third] / b[second], b, right);

        Span<double> thirdRow = Row(_thirdRows, station), momentumRow = Row(_momentumRows, station);
        thirdRow.Clear();
        momentumRow.Clear();
        DenseLu.Subtract(thirdRow, 1 / b[second], Equation(second));
        _thirdStart[station] = right[second] / b[second];
        DenseLu.Subtract(momentumRow, 1 / a[first], Equation(first));
        DenseLu.Subtract(momentumRow, b[first] / a[first], thirdRow);
        _momentumStart[station] = (right[first] - b[first] * _thirdStart[station]) / a[first];
        Equation(third).CopyTo(Row(_matrix, station));
        _right[station] = right[third];
    }

    private void Combine(int target, int source, double factor, Span<double> b, Span<double> right)
    {
        DenseLu.Subtract(Equation(target), factor, Equation(source));
        b[target] -= factor * b[source];
        right[target] -= factor * right[source];
    }

    private static int Largest(ReadOnlySpan<double> values, int i, int j, int k)
    {
        int best = Math.Abs(values[j]) > Math.Abs(values[i]) ? j : i;
        return Math.Abs(values[k]) > Math.Abs(values[best]) ? k : best;
    }

    private void StartWake(LayerResiduals residuals, LayerStations state)
    {
        int wake = _sides.Nodes, upper = 0, lower = _sides.Nodes - 1, at = wake * LayerEquations.Count;
        Span<double> momentum = Row(_momentumRows, wake), third = Row(_thirdRows, wake), row = Row(_matrix, wake);
        momentum.Clear();
        third.Clear();
        row.Clear();
        double sum = state.Momentum[upper] + state.Momentum[lower];
        double mean = (state.Momentum[upper] * state.Stress[upper] + state.Momentum[lower] * state.Stress[lower]) / sum;
        _momentumStart[wake] = -residuals.Value[at];
        _thirdStart[wake] = -residuals.Value[at + 2];
        _right[wake] = -residuals.Value[at + 1] - AddDisplacementAndSpeed(row, state, wake, 1, 0);
        foreach (int edge in (ReadOnlySpan<int>)[upper, lower])
        {
            DenseLu.Subtract(momentum, -1, Row(_momentumRows, edge));
            _momentumStart[wake] += _momentumStart[edge];
            double byMomentum = (state.Stress[edge] - mean) / sum, byStress = state.Momentum[edge] / sum;
            DenseLu.Subtract(third, -byMomentum, Row(_momentumRows, edge));
            DenseLu.Subtract(third, -byStress, Row(_thirdRows, edge));
            _thirdStart[wake] += byMomentum * _momentumStart[edge] + byStress * _thirdStart[edge];
            _right[wake] -= AddDisplacementAndSpeed(row, state, edge, -1, 0);
        }
    }

    /// <summary>Adds terms in a station's δ* and speed, which follow from the masses; returns their part that no mass changes.</summary>
    private double AddDisplacementAndSpeed(Span<double> row, LayerStations state, int station, double byDisplacement, double bySpeed)
    {
        double perSpeed = 1 / state.Speed[station];
        double speed = bySpeed - byDisplacement * state.Displacement(station) * perSpeed;
        row[station] += byDisplacement * perSpeed;
        DenseLu.Subtract(row, -speed, Influence(station));
        return speed * _speedMiss[station];
    }

    private Span<double> Influence(int station) => Row(_influence, station);

    private Span<double> Equation(int equation) => Row(_equations, equation);

    private Span<double> Row(double[] matrix, int station) => matrix.AsSpan(station * _stations, _stations);

    private static double Dot(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        double sum = 0;
        for (int i = 0; i < a.Length; i++)
            sum += a[i] * b[i];
        return sum;
    }
}
