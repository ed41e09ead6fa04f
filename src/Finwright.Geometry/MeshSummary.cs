namespace Finwright.Geometry;

/// <summary>The numbers of a mesh that a person asks for, in the units of a workshop.</summary>
/// <param name="SizeMm">Edge lengths of the smallest axis-aligned box, millimetres.</param>
/// <param name="VolumeCm3">Enclosed volume, cm³.</param>
/// <param name="AreaCm2">Surface area, cm².</param>
/// <param name="Triangles">Number of triangles.</param>
/// <param name="IsClosed">Whether every edge joins exactly two triangles that run along it in opposite directions.</param>
public sealed record MeshSummary(Point3 SizeMm, double VolumeCm3, double AreaCm2, int Triangles, bool IsClosed)
{
    /// <summary>Measures a mesh.</summary>
    /// <param name="mesh">Metres; at least one vertex.</param>
    public static MeshSummary Of(TriangleMesh mesh)
    {
        ArgumentNullException.ThrowIfNull(mesh);
        return new(1000 * mesh.Bounds().Size, 1e6 * mesh.Volume(), 1e4 * mesh.Area(), mesh.TriangleCount, MeshChecks.IsClosed(mesh));
    }
}
