using Finwright.Design;
using Finwright.Geometry;
using Finwright.Geometry.Bases;
using Finwright.Geometry.Files;
using Finwright.Geometry.FromDesign;
using Finwright.Geometry.Parts;
using Finwright.Geometry.Solids;

namespace Finwright.Page.Libraries;

/// <summary>The base for a box, and the thin gauge of it that is tried in the board first.</summary>
public static class BoxGauge
{
    // A bed that any gauge fits on: it is only laid flat here.
    private static readonly PrintRoom Room = new(1, 1, 1, 0);

    /// <summary>The base for a box; null, with what is wrong, when the numbers describe none.</summary>
    /// <param name="carrier">A design with the box.</param>
    public static (BasePlan? Plan, IReadOnlyList<Finding> Findings) Plan(FinDesign carrier)
    {
        List<Finding> findings = [];
        return (BaseFromDesign.Plan(carrier, 0, findings), findings);
    }

    /// <summary>The gauge as it lies on the printer.</summary>
    /// <param name="plan">The base.</param>
    /// <param name="thickness">Thickness of its plate, metres.</param>
    public static TriangleMesh Mesh(BasePlan plan, double thickness)
    {
        using ManifoldKernel kernel = new();
        TriangleMesh mesh = kernel.Evaluate([FitGauge.Solid(plan, thickness)])[0].Mesh;
        return mesh.Placed(LaidPart.Lay(mesh.Points(), [FitGauge.Rest(plan)], Room).Placement);
    }

    /// <summary>The gauge as a file.</summary>
    /// <param name="carrier">A design with the box.</param>
    /// <param name="name">What the box is called.</param>
    /// <param name="isStl">Whether it is to be STL; else 3MF.</param>
    /// <returns>Null when the numbers describe no base.</returns>
    public static byte[]? File(FinDesign carrier, string name, bool isStl)
    {
        ArgumentNullException.ThrowIfNull(carrier);
        if (Plan(carrier).Plan is not { } plan)
            return null;
        TriangleMesh mesh = Mesh(plan, carrier.Base.GaugeThicknessMm * 1e-3);
        using MemoryStream stream = new();
        if (isStl)
            StlFile.Write(stream, mesh, $"gauge, {name}");
        else
            ThreeMfFile.Write(stream, new($"gauge, {name}", [new("gauge", mesh, Placement.Identity)]));
        return stream.ToArray();
    }
}
