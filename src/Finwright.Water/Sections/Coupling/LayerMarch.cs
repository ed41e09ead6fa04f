using Finwright.Numerics.Differentiation;
using Finwright.Water.Sections.Layers;
using Finwright.Water.Sections.Potential;

namespace Finwright.Water.Sections.Coupling;

/// <summary>
/// A first guess of the layers: marched downstream with the frictionless speeds; where a layer would leave the surface, its shape factor is
/// held at a value short of that and the speed is left free.
/// </summary>
internal sealed class LayerMarch(Sides sides, LayerResiduals residuals)
{
    private const double LaminarLimit = 3.6;
    private const double TurbulentLimit = 2.3;
    private const double WakeLimit = 2.6;
    private const double LeastShape = 1.02;
    private const double LeastSpeed = 0.02;
    private const double UsualStress = 0.05;

    // Hiemenz's stagnation flow: θ² = 0.0855 ν / (du/ds), H = 2.216 (Schlichting, Boundary-Layer Theory, from memory).
    private const double StagnationMomentum = 0.0855;
    private const double StagnationShape = 2.216;

    /// <summary>Fills the stations; speeds must hold the frictionless ones.</summary>
    public void Fill(LayerStations state, SectionConditions conditions, ReadOnlySpan<double> gap)
    {
        Side(state, +1, conditions, conditions.Upper);
        Side(state, -1, conditions, conditions.Lower);
        int wake = sides.Nodes, upper = 0, lower = sides.Nodes - 1;
        double sum = state.Momentum[upper] + state.Momentum[lower];
        state.Momentum[wake] = sum;
        state.Stress[wake] = (state.Momentum[upper] * state.Stress[upper] + state.Momentum[lower] * state.Stress[lower]) / sum;
        state.Mass[wake] = state.Speed[wake] * (state.Displacement(upper) + state.Displacement(lower) + gap[0]);
        state.IsTurbulent[wake] = true;
        LayerSettings settings = new(conditions.ReynoldsNumber, conditions.CriticalAmplification, 0);
        for (int w = 1; w < Wake.Count; w++)
        {
            LayerState<Jet12> before = LayerResiduals.Wet(state, wake + w - 1, LayerKind.Wake, settings, gap[w - 1]).Upstream();
            state.IsTurbulent[wake + w] = true;
            Station(state, wake + w, wake + w - 1, before, LayerKind.Wake, settings, gap[w], WakeLimit, double.PositiveInfinity);
        }
    }

    private void Side(LayerStations state, int side, SectionConditions conditions, SideFinish finish)
    {
        LayerSettings settings = new(conditions.ReynoldsNumber, conditions.CriticalAmplification, finish.SandRoughness);
        int count = sides.CountOf(side), station = sides.Station(side, 0);
        double slope = state.Speed[station] / sides.Length[station];
        state.Momentum[station] = Math.Sqrt(StagnationMomentum / (slope * conditions.ReynoldsNumber));
        state.Mass[station] = state.Speed[station] * StagnationShape * state.Momentum[station];
        state.Amplification[station] = 0;
        state.IsTurbulent[station] = false;
        double trip = Math.Min(
            finish.TripAt is double place ? residuals.TripLength(side, place) : double.PositiveInfinity,
            sides.Length[sides.Station(side, count - 1)]);
        for (int order = 1; order < count; order++)
        {
            int before = station;
            station = sides.Station(side, order);
            bool turbulent = state.IsTurbulent[before];
            LayerState<Jet4> wet = LayerResiduals.Wet(state, before, turbulent ? LayerKind.Turbulent : LayerKind.Laminar, settings);
            state.IsTurbulent[station] = turbulent
                || Math.Min(sides.Length[before] + TransitionInterval.FreeRun(wet, 0, settings.CriticalAmplification), trip) <= sides.Length[station];
            Station(state, station, before, wet.Upstream(), state.IsTurbulent[station] ? LayerKind.Turbulent : LayerKind.Laminar, settings, 0, state.IsTurbulent[station] ? TurbulentLimit : LaminarLimit, trip);
        }
    }

    /// <summary>One station: with the speed given, or, where that fails, with the shape factor held.</summary>
    private void Station(LayerStations state, int station, int before, in LayerState<Jet12> upstream, LayerKind kind, in LayerSettings settings, double gap, double limit, double trip)
    {
        Span<double> x = stackalloc double[LayerResiduals.Unknowns];
        double given = state.Speed[station];
        Stretch stretch = new(sides.Length[before], sides.Length[station], kind == LayerKind.Turbulent && !state.IsTurbulent[before] ? trip : null);
        double shape = Math.Max((state.Displacement(before) - gap) / state.Momentum[before], LeastShape);
        Guess(x, state, before, kind, shape, gap, given);
        if (!StationSolver.Solve(x, upstream, stretch, kind, settings, gap, held: 0) || (x[1] - gap) / x[0] > limit)
        {
            double held = kind == LayerKind.Laminar ? limit : Math.Min(shape, limit);
            double slower = Math.Max(Math.Min(given, state.Speed[before]), LeastSpeed);
            Guess(x, state, before, kind, held, gap, slower);
            if (!StationSolver.Solve(x, upstream, stretch, kind, settings, gap, held))
                Guess(x, state, before, kind, held, gap, given);
        }

        state.Momentum[station] = x[0];
        state.Speed[station] = x[3];
        state.Mass[station] = x[1] * x[3];
        if (kind == LayerKind.Laminar)
            state.Amplification[station] = x[2];
        else
            state.Stress[station] = x[2];
    }

    private static void Guess(Span<double> x, LayerStations state, int before, LayerKind kind, double shape, double gap, double speed)
    {
        x[0] = state.Momentum[before];
        x[1] = shape * x[0] + gap;
        x[2] = kind == LayerKind.Laminar ? state.Amplification[before] : state.IsTurbulent[before] ? state.Stress[before] : UsualStress;
        x[3] = speed;
    }
}
