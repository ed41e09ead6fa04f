using Finwright.Numerics.Differentiation;
using Finwright.Water.Sections.Layers;

namespace Finwright.Water.Tests.Sections.Layers;

/// <summary>A layer marched along a wall under a given edge speed, station by station.</summary>
internal sealed class PlateMarch
{
    private readonly LayerSettings _settings;

    private PlateMarch(LayerSettings settings) => _settings = settings;

    public List<double> X { get; } = [];

    public List<double> Momentum { get; } = [];

    public List<double> Shape { get; } = [];

    public List<double> Friction { get; } = [];

    public List<double> Amplification { get; } = [];

    /// <summary>Marches a laminar layer until it cannot go on.</summary>
    /// <param name="speed">Edge speed over length.</param>
    /// <param name="x">Stations.</param>
    /// <param name="momentum">θ at the first station.</param>
    /// <param name="shape">H at the first station.</param>
    /// <param name="reynolds">Reynolds number on unit length and speed.</param>
    public static PlateMarch Laminar(Func<double, double> speed, double[] x, double momentum, double shape, double reynolds)
    {
        PlateMarch march = new(new(reynolds, 1e9, 0));
        march.March(LayerKind.Laminar, speed, x, [momentum, shape * momentum, 0, speed(x[0])]);
        return march;
    }

    /// <summary>Marches a turbulent layer.</summary>
    public static PlateMarch Turbulent(Func<double, double> speed, double[] x, double momentum, double reynolds, double sand = 0)
    {
        PlateMarch march = new(new(reynolds, 9, sand));
        march.March(LayerKind.Turbulent, speed, x, [momentum, 1.5 * momentum, 0.05, speed(x[0])]);
        return march;
    }

    /// <summary>Stations with lengths in a fixed ratio.</summary>
    public static double[] Stations(double from, double to, int count) =>
        [.. Enumerable.Range(0, count).Select(i => from * Math.Pow(to / from, i / (count - 1.0)))];

    private void March(LayerKind kind, Func<double, double> speed, double[] x, double[] start)
    {
        Span<double> unknowns = start;
        LayerState<Jet4> state = State(kind, unknowns);
        Keep(x[0], state);
        for (int i = 1; i < x.Length; i++)
        {
            double before = Growth(state);
            unknowns[3] = speed(x[i]);
            if (!StationSolver.Solve(unknowns, state.Upstream(), new(x[i - 1], x[i], null), kind, _settings, 0, 0))
                return;
            state = State(kind, unknowns);
            double rise = 0.5 * (before + Growth(state)) * (x[i] - x[i - 1]);
            Keep(x[i], state);
            Amplification[^1] = Amplification[^2] + rise;
        }

        double Growth(in LayerState<Jet4> at) => kind == LayerKind.Laminar ? at.Growth.Value : 0;
    }

    private LayerState<Jet4> State(LayerKind kind, ReadOnlySpan<double> x) =>
        new(kind, Jet4.Variable(x[0], 0), Jet4.Variable(x[1], 1), Jet4.Variable(x[2], 2), Jet4.Variable(x[3], 3), _settings);

    private void Keep(double x, in LayerState<Jet4> state)
    {
        X.Add(x);
        Momentum.Add(state.Momentum.Value);
        Shape.Add(state.Shape.Value);
        Friction.Add(state.Friction.Value);
        Amplification.Add(0);
    }
}
