using Finwright.Numerics;

namespace Finwright.Strength.Joints;

/// <summary>
/// Two parts that meet on a flat face, pressed together by bolts or rods: the face carries pressure but no pull, so that it opens under moment,
/// and what holds it then is the bolts with the part of the face that still presses.
/// </summary>
/// <remarks>
/// <para>The parts close towards each other by w = a + b x + c z: the face stays plane, as in the theory of cracked reinforced sections. Pressure is
/// w E / L where w is positive, nothing elsewhere; E is the softer part's modulus and L the effective gauge length, the depth over which the parts
/// are squeezed. Bolts pull by their preload plus their stiffness times what they are stretched from the tightened state. The contact is clipped
/// from the footprint exactly; the energy is convex and its gradient continuous, so Newton with a line search ends at the one equilibrium.</para>
/// <para>Limits: small rotation, elastic everywhere, no friction or shear, faces that fit. A print's faces are not plane to a hundredth: the first turn of a
/// real joint is softer. Estimate; makers' data and a test on land go before it.</para>
/// <para>Several threads may ask it; they take turns, as it holds its work space.</para>
/// </remarks>
public sealed class CrackedSection
{
    // Newton on pieces of a quadratic ends after as many steps as pieces change: a few, some tens on a hard face that presses only on its edge.
    private const int MostIterations = 200;

    // Balance left over beside the loads; a few times rounding.
    private const double Balanced = 1e-12;

    // Added to the diagonal beside the closed joint's own stiffness: keeps a step finite where nothing resists, and is too small to shift the answer.
    private const double Whisper = 1e-11;

    // Movement beside that of the same joint glued, or of one bolt under the whole load, from which we say that nothing holds it.
    private const double FallsOpen = 1e6;

    // Least part of the fall that a step promised, at which it is taken (Armijo).
    private const double TakenFall = 1e-4;

    private const int MostHalvings = 40;

    private readonly Lock _turn = new();
    private readonly Footprint _footprint;
    private readonly Reinforcement[] _ties;
    private readonly double[] _tieX, _tieZ;
    private readonly double _foundation;
    private readonly double? _bondStrength;
    private readonly double _size;
    private readonly double[] _whole = new double[9];
    private readonly double[] _matrix = new double[9], _right = new double[3];
    private readonly DenseLu _solver = new(3);
    private readonly double[] _tightened = new double[3];
    private readonly bool _isTightened;
    private readonly FootprintPoint[] _clipped;

    /// <summary>Makes the joint and tightens it.</summary>
    /// <param name="footprint">The face.</param>
    /// <param name="contactModulus">Young's modulus of the parts square to the face, Pa; the softer one's.</param>
    /// <param name="gaugeLength">
    /// Depth over which the parts are squeezed, m, both together. Stress spreads over about the width of the face, so the width (in z) is a fair start
    /// (judgement); it moves the rotation in proportion, and pressure and opening moment hardly.
    /// </param>
    /// <param name="ties">Bolts and rods.</param>
    /// <param name="bondStrength">Strength of the bond of the faces in tension, Pa; null without a bond.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of its range.</exception>
    public CrackedSection(Footprint footprint, double contactModulus, double gaugeLength, IReadOnlyList<Reinforcement> ties, double? bondStrength = null)
    {
        ArgumentNullException.ThrowIfNull(footprint);
        ArgumentNullException.ThrowIfNull(ties);
        Require.Positive(contactModulus);
        Require.Positive(gaugeLength);
        if (bondStrength is double strength)
            Require.Positive(strength, nameof(bondStrength));
        _footprint = footprint;
        _foundation = contactModulus / gaugeLength;
        _bondStrength = bondStrength;
        _ties = [.. ties];
        _size = footprint.Reach;
        _clipped = new FootprintPoint[2 * footprint.Rings.Max(ring => ring.Length)];
        foreach (Reinforcement tie in _ties)
            tie.Check();
        _tieX = [.. _ties.Select(t => (t.X - footprint.Centroid.X) / _size)];
        _tieZ = [.. _ties.Select(t => (t.Z - footprint.Centroid.Z) / _size)];
        AreaMoments moments = default;
        foreach (FootprintPoint[] ring in footprint.Rings)
            moments = moments.Plus(ring);
        SetContact(_whole, moments);
        _isTightened = Tighten();
    }

