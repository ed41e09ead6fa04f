using Finwright.Numerics;
using MathNet.Numerics.Integration;

namespace Finwright.Strength.Plates;

/// <summary>A fin as a plate held at its root, factorised once and ready for any load.</summary>
/// <remarks>
/// Reissner-Mindlin plate (Reissner 1945, Mindlin 1951; from memory) of varying, layered thickness on the planform, in nine-node elements free of locking (<see cref="PlateOptions"/> says how many). Rods are let in as
/// beams that bend and twist with the plate: (E_r − E) (I + A z²) on the curvature along the rod, (G_r − G) J on the twist along it, z from the plate's neutral surface; this takes the bond as perfect and, for a
/// rod off the mean surface, is an upper bound, since the sheet beside it cannot stretch freely.
/// Limits: small deflections (look at <see cref="PlateSolution.DeflectionShare"/>), elastic, flat mean surface, thickness up to about a tenth of the span; no local stress at holes, bolts or rod ends.
/// Immutable: several threads may use it at once.
/// </remarks>
public sealed class PlateModel
{
    private readonly PlateAssembly _assembly;
    private readonly BandMatrix _stiffness;
    private readonly BandMatrix _held;
    private readonly BandCholesky? _factor;
    private readonly int _first;

    private PlateModel(PlateAssembly assembly, StiffnessFactors factors)
    {
        (_assembly, Factors) = (assembly, factors);
        _stiffness = new(assembly.Order, assembly.Wall.Bandwidth);
        _stiffness.Add(assembly.Wall, factors.Wall);
        _stiffness.Add(assembly.Core, factors.Core);
        if (assembly.Rods is { } rods)
            _stiffness.Add(rods, factors.Rod);
        if (assembly is { Springs: { } springs, BendingSprings: { } bending })
        {
            _held = new(assembly.Order, _stiffness.Bandwidth);
            _held.Add(_stiffness, 1);
            _held.Add(springs, 1);
            _held.Add(bending, factors.Root);
        }
        else
        {
            _first = assembly.RootUnknowns;
            _held = _stiffness.Trailing(_first);
        }

        _factor = BandCholesky.TryFactor(_held);
    }

    /// <summary>The fin.</summary>
    public PlateFin Fin => _assembly.Fin;

    /// <summary>How it is divided.</summary>
    public PlateOptions Options => _assembly.Options;

    /// <summary>The factors on its stiffness.</summary>
    public StiffnessFactors Factors { get; }

    /// <summary>Whether loads can be solved for: <see cref="PlateStatus.Solved"/> or <see cref="PlateStatus.NotHeld"/>.</summary>
    public PlateStatus Status => _factor is null ? PlateStatus.NotHeld : PlateStatus.Solved;

    /// <summary>Depth where the mesh ends: the span, or less where the edges meet at the tip.</summary>
    public double MeshEnd => _assembly.Mesh.End;

    /// <summary>Area of the planform down to <see cref="MeshEnd"/>, m².</summary>
    public double Area => _assembly.Area;

    /// <summary>Mass and its centre.</summary>
    public PlateMass MassProperties => _assembly.MassProperties;

    /// <summary>Length of each rod that lies in the blade, metres.</summary>
    public IReadOnlyList<double> RodLengths => [.. _assembly.Paths.Select(path => path.Inside)];

    internal PlateAssembly Assembly => _assembly;

    internal BandMatrix Stiffness => _stiffness;

    /// <summary>Prepares a fin: lays the mesh, assembles part by part and factorises.</summary>
    /// <param name="fin">The fin.</param>
    /// <param name="options">How it is divided; null for the usual.</param>
    /// <exception cref="ArgumentException">A length, edge, thickness, modulus or spring that cannot be a fin; the message says where.</exception>
    public static PlateModel Create(PlateFin fin, PlateOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(fin);
        options ??= new();
        PlateOptions.Check(options);
        PlateChecks.Check(fin);
        return new(new(fin, options), StiffnessFactors.One);
    }

