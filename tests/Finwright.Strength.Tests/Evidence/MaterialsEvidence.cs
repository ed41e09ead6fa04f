using Finwright.Numerics;
using Finwright.Strength.Files;
using Finwright.Strength.Materials;

namespace Finwright.Strength.Tests.Evidence;

/// <summary>Mixtures beside closed forms.</summary>
internal static class MaterialsEvidence
{
    /// <summary>The cases, each worked out once.</summary>
    public static IReadOnlyList<EvidenceRow> Rows { get; } = [.. Core()];

    private static IEnumerable<EvidenceRow> Core()
    {
        const string Topic = "Core of printed plastic and resin";
        PrintedPlastic plastic = MaterialLibrary.Get<PrintedPlastic>("petg-printed");
        CastResin resin = MaterialLibrary.Get<CastResin>("epoxy-ambient");
        CoreStiffness core = CoreMixture.Filled(plastic, resin, Ranged.Exact(0.15));
        yield return new(Topic, "Share of plastic 15 %, upper over lower bound of the modulus", "Hashin and Shtrikman, 1963, bounds, from memory: nearly one for phases so alike", 1, core.UpperBound / core.LowerBound, 0.02, "2 %");
        yield return new(Topic, "No plastic, modulus, GPa", "Closed form: the resin", 1e-9 * resin.Modulus.Value, 1e-9 * CoreMixture.Filled(plastic, resin, Ranged.Exact(0)).Modulus.Value, 1e-5, "rounding");

        // 1 % spheres or less of void: K/K₁ = 1 - f (1 + 3 K₁/(4 G₁)) to first order (Eshelby, 1957, from memory).
        CoreMixture.Phase host = CoreMixture.Phase.Of(2e9, 0.38);
        const double Void = 1e-3;
        yield return new(Topic, "Solid with 0.1 % round voids, loss of bulk modulus over share", "Eshelby, 1957, first order, from memory", 1 + 3 * host.Bulk / (4 * host.Shear),
            (1 - CoreMixture.Bounds(host, default, 1 - Void).Upper.Bulk / host.Bulk) / Void, 0.02, "second order in the share");
    }
}
