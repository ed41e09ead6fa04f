namespace Finwright.Geometry.Blades;

/// <summary>The mesh of a blade and how closely it follows the true skin.</summary>
/// <param name="Mesh">Closed, oriented mesh in design axes, metres.</param>
/// <param name="WorstStray">
/// Greatest distance between skin and facets, metres, measured at the corners and at the middles of all edges. It is above the tolerance asked for only
/// when that would have taken more facets than <see cref="BladeLoft.MostTriangles"/>.
/// </param>
public sealed record LoftedSkin(TriangleMesh Mesh, double WorstStray);