    /// <summary>How much the tightened joint closes more per metre along x and along z; not even when the bolts are off centre.</summary>
    internal (double AlongX, double AlongZ) TightenedTilt => (_tightened[1] / _size, _tightened[2] / _size);

    /// <summary>Solves the joint under a load.</summary>
    /// <param name="load">Load about the footprint's centroid.</param>
    /// <exception cref="ArgumentOutOfRangeException">A load is not finite.</exception>
    public JointState Solve(JointLoad load)
    {
        using (_turn.EnterScope())
            return SolveHere(load);
    }

    /// <summary>The same joint when its bond has given; itself when it has none.</summary>
    public CrackedSection WithoutBond() => _bondStrength is null ? this : new(_footprint, _foundation, 1, _ties);

    private JointState SolveHere(JointLoad load)
    {
        Span<double> forces = stackalloc double[3];
        Forces(load, forces);
        if (!_isTightened)
            return new() { Status = JointStatus.NotHeld };
        Span<double> glued = stackalloc double[3];
        double pull = Glue(forces, glued);
        if (_bondStrength is double strength && pull <= strength)
            return Describe(load, forces, glued, 0, bonded: true, pull);

        Span<double> w = stackalloc double[3];
        glued.CopyTo(w);
        double moved = Math.Max(Largest(glued), Largest(_tightened));
        foreach (Reinforcement tie in _ties)
            moved = Math.Max(moved, Largest(forces) / tie.Stiffness);
        (JointStatus status, int iterations) = Equilibrium(forces, w, freeTies: true, FallsOpen * moved);
        return status is JointStatus.Open ? Describe(load, forces, w, iterations, bonded: false, pull) : new() { Status = status, Iterations = iterations };
    }

    /// <summary>The load, as a multiple of the one given, at which the tightened joint first loses contact somewhere.</summary>
    /// <param name="load">Load about the footprint's centroid.</param>
    /// <returns>0 when the joint is not pressed everywhere to begin with; infinite when this load only presses.</returns>
    /// <remarks>Times the moment it is the opening moment. The joint is linear up to there; bolts that would go slack on the pressed side before that are still counted, which none with a preload does in practice.</remarks>
    public double OpeningFactor(JointLoad load)
    {
        using (_turn.EnterScope())
            return OpeningFactorHere(load);
    }

    private double OpeningFactorHere(JointLoad load)
    {
        Span<double> forces = stackalloc double[3], added = stackalloc double[3];
        Forces(load, forces);
        if (!_isTightened)
            return 0;
        Added(forces, added);
        double factor = double.PositiveInfinity;
        foreach (FootprintPoint corner in _footprint.Rings[0])
        {
            double before = At(_tightened, corner), change = At(added, corner);
            if (before <= Balanced * Largest(_tightened))
                return 0;
            if (change < 0)
                factor = Math.Min(factor, before / -change);
        }

        return factor;
    }

    /// <summary>By how much all preloads must be multiplied for the joint to stay closed under a load.</summary>
    /// <param name="load">Load about the footprint's centroid.</param>
    /// <returns>Below 1 when there is more preload than needed; infinite when no preload of these bolts does it.</returns>
    public double PreloadFactorToStayClosed(JointLoad load)
    {
        double opening = OpeningFactor(load);
        return opening > 0 ? 1 / opening : double.PositiveInfinity;
    }

    // Load on the three ways to move: closing, tilting along x, tilting along z; the tilts times the size of the face.
    private void Forces(JointLoad load, Span<double> forces)
    {
        forces[0] = -Require.Finite(load.AxialForce, nameof(load));
        forces[1] = -Require.Finite(load.MomentZ, nameof(load)) / _size;
        forces[2] = Require.Finite(load.MomentX, nameof(load)) / _size;
    }

