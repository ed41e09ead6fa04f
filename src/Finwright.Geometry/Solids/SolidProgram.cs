using System.Diagnostics;
using System.Runtime.InteropServices;

namespace Finwright.Geometry.Solids;

/// <summary>How solids are combined.</summary>
internal enum Combination
{
    Union,
    Difference,
    Intersection,
}

/// <summary>One operation of a <see cref="SolidProgram"/>; operands are numbers of earlier steps, lengths millimetres.</summary>
/// <param name="Name">What it is in a message, such as "the union of 5 solids".</param>
internal abstract record SolidStep(string Name);

internal sealed record MeshStep(string Name, float[] Coordinates, uint[] Corners) : SolidStep(Name);

internal sealed record PrismStep(string Name, double[] Points, uint[] Lengths, double Height, double Area) : SolidStep(Name);

internal sealed record CombineStep(string Name, Combination How, int[] Operands) : SolidStep(Name);

internal sealed record PlaceStep(string Name, int Operand, double[] Matrix) : SolidStep(Name);

internal sealed record TrimStep(string Name, int Operand, Point3 Normal, double Offset) : SolidStep(Name);

/// <summary>
/// Expressions checked and laid out as a list of steps: a shared part once, unions and cuts of unions as one batch.
/// Plain data, so that it can be carried out again on a new engine.
/// </summary>
internal sealed class SolidProgram
{
    /// <summary>Millimetres in a metre; see <see cref="ManifoldEngine"/> for why the engine works in millimetres.</summary>
    public const double Millimetres = 1000;

    /// <summary>Farthest coordinate, metres: a slip of units is far likelier than a solid beyond it.</summary>
    private const double Farthest = 1000;

    /// <summary>How far a plane's normal may be from unit length.</summary>
    private const double UnitTolerance = 1e-6;

    /// <summary>Smallest determinant of a placement against the product of its axes: below it the solid is flattened.</summary>
    private const double FlatPlacement = 1e-9;

    private readonly Dictionary<SolidExpression, int> _uses = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<SolidExpression, int> _steps = new(ReferenceEqualityComparer.Instance);
    private readonly List<SolidStep> _list = [];
    private readonly int _triangleLimit;

    private SolidProgram(int triangleLimit) => _triangleLimit = triangleLimit;

    /// <summary>The steps; each uses only earlier ones.</summary>
    public IReadOnlyList<SolidStep> Steps => _list;

    /// <summary>For each expression the step that holds its result.</summary>
    public IReadOnlyList<int> Results { get; private set; } = [];

    /// <summary>Checks expressions and lays them out.</summary>
    /// <exception cref="SolidException">An expression cannot be built; the message says why.</exception>
    public static SolidProgram Compile(IReadOnlyList<SolidExpression> solids, int triangleLimit)
    {
        SolidProgram program = new(triangleLimit);
        program.CountUses(solids);
        foreach (SolidExpression solid in solids)
            program.Build(solid);
        program.Results = [.. solids.Select(s => program._steps[s])];
        return program;
    }

    private void CountUses(IReadOnlyList<SolidExpression> solids)
    {
        Stack<SolidExpression> pending = new(solids);
        while (pending.TryPop(out SolidExpression? solid))
        {
            if (solid is null)
                throw new SolidException("A solid is missing from an expression.");
            ref int uses = ref CollectionsMarshal.GetValueRefOrAddDefault(_uses, solid, out bool seen);
            uses++;
            if (seen)
                continue;
            foreach (SolidExpression part in Parts(solid))
                pending.Push(part);
        }
    }

