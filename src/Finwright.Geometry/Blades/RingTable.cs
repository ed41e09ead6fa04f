using Finwright.Geometry.Sections;

namespace Finwright.Geometry.Blades;

/// <summary>
/// Points and outward normals round the section at fixed places of the common parameter, for any depth and offset. The section forms are
/// read once, so that a ring costs only multiplications.
/// </summary>
/// <remarks>
/// A ring starts at the blunt trailing edge's starboard corner, turns over a small arc to the starboard side, runs over the nose to the
/// port corner and over its arc. Without offset the points of an arc coincide. The mirror of place j is place Count - 1 - j.
/// </remarks>
internal sealed class RingTable
{
    // Half-width of the differences that give tangents: their error goes with its square.
    private const double TangentStep = 1e-4;

    // At the trailing edge the parameter stands still, so the tangent is taken to a point a little ahead of it.
    private const double EdgeStep = 1e-3;

    private readonly int _sidePoints, _arcSteps;
    private readonly Places _at, _before, _after;

    /// <summary>Reads the forms of a blade.</summary>
    /// <param name="blade">The blade.</param>
    /// <param name="places">Places on the starboard side, rising from 0 (trailing edge) to 0.5 (nose).</param>
    /// <param name="arcSteps">Steps of the arc at each trailing edge corner, at least 1.</param>
    public RingTable(Blade blade, double[] places, int arcSteps)
    {
        (_sidePoints, _arcSteps) = (places.Length, arcSteps);
        Count = 2 * _sidePoints - 1 + 2 * arcSteps;
        _at = new(blade, places);
        _before = new(blade, [.. places.Select(u => Math.Max(u - TangentStep, 0))]);
        _after = new(blade, [.. places.Select((u, i) => i == 0 ? EdgeStep : Math.Min(u + TangentStep, 0.5))]);
    }

    /// <summary>Points of a ring.</summary>
    public int Count { get; }

    /// <summary>Place of the starboard corner, behind its arc.</summary>
    public int StarboardCorner => _arcSteps;

    /// <summary>Place of the nose.</summary>
    public int Nose => Count / 2;

    /// <summary>Place of the port corner, ahead of its arc.</summary>
    public int PortCorner => Count - 1 - _arcSteps;

    /// <summary>Fills one ring.</summary>
    /// <param name="frame">Section at the depth.</param>
    /// <param name="offset">How far the ring is moved out square to the section, metres.</param>
    /// <param name="points">Points: X aft, Y to starboard; length <see cref="Count"/>.</param>
    /// <param name="normals">Outward unit normals in the ring's plane.</param>
    public void Fill(in BladeFrame frame, double offset, Span<Point2> points, Span<Point2> normals)
    {
        for (int i = 0; i < _sidePoints; i++)
        {
            int starboard = _arcSteps + i, port = Count - 1 - starboard;
            (points[starboard], points[port]) = _at.Pair(frame, i);
            (Point2 upBefore, Point2 downBefore) = _before.Pair(frame, i);
            if (starboard == port)
            {
                normals[starboard] = Outward(downBefore - upBefore);
                continue;
            }

            (Point2 upAfter, Point2 downAfter) = _after.Pair(frame, i);
            normals[starboard] = Outward(upAfter - upBefore);
            normals[port] = Outward(downBefore - downAfter);
        }

        FillArcs(frame, points, normals);
        for (int j = 0; j < Count && offset > 0; j++)
            points[j] += offset * normals[j];
    }

    /// <summary>Right of the direction of travel: outside, as a ring runs counter-clockwise with x to the right and z up.</summary>
    private static Point2 Outward(Point2 tangent)
    {
        double length = tangent.Length;
        return length > 0 ? new(tangent.Y / length, -tangent.X / length) : default;
    }

    private void FillArcs(in BladeFrame frame, Span<Point2> points, Span<Point2> normals)
    {
        Point2 aft = frame.EdgeNormal(_at.Edge(frame));
        int star = StarboardCorner, port = PortCorner;
        double toStarboard = Math.Atan2(aft.Cross(normals[star]), aft.Dot(normals[star]));
        double toPort = Math.Atan2(aft.Cross(normals[port]), aft.Dot(normals[port]));
        for (int i = 0; i < _arcSteps; i++)
        {
            double share = (double)i / _arcSteps;
            points[i] = points[star];
            points[Count - 1 - i] = points[port];
            normals[i] = Turned(aft, share * toStarboard);
            normals[Count - 1 - i] = Turned(aft, share * toPort);
        }
    }

    private static Point2 Turned(Point2 v, double angle)
    {
        (double sine, double cosine) = Math.SinCos(angle);
        return new(v.X * cosine - v.Y * sine, v.X * sine + v.Y * cosine);
    }

    /// <summary>The forms' ordinates at a list of places.</summary>
    private sealed class Places
    {
        private readonly double[] _stations;
        private readonly FormOrdinates[] _ordinates;

        public Places(Blade blade, double[] places)
        {
            _stations = [.. places.Select(SectionGeometry.Station)];
            _ordinates = new FormOrdinates[blade.Forms.Length * places.Length];
            for (int k = 0; k < blade.Forms.Length; k++)
                for (int i = 0; i < places.Length; i++)
                    _ordinates[k * places.Length + i] = blade.Forms[k].At(_stations[i]);
        }

        public FormOrdinates Edge(in BladeFrame frame) => Blend(frame, 0);

        public (Point2 Starboard, Point2 Port) Pair(in BladeFrame frame, int i)
        {
            FormOrdinates here = Blend(frame, i);
            return (frame.Point(_stations[i], here, 1), frame.Point(_stations[i], here, -1));
        }

        private FormOrdinates Blend(in BladeFrame frame, int i)
        {
            int at = frame.Form * _stations.Length + i;
            return frame.Weight > 0 ? FormOrdinates.Mix(_ordinates[at], _ordinates[at + _stations.Length], frame.Weight) : _ordinates[at];
        }
    }
}
