using Finwright.Geometry;
using Finwright.Numerics;

namespace Finwright.Water.Sections.Potential;

/// <summary>
/// Flow without friction past a section: vortices of linear strength along its panels make its outline a streamline (Katz and Plotkin, 2001,
/// Low-Speed Aerodynamics, ch. 10; Drela and Giles, 1987, AIAA J. 25(10), for the blunt edge and the sources of the layer).
/// </summary>
/// <remarks>
/// The inside of the section is at rest, so the strength at a node is the speed there: positive on the side that the flow leaves upward over
/// the nose, negative on the other. A blunt edge sheds a jet of dead water: its panel carries the source and vortex strength that continue the
/// mean trailing edge speed along the bisector.
/// </remarks>
public sealed class PotentialFlow
{
    private readonly double[] _upright, _level, _sources;
    private readonly DenseLu _factors;

    /// <summary>Solves the flow past given panels for every angle of attack.</summary>
    /// <param name="panels">Panels of the section.</param>
    /// <exception cref="ArgumentException">The outline folds or is so thin that the equations cannot be solved.</exception>
    public PotentialFlow(SectionPanels panels)
    {
        ArgumentNullException.ThrowIfNull(panels);
        Panels = panels;
        int n = panels.Count;
        _factors = new DenseLu(n + 1);
        FineOutline fine = new(panels);
        double[] matrix = new double[(n + 1) * (n + 1)], sources = new double[(n + 1) * (n - 1)];
        for (int i = 0; i < n; i++)
            FillRow(fine, matrix.AsSpan(i * (n + 1), n + 1), sources.AsSpan(i * (n - 1), n - 1), panels.X[i], panels.Y[i]);
        if (panels.IsSharp)
        {
            // Both corners are one point and would give the same equation twice. Instead the mean of the two sides' speeds runs
            // straight into the edge.
            Span<double> last = matrix.AsSpan((n - 1) * (n + 1), n + 1);
            last.Clear();
            sources.AsSpan((n - 1) * (n - 1), n - 1).Clear();
            (last[0], last[1], last[2]) = (1, -2, 1);
            (last[n - 1], last[n - 2], last[n - 3]) = (-1, 2, -1);
        }

        matrix[n * (n + 1)] = matrix[n * (n + 1) + n - 1] = 1;
        if (!_factors.Factor(matrix))
            throw new ArgumentException("The flow past this section cannot be solved: its outline folds or both sides touch.", nameof(panels));

        double[] level = new double[n + 1], upright = new double[n + 1];
        for (int i = 0; i < n; i++)
            (level[i], upright[i]) = (-panels.Y[i], panels.X[i]);
        if (panels.IsSharp)
            level[n - 1] = upright[n - 1] = 0;
        (_level, _upright) = (new double[n + 1], new double[n + 1]);
        _factors.Solve(level, _level);
        _factors.Solve(upright, _upright);

        for (int i = 0; i < sources.Length; i++)
            sources[i] = -sources[i];
        _sources = new double[sources.Length];
        _factors.SolveMany(sources, n - 1, _sources);
    }

    /// <summary>The panels.</summary>
    public SectionPanels Panels { get; }

    /// <summary>Answer of the node strengths to a unit source on each panel: row-major, nodes (and one more row) by panels.</summary>
    internal ReadOnlySpan<double> SourceResponse => _sources;

    /// <summary>Strength at each node, with unit stream.</summary>
    /// <param name="angleOfAttack">Radians.</param>
    public double[] Strengths(double angleOfAttack)
    {
        double cosine = Math.Cos(angleOfAttack), sine = Math.Sin(angleOfAttack);
        double[] strength = new double[Panels.Count];
        for (int i = 0; i < strength.Length; i++)
            strength[i] = cosine * _level[i] + sine * _upright[i];
        return strength;
    }

    /// <summary>Lift, moment and pressures without friction.</summary>
    /// <param name="angleOfAttack">Radians.</param>
    /// <returns>Pressure coefficients at the nodes, lift from the pressures, moment about the quarter chord, positive nose up.</returns>
    public (double[] Cp, double Cl, double Cm) Pressures(double angleOfAttack)
    {
        double[] cp = Strengths(angleOfAttack);
        for (int i = 0; i < cp.Length; i++)
            cp[i] = 1 - cp[i] * cp[i];
        PressureForces forces = PressureForces.Of(Panels, cp, angleOfAttack);
        return (cp, forces.Cl, forces.Cm);
    }

    /// <summary>Velocity at a point outside, with unit stream and given node strengths.</summary>
    internal Point2 Velocity(Point2 at, double angleOfAttack, ReadOnlySpan<double> strengths)
    {
        Span<double> u = stackalloc double[Panels.Count], v = stackalloc double[Panels.Count];
        VelocityRows(at, u, v, [], []);
        double x = Math.Cos(angleOfAttack), y = Math.Sin(angleOfAttack);
        for (int j = 0; j < Panels.Count; j++)
        {
            x += u[j] * strengths[j];
            y += v[j] * strengths[j];
        }

        return new(x, y);
    }

