using Finwright.Design;
using Finwright.Making.Pores;

namespace Finwright.Assessment.Made;

/// <summary>Pores from what a motion file really lays: envelope less plastic.</summary>
public static class PouredByMotion
{
    private const double Kelvin = 273.15, Millilitres = 1e-6, PerCent = 0.01;

    /// <summary>The pour with the pores of one plate's parts taken from its motion file.</summary>
    /// <param name="poured">The pour as planned.</param>
    /// <param name="plate">The plate that the file prints.</param>
    /// <param name="laid">Plastic that it lays in the parts, m³.</param>
    /// <param name="pour">The design's pour.</param>
    /// <param name="findings">Receives what was found.</param>
    /// <remarks>A file does not say which part a line belongs to: its plastic is shared out as planned.</remarks>
    public static FinPoured Of(FinPoured poured, PlatePrinted plate, double laid, Pour pour, ICollection<Finding> findings)
    {
        ArgumentNullException.ThrowIfNull(poured);
        ArgumentNullException.ThrowIfNull(plate);
        ArgumentNullException.ThrowIfNull(pour);
        ArgumentNullException.ThrowIfNull(findings);
        double planned = plate.Time.Volume, envelope = plate.Parts.Sum(part => part.Layers.EnvelopeVolume);
        if (!(laid > 0) || laid >= envelope)
        {
            findings.Add(new("motion-not-this-part", Severity.Error, "$", $"The motion file lays {1e6 * laid:0.0} ml of plastic; the parts of plate {plate.Number} hold {1e6 * envelope:0.0} ml in all, so it does not belong to them.", "Give the file that prints this plate.") { Value = $"{1e6 * laid:0.0} ml", Limit = $"{1e6 * envelope:0.0} ml" });
            return poured;
        }

        return poured with { Parts = [.. poured.Parts.Select(part => plate.Parts.FirstOrDefault(own => string.Equals(own.Part.Name, part.Name, StringComparison.Ordinal)) is { } printed ? Changed(part, printed) : part)] };

        PartPoured Changed(PartPoured part, PartPrinted printed)
        {
            double own = Math.Min(laid * printed.Time.Volume / planned, part.Layers.EnvelopeVolume);
            PoreVolume pores = PourVolume.FromPlastic(part.Layers.EnvelopeVolume, own);
            PourNeed need = PourVolume.Need([pores], pour.ReservoirMl * Millilitres, pour.LossPercent * PerCent, poured.Resin.Shrinkage);
            return part with { Pores = pores, Need = need, Batches = BatchPlan.Of(need.Total, poured.Resin, pour.CupGrams / 1e3, (pour.ResinCelsius ?? pour.RoomCelsius) + Kelvin) };
        }
    }
}