    /// <summary>The tightened state: the bolts pull with their preloads, whatever the parts do.</summary>
    private bool Tighten()
    {
        Span<double> pulls = stackalloc double[3];
        pulls.Clear();
        for (int i = 0; i < _ties.Length; i++)
        {
            pulls[0] += _ties[i].Preload;
            pulls[1] += _ties[i].Preload * _tieX[i];
            pulls[2] += _ties[i].Preload * _tieZ[i];
        }

        if (Largest(pulls) is 0)
            return true;
        _whole.CopyTo(_matrix, 0);
        Step(pulls, _tightened);
        return Equilibrium(pulls, _tightened, freeTies: false, FallsOpen * Largest(_tightened)).Status is JointStatus.Open;
    }

    /// <summary>What a load adds while everything presses or holds.</summary>
    private void Added(ReadOnlySpan<double> forces, Span<double> added)
    {
        _whole.CopyTo(_matrix, 0);
        for (int i = 0; i < _ties.Length; i++)
            AddTie(_matrix, i, _ties[i].Stiffness);
        Step(forces, added);
    }

    /// <summary>The joint as if it were whole; returns the greatest pull on the face.</summary>
    private double Glue(ReadOnlySpan<double> forces, Span<double> w)
    {
        Added(forces, w);
        double least = 0;
        for (int i = 0; i < 3; i++)
            w[i] += _tightened[i];
        foreach (FootprintPoint corner in _footprint.Rings[0])
            least = Math.Min(least, At(w, corner));
        return -_foundation * least;
    }

    private (JointStatus Status, int Iterations) Equilibrium(ReadOnlySpan<double> forces, Span<double> w, bool freeTies, double farthest)
    {
        Span<double> step = stackalloc double[3], trial = stackalloc double[3], left = stackalloc double[3];
        double energy = Evaluate(forces, w, freeTies, out double scale);
        for (int iteration = 0; iteration < MostIterations; iteration++)
        {
            if (Largest(_right) <= Balanced * scale)
                return (JointStatus.Open, iteration);
            if (Largest(w) > farthest)
                return (JointStatus.NotHeld, iteration);
            _right.CopyTo(left);
            for (int i = 0; i < 3; i++)
                _matrix[4 * i] += Whisper * _whole[4 * i];
            if (!Step(left, step))
                return (JointStatus.NotConverged, iteration);

            double promised = step[0] * left[0] + step[1] * left[1] + step[2] * left[2], length = 1;
            for (int halving = 0; ; halving++)
            {
                for (int i = 0; i < 3; i++)
                    trial[i] = w[i] + length * step[i];
                double there = Evaluate(forces, trial, freeTies, out scale);
                // Near the end the energy no longer tells steps apart; the balance does.
                if (there <= energy - TakenFall * length * promised || Largest(_right) <= Math.Max(0.5 * Largest(left), Balanced * scale))
                {
                    energy = there;
                    break;
                }

                if (halving == MostHalvings)
                    return (JointStatus.NotConverged, iteration);
                length /= 2;
            }

            trial.CopyTo(w);
        }

        return (Largest(w) > farthest ? JointStatus.NotHeld : JointStatus.NotConverged, MostIterations);
    }

    /// <summary>Energy, forces that do not cancel (into the right-hand side) and stiffness (into the matrix) at a state.</summary>
    private double Evaluate(ReadOnlySpan<double> forces, ReadOnlySpan<double> w, bool freeTies, out double scale)
    {
        Span<double> resisting = stackalloc double[3];
        SetContact(_matrix, Contact(w));
        Multiply(_matrix, w, resisting);
        double energy = 0.5 * Dot(resisting, w);
        scale = Largest(resisting) + Largest(forces);
        for (int i = 0; freeTies && i < _ties.Length; i++)
        {
            double pull = Pull(i, w);
            scale += pull;
            AddPull(resisting, i, -pull);
            if (pull > 0 || _ties[i].CarriesCompression)
            {
                energy += 0.5 * pull * pull / _ties[i].Stiffness;
                AddTie(_matrix, i, _ties[i].Stiffness);
            }
        }

        for (int i = 0; i < 3; i++)
            _right[i] = forces[i] - resisting[i];
        return energy - Dot(forces, w);
    }

