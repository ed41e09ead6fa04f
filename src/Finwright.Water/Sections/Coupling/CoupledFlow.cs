using Finwright.Water.Sections.Potential;

namespace Finwright.Water.Sections.Coupling;

/// <summary>
/// Outer flow and layers of one section at one angle, solved together by Newton's method (Drela and Giles, 1987, AIAA J. 25(10)).
/// </summary>
internal sealed class CoupledFlow
{
    private const int MostSteps = 60;
    private const int FullSteps = 24;
    private const double ShortStep = 0.6;

    // Residuals are differences of logarithms: one part in a million is far below what the closures are worth, and the last step squares it.
    private const double Settled = 1e-6;

    // A step may not shrink a thickness by more than half or grow it by more than this much: logarithms must stay alive.
    private const double LeastChange = -0.5;
    private const double MostChange = 1.5;
    private const double MostSpeedChange = 0.3;

    private const double LeastShape = 1.02;
    private const double LeastWakeShape = 1.0005;

    // The dead water behind a blunt edge closes over this many edge thicknesses (common observation of base flows, from memory).
    private const double DeadWaterReach = 2.5;

    private readonly PotentialFlow _flow;
    private readonly DisplacementInfluence _influence;
    private readonly CoupledSystem _system;
    private readonly LayerMarch _march;
    private readonly double[] _frictionless, _gap;

    public CoupledFlow(PotentialFlow flow)
    {
        _flow = flow;
        _influence = new DisplacementInfluence(flow);
        int stations = _influence.Stations;
        Stations = new LayerStations(stations);
        Sides = new Sides(flow.Panels, stations);
        Residuals = new LayerResiduals(Sides, flow.Panels, stations);
        _system = new CoupledSystem(Sides, stations);
        _march = new LayerMarch(Sides, Residuals);
        _frictionless = new double[stations];
        _gap = new double[Wake.Count];
    }

    /// <summary>The unknowns.</summary>
    public LayerStations Stations { get; }

    /// <summary>Where the sides part.</summary>
    public Sides Sides { get; }

    /// <summary>The equations, with friction and transition.</summary>
    public LayerResiduals Residuals { get; }

    /// <summary>Newton steps of the last solution.</summary>
    public int Steps { get; private set; }

    /// <summary>Signed speed at a node.</summary>
    public double Strength(int node) => Sides.SpeedSign(node) * Stations.Speed[node];

    /// <summary>Solves at an angle.</summary>
    /// <param name="angleOfAttack">Radians.</param>
    /// <param name="conditions">Stream and surface.</param>
    /// <param name="from">A solution at another angle to start from; null to start afresh.</param>
    /// <returns>Whether the equations hold.</returns>
    public bool Solve(double angleOfAttack, SectionConditions conditions, SolvedFlow? from)
    {
        int nodes = _flow.Panels.Count;
        double[] strengths = _flow.Strengths(angleOfAttack);
        Wake wake = Wake.Follow(_flow, angleOfAttack, strengths);
        strengths.CopyTo(_frictionless, 0);
        _influence.Place(wake, angleOfAttack, strengths, _frictionless.AsSpan(nodes));
        PlaceDeadWater(wake);
        bool ready = from is null ? StartAfresh(strengths, wake, conditions) : StartFrom(from, wake);
        return ready && Iterate(conditions, wake);
    }

    /// <summary>Keeps the solution, to start another angle from.</summary>
    public SolvedFlow Keep()
    {
        LayerStations copy = new(Stations.Count);
        copy.CopyFrom(Stations);
        return new(copy, Sides.LastUpper, [.. _frictionless]);
    }

    private bool StartAfresh(ReadOnlySpan<double> strengths, Wake wake, SectionConditions conditions)
    {
        if (!Sides.Part(strengths))
            return false;
        for (int i = 0; i < Stations.Count; i++)
            Stations.Speed[i] = Math.Max(Sides.SpeedSign(i) * _frictionless[i], 1e-3);
        Sides.Measure(Stations.Speed, wake);
        Array.Clear(Stations.IsTurbulent);
        _march.Fill(Stations, conditions, _gap);
        return true;
    }

    /// <summary>The layers of the other angle, with the change of the frictionless speeds added.</summary>
    private bool StartFrom(SolvedFlow from, Wake wake)
    {
        Stations.CopyFrom(from.Stations);
        Sides.PartAfter(from.LastUpper);
        for (int i = 0; i < Stations.Count; i++)
            Stations.Speed[i] += Sides.SpeedSign(i) * (_frictionless[i] - from.Frictionless[i]);
        return Settle(wake);
    }