    /// <summary>The same mesh with other factors on the parts' stiffness; their masses stay.</summary>
    /// <param name="factors">Each above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A factor is not positive.</exception>
    public PlateModel With(StiffnessFactors factors)
    {
        ArgumentNullException.ThrowIfNull(factors);
        Require.Positive(factors.Wall);
        Require.Positive(factors.Core);
        Require.Positive(factors.Rod);
        Require.Positive(factors.Root);
        return new(_assembly, factors);
    }

    /// <summary>Deflection under point loads.</summary>
    /// <param name="loads">A load off the mesh acts on the nearest edge (along the span to the end of the mesh, then along the chord) with its moment.</param>
    /// <exception cref="ArgumentException">A load is not finite.</exception>
    public PlateSolution Solve(IReadOnlyList<PlateLoad> loads)
    {
        ArgumentNullException.ThrowIfNull(loads);
        double[] forces = new double[_assembly.Order];
        foreach (PlateLoad load in loads)
            AddLoad(load, forces);
        return Solve(forces);
    }

    /// <summary>Deflection under a pressure.</summary>
    /// <param name="pressure">Pa along z on the planform, at x and depth.</param>
    /// <exception cref="ArgumentException">A pressure is not finite.</exception>
    public PlateSolution Solve(Func<double, double, double> pressure)
    {
        ArgumentNullException.ThrowIfNull(pressure);
        return Solve(Forces(pressure));
    }

    /// <summary>Deflection under point loads and a pressure together.</summary>
    public PlateSolution Solve(IReadOnlyList<PlateLoad> loads, Func<double, double, double> pressure)
    {
        ArgumentNullException.ThrowIfNull(loads);
        ArgumentNullException.ThrowIfNull(pressure);
        double[] forces = Forces(pressure);
        foreach (PlateLoad load in loads)
            AddLoad(load, forces);
        return Solve(forces);
    }

    /// <summary>How the blade gives at places under sets of loads: one row a set, one column a place.</summary>
    /// <param name="sets">Sets of loads.</param>
    /// <param name="places">Where deflection and slope are wanted.</param>
    /// <returns>Deflections (metres) and slopes dw/dx (radians), row-major, sets × places; and the worst status.</returns>
    public PlateFlexibility Flexibility(IReadOnlyList<IReadOnlyList<PlateLoad>> sets, IReadOnlyList<(double X, double Y)> places)
    {
        ArgumentNullException.ThrowIfNull(sets);
        ArgumentNullException.ThrowIfNull(places);
        double[] deflections = new double[sets.Count * places.Count], slopes = new double[sets.Count * places.Count];
        PlateStatus status = Status;
        for (int s = 0; s < sets.Count; s++)
        {
            PlateSolution solution = Solve(sets[s]);
            if (solution.Status is not PlateStatus.Solved)
                status = solution.Status;
            for (int p = 0; p < places.Count; p++)
            {
                (double x, double y) = places[p];
                (deflections[s * places.Count + p], slopes[s * places.Count + p]) = (solution.Deflection(x, y), solution.SlopeX(x, y));
            }
        }

        return new(status, deflections, slopes, sets.Count, places.Count);
    }

    /// <summary>The first natural frequencies in air, with their shapes.</summary>
    /// <param name="count">How many, 1 to 20; and no more than a sixth of the mesh's unknowns.</param>
    /// <returns>Frequencies in rising order; none when the plate is not held.</returns>
    public PlateModes Modes(int count)
    {
        Require.Between(count, 1, Math.Min(20, _held.Order / SubspaceIteration.LeastUnknowns));
        if (_factor is null)
            return new(PlateStatus.NotHeld, [], []);
        BandMatrix mass = _first is 0 ? _assembly.Mass : _assembly.Mass.Trailing(_first);
        SubspaceResult result = SubspaceIteration.Solve(_factor, _held, mass, count);
        double[] frequencies = new double[count];
        Func<double, double, double>[] shapes = new Func<double, double, double>[count];
        for (int m = 0; m < count; m++)
        {
            frequencies[m] = Math.Sqrt(result.Values[m]);
            double[] full = new double[_assembly.Order];
            result.Vectors[m].CopyTo(full, _first);
            PlateField field = new(_assembly.Mesh, full);
            shapes[m] = field.Deflection;
        }

        return new(result.Converged ? PlateStatus.Solved : PlateStatus.NotConverged, frequencies, shapes);
    }

