using System.Runtime.Intrinsics;
using Finwright.Numerics.Differentiation;
using Finwright.Water.Sections.Layers;
using Finwright.Water.Sections.Potential;

namespace Finwright.Water.Sections.Coupling;

/// <summary>Evaluates the layer's equations at every station, with derivatives by the unknowns of both ends.</summary>
internal sealed class LayerResiduals
{
    /// <summary>Unknowns that an equation knows at each end: θ, δ*, third, speed.</summary>
    public const int Unknowns = 4;

    // A layer thinner than this does not stay turbulent behind a trip or a grain (Preston, 1958, J. Fluid Mech. 3, puts the limit of a
    // flat plate's layer near 320; trips with a wake of their own work from about 100; judgement).
    private const double LeastTrippedReynolds = 100;

    private readonly Sides _sides;
    private readonly SectionPanels _panels;

    public LayerResiduals(Sides sides, SectionPanels panels, int stations)
    {
        (_sides, _panels) = (sides, panels);
        Value = new double[LayerEquations.Count * stations];
        Upstream = new double[LayerEquations.Count * stations * Unknowns];
        Farther = new double[LayerEquations.Count * stations * Unknowns];
        Downstream = new double[LayerEquations.Count * stations * Unknowns];
        ByShift = new double[LayerEquations.Count * stations];
        Friction = new double[stations];
    }

    /// <summary>Residuals, three to a station.</summary>
    public double[] Value { get; }

    /// <summary>Derivatives by the unknowns of the station upstream.</summary>
    public double[] Upstream { get; }

    /// <summary>Derivatives by the unknowns of the station before that; zero but where waves grow.</summary>
    public double[] Farther { get; }

    /// <summary>Derivatives by the unknowns of the station itself.</summary>
    public double[] Downstream { get; }

    /// <summary>Derivatives by a move of the stagnation point down the outline.</summary>
    public double[] ByShift { get; }

    /// <summary>C_f at each station, on the edge speed.</summary>
    public double[] Friction { get; }

    /// <summary>Length from the stagnation point at which the upper side turns turbulent.</summary>
    public double TransitionUpper { get; private set; }

    /// <summary>The same for the lower side.</summary>
    public double TransitionLower { get; private set; }

    /// <summary>Greatest residual.</summary>
    public double Greatest
    {
        get
        {
            double greatest = 0;
            foreach (double value in Value)
                greatest = Math.Max(greatest, Math.Abs(value));
            return greatest;
        }
    }

    /// <summary>Evaluates everything; third unknowns of stations that change between laminar and turbulent get a first value.</summary>
    public void Evaluate(LayerStations state, SectionConditions conditions, ReadOnlySpan<double> gap)
    {
        TransitionUpper = Side(state, +1, conditions, conditions.Upper);
        TransitionLower = Side(state, -1, conditions, conditions.Lower);
        WakeStart(state, gap[0]);
        LayerSettings settings = new(conditions.ReynoldsNumber, conditions.CriticalAmplification, 0);
        Span<Jet12> residual = stackalloc Jet12[LayerEquations.Count];
        int first = _sides.Nodes;
        LayerState<Jet12> before = Wet(state, first, LayerKind.Wake, settings, gap[0]).Upstream();
        for (int w = 1; w < Wake.Count; w++)
        {
            LayerState<Jet4> here = Wet(state, first + w, LayerKind.Wake, settings, gap[w]);
            double from = _sides.Length[first + w - 1], to = _sides.Length[first + w];
            LayerEquations.Turbulent(before, here.Downstream(), Jet12.Constant(from), Jet12.Constant(to), residual);
            Keep(first + w, residual, 0);
            before = here.Upstream();
        }
    }

    /// <summary>Length of a forced trip from the stagnation point.</summary>
    public double TripLength(int side, double place)
    {
        int nose = _panels.Nose, step = side > 0 ? -1 : 1, at = nose;
        while (at > 0 && at < _panels.Count - 1 && _panels.X[at + step] < place)
            at += step;
        int next = Math.Clamp(at + step, 0, _panels.Count - 1);
        double share = next == at ? 0 : Math.Clamp((place - _panels.X[at]) / (_panels.X[next] - _panels.X[at]), 0, 1);
        double arc = _panels.Arc[at] + share * (_panels.Arc[next] - _panels.Arc[at]);
        return side > 0 ? _sides.Stagnation - arc : arc - _sides.Stagnation;
    }

