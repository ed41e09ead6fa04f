using System.Text;
using Finwright.Design;
using Finwright.Numerics;
using Finwright.Strength.Files;
using Finwright.Strength.Joints;
using Finwright.Strength.Materials;

namespace Finwright.Strength.FromDesign;

/// <summary>From the design's names, files and numbers to materials.</summary>
public static class MaterialsFromDesign
{
    // Two standard deviations to each side make a range, as everywhere.
    private const double RangeDeviations = 2;

    private const string UsualPlastic = "petg-printed";

    // The printer lays more or less than asked for (judgement).
    private const double InfillSpread = 0.1;

    /// <summary>Finds every material of a design.</summary>
    /// <param name="design">Every value within the range of its field; files already taken in, see <see cref="MaterialFiles"/>.</param>
    /// <param name="findings">Receives an error for each material that is not known or not usable in its place.</param>
    /// <returns>The materials; null when one is missing.</returns>
    public static FinMaterials? Of(FinDesign design, ICollection<Finding> findings)
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(findings);
        Design.Materials given = design.Materials;
        PrintedPlastic? printed = Find<PrintedPlastic>(given.Printed, "$.materials.printed", UsualPlastic, "printed plastic", findings);
        CastResin? resin = Find<CastResin>(given.Resin, "$.materials.resin", "epoxy-ambient", "resin", findings);
        Rod? rod = Find<Rod>(given.Rod, "$.materials.rod", "carbon-rod", "rod", findings);
        Metal? bolt = Find<Metal>(given.Bolt, "$.materials.bolt", "stainless-a4-70", "metal", findings);
        Sheet? sheet = Find<Sheet>(given.Sheet, "$.materials.sheet", "petg-sheet", "sheet", findings);
        if (printed is null || resin is null || rod is null || bolt is null || sheet is null)
            return null;
        printed = Adjusted(printed, given.Printed);
        resin = Adjusted(resin, given.Resin);
        double share = design.Print.InfillPercent / 100;
        CoreStiffness mixed = CoreMixture.Filled(printed, resin, new(share, (1 - InfillSpread) * share, (1 + InfillSpread) * share));
        NutSurround around = NutSurround.Filled(printed, resin, share);
        CoreStiffness core = given.Core is { } own ? Given(own, mixed) : mixed;
        return new()
        {
            Printed = printed,
            Resin = resin,
            Core = core,
            CoreStrength = given.Core is { StrengthMpa: double strength, RangePercent: double range } ? Within(strength * 1e6, range) : around.Across,
            Around = around,
            Rod = Adjusted(rod, given.Rod),
            Bolt = Adjusted(bolt, given.Bolt),
            Sheet = Adjusted(sheet, given.Sheet),
            WallFactor = Factor(given.WallFactor, given.WallFactorDeviationPercent, printed.ModulusAlong),
            CoreFactor = Factor(given.CoreFactor, given.CoreFactorDeviationPercent, core.Modulus),
        };
    }

    /// <summary>Finds the printed plastic by itself.</summary>
    /// <param name="choice">The design's choice; its file already taken in.</param>
    /// <param name="path">JSON path of the choice.</param>
    /// <param name="findings">Receives an error when it is not known or no plastic.</param>
    public static PrintedPlastic? Printed(MaterialChoice choice, string path, ICollection<Finding> findings)
    {
        ArgumentNullException.ThrowIfNull(choice);
        ArgumentNullException.ThrowIfNull(findings);
        return Find<PrintedPlastic>(choice, path, UsualPlastic, "printed plastic", findings) is { } found ? Adjusted(found, choice) : null;
    }

    // What the bench showed replaces the range of the data sheet.
    private static Ranged Factor(double factor, double? deviationPercent, Ranged material)
    {
        if (deviationPercent is double deviation)
            return new(factor, Math.Max(factor * (1 - RangeDeviations * deviation / 100), 0.05 * factor), factor * (1 + RangeDeviations * deviation / 100));
        return new(factor, factor * material.Low / material.Value, factor * material.High / material.Value);
    }

    private static T? Find<T>(MaterialChoice choice, string path, string usual, string kind, ICollection<Finding> findings)
        where T : Material
    {
        Material? found;
        if (choice.Content is string content)
        {
            MaterialReading reading = MaterialFile.Read(Encoding.UTF8.GetBytes(content));
            foreach (Finding finding in reading.Findings)
                findings.Add(finding with { Path = $"{path}.content", Line = null, Message = $"In the material file, {Where(finding)}: {finding.Message}" });
            if (reading.Material is null)
                return null;
            found = reading.Material;
        }
        else
        {
            string name = choice.Material ?? usual;
            found = MaterialLibrary.Find(name);
            if (found is null)
            {
                findings.Add(new("unknown-material", Severity.Error, $"{path}.material", $"There is no material \"{name}\".", $"Materials for this place: {Names<T>()}. For one of your own, give its file as \"file\"."));
                return null;
            }
        }

        if (found is T fits)
            return fits;
        findings.Add(new("wrong-material", Severity.Error, path, $"\"{found.Name}\" is no {kind}.", $"Materials for this place: {Names<T>()}."));
        return null;
    }

    private static string Where(Finding finding) => finding.Line is int line ? $"line {line}" : finding.Path.TrimStart('$', '.') is { Length: > 0 } field ? field : "as a whole";

    private static string Names<T>()
        where T : Material => string.Join(", ", MaterialLibrary.All.OfType<T>().Select(material => material.Name));

    private static Ranged Within(double value, double percent) => new(value, value * (1 - percent / 100), value * (1 + percent / 100));

    private static Ranged Or(double? given, double factor, double percent, Ranged own) => given is double value ? Within(value * factor, percent) : own;

    // With a modulus of its own the print is taken as even in all directions, unless one across the layers is given too.
    private static PrintedPlastic Adjusted(PrintedPlastic own, MaterialChoice given)
    {
        double range = given.RangePercent;
        Ranged poisson = Or(given.PoissonRatio, 1, 0, own.Poisson), along = Or(given.ModulusGpa, 1e9, range, own.ModulusAlong), strength = Or(given.StrengthMpa, 1e6, range, own.StrengthAlong);
        return own with
        {
            ModulusAlong = along,
            ModulusAcross = Or(given.ModulusAcrossGpa, 1e9, range, given.ModulusGpa is null ? own.ModulusAcross : along),
            Poisson = poisson,
            ShearModulus = given.ModulusGpa is null && given.PoissonRatio is null ? own.ShearModulus : along.Times(1 / (2 * (1 + poisson.Value))),
            StrengthAlong = strength,
            StrengthAcross = Or(given.StrengthAcrossMpa, 1e6, range, given.StrengthMpa is null ? own.StrengthAcross : strength),
            Density = Or(given.DensityKgPerM3, 1, range, own.Density),
        };
    }

    private static CastResin Adjusted(CastResin own, MaterialChoice given) => own with
    {
        Modulus = Or(given.ModulusGpa, 1e9, given.RangePercent, own.Modulus),
        Poisson = Or(given.PoissonRatio, 1, 0, own.Poisson),
        Strength = Or(given.StrengthMpa, 1e6, given.RangePercent, own.Strength),
        Density = Or(given.DensityKgPerM3, 1, given.RangePercent, own.Density),
    };

    private static Rod Adjusted(Rod own, MaterialChoice given) => own with
    {
        Modulus = Or(given.ModulusGpa, 1e9, given.RangePercent, own.Modulus),
        TensileStrength = Or(given.StrengthMpa, 1e6, given.RangePercent, own.TensileStrength),
        CompressiveStrength = given.StrengthMpa is double strength
            ? own.CompressiveStrength.Times(strength * 1e6 / own.TensileStrength.Value)
            : own.CompressiveStrength,
        Density = Or(given.DensityKgPerM3, 1, given.RangePercent, own.Density),
    };

    private static Metal Adjusted(Metal own, MaterialChoice given) => own with
    {
        Modulus = Or(given.ModulusGpa, 1e9, given.RangePercent, own.Modulus),
        Poisson = Or(given.PoissonRatio, 1, 0, own.Poisson),
        Yield = Or(given.StrengthMpa, 1e6, given.RangePercent, own.Yield),
        Ultimate = given.StrengthMpa is double strength ? own.Ultimate.Times(strength * 1e6 / own.Yield.Value) : own.Ultimate,
        Density = Or(given.DensityKgPerM3, 1, given.RangePercent, own.Density),
    };

    private static Sheet Adjusted(Sheet own, MaterialChoice given) => own with
    {
        Modulus = Or(given.ModulusGpa, 1e9, given.RangePercent, own.Modulus),
        Poisson = Or(given.PoissonRatio, 1, 0, own.Poisson),
        Strength = Or(given.StrengthMpa, 1e6, given.RangePercent, own.Strength),
        Density = Or(given.DensityKgPerM3, 1, given.RangePercent, own.Density),
    };

    private static CoreStiffness Given(CoreChoice own, CoreStiffness mixed)
    {
        Ranged modulus = Within(own.ModulusGpa * 1e9, own.RangePercent);
        return new()
        {
            Modulus = modulus,
            ShearModulus = modulus.Times(1 / (2 * (1 + own.PoissonRatio))),
            Poisson = own.PoissonRatio,
            Density = Or(own.DensityKgPerM3, 1, own.RangePercent, mixed.Density),
            LowerBound = modulus.Low,
            UpperBound = modulus.High,
            IsInRange = true,
        };
    }
}