    private double Pull(int i, ReadOnlySpan<double> w)
    {
        double stretched = _tightened[0] - w[0] + (_tightened[1] - w[1]) * _tieX[i] + (_tightened[2] - w[2]) * _tieZ[i];
        double pull = _ties[i].Preload + _ties[i].Stiffness * stretched;
        return _ties[i].CarriesCompression ? pull : Math.Max(pull, 0);
    }

    private void AddPull(Span<double> forces, int i, double pull)
    {
        forces[0] += pull;
        forces[1] += pull * _tieX[i];
        forces[2] += pull * _tieZ[i];
    }

    private void AddTie(Span<double> matrix, int i, double stiffness)
    {
        double x = _tieX[i], z = _tieZ[i];
        matrix[0] += stiffness;
        matrix[1] += stiffness * x;
        matrix[2] += stiffness * z;
        matrix[3] += stiffness * x;
        matrix[4] += stiffness * x * x;
        matrix[5] += stiffness * x * z;
        matrix[6] += stiffness * z;
        matrix[7] += stiffness * x * z;
        matrix[8] += stiffness * z * z;
    }

    private void SetContact(Span<double> matrix, AreaMoments moments)
    {
        double k = _foundation, x = k * moments.FirstX / _size, z = k * moments.FirstZ / _size, xz = k * moments.SecondXZ / (_size * _size);
        matrix[0] = k * moments.Area;
        matrix[1] = matrix[3] = x;
        matrix[2] = matrix[6] = z;
        matrix[4] = k * moments.SecondXX / (_size * _size);
        matrix[5] = matrix[7] = xz;
        matrix[8] = k * moments.SecondZZ / (_size * _size);
    }

    /// <summary>Moments of the part of the face that presses.</summary>
    private AreaMoments Contact(ReadOnlySpan<double> w)
    {
        AreaMoments moments = default;
        foreach (FootprintPoint[] ring in _footprint.Rings)
            moments = moments.Plus(_clipped.AsSpan(0, Clip(ring, w)));
        return moments;
    }

    /// <summary>The part of a ring that presses, into the work space (Sutherland and Hodgman, 1974: against one line it is exact for any ring).</summary>
    private int Clip(FootprintPoint[] ring, ReadOnlySpan<double> w)
    {
        int count = 0;
        FootprintPoint from = ring[^1];
        double before = At(w, from);
        foreach (FootprintPoint to in ring)
        {
            double here = At(w, to);
            if (before >= 0 != here >= 0)
            {
                double share = before / (before - here);
                _clipped[count++] = new(from.X + share * (to.X - from.X), from.Z + share * (to.Z - from.Z));
            }

            if (here >= 0)
                _clipped[count++] = to;
            (from, before) = (to, here);
        }

        return count;
    }