    internal static LayerState<Jet4> Wet(LayerStations state, int station, LayerKind kind, in LayerSettings settings, double gap = 0) => new(
        kind,
        Jet4.Variable(state.Momentum[station], 0),
        Jet4.Variable(state.Displacement(station), 1),
        Jet4.Variable(kind == LayerKind.Laminar ? state.Amplification[station] : state.Stress[station], 2),
        Jet4.Variable(state.Speed[station], 3),
        settings,
        gap);

    private double Side(LayerStations state, int side, SectionConditions conditions, SideFinish finish)
    {
        LayerSettings settings = new(conditions.ReynoldsNumber, conditions.CriticalAmplification, finish.SandRoughness);
        Span<Jet12> residual = stackalloc Jet12[LayerEquations.Count];
        int count = _sides.CountOf(side);
        // At the trailing edge the layers meet and turn turbulent at the latest.
        double end = _sides.Length[_sides.Station(side, count - 1)];
        double trip = finish.TripAt is double place ? TripLength(side, place) : double.PositiveInfinity;

        int station = _sides.Station(side, 0);
        LayerState<Jet4> before = Wet(state, station, LayerKind.Laminar, settings);
        state.IsTurbulent[station] = false;
        double from = _sides.Length[station];
        LayerEquations.Stagnation(before.Downstream(), Jet12.OfThird(from, 1), residual);
        Keep(station, residual, side);
        Friction[station] = before.Friction.Value;
        double transition = double.NaN;
        // Growth of the waves at the last two stations, and how fast it rises between them.
        LayerState<Jet4> farther = before;
        Jet4 growth = before.Growth;
        double growthSlope = 0, slopeRun = 0;

        for (int order = 1; order < count; order++)
        {
            station = _sides.Station(side, order);
            double to = _sides.Length[station];
            if (!double.IsNaN(transition))
            {
                StartTurbulence(state, station, before.Third.Value);
                LayerState<Jet4> here = Wet(state, station, LayerKind.Turbulent, settings);
                LayerEquations.Turbulent(before.Upstream(), here.Downstream(), Jet12.OfThird(from, 0), Jet12.OfThird(to, 1), residual);
                before = here;
            }
            else
            {
                LayerState<Jet4> here = Wet(state, station, LayerKind.Laminar, settings);
                double forced = Math.Min(Forced(before, farther, from, slopeRun, trip, finish, conditions.ReynoldsNumber), end);
                if (Math.Min(from + TransitionInterval.FreeRun(before, growthSlope, settings.CriticalAmplification), forced) <= to)
                {
                    StartTurbulence(state, station, FirstStress(state, station, settings));
                    ReadOnlySpan<double> unknowns = [state.Momentum[station], state.Displacement(station), state.Stress[station], state.Speed[station]];
                    transition = TransitionInterval.Equations(before.Upstream(), unknowns, from, to, growthSlope, forced, settings, residual);
                    before = Wet(state, station, LayerKind.Turbulent, settings);
                }
                else
                {
                    if (state.IsTurbulent[station])
                    {
                        // Transition has moved past: the station takes a laminar profile, that of the one before.
                        state.IsTurbulent[station] = false;
                        state.Amplification[station] = before.Third.Value + before.Growth.Value * (to - from);
                        state.Mass[station] = state.Speed[station] * state.Momentum[station] * before.Shape.Value;
                        here = Wet(state, station, LayerKind.Laminar, settings);
                    }

                    LayerEquations.Laminar(before.Upstream(), here.Downstream(), Jet12.OfThird(from, 0), Jet12.OfThird(to, 1), Jet12.OfThird(growthSlope, TransitionInterval.SlopeVariable), residual);
                    (farther, before) = (before, here);
                }
            }

            Keep(station, residual, side);
            if (slopeRun > 0)
                KeepSlope(station, residual, growth, farther.Growth, slopeRun);
            Friction[station] = before.Friction.Value;
            slopeRun = double.IsNaN(transition) ? to - from : 0;
            (growth, growthSlope) = slopeRun > 0 ? (before.Growth, (before.Growth.Value - farther.Growth.Value) / slopeRun) : (default, 0);
            from = to;
        }

        return transition;
    }