    /// <summary>Velocity at a point outside for unit strength at each node and, where room is given, for a unit source on each panel.</summary>
    internal void VelocityRows(Point2 at, Span<double> u, Span<double> v, Span<double> sourceU, Span<double> sourceV)
    {
        SectionPanels p = Panels;
        int n = p.Count;
        u.Clear();
        v.Clear();
        for (int k = 0; k < n - 1; k++)
        {
            Frame frame = Frame.Of(p.X[k], p.Y[k], p.X[k + 1], p.Y[k + 1], p.Length[k]);
            PanelIntegrals panel = PanelIntegrals.ForVelocity(frame.Along(at), frame.Across(at), p.Length[k]);
            (double ax, double ay, double bx, double by) = panel.VortexVelocity();
            frame.Add(u, v, k, ax, ay);
            frame.Add(u, v, k + 1, bx, by);
            if (sourceU.IsEmpty)
                continue;
            (double sx, double sy, double tx, double ty) = panel.SourceVelocity();
            sourceU[k] = frame.U(sx + tx, sy + ty);
            sourceV[k] = frame.V(sx + tx, sy + ty);
        }

        if (p.IsSharp)
            return;
        (Frame edge, double source, double vortex) = EdgePanel();
        PanelIntegrals back = PanelIntegrals.ForVelocity(edge.Along(at), edge.Across(at), p.Gap);
        (double vax, double vay, double vbx, double vby) = back.VortexVelocity();
        (double sax, double say, double sbx, double sby) = back.SourceVelocity();
        double x = vortex * (vax + vbx) + source * (sax + sbx), y = vortex * (vay + vby) + source * (say + sby);
        edge.Add(u, v, 0, 0.5 * x, 0.5 * y);
        edge.Add(u, v, n - 1, -0.5 * x, -0.5 * y);
    }

    /// <summary>Answer of the node strengths to a stream function laid on the nodes.</summary>
    /// <param name="stream">Stream function at each node, nodes (and one more row) by columns, row-major.</param>
    /// <param name="columns">Number of columns.</param>
    /// <param name="response">Takes the strengths in the same layout.</param>
    internal void Respond(ReadOnlySpan<double> stream, int columns, Span<double> response) => _factors.SolveMany(stream, columns, response);

    /// <summary>Equation "stream function at this node is the outline's": coefficients of node strengths, and of panel sources.</summary>
    private void FillRow(FineOutline fine, Span<double> row, Span<double> sources, double x, double y)
    {
        SectionPanels p = Panels;
        int n = p.Count;
        Point2 at = new(x, y);
        for (int k = 0; k < n - 1; k++)
        {
            Frame frame = Frame.Of(p.X[k], p.Y[k], p.X[k + 1], p.Y[k + 1], p.Length[k]);
            (double a, double b) = PanelIntegrals.ForStream(frame.Along(at), frame.Across(at), p.Length[k]).SourceStream();
            sources[k] = (a + b) / (2 * Math.PI);
        }

        for (int f = 0; f + 1 < fine.X.Length; f++)
        {
            double length = Math.Sqrt((fine.X[f + 1] - fine.X[f]) * (fine.X[f + 1] - fine.X[f]) + (fine.Y[f + 1] - fine.Y[f]) * (fine.Y[f + 1] - fine.Y[f]));
            Frame frame = Frame.Of(fine.X[f], fine.Y[f], fine.X[f + 1], fine.Y[f + 1], length);
            (double first, double second) = PanelIntegrals.ForStream(frame.Along(at), frame.Across(at), length).VortexStream();
            fine.Distribute(f, first / (2 * Math.PI), row);
            fine.Distribute(f + 1, second / (2 * Math.PI), row);
        }

        row[n] = -1;
        if (p.IsSharp)
            return;
        (Frame edge, double source, double vortex) = EdgePanel();
        PanelIntegrals back = PanelIntegrals.ForStream(edge.Along(at), edge.Across(at), p.Gap);
        (double va, double vb) = back.VortexStream();
        (double sa, double sb) = back.SourceStream();
        double strength = (vortex * (va + vb) + source * (sa + sb)) / (2 * Math.PI);
        row[0] += 0.5 * strength;
        row[n - 1] -= 0.5 * strength;
    }

    /// <summary>The panel that closes a blunt edge, with its strengths for unit mean speed of both sides at the edge.</summary>
    private (Frame Frame, double Source, double Vortex) EdgePanel()
    {
        SectionPanels p = Panels;
        int last = p.Count - 1;
        Frame frame = Frame.Of(p.X[last], p.Y[last], p.X[0], p.Y[0], p.Gap);
        Point2 aft = p.Bisector;
        // Outside the panel the dead water moves along the bisector; inside all is at rest. The jump across it, normal and along:
        return (frame, aft.X * frame.Sine - aft.Y * frame.Cosine, -(aft.X * frame.Cosine + aft.Y * frame.Sine));
    }

    /// <summary>A panel's own axes.</summary>
    internal readonly record struct Frame(double X, double Y, double Cosine, double Sine)
    {
        public static Frame Of(double x1, double y1, double x2, double y2, double length) =>
            new(x1, y1, (x2 - x1) / length, (y2 - y1) / length);

        public double Along(Point2 p) => (p.X - X) * Cosine + (p.Y - Y) * Sine;

        public double Across(Point2 p) => (p.Y - Y) * Cosine - (p.X - X) * Sine;

        public double U(double along, double across) => (along * Cosine - across * Sine) / (2 * Math.PI);

        public double V(double along, double across) => (along * Sine + across * Cosine) / (2 * Math.PI);

        public void Add(Span<double> u, Span<double> v, int index, double along, double across)
        {
            u[index] += U(along, across);
            v[index] += V(along, across);
        }
    }
}