    private bool Iterate(SectionConditions conditions, Wake wake)
    {
        for (Steps = 0; Steps < MostSteps; Steps++)
        {
            Residuals.Evaluate(Stations, conditions, _gap);
            _system.SetOuterFlow(_influence, _frictionless, Residuals, Stations);
            double miss = Residuals.Greatest;
            foreach (double speed in _system.SpeedMiss)
                miss = Math.Max(miss, Math.Abs(speed));
            if (miss < Settled)
                return true;
            if (!double.IsFinite(miss) || !_system.Solve(Residuals, Stations))
                return false;
            // Steps that turn in a circle, about a station where transition comes and goes, settle when they are shortened.
            Apply(Relaxation() * (Steps < FullSteps ? 1 : ShortStep));
            if (!Settle(wake))
                return false;
        }

        return false;
    }

    private double Relaxation()
    {
        double relax = 1;
        for (int i = 0; i < Stations.Count; i++)
        {
            double displacement = Stations.Displacement(i);
            Limit(_system.Momentum[i] / Stations.Momentum[i], LeastChange, MostChange, ref relax);
            Limit((_system.Mass[i] - displacement * _system.Speed[i]) / Stations.Mass[i], LeastChange, MostChange, ref relax);
            Limit(_system.Speed[i], -MostSpeedChange, MostSpeedChange, ref relax);
            if (Stations.IsTurbulent[i])
                Limit(_system.Third[i] / Stations.Stress[i], LeastChange, MostChange, ref relax);
        }

        return relax;
    }

    private static void Limit(double change, double least, double most, ref double relax)
    {
        if (change * relax < least)
            relax = least / change;
        if (change * relax > most)
            relax = most / change;
    }

    private void Apply(double relax)
    {
        for (int i = 0; i < Stations.Count; i++)
        {
            Stations.Momentum[i] += relax * _system.Momentum[i];
            Stations.Mass[i] += relax * _system.Mass[i];
            Stations.Speed[i] += relax * _system.Speed[i];
            if (Stations.IsTurbulent[i])
                Stations.Stress[i] += relax * _system.Third[i];
            else
                Stations.Amplification[i] += relax * _system.Third[i];
        }
    }

    /// <summary>Parts the sides anew where speeds changed sign, keeps layers possible, and measures lengths.</summary>
    private bool Settle(Wake wake)
    {
        int nodes = _flow.Panels.Count;
        Span<double> strengths = stackalloc double[nodes];
        for (int i = 0; i < nodes; i++)
            strengths[i] = Strength(i);
        int upper = Sides.LastUpper;
        if (!Sides.Part(strengths))
            return false;
        // A node that changed sides lies at the stagnation point: it takes the layer of the nearest node that stayed.
        for (int i = Math.Min(upper, Sides.LastUpper) + 1; i <= Math.Max(upper, Sides.LastUpper); i++)
        {
            int donor = Sides.LastUpper > upper ? upper : upper + 1;
            Stations.Speed[i] = Math.Abs(strengths[i]);
            Stations.Mass[i] = Stations.Speed[i] * Stations.Displacement(donor);
            Stations.Momentum[i] = Stations.Momentum[donor];
            Stations.Amplification[i] = 0;
            Stations.IsTurbulent[i] = false;
        }

        for (int i = 0; i < Stations.Count; i++)
        {
            Stations.Speed[i] = Math.Max(Stations.Speed[i], 1e-6);
            double least = i >= nodes ? LeastWakeShape * Stations.Momentum[i] + _gap[i - nodes] : LeastShape * Stations.Momentum[i];
            Stations.Mass[i] = Math.Max(Stations.Mass[i], Stations.Speed[i] * least);
        }

        Sides.Measure(Stations.Speed, wake);
        return true;
    }

    private void PlaceDeadWater(Wake wake)
    {
        SectionPanels panels = _flow.Panels;
        double distance = 0;
        for (int w = 0; w < Wake.Count; w++)
        {
            double share = panels.IsSharp ? 1 : Math.Min(distance / (DeadWaterReach * panels.Gap), 1);
            // Closes without a kink at either end.
            _gap[w] = panels.IsSharp ? 0 : panels.Gap * (1 - share * share * (3 - 2 * share));
            if (w + 1 < Wake.Count)
                distance += wake.Length[w];
        }
    }
}

/// <summary>A solution that another can start from.</summary>
/// <param name="Stations">The unknowns.</param>
/// <param name="LastUpper">Where the sides part.</param>
/// <param name="Frictionless">Signed speeds without friction, wake included.</param>
internal sealed record SolvedFlow(LayerStations Stations, int LastUpper, double[] Frictionless);