    /// <summary>Length at which a trip or the roughness forces transition; infinite when neither does.</summary>
    /// <param name="a">The last laminar station.</param>
    /// <param name="farther">The one before it.</param>
    /// <param name="from">Length at the last laminar station.</param>
    /// <param name="run">Length between both; 0 for the first.</param>
    /// <param name="trip">Length at the trip.</param>
    /// <param name="finish">The side's finish.</param>
    /// <param name="reynolds">On the chord.</param>
    /// <remarks>As with the waves, only stations ahead are asked: the one behind is turbulent and thicker.</remarks>
    private static double Forced(in LayerState<Jet4> a, in LayerState<Jet4> farther, double from, double run, double trip, SideFinish finish, double reynolds)
    {
        if (double.IsInfinity(trip) && finish.RoughnessHeight <= 0)
            return double.PositiveInfinity;
        double allowed = Reached(
            reynolds * a.Speed.Value * a.Momentum.Value, reynolds * farther.Speed.Value * farther.Momentum.Value, LeastTrippedReynolds, from, run);
        double rough = finish.RoughnessHeight <= 0
            ? double.PositiveInfinity
            : Reached(RoughnessReynolds(a, finish, reynolds), RoughnessReynolds(farther, finish, reynolds), finish.CriticalRoughnessReynoldsNumber, from, run);
        return Math.Max(allowed, Math.Min(trip, rough));
    }

    /// <summary>Length at which a number that grows along the surface reaches a limit, carried on from two stations.</summary>
    private static double Reached(double here, double before, double limit, double from, double run) =>
        here >= limit ? from : here > before && run > 0 ? from + run * (limit - here) / (here - before) : double.PositiveInfinity;

    /// <summary>Roughness Reynolds number u_k k/ν, with the speed at the top of the element from a sine profile of the layer's own wall slope.</summary>
    private static double RoughnessReynolds(in LayerState<Jet4> state, SideFinish finish, double reynolds)
    {
        if (finish.RoughnessHeight <= 0)
            return 0;
        double speed = state.Speed.Value, height = finish.RoughnessHeight;
        double slope = 0.5 * Math.Max(state.Friction.Value, 0) * reynolds * speed;
        return reynolds * height * speed * Math.Sin(Math.Min(slope * height, Math.PI / 2));
    }

    private static void StartTurbulence(LayerStations state, int station, double stress)
    {
        if (!state.IsTurbulent[station])
            state.Stress[station] = stress;
        state.IsTurbulent[station] = true;
    }

    private static double FirstStress(LayerStations state, int station, in LayerSettings settings)
    {
        LayerState<Real> turbulent = new(LayerKind.Turbulent, new(state.Momentum[station]), new(state.Displacement(station)), new(0.1), new(state.Speed[station]), settings);
        return Math.Clamp(TransitionInterval.StartingStress(turbulent).Value, 0.01, 0.3);
    }

    /// <summary>Where both layers become one: momenta and displacements add up, with the dead water behind a blunt edge.</summary>
    private void WakeStart(LayerStations state, double gap)
    {
        int wake = _sides.Nodes, upper = 0, lower = _sides.Nodes - 1;
        double sum = state.Momentum[upper] + state.Momentum[lower];
        double stress = (state.Momentum[upper] * state.Stress[upper] + state.Momentum[lower] * state.Stress[lower]) / sum;
        int at = wake * LayerEquations.Count;
        // Their derivatives are written out where the equations are put together.
        Value[at] = state.Momentum[wake] - sum;
        Value[at + 1] = state.Displacement(wake) - state.Displacement(upper) - state.Displacement(lower) - gap;
        Value[at + 2] = state.Stress[wake] - stress;
        state.IsTurbulent[wake] = true;
    }

    /// <summary>Passes derivatives by the growth's slope on to the two stations that it was taken from.</summary>
    private void KeepSlope(int station, ReadOnlySpan<Jet12> residual, Jet4 last, Jet4 farther, double run)
    {
        for (int q = 0; q < LayerEquations.Count; q++)
        {
            int at = (station * LayerEquations.Count + q) * Unknowns;
            double perGrowth = residual[q].Third.GetElement(TransitionInterval.SlopeVariable) / run;
            for (int i = 0; i < Unknowns; i++)
            {
                Upstream[at + i] += perGrowth * last.Slope.GetElement(i);
                Farther[at + i] = -perGrowth * farther.Slope.GetElement(i);
            }
        }
    }

    private void Keep(int station, ReadOnlySpan<Jet12> residual, int side)
    {
        for (int q = 0; q < LayerEquations.Count; q++)
        {
            int at = station * LayerEquations.Count + q;
            Value[at] = residual[q].Value;
            Farther.AsSpan(at * Unknowns, Unknowns).Clear();
            residual[q].First.CopyTo(Upstream, at * Unknowns);
            residual[q].Second.CopyTo(Downstream, at * Unknowns);
            // Lengths are measured against the outline's order on the upper side and along it on the lower.
            ByShift[at] = side * (residual[q].Third.GetElement(0) + residual[q].Third.GetElement(1));
        }
    }
}
