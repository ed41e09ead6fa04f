namespace Finwright.Geometry.Solids;

/// <summary>Turns solid expressions into meshes, and meshes into slices. A pure function of its arguments; safe to call from any thread, one call at a time inside.</summary>
public interface ISolidKernel : IDisposable
{
    /// <summary>Evaluates expressions together, so that shared parts are built once.</summary>
    /// <param name="solids">What to build.</param>
    /// <param name="cancellation">Stops the work; the kernel stays usable.</param>
    /// <returns>One result for each expression, in order.</returns>
    /// <exception cref="SolidException">A mesh is not closed or inside out, an operation failed, or memory ran out.</exception>
    /// <exception cref="OperationCanceledException">The work was stopped.</exception>
    IReadOnlyList<SolidResult> Evaluate(IReadOnlyList<SolidExpression> solids, CancellationToken cancellation = default);

    /// <summary>Cross-sections of a solid at heights along z.</summary>
    /// <param name="solid">What to slice.</param>
    /// <param name="heights">Heights along z, metres; never exactly on a face.</param>
    /// <param name="cancellation">Stops the work; the kernel stays usable.</param>
    /// <returns>For each height its rings: outer ones counter-clockwise, holes clockwise; x and y in metres.</returns>
    /// <exception cref="SolidException">The solid cannot be built.</exception>
    IReadOnlyList<SliceRings> Slice(SolidExpression solid, IReadOnlyList<double> heights, CancellationToken cancellation = default);

    /// <summary>Areas of cross-sections along z, counted in two ways; their rings stay in the kernel.</summary>
    /// <param name="solid">What to slice.</param>
    /// <param name="heights">Heights along z, metres; never exactly on a face.</param>
    /// <param name="cancellation">Stops the work; the kernel stays usable.</param>
    /// <returns>One entry for each height, in order.</returns>
    /// <exception cref="SolidException">The solid cannot be built.</exception>
    IReadOnlyList<SliceArea> SliceAreas(SolidExpression solid, IReadOnlyList<double> heights, CancellationToken cancellation = default);
}

/// <summary>One finished solid.</summary>
/// <param name="Mesh">Closed, outward-facing mesh, metres; empty when nothing is left.</param>
/// <param name="Volume">Enclosed volume, m³.</param>
/// <param name="PieceVolumes">Volume of each connected shell, m³, largest first; a negative one is a sealed void.</param>
public sealed record SolidResult(TriangleMesh Mesh, double Volume, IReadOnlyList<double> PieceVolumes)
{
    /// <summary>Solid pieces.</summary>
    public int PieceCount => PieceVolumes.Count(v => v > 0);

    /// <summary>Voids with no way out.</summary>
    public int SealedVoidCount => PieceVolumes.Count(v => v < 0);
}

/// <summary>The rings of one slice.</summary>
/// <param name="Height">Height along z, metres.</param>
/// <param name="Rings">Outer rings counter-clockwise, holes clockwise; metres.</param>
public sealed record SliceRings(double Height, IReadOnlyList<IReadOnlyList<Point2>> Rings);

/// <summary>The area of one slice, counted in two ways that agree unless the surface runs through itself.</summary>
/// <param name="Height">Height along z, metres.</param>
/// <param name="SignedArea">Area of the rings as they were cut, m²: overlaps count twice, inside-out parts are negative.</param>
/// <param name="FilledArea">Area of the points that the rings go round at least once, m².</param>
public readonly record struct SliceArea(double Height, double SignedArea, double FilledArea);

/// <summary>A solid could not be built; the message says which operation failed and why.</summary>
public sealed class SolidException : Exception
{
    /// <summary>Creates the exception without a message.</summary>
    public SolidException()
    {
    }

    /// <summary>Creates the exception.</summary>
    /// <param name="message">Which operation failed and why.</param>
    public SolidException(string message)
        : base(message)
    {
    }

    /// <summary>Creates the exception.</summary>
    /// <param name="message">Which operation failed and why.</param>
    /// <param name="innerException">What the kernel said.</param>
    public SolidException(string message, Exception innerException)
        : base(message, innerException)
    {
    }
}