    /// <summary>Walks in depth first order with a stack of its own: expressions may be nested deeper than the thread's stack allows.</summary>
    private void Build(SolidExpression root)
    {
        Stack<(SolidExpression Solid, SolidExpression[]? Operands)> pending = [];
        pending.Push((root, null));
        while (pending.TryPop(out var next))
        {
            if (_steps.ContainsKey(next.Solid))
                continue;
            if (next.Operands is { } ready)
            {
                _steps[next.Solid] = Step(next.Solid, Array.ConvertAll(ready, o => _steps[o]));
                continue;
            }

            SolidExpression[] operands = Operands(next.Solid);
            pending.Push((next.Solid, operands));
            for (int i = operands.Length - 1; i >= 0; i--)
                pending.Push((operands[i], null));
        }
    }

    private static IReadOnlyList<SolidExpression> Parts(SolidExpression solid) => solid switch
    {
        MeshSolid or PrismSolid => [],
        UnionSolid union => union.Solids,
        DifferenceSolid cut => [cut.From, .. cut.Tools],
        IntersectionSolid common => common.Solids,
        PlacedSolid placed => [placed.Solid],
        TrimmedSolid trimmed => [trimmed.Solid],
        _ => throw new SolidException($"The kernel does not know the solid {solid.GetType().Name}."),
    };

    /// <summary>What a solid is made of once unions within unions, cuts of cuts, and unions among tools are levelled.</summary>
    private SolidExpression[] Operands(SolidExpression solid)
    {
        switch (solid)
        {
            case UnionSolid union:
                return [.. Levelled(union.Solids)];
            case DifferenceSolid cut:
                List<SolidExpression> tools = [.. cut.Tools];
                SolidExpression from = cut.From;
                while (from is DifferenceSolid inner && _uses[inner] == 1)
                {
                    tools.AddRange(inner.Tools);
                    from = inner.From;
                }

                return [from, .. Levelled(tools)];
            default:
                return [.. Parts(solid)];
        }
    }

    private List<SolidExpression> Levelled(IReadOnlyList<SolidExpression> solids)
    {
        List<SolidExpression> level = [];
        Stack<SolidExpression> pending = new(solids.Reverse());
        while (pending.TryPop(out SolidExpression? solid))
            if (solid is UnionSolid union && _uses[union] == 1)
                foreach (SolidExpression part in union.Solids.Reverse())
                    pending.Push(part);
            else
                level.Add(solid);
        return level;
    }

    private int Step(SolidExpression solid, int[] operands) => solid switch
    {
        MeshSolid mesh => Add(Mesh(mesh.Mesh)),
        PrismSolid prism => Add(Prism(prism)),
        UnionSolid => Combine("union", Combination.Union, operands),
        DifferenceSolid => Combine("cut", Combination.Difference, operands),
        IntersectionSolid => Combine("intersection", Combination.Intersection, operands),
        PlacedSolid placed => Add(Place(placed.Placement, operands[0])),
        TrimmedSolid trimmed => Add(Trim(trimmed, operands[0])),
        _ => throw new UnreachableException(),
    };

    private int Add(SolidStep step)
    {
        _list.Add(step);
        return _list.Count - 1;
    }

    private int Combine(string name, Combination how, int[] operands) => operands.Length switch
    {
        0 => throw new SolidException($"The {name} of no solids is not defined; give at least one."),
        1 => operands[0],
        _ => Add(new CombineStep($"the {name} of {operands.Length} solids", how, operands)),
    };

    private MeshStep Mesh(TriangleMesh mesh)
    {
        if (mesh is null)
            throw new SolidException("A mesh is missing from an expression.");
        string name = $"the mesh of {mesh.TriangleCount} triangles";
        if (mesh.TriangleCount > _triangleLimit)
            throw new SolidException($"A mesh of {mesh.TriangleCount} triangles is more than the kernel takes ({_triangleLimit}). Use a coarser mesh.");
        if (mesh.TriangleCount == 0)
            throw new SolidException("A mesh without triangles encloses nothing.");
        IReadOnlyList<MeshDefect> defects = MeshChecks.Defects(mesh, 1);
        if (defects.Count > 0)
            throw new SolidException($"{Capital(name)} is not a closed surface: {defects[0].Message}");
        double volume = mesh.Volume();
        if (!(volume > 0))
            throw new SolidException($"{Capital(name)} is inside out or empty: its enclosed volume is {volume:g4} m³. Corners must run counter-clockwise seen from outside.");
        ReadOnlySpan<double> from = mesh.Coordinates;
        float[] coordinates = new float[from.Length];
        for (int i = 0; i < from.Length; i++)
            coordinates[i] = (float)Scaled(from[i], name);
        ReadOnlySpan<int> corners = mesh.Corners;
        uint[] triangles = new uint[corners.Length];
        for (int i = 0; i < corners.Length; i++)
            triangles[i] = (uint)corners[i];
        return new(name, coordinates, triangles);
    }

