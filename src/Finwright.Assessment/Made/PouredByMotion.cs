using Finwright.Design;
using Finwright.Making.Pores;

namespace Finwright.Assessment.Made;

/// <summary>A motion file from which pores were taken.</summary>
/// <param name="File">Its name.</param>
/// <param name="Plate">Number of the plate that it prints.</param>
/// <param name="Parts">The parts on it.</param>
/// <param name="Laid">Plastic that it lays in them, m³.</param>
/// <param name="Planned">Plastic that was planned, m³.</param>
public sealed record MotionPores(string File, int Plate, IReadOnlyList<string> Parts, double Laid, double Planned);

/// <summary>Pores from what a motion file really lays: envelope less plastic.</summary>
public static class PouredByMotion
{
    private const double Kelvin = 273.15, Millilitres = 1e-6, PerCent = 0.01;

    /// <summary>The same work with the pores of one plate's parts taken from its motion file.</summary>
    /// <param name="result">Print and pour as planned.</param>
    /// <param name="plate">The plate that the file prints, and how the file compares with it.</param>
    /// <param name="file">Name of the file, for people.</param>
    /// <returns>The work with what was found added; its pores are as planned when the file cannot be this plate's.</returns>
    /// <exception cref="ArgumentException">Print or pour were not worked out.</exception>
    /// <remarks>A file does not say which part a line belongs to: its plastic is shared out as planned. What hangs on the form of the pores, air and filling, stays as planned.</remarks>
    public static MakingResult Of(MakingResult result, MotionOfPlate plate, string file)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(plate);
        if (result is not { Poured: { } poured, Pour: { } pour })
            throw new ArgumentException("There is no pour to change.", nameof(result));
        List<Finding> findings = [.. plate.Comparison.Findings.Select(finding => finding with { Path = file })];
        double laid = plate.Comparison.Plastic, planned = plate.Plate.Time.Volume, envelope = plate.Plate.Parts.Sum(part => part.Layers.EnvelopeVolume);
        bool belongs = laid > 0 && !findings.Exists(finding => finding.IsError) && plate.Plate.Parts.All(part => Own(part) < part.Layers.EnvelopeVolume);
        if (!belongs && !findings.Exists(finding => finding.IsError))
        {
            string value = $"{laid / Millilitres:0.0} ml", limit = $"{envelope / Millilitres:0.0} ml";
            findings.Add(new("motion-not-this-part", Severity.Error, file, $"The motion file lays {value} of plastic; the parts of plate {plate.Plate.Number} hold {limit} in all, so it does not belong to them.", "Give the file that prints this plate.") { Value = value, Limit = limit });
        }

        MakingResult told = result with { Findings = [.. result.Findings.Concat(findings).OrderByDescending(finding => finding.Severity)] };
        return !belongs ? told : told with
        {
            Motion = new(file, plate.Plate.Number, [.. plate.Plate.Parts.Select(part => part.Part.Name)], laid, planned),
            Poured = poured with { Parts = [.. poured.Parts.Select(part => plate.Plate.Parts.FirstOrDefault(own => string.Equals(own.Part.Name, part.Name, StringComparison.Ordinal)) is { } printed ? Changed(part, printed) : part)] },
        };

        double Own(PartPrinted printed) => laid * printed.Time.Volume / planned;

        PartPoured Changed(PartPoured part, PartPrinted printed)
        {
            PoreVolume pores = PourVolume.FromPlastic(part.Layers.EnvelopeVolume, Own(printed));
            PourNeed need = PourVolume.Need([pores], pour.ReservoirMl * Millilitres, pour.LossPercent * PerCent, poured.Resin.Shrinkage);
            return part with { Pores = pores, Need = need, Batches = BatchPlan.Of(need.Total, poured.Resin, pour.CupGrams / 1e3, (pour.ResinCelsius ?? pour.RoomCelsius) + Kelvin) };
        }
    }
}
