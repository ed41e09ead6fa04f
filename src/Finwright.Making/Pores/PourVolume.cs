using Finwright.Making.Layers;
using Finwright.Numerics;

namespace Finwright.Making.Pores;

/// <summary>Pore volume of a part, with how sure it is and why.</summary>
/// <param name="Pores">Room for resin, m³.</param>
/// <param name="Reasons">What the range is made of, in words.</param>
public sealed record PoreVolume(Ranged Pores, IReadOnlyList<string> Reasons);

/// <summary>What must be mixed to fill one or more parts, m³ each.</summary>
/// <param name="Pores">Room for resin.</param>
/// <param name="TopUp">What the resin loses on its way from liquid to solid, and is topped up from the reservoirs.</param>
/// <param name="Reservoirs">What stands in the reservoirs at the end, to be cut off.</param>
/// <param name="Losses">What stays in syringes and tubes, and drips.</param>
/// <param name="Total">All together; what stays in the cups comes on top, cup by cup (<see cref="BatchPlan"/>).</param>
public sealed record PourNeed(Ranged Pores, Ranged TopUp, double Reservoirs, Ranged Losses, Ranged Total);

/// <summary>How much resin a part takes.</summary>
public static class PourVolume
{
    /// <summary>Range of the share of plastic, relative: slicers and printers keep the infill to a tenth (judgement).</summary>
    public const double InfillSpread = 0.10;

    /// <summary>Range of a line's width, relative (judgement).</summary>
    public const double LineSpread = 0.03;

    /// <summary>Range of the plastic really laid, relative: a filament of 1.75 ± 0.03 mm varies by 3.4 % in area (from memory).</summary>
    public const double PlasticSpread = 0.035;

    /// <summary>Range of losses, relative: nobody knows them before the first pour (judgement).</summary>
    public const double LossSpread = 0.5;

    /// <summary>Pore volume from a part's layers: core times open share, less what is embedded in the core.</summary>
    /// <param name="part">The part.</param>
    /// <param name="hardware">Volume of nuts, rods and dowels that lie in the core and not in bores of the outline, m³.</param>
    /// <exception cref="ArgumentOutOfRangeException">The hardware takes more than the pores.</exception>
    /// <remarks>Thicker lines make walls thicker inward and fill more of the core; the spread of the share of plastic comes beside it, both taken as independent.</remarks>
    public static PoreVolume FromLayers(PartLayers part, double hardware = 0)
    {
        ArgumentNullException.ThrowIfNull(part);
        double core = part.CoreVolume, share = Require.Between(part.Settings.InfillShare, 0, 0.6);
        double pores = core * (1 - share) - Require.Between(hardware, 0, core * (1 - share));
        // All lines of the walls that much wider or narrower, where there is core to lose; and the infill's lines with them.
        double lineWidth = part.Settings.LineWidth * LineSpread, walls = 0;
        foreach (Layer layer in part.Layers)
            walls += Math.Min(layer.WallLength * lineWidth, layer.CoreArea) * layer.Height;
        double byLines = walls * (1 - share) + core * share * LineSpread, byInfill = core * share * InfillSpread;
        double spread = double.Hypot(byLines, byInfill);
        return new(
            new(pores, Math.Max(0, pores - spread), Math.Min(core, pores + spread)),
            [
                FormattableString.Invariant($"share of plastic ± {100 * InfillSpread:F0} % of itself: ± {byInfill * 1e6:F1} ml"),
                FormattableString.Invariant($"width of lines ± {100 * LineSpread:F0} %: ± {byLines * 1e6:F1} ml"),
            ]);
    }

    /// <summary>Pore volume from what the printer really lays: envelope less plastic less hardware.</summary>
    /// <param name="envelope">Everything inside the outlines, m³.</param>
    /// <param name="plastic">Plastic laid in the part, brim and supports left out, m³.</param>
    /// <param name="hardware">Volume of what is embedded inside the outlines, m³.</param>
    /// <exception cref="ArgumentOutOfRangeException">Plastic and hardware take more than the envelope.</exception>
    public static PoreVolume FromPlastic(double envelope, double plastic, double hardware = 0)
    {
        Require.Positive(envelope);
        Require.Between(plastic, 0, envelope);
        double pores = envelope - plastic - Require.Between(hardware, 0, envelope - plastic), spread = plastic * PlasticSpread;
        return new(
            new(pores, Math.Max(0, pores - spread), pores + spread),
            [FormattableString.Invariant($"plastic laid ± {100 * PlasticSpread:F1} %: ± {spread * 1e6:F1} ml")]);
    }

    /// <summary>What must be mixed.</summary>
    /// <param name="parts">Pore volumes of the parts that are poured.</param>
    /// <param name="reservoirs">Volume of all reservoirs together, m³.</param>
    /// <param name="lossShare">Share of what is mixed that stays in syringes and tubes or drips, 0 to 0.5.</param>
    /// <param name="shrinkage">Share of its volume that the resin loses, 0 to 0.15.</param>
    /// <remarks>Parts that come from one printer are wrong in the same way: their ranges add up. The loss's range comes beside them, taken as independent.</remarks>
    public static PourNeed Need(IReadOnlyList<PoreVolume> parts, double reservoirs, double lossShare, double shrinkage)
    {
        ArgumentNullException.ThrowIfNull(parts);
        Require.NotNegative(reservoirs);
        Require.Between(lossShare, 0, 0.5);
        Require.Between(shrinkage, 0, 0.15);
        Ranged pores = new(parts.Sum(part => part.Pores.Value), parts.Sum(part => part.Pores.Low), parts.Sum(part => part.Pores.High));
        // What is filled once shrinks, and so does what tops it up: 1 / (1 − s) in all.
        double topUp = shrinkage / (1 - shrinkage);
        double wanted = pores.Value * (1 + topUp) + reservoirs, total = wanted / (1 - lossShare), loss = total - wanted;
        Ranged losses = new(loss, (1 - LossSpread) * loss, (1 + LossSpread) * loss);
        double factor = (1 + topUp) / (1 - lossShare);
        double down = double.Hypot((pores.Value - pores.Low) * factor, LossSpread * loss), up = double.Hypot((pores.High - pores.Value) * factor, LossSpread * loss);
        return new(pores, pores.Times(topUp), reservoirs, losses, new(total, Math.Max(0, total - down), total + up));
    }
}
