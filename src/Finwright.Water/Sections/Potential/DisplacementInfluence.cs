using Finwright.Geometry;
using Finwright.Numerics;

namespace Finwright.Water.Sections.Potential;

/// <summary>
/// How the layer's displacement changes the speed at its edge: speed = frictionless speed + D · (speed · δ*). Stations are the nodes of the
/// section in their order, then those of the wake.
/// </summary>
/// <remarks>
/// The displaced flow is made by sources on the surface and along the wake, of the strength with which speed · δ* rises along the stream
/// (Lighthill, 1958, "On displacement thickness", J. Fluid Mech. 4; Drela and Giles, 1987, AIAA J. 25(10)). On the surface the strength is constant on a panel; in the wake
/// it runs linearly between stations and the middles between them, so that speeds there are finite.
/// Signs follow the panels: the speed is counted against their order on the upper side, so masses carry a minus there.
/// </remarks>
internal sealed class DisplacementInfluence
{
    private readonly PotentialFlow _flow;
    private readonly double[] _matrix, _bends;
    private readonly int _nodes, _stations;

    /// <summary>Prepares what does not depend on the angle of attack.</summary>
    /// <param name="flow">The flow past the section.</param>
    public DisplacementInfluence(PotentialFlow flow)
    {
        _flow = flow;
        _nodes = flow.Panels.Count;
        _stations = _nodes + Wake.Count;
        _matrix = new double[_stations * _stations];
        _bends = new double[_stations * Bends];
        int panels = _nodes - 1;
        for (int i = 0; i < _nodes; i++)
        {
            Span<double> row = Row(i);
            for (int p = 0; p < panels; p++)
            {
                double perLength = flow.SourceResponse[i * panels + p] / flow.Panels.Length[p];
                row[p] -= perLength;
                row[p + 1] += perLength;
            }
        }
    }

    /// <summary>Number of stretches of the wake that bend.</summary>
    public const int Bends = Wake.Count - 1;

    /// <summary>Number of stations.</summary>
    public int Stations => _stations;

    /// <summary>Change of the signed speed at one station for unit signed mass at each.</summary>
    public Span<double> Row(int station) => _matrix.AsSpan(station * _stations, _stations);

    /// <summary>Change of the signed speed at one station for unit flux speed · (δ* + θ) through each bending stretch of the wake.</summary>
    public Span<double> BendRow(int station) => _bends.AsSpan(station * Bends, Bends);

    /// <summary>Puts the wake in place.</summary>
    /// <param name="wake">The wake.</param>
    /// <param name="angleOfAttack">Radians.</param>
    /// <param name="strengths">Frictionless node strengths.</param>
    /// <param name="speeds">Takes the frictionless speeds at the wake's stations.</param>
    public void Place(Wake wake, double angleOfAttack, ReadOnlySpan<double> strengths, Span<double> speeds)
    {
        WakeOnNodes(wake);
        BendsOnNodes(wake);
        Span<double> u = stackalloc double[_nodes], v = stackalloc double[_nodes];
        Span<double> sourceU = stackalloc double[_nodes - 1], sourceV = stackalloc double[_nodes - 1];
        for (int w = 1; w < Wake.Count; w++)
        {
            Point2 at = wake.Points[w], along = wake.Direction(w);
            _flow.VelocityRows(at, u, v, sourceU, sourceV);
            Span<double> row = Row(_nodes + w);
            row.Clear();
            Span<double> bends = BendRow(_nodes + w);
            bends.Clear();
            double speed = Math.Cos(angleOfAttack) * along.X + Math.Sin(angleOfAttack) * along.Y;
            for (int j = 0; j < _nodes; j++)
            {
                double perStrength = u[j] * along.X + v[j] * along.Y;
                speed += perStrength * strengths[j];
                DenseLu.Subtract(row, -perStrength, Row(j));
                DenseLu.Subtract(bends, -perStrength, BendRow(j));
            }

            for (int p = 0; p < _nodes - 1; p++)
            {
                double perLength = (sourceU[p] * along.X + sourceV[p] * along.Y) / _flow.Panels.Length[p];
                row[p] -= perLength;
                row[p + 1] += perLength;
            }

            WakeOnItself(wake, at, along, row);
            speeds[w] = speed;
        }

        // At the trailing edge the wake moves with the mean of both sides.
        Span<double> first = Row(_nodes);
        ReadOnlySpan<double> upper = Row(0), lower = Row(_nodes - 1);
        for (int j = 0; j < _stations; j++)
            first[j] = 0.5 * (upper[j] - lower[j]);
        for (int k = 0; k < Bends; k++)
            BendRow(_nodes)[k] = 0.5 * (BendRow(0)[k] - BendRow(_nodes - 1)[k]);
        speeds[0] = 0.5 * (strengths[0] - strengths[_nodes - 1]);
    }

