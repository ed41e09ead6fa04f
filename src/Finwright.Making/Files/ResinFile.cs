using System.Globalization;
using Finwright.Design;
using Finwright.Design.DataFiles;
using Finwright.Making.Cure;
using Finwright.Making.Resins;
using Finwright.Numerics;

namespace Finwright.Making.Files;

/// <summary>Resin files, <c>*.resin.json</c>: one resin with its hardener a file, each number with its unit in the field's name. Strict as material files are.</summary>
public static class ResinFile
{
    /// <summary>Ending of the file names.</summary>
    public const string Ending = ".resin.json";

    /// <summary>The numbers of a resin.</summary>
    public static DataSubject Subject => ResinField.Subject;

    /// <summary>What a number of a resin is, in one sentence; empty when there is no such number.</summary>
    /// <param name="key">Its field.</param>
    public static string MeaningOf(string key) => ResinField.All.FirstOrDefault(field => field.Data.Key == key)?.Meaning ?? "";

    // At a fifth cured and 20 °C: from some hundred days to some minutes for what is left. Judgement: slower never cures, faster cannot be poured.
    private const double SlowestRate = 1e-7, FastestRate = 1e-2, RoomTemperature = 293.15, RateConversion = 0.2;

    // Heat over heat capacity; 500 J/g and 1500 J/(kg K) make 333 K.
    private const double GreatestRise = 500;

    // Mixing changes the volume by little; more is a mistyped density or ratio (judgement).
    private const double DensityWithin = 0.05;

    /// <summary>Reads a resin.</summary>
    /// <param name="utf8">The file's bytes.</param>
    /// <returns>The resin with cautions; or no resin and everything that is wrong with the file.</returns>
    public static ResinReading Read(ReadOnlySpan<byte> utf8)
    {
        DataReading reading = DataSheetFile.Read(utf8, ResinField.Subject);
        if (reading.Sheet is not DataSheet sheet)
            return new(null, reading.Findings);
        List<Finding> findings = [];
        foreach ((string what, IReadOnlyList<string> keys) in ResinField.Groups)
        {
            string[] missing = [.. keys.Where(k => !sheet.Numbers.ContainsKey(k))];
            if (missing.Length > 0 && missing.Length < keys.Count)
            {
                findings.Add(new("incomplete-group", Severity.Error, $"$.{missing[0]}", $"The {what} needs all of its numbers; missing: {string.Join(", ", missing)}.",
                    $"Give them, or leave out all of: {string.Join(", ", keys)}."));
            }
        }

        if (findings.Count > 0)
            return new(null, findings);
        ResinSystem resin = Create(sheet);
        Check(resin, findings);
        return new(findings.Any(f => f.IsError) ? null : resin, findings);
    }

    /// <summary>Writes a resin, for a maker to change and read back. Same resin, same bytes. Numbers that were changed in code lose their old source.</summary>
    /// <param name="stream">Receives the file.</param>
    /// <param name="resin">The resin.</param>
    public static void Write(Stream stream, ResinSystem resin)
    {
        ArgumentNullException.ThrowIfNull(stream);
        ArgumentNullException.ThrowIfNull(resin);
        Dictionary<string, DataNumber> numbers = new(StringComparer.Ordinal);
        foreach (ResinField field in ResinField.All)
        {
            if (field.Get(resin) is not double value)
                continue;
            string key = field.Data.Key;
            double shown = field.Data.FromSi(value);
            // Values that were not given need not be written.
            if (resin.Numbers.TryGetValue(key, out ResinNumber? number) && field.Data.FromSi(field.Data.ToSi(number.Range.Value)).Equals(shown))
                numbers[key] = new(number.Range, number.Certainty, number.Source);
            else if (!(resin.Numbers.Count > 0 && number is null && IsUsual(key, value)))
                numbers[key] = new(Ranged.Exact(shown), Certainty.Judgement, DataSheetFile.NoSource);
        }

        DataSheetFile.Write(stream, new(resin.Name, resin.Title, null, resin.Remark, numbers), ResinField.Form);
    }

    private static bool IsUsual(string key, double value) =>
        key is "initial_conversion" && value is ResinField.UsualInitialConversion || key is "gel_conversion" && value is ResinField.UsualGelConversion || key is "shrinkage_percent" && value is 0;