    private PlateSolution Solve(double[] forces)
    {
        double[] unknowns = new double[_assembly.Order];
        if (_factor is not null)
        {
            Span<double> held = unknowns.AsSpan(_first);
            ReadOnlySpan<double> load = forces.AsSpan(_first);
            load.CopyTo(held);
            _factor.Solve(held);

            // One step of refinement takes the rounding of thin places out.
            double[] rest = new double[held.Length];
            _held.Multiply(held, rest);
            for (int i = 0; i < rest.Length; i++)
                rest[i] = load[i] - rest[i];
            _factor.Solve(rest);
            for (int i = 0; i < rest.Length; i++)
                held[i] += rest[i];
        }

        return new(this, unknowns, forces);
    }

    private void AddLoad(PlateLoad load, double[] forces)
    {
        Require.Finite(load.X);
        Require.Finite(load.Y);
        Require.Finite(load.Force);
        MeshPlace place = _assembly.Mesh.Find(load.X, load.Y);
        Span<double> n = stackalloc double[QuadraticElement.Nodes];
        QuadraticElement.Shape(place.Xi, place.Eta, n);
        for (int k = 0; k < n.Length; k++)
        {
            int at = 3 * _assembly.Mesh.Node(place.Element, k);
            forces[at] += load.Force * n[k];
            forces[at + 1] += load.Force * place.OffsetX * n[k];
            forces[at + 2] += load.Force * place.OffsetY * n[k];
        }
    }

    private double[] Forces(Func<double, double, double> pressure)
    {
        const int Points = 4;
        double[] forces = new double[_assembly.Order];
        GaussLegendreRule rule = new(-1, 1, Points);
        QuadraticElement element = new();
        for (int e = 0; e < _assembly.Mesh.ChordElements * _assembly.Mesh.SpanElements; e++)
        {
            element.Take(_assembly.Mesh, e);
            for (int q = 0; q < Points * Points; q++)
            {
                element.At(rule.Abscissas[q % Points], rule.Abscissas[q / Points]);
                double force = Require.Finite(pressure(element.X, element.Y)) * element.Area * rule.Weights[q % Points] * rule.Weights[q / Points];
                for (int k = 0; k < QuadraticElement.Nodes; k++)
                    forces[3 * _assembly.Mesh.Node(e, k)] += force * element.N[k];
            }
        }

        return forces;
    }
}

/// <summary>Mass of a blade and its centre.</summary>
/// <param name="Mass">kg.</param>
/// <param name="X">Centre, metres aft.</param>
/// <param name="Y">Depth of the centre, metres.</param>
/// <param name="Z">Height of the centre over the mean surface, metres.</param>
public readonly record struct PlateMass(double Mass, double X, double Y, double Z);

/// <summary>Deflections and slopes at places under sets of loads.</summary>
/// <param name="Status">The worst of the solutions.</param>
/// <param name="Deflections">Metres, sets × places, row-major.</param>
/// <param name="SlopesX">dw/dx, radians, the same way.</param>
/// <param name="Sets">Number of sets.</param>
/// <param name="Places">Number of places.</param>
public sealed record PlateFlexibility(PlateStatus Status, IReadOnlyList<double> Deflections, IReadOnlyList<double> SlopesX, int Sets, int Places);

/// <summary>Natural frequencies and shapes of a plate in air.</summary>
/// <param name="Status">Whether they have settled.</param>
/// <param name="AngularFrequencies">rad/s, rising.</param>
/// <param name="Shapes">Deflection at x and depth for each, of unit modal mass: ∫ρh w² dA with the rotary part = 1 kg m²; beyond the edges carried on straight.</param>
public sealed record PlateModes(PlateStatus Status, IReadOnlyList<double> AngularFrequencies, IReadOnlyList<Func<double, double, double>> Shapes);