    private static PrismStep Prism(PrismSolid prism)
    {
        if (prism.Rings is not { Count: > 0 })
            throw new SolidException("A prism needs at least one ring.");
        const string Name = "the prism";
        if (!(prism.Height > 0))
            throw new SolidException($"A prism needs a height above zero; it is {prism.Height} m.");
        List<double> points = [];
        uint[] lengths = new uint[prism.Rings.Count];
        double area = 0;
        for (int r = 0; r < lengths.Length; r++)
        {
            IReadOnlyList<Point2> ring = prism.Rings[r];
            if (ring is not { Count: >= 3 })
                throw new SolidException($"Ring {r} of a prism has {ring?.Count ?? 0} points; it needs three.");
            lengths[r] = (uint)ring.Count;
            for (int i = 0; i < ring.Count; i++)
            {
                points.Add(Scaled(ring[i].X, Name));
                points.Add(Scaled(ring[i].Y, Name));
                area += (ring[i] - ring[0]).Cross(ring[(i + 1) % ring.Count] - ring[0]) / 2;
            }
        }

        if (!(area > 0))
            throw new SolidException($"The rings of a prism enclose {area:g4} m²; outer rings must run counter-clockwise.");
        return new(Name, [.. points], lengths, Scaled(prism.Height, Name), area * Millimetres * Millimetres);
    }

    private static PlaceStep Place(Placement placement, int operand)
    {
        const string Name = "a placement";
        double[] matrix = new double[16];
        ReadOnlySpan<Point3> columns = [placement.AxisX, placement.AxisY, placement.AxisZ];
        double axes = 1;
        for (int c = 0; c < 3; c++)
        {
            Point3 column = columns[c];
            axes *= column.Length;
            (matrix[4 * c], matrix[4 * c + 1], matrix[4 * c + 2]) = (column.X, column.Y, column.Z);
        }

        double determinant = placement.Determinant;
        if (!double.IsFinite(determinant) || !double.IsFinite(axes) || Math.Abs(determinant) <= FlatPlacement * axes)
            throw new SolidException($"A placement flattens the solid: its volume factor is {determinant:g4}.");
        Point3 origin = placement.Origin;
        (matrix[12], matrix[13], matrix[14], matrix[15]) = (Scaled(origin.X, Name), Scaled(origin.Y, Name), Scaled(origin.Z, Name), 1);
        return new(Name, operand, matrix);
    }

    private static TrimStep Trim(TrimmedSolid trimmed, int operand)
    {
        const string Name = "a trim";
        double length = trimmed.Normal.Length;
        if (!(Math.Abs(length - 1) <= UnitTolerance))
            throw new SolidException($"A trim plane needs a normal of unit length; its length is {length:g6}.");
        return new(Name, operand, trimmed.Normal, Scaled(trimmed.Offset, Name));
    }

    private static double Scaled(double metres, string name) =>
        Math.Abs(metres) <= Farthest
            ? metres * Millimetres
            : throw new SolidException($"{Capital(name)} reaches to {metres:g4} m; the kernel takes up to {Farthest} m. Check the units.");

    private static string Capital(string name) => string.Concat(char.ToUpperInvariant(name[0]).ToString(), name.AsSpan(1));
}
