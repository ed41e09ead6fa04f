using Finwright.Numerics;

namespace Finwright.Strength.Beams;

/// <summary>The blade as a cantilever along its line of shear centres: a second opinion beside the plate.</summary>
/// <remarks>
/// Held at its root, so that force and moment at any depth follow from the loads below it and the shape from integrating strains along the axis (Timoshenko's beam: bending, shear;
/// Saint-Venant's torsion). The axis may be swept: moments are split along and across it, and its bending then turns the level sections.
/// Limits: small deflections; the root counts as clamped square to the axis, while the blade is clamped along the hull; warping held back at the root is left out, which makes a short
/// blade too soft in twist; chords that bend are left out. Good for slender blades, a rough guide for a short wide one.
/// </remarks>
public sealed class BeamModel
{
    private readonly BeamStation[] _stations;
    private readonly BeamCut _cut;

    private BeamModel(BeamStation[] stations, BeamCut cut) => (_stations, _cut) = (stations, cut);

    /// <summary>Depth at which the beam is held, m.</summary>
    public double Root => _stations[0].Y;

    /// <summary>Depth at which it ends, m.</summary>
    public double Tip => _stations[^1].Y;

    /// <summary>Makes the beam.</summary>
    /// <param name="stations">From the root down, at least two, depths rising.</param>
    /// <param name="cut">How the sections were cut.</param>
    /// <exception cref="ArgumentException">Too few stations, depths that do not rise, or stiffnesses that are not positive.</exception>
    public static BeamModel Create(IReadOnlyList<BeamStation> stations, BeamCut cut = BeamCut.Level)
    {
        ArgumentNullException.ThrowIfNull(stations);
        if (stations.Count < 2)
            throw new ArgumentException("A beam needs at least two stations.", nameof(stations));
        for (int i = 0; i < stations.Count; i++)
        {
            BeamStation station = stations[i];
            Require.Finite(station.Y);
            Require.Finite(station.ShearCentre);
            Require.Positive(station.BendingRigidity);
            Require.Positive(station.TorsionRigidity);
            Require.Positive(station.ShearStiffness);
            if (i > 0 && !(station.Y > stations[i - 1].Y))
                throw new ArgumentException($"Station {i} at {station.Y} m does not lie below the one before it at {stations[i - 1].Y} m.", nameof(stations));
        }

        return new([.. stations], cut);
    }

    /// <summary>x of the line of shear centres at a depth, m.</summary>
    public double AxisX(double y)
    {
        int i = Segment(y);
        double share = (y - _stations[i].Y) / (_stations[i + 1].Y - _stations[i].Y);
        return _stations[i].ShearCentre * (1 - share) + _stations[i + 1].ShearCentre * share;
    }

    /// <summary>The beam under loads.</summary>
    /// <param name="loads">Depths between root and tip; none for the unloaded beam.</param>
    public BeamShape Solve(IReadOnlyList<BeamLoad> loads)
    {
        ArgumentNullException.ThrowIfNull(loads);
        foreach (BeamLoad load in loads)
        {
            Require.Between(load.Y, Root, Tip);
            Require.Finite(load.X + load.Force + load.MomentX + load.MomentY);
        }

        double[] depths = [.. _stations.Select(s => s.Y).Concat(loads.Select(load => load.Y)).Order().Distinct()];
        BeamLoad[] upwards = [.. loads.OrderByDescending(load => load.Y)];
        int nodes = depths.Length;
        // Sums over the loads below each cell: force, its moments about the origin.
        double[] force = new double[nodes], momentX = new double[nodes], momentY = new double[nodes];
        int next = 0;
        double f = 0, mx = 0, my = 0;
        for (int i = nodes - 2; i >= 0; i--)
        {
            for (; next < upwards.Length && upwards[next].Y > depths[i]; next++)
            {
                BeamLoad load = upwards[next];
                f += load.Force;
                mx += load.Force * load.Y + load.MomentX;
                my += load.MomentY - load.Force * load.X;
            }

            (force[i], momentX[i], momentY[i]) = (f, mx, my);
        }

        return Integrate(depths, force, momentX, momentY);
    }

    /// <summary>Twist at depths for each of some loads alone.</summary>
    /// <param name="loads">The loads, one at a time.</param>
    /// <param name="depths">Where the twist is read, m.</param>
    /// <returns>Row by row: one row a depth, one column a load; radians, nose to starboard.</returns>
    public double[] TwistFlexibility(IReadOnlyList<BeamLoad> loads, IReadOnlyList<double> depths)
    {
        ArgumentNullException.ThrowIfNull(loads);
        ArgumentNullException.ThrowIfNull(depths);
        double[] flexibility = new double[loads.Count * depths.Count];
        for (int j = 0; j < loads.Count; j++)
        {
            BeamShape shape = Solve([loads[j], .. depths.Select(y => new BeamLoad(0, y, 0))]);
            for (int i = 0; i < depths.Count; i++)
                flexibility[i * loads.Count + j] = shape.TwistAt(depths[i]);
        }

        return flexibility;
    }

    private BeamShape Integrate(double[] depths, double[] force, double[] momentX, double[] momentY)
    {
        int nodes = depths.Length;
        double[] axis = new double[nodes], deflection = new double[nodes], turnX = new double[nodes], turnY = new double[nodes], shearSlope = new double[nodes];
        axis[0] = AxisX(depths[0]);
        for (int i = 0; i + 1 < nodes; i++)
        {
            axis[i + 1] = AxisX(depths[i + 1]);
            double height = depths[i + 1] - depths[i], run = axis[i + 1] - axis[i], length = double.Hypot(height, run);
            double along = run / length, down = height / length;
            double stiffer = _cut is BeamCut.Level ? down : 1;
            int segment = Segment(0.5 * (depths[i] + depths[i + 1]));
            BeamStation a = _stations[segment], b = _stations[segment + 1];
            double sumX = 0, sumY = 0, carried = 0, sheared = 0;
            for (int p = 0; p < RigidityCourse.Places.Length; p++)
            {
                double share = RigidityCourse.Places[p], y = depths[i] + share * height, x = axis[i] + share * run, weight = RigidityCourse.Weights[p] * length;
                double place = (y - a.Y) / (b.Y - a.Y);
                double mx = momentX[i] - y * force[i], my = momentY[i] + x * force[i];
                double bend = (mx * down - my * along) / (stiffer * RigidityCourse.OfFourthPower(a.BendingRigidity, b.BendingRigidity, place));
                double twist = (mx * along + my * down) / (stiffer * RigidityCourse.OfFourthPower(a.TorsionRigidity, b.TorsionRigidity, place));
                sumX += weight * (bend * down + twist * along);
                sumY += weight * (twist * down - bend * along);
                carried += weight * (1 - share) * length * bend;
                sheared += weight * force[i] / (stiffer * RigidityCourse.OfSquare(a.ShearStiffness, b.ShearStiffness, place));
            }

            deflection[i + 1] = deflection[i] + length * (turnX[i] * down - turnY[i] * along) + carried + sheared;
            (turnX[i + 1], turnY[i + 1]) = (turnX[i] + sumX, turnY[i] + sumY);
            shearSlope[i] = sheared / height;
        }

        foreach (double value in deflection)
            Require.Finite(value);
        return new(depths, axis, deflection, turnX, turnY, shearSlope, force[0], momentX[0] - depths[0] * force[0], momentY[0] + axis[0] * force[0]);
    }

    private int Segment(double y)
    {
        int i = 0;
        while (i < _stations.Length - 2 && y > _stations[i + 1].Y)
            i++;
        return i;
    }
}