    private JointState Describe(JointLoad load, ReadOnlySpan<double> forces, ReadOnlySpan<double> w, int iterations, bool bonded, double pull)
    {
        double greatest = double.NegativeInfinity, least = double.PositiveInfinity;
        FootprintPoint greatestAt = default, leastAt = default;
        foreach (FootprintPoint corner in _footprint.Rings[0])
        {
            double here = At(w, corner);
            if (here > greatest)
                (greatest, greatestAt) = (here, corner);
            if (here < least)
                (least, leastAt) = (here, corner);
        }

        bool isClosed = least >= -Balanced * Math.Max(greatest, -least);
        double residual;
        double[] tensions = new double[_ties.Length];
        if (bonded)
        {
            Span<double> added = stackalloc double[3], carried = stackalloc double[3];
            Added(forces, added);
            Multiply(_matrix, added, carried);
            for (int i = 0; i < 3; i++)
                carried[i] -= forces[i];
            residual = Largest(forces) > 0 ? Largest(carried) / Largest(forces) : 0;
        }
        else
        {
            Evaluate(forces, w, freeTies: true, out double scale);
            residual = scale > 0 ? Largest(_right) / scale : 0;
        }

        for (int i = 0; i < tensions.Length; i++)
            tensions[i] = Pull(i, w);
        double turnX = (w[2] - _tightened[2]) / _size, turnZ = -(w[1] - _tightened[1]) / _size;
        (double tangentX, double tangentZ) = Tangent();
        (double share, double length, double depth) = bonded || isClosed ? Extent([1, 0, 0]) : Extent(w);
        return new()
        {
            Status = bonded && !isClosed ? JointStatus.Bonded : isClosed ? JointStatus.Closed : JointStatus.Open,
            ContactShare = share,
            ContactLength = length,
            ContactDepth = depth,
            GreatestPressure = _foundation * Math.Max(greatest, 0),
            GreatestPressureAt = Absolute(greatestAt),
            Gap = bonded || isClosed ? 0 : -least,
            GapAt = Absolute(leastAt),
            Tensions = tensions,
            BondStress = pull,
            BondBroke = _bondStrength is not null && !bonded,
            RotationX = turnX,
            RotationZ = turnZ,
            SecantStiffnessX = turnX is 0 ? double.PositiveInfinity : load.MomentX / turnX,
            TangentStiffnessX = tangentX,
            TangentStiffnessZ = tangentZ,
            Iterations = iterations,
            Residual = residual,
        };
    }

    // From the matrix of the last evaluation: what is left of one stiffness when the other two ways to move are free.
    private (double X, double Z) Tangent()
    {
        Span<double> unit = stackalloc double[3], turn = stackalloc double[3];
        for (int i = 0; i < 3; i++)
            _matrix[4 * i] += Whisper * _whole[4 * i];
        unit[2] = 1;
        Step(unit, turn);
        double x = _size * _size / turn[2];
        unit[2] = 0;
        unit[1] = 1;
        Step(unit, turn);
        return (x, _size * _size / turn[1]);
    }

    private (double Share, double Length, double Depth) Extent(ReadOnlySpan<double> w)
    {
        double share = Contact(w).Area / _footprint.Area;
        int count = Clip(_footprint.Rings[0], w);
        if (count == 0)
            return (0, 0, 0);
        double left = double.PositiveInfinity, right = double.NegativeInfinity, low = double.PositiveInfinity, high = double.NegativeInfinity;
        foreach (FootprintPoint point in _clipped.AsSpan(0, count))
        {
            (left, right) = (Math.Min(left, point.X), Math.Max(right, point.X));
            (low, high) = (Math.Min(low, point.Z), Math.Max(high, point.Z));
        }

        return (share, right - left, high - low);
    }

    private bool Step(ReadOnlySpan<double> right, Span<double> step)
    {
        if (!_solver.Factor(_matrix))
            return false;
        _solver.Solve(right, step);
        return true;
    }

    private double At(ReadOnlySpan<double> w, FootprintPoint point) => w[0] + (w[1] * point.X + w[2] * point.Z) / _size;

    private FootprintPoint Absolute(FootprintPoint point) => new(point.X + _footprint.Centroid.X, point.Z + _footprint.Centroid.Z);

    private static void Multiply(ReadOnlySpan<double> matrix, ReadOnlySpan<double> vector, Span<double> product)
    {
        for (int i = 0; i < 3; i++)
            product[i] = Dot(matrix.Slice(3 * i, 3), vector);
    }

    private static double Dot(ReadOnlySpan<double> a, ReadOnlySpan<double> b) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

    private static double Largest(ReadOnlySpan<double> vector) => Math.Max(Math.Abs(vector[0]), Math.Max(Math.Abs(vector[1]), Math.Abs(vector[2])));
}