    private static ResinSystem Create(DataSheet sheet)
    {
        Dictionary<string, double> si = ResinField.All.Where(f => sheet.Numbers.ContainsKey(f.Data.Key))
            .ToDictionary(f => f.Data.Key, f => f.Data.ToSi(sheet.Numbers[f.Data.Key].Range.Value), StringComparer.Ordinal);
        double? Maybe(string key) => si.TryGetValue(key, out double value) ? value : null;
        return new()
        {
            Name = sheet.Name,
            Title = sheet.Title,
            Remark = sheet.Remark,
            Kinetics = new(
                si["rate_1_per_s"], si["activation_1_j_per_mol"], si["rate_2_per_s"], si["activation_2_j_per_mol"], si["order_m"], si["order_n"], si["heat_of_reaction_j_per_g"],
                Maybe("initial_conversion") ?? ResinField.UsualInitialConversion, Maybe("gel_conversion") ?? ResinField.UsualGelConversion),
            GlassTransition = Maybe("glass_shape") is double shape ? new(si["glass_uncured_celsius"], si["glass_cured_celsius"], shape) : null,
            Viscosity = Maybe("viscosity_pa_s") is double viscosity
                ? new(viscosity, si["viscosity_at_celsius"], si["viscosity_activation_j_per_mol"], si["viscosity_exponent_a"], si["viscosity_exponent_b"])
                : null,
            Density = si["density_kg_per_m3"],
            HeatCapacity = si["heat_capacity_j_per_kg_k"],
            Conductivity = si["conductivity_w_per_m_k"],
            HardenerByMass = Maybe("hardener_parts_per_100"),
            ResinPartDensity = Maybe("resin_part_density_kg_per_m3"),
            HardenerPartDensity = Maybe("hardener_part_density_kg_per_m3"),
            Shrinkage = Maybe("shrinkage_percent") ?? 0,
            PotLife = Maybe("pot_life_minutes") is double life ? new(life, si["pot_life_mass_g"], si["pot_life_celsius"]) : null,
            Numbers = sheet.Numbers.ToDictionary(n => n.Key, n => new ResinNumber(n.Value.Range, n.Value.Certainty, n.Value.Source), StringComparer.Ordinal),
        };
    }

    private static void Check(ResinSystem resin, List<Finding> findings)
    {
        foreach ((string key, double least, double greatest) in ResinField.UsualRanges)
        {
            if (resin.Numbers.TryGetValue(key, out ResinNumber? number) && number.Range.Value is double value && (value < least || value > greatest))
            {
                findings.Add(new("unusual", Severity.Caution, $"$.{key}", Text($"{value} is unusual for {key}: resins for casting lie between {least} and {greatest}. It is taken as given."), "Check the number and the unit in the field's name.")
                {
                    Value = Text($"{value}"),
                    Limit = Text($"{(value < least ? least : greatest)}"),
                });
            }
        }

        CureKinetics k = resin.Kinetics;
        double k1 = k.Rate1 * Math.Exp(-k.Activation1 / (CureRate.GasConstant * RoomTemperature)), k2 = k.Rate2 * Math.Exp(-k.Activation2 / (CureRate.GasConstant * RoomTemperature));
        double rate = (k1 + k2 * Math.Pow(RateConversion, k.OrderM)) * Math.Pow(1 - RateConversion, k.OrderN);
        if (rate is < SlowestRate or > FastestRate)
        {
            Report("rate-absurd", Severity.Error, "$.rate_1_per_s", Text($"At 20 °C and a fifth cured it would react by {100 * 3600 * rate:0.###} % an hour; a resin for casting does {100 * 3600 * SlowestRate:0.###} to {100 * 3600 * FastestRate:0} %."),
                "Check rates and activation energies together: one without the other means nothing.");
        }

        if (k.InitialConversion >= k.GelConversion)
            Report("gelled-at-once", Severity.Error, "$.initial_conversion", Text($"It would be poured at a conversion of {k.InitialConversion}, but gels at {k.GelConversion}."), "Give a conversion below that of gelling.");
        double rise = k.HeatOfReaction / resin.HeatCapacity;
        if (rise > GreatestRise)
            Report("heat-absurd", Severity.Error, "$.heat_of_reaction_j_per_g", Text($"Without cooling its own heat would warm it by {rise:0} K; epoxies do by 200 to 350 K."), "Check heat of reaction (J for a gram) and heat capacity (J for a kilogram and kelvin).");
        if (resin.GlassTransition is GlassTransitionCurve glass && glass.Cured <= glass.Uncured)
            Report("glass-order", Severity.Error, "$.glass_cured_celsius", Text($"Its glass transition would fall from {glass.Uncured - 273.15:0.#} to {glass.Cured - 273.15:0.#} °C while it cures; it rises."), "Check which of both is which.");
        if (resin.HardenerByMass is double hardener && resin.ResinPartDensity is double a && resin.HardenerPartDensity is double b)
        {
            double mixed = (1 + hardener) / (1 / a + hardener / b);
            if (Math.Abs(mixed / resin.Density - 1) > DensityWithin)
                Report("density-mismatch", Severity.Caution, "$.density_kg_per_m3", Text($"Resin and hardener mixed as stated have {mixed:0} kg/m³, but {resin.Density:0} kg/m³ are given for the mix."), "Check the three densities and the ratio.");
        }

        void Report(string code, Severity severity, string path, string message, string remedy) => findings.Add(new(code, severity, path, message, remedy));
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}

/// <summary>What came of reading a resin file.</summary>
/// <param name="Resin">The resin; null when anything was wrong.</param>
/// <param name="Findings">Everything found.</param>
public sealed record ResinReading(ResinSystem? Resin, IReadOnlyList<Finding> Findings);
