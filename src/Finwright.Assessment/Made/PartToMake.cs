using Finwright.Geometry;
using Finwright.Geometry.Features;
using Finwright.Geometry.FromDesign;
using Finwright.Geometry.Parts;

namespace Finwright.Assessment.Made;

/// <summary>A part on its way to printer and pour: of a fin, or any closed mesh.</summary>
/// <param name="Name">Name for people and files.</param>
/// <param name="Mesh">Closed mesh in its own axes, metres; of a fin, design axes.</param>
/// <param name="ToBed">From those axes to the bed, z up.</param>
public sealed record PartToMake(string Name, TriangleMesh Mesh, Placement ToBed)
{
    /// <summary>Whether it is the fit gauge, which is not poured.</summary>
    public bool IsGauge { get; init; }

    /// <summary>Whether it is the base, printed apart from the blade.</summary>
    public bool IsBase { get; init; }

    /// <summary>Whether it came as a mesh of its own and is no part of a fin.</summary>
    public bool IsImported { get; init; }

    /// <summary>Pockets that something is put into while it is printed, in the axes of the mesh.</summary>
    public IReadOnlyList<PlacedFeature> Pockets { get; init; } = [];

    /// <summary>Ports, in the axes of the mesh.</summary>
    public IReadOnlyList<PortToDrill> Ports { get; init; } = [];

    /// <summary>Ways it could rest on the bed.</summary>
    public IReadOnlyList<Resting> Ways { get; init; } = [];

    /// <summary>The parts of a fin.</summary>
    /// <param name="plan">Cut and laid out.</param>
    /// <param name="solids">What is bored into them.</param>
    public static IReadOnlyList<PartToMake> Of(PartPlan plan, FinSolids solids)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(solids);
        bool hasBase = solids.Base is not null;
        int bladePieces = plan.Cuts.Count + 1;
        return [.. plan.Parts.Select(Part)];

        PartToMake Part(PrintPart part, int index)
        {
            int home = part.IsGauge ? Nowhere : index < bladePieces ? index : BaseHome;
            return new(part.Name, part.Mesh, part.PrintPlacement)
            {
                IsGauge = part.IsGauge,
                IsBase = home == BaseHome,
                Pockets = [.. solids.Features.Where(feature => feature.NeedsPause && HomeOf(feature.Volume.Middle) == home)],
                Ports = [.. plan.Ports.Where(port => HomeOf(port.Centre) == home).Select(port => new PortToDrill(port.Name, port.Centre, port.Outward, port.Diameter))],
                Ways = part.Ways,
            };
        }

        int HomeOf(Point3 place) => hasBase && place.Y <= 0 ? BaseHome : plan.Cuts.Count(cut => cut.Beyond(place) > 0);
    }

    private const int BaseHome = -1, Nowhere = -2;
}

/// <summary>A port to drill, in the axes of the part's mesh.</summary>
/// <param name="Name">Name for people.</param>
/// <param name="Skin">Where it begins on the skin, metres.</param>
/// <param name="Outward">Unit vector out of the part.</param>
/// <param name="Diameter">Diameter, metres.</param>
public sealed record PortToDrill(string Name, Point3 Skin, Point3 Outward, double Diameter);