    /// <summary>Strengths at the section's nodes for unit mass at each station of the wake.</summary>
    private void WakeOnNodes(Wake wake)
    {
        SectionPanels panels = _flow.Panels;
        double[] stream = new double[(_nodes + 1) * Wake.Count], response = new double[stream.Length];
        int solved = panels.IsSharp ? _nodes - 1 : _nodes;
        for (int i = 0; i < solved; i++)
        {
            Point2 node = new(panels.X[i], panels.Y[i]);
            Span<double> row = stream.AsSpan(i * Wake.Count, Wake.Count);
            for (int h = 0; h < 2 * (Wake.Count - 1); h++)
            {
                HalfPanel half = HalfPanel.Of(wake, h);
                // Seen from downstream, so that the angle's cut runs away from the section.
                PotentialFlow.Frame frame = half.Frame(reversed: true);
                (double end, double start) = PanelIntegrals.ForStream(frame.Along(node), frame.Across(node), half.Length).SourceStream();
                half.Distribute(wake, -start / (2 * Math.PI), -end / (2 * Math.PI), row);
            }
        }

        _flow.Respond(stream, Wake.Count, response);
        for (int i = 0; i < _nodes; i++)
            response.AsSpan(i * Wake.Count, Wake.Count).CopyTo(Row(i)[_nodes..]);
    }

    /// <summary>
    /// Strengths at the section's nodes for unit flux through each stretch of the wake that bends. Slow water pushes outward less in a
    /// bend, so the outer flow sees a jump of speed across the wake, of the curvature times speed · (δ* + θ) (Lock and Firmin, 1982, in Numerical Methods in
    /// Aeronautical Fluid Dynamics, ed. Roe, from memory): a vortex sheet, which also sets the difference of both sides' speeds at the trailing edge.
    /// </summary>
    private void BendsOnNodes(Wake wake)
    {
        SectionPanels panels = _flow.Panels;
        double[] stream = new double[(_nodes + 1) * Bends], response = new double[stream.Length];
        int solved = panels.IsSharp ? _nodes - 1 : _nodes;
        for (int k = 0; k < Bends; k++)
        {
            double strength = -wake.Turn[k] / wake.Length[k];
            PotentialFlow.Frame frame = PotentialFlow.Frame.Of(wake.Points[k].X, wake.Points[k].Y, wake.Points[k + 1].X, wake.Points[k + 1].Y, wake.Length[k]);
            for (int i = 0; i < solved; i++)
            {
                Point2 node = new(panels.X[i], panels.Y[i]);
                (double start, double end) = PanelIntegrals.ForStream(frame.Along(node), frame.Across(node), wake.Length[k]).VortexStream();
                stream[i * Bends + k] = -strength * (start + end) / (2 * Math.PI);
            }

            if (k == 0)
                stream[_nodes * Bends] = strength;
        }

        _flow.Respond(stream, Bends, response);
        for (int i = 0; i < _nodes; i++)
            response.AsSpan(i * Bends, Bends).CopyTo(BendRow(i));
    }

    private void WakeOnItself(Wake wake, Point2 at, Point2 along, Span<double> row)
    {
        for (int h = 0; h < 2 * (Wake.Count - 1); h++)
        {
            HalfPanel half = HalfPanel.Of(wake, h);
            PotentialFlow.Frame frame = half.Frame(reversed: false);
            (double ax, double ay, double bx, double by) = PanelIntegrals.ForVelocity(frame.Along(at), frame.Across(at), half.Length).SourceVelocity();
            double start = frame.U(ax, ay) * along.X + frame.V(ax, ay) * along.Y, end = frame.U(bx, by) * along.X + frame.V(bx, by) * along.Y;
            half.Distribute(wake, start, end, row[_nodes..]);
        }
    }

    /// <summary>Half of the stretch between two stations of the wake.</summary>
    private readonly record struct HalfPanel(int Index, Point2 Start, Point2 End, double Length)
    {
        public static HalfPanel Of(Wake wake, int index)
        {
            int k = index / 2;
            Point2 middle = 0.5 * (wake.Points[k] + wake.Points[k + 1]);
            (Point2 start, Point2 end) = index % 2 == 0 ? (wake.Points[k], middle) : (middle, wake.Points[k + 1]);
            return new(index, start, end, (end - start).Length);
        }

        public PotentialFlow.Frame Frame(bool reversed) => reversed
            ? PotentialFlow.Frame.Of(End.X, End.Y, Start.X, Start.Y, Length)
            : PotentialFlow.Frame.Of(Start.X, Start.Y, End.X, End.Y, Length);

        /// <summary>Shares the effect of both end strengths out to the masses that make them.</summary>
        public void Distribute(Wake wake, double start, double end, Span<double> masses)
        {
            int k = Index / 2;
            (double station, double middle) = Index % 2 == 0 ? (start, end) : (end, start);
            Rise(wake, k, middle, masses);
            int node = Index % 2 == 0 ? k : k + 1;
            if (node == 0)
            {
                Rise(wake, 0, station, masses);
            }
            else if (node == Wake.Count - 1)
            {
                Rise(wake, node - 1, station, masses);
            }
            else
            {
                // The slope of the parabola through three stations.
                double before = wake.Length[node - 1], after = wake.Length[node];
                Rise(wake, node - 1, station * after / (before + after), masses);
                Rise(wake, node, station * before / (before + after), masses);
            }
        }

        private static void Rise(Wake wake, int interval, double effect, Span<double> masses)
        {
            masses[interval] -= effect / wake.Length[interval];
            masses[interval + 1] += effect / wake.Length[interval];
        }
    }
}
