namespace Finwright.Geometry.Solids;

/// <summary>
/// A solid described as data: what to build, not how. A kernel turns it into a mesh. Expressions are immutable and may
/// share parts; a shared part is evaluated once per call.
/// </summary>
/// <remarks>Kept as data so that a kernel that ran out of memory can be thrown away and the work replayed on a new one.</remarks>
public abstract record SolidExpression
{
    /// <summary>This solid and others together.</summary>
    public SolidExpression And(params IReadOnlyList<SolidExpression> others) => others.Count == 0 ? this : new UnionSolid([this, .. others]);

    /// <summary>This solid without the others.</summary>
    public SolidExpression Without(params IReadOnlyList<SolidExpression> tools) => tools.Count == 0 ? this : new DifferenceSolid(this, tools);

    /// <summary>What this solid and another have in common.</summary>
    public SolidExpression Within(SolidExpression other) => new IntersectionSolid([this, other]);

    /// <summary>This solid moved.</summary>
    public SolidExpression Placed(Placement placement) => new PlacedSolid(this, placement);

    /// <summary>The part of this solid on the side that <paramref name="normal"/> points to.</summary>
    /// <param name="normal">Unit normal of the plane.</param>
    /// <param name="offset">Distance of the plane from the origin along the normal, metres.</param>
    public SolidExpression TrimmedBy(Point3 normal, double offset) => new TrimmedSolid(this, normal, offset);
}

/// <summary>A closed mesh.</summary>
/// <param name="Mesh">Closed, outward-facing mesh, metres.</param>
public sealed record MeshSolid(TriangleMesh Mesh) : SolidExpression;

/// <summary>A prism: polygons in the x–y plane drawn out along z from 0 to <paramref name="Height"/>.</summary>
/// <param name="Rings">Outer rings counter-clockwise, holes clockwise; at least three points each, not crossing.</param>
/// <param name="Height">Height along z, metres, positive.</param>
public sealed record PrismSolid(IReadOnlyList<IReadOnlyList<Point2>> Rings, double Height) : SolidExpression;

/// <summary>Solids joined.</summary>
/// <param name="Solids">At least one.</param>
public sealed record UnionSolid(IReadOnlyList<SolidExpression> Solids) : SolidExpression;

/// <summary>A solid less others.</summary>
/// <param name="From">What is cut.</param>
/// <param name="Tools">What is taken away.</param>
public sealed record DifferenceSolid(SolidExpression From, IReadOnlyList<SolidExpression> Tools) : SolidExpression;

/// <summary>What solids have in common.</summary>
/// <param name="Solids">At least one.</param>
public sealed record IntersectionSolid(IReadOnlyList<SolidExpression> Solids) : SolidExpression;

/// <summary>A solid moved or turned.</summary>
/// <param name="Solid">What is moved.</param>
/// <param name="Placement">How.</param>
public sealed record PlacedSolid(SolidExpression Solid, Placement Placement) : SolidExpression;

/// <summary>The part of a solid on one side of a plane.</summary>
/// <param name="Solid">What is cut.</param>
/// <param name="Normal">Unit normal; the side it points to is kept.</param>
/// <param name="Offset">Distance of the plane from the origin along the normal, metres.</param>
public sealed record TrimmedSolid(SolidExpression Solid, Point3 Normal, double Offset) : SolidExpression;
