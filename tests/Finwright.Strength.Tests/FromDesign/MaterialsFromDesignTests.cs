using System.Text;
using Finwright.Design;
using Finwright.Numerics;
using Finwright.Strength.Files;
using Finwright.Strength.FromDesign;
using Finwright.Strength.Materials;

namespace Finwright.Strength.Tests.FromDesign;

public sealed class MaterialsFromDesignTests
{
    [Fact]
    public void Of_nothing_given_takes_the_usual_materials()
    {
        FinMaterials own = Found(new());
        Assert.Equal(MaterialLibrary.Get<PrintedPlastic>("petg-printed").ModulusAcross, own.Printed.ModulusAcross);
        Assert.Equal("epoxy-ambient", own.Resin.Name);
        Assert.Equal("carbon-rod", own.Rod.Name);
        Assert.Equal("stainless-a4-70", own.Bolt.Name);
        Assert.Equal("petg-sheet", own.Sheet.Name);
        // Nothing measured: a factor of one with the range of the material.
        Assert.Equal(new Ranged(1, 1.7 / 2, 2.3 / 2), own.WallFactor);
        Assert.Equal(1, own.CoreFactor.Value);
        Assert.Equal(own.Core.Modulus.Low / own.Core.Modulus.Value, own.CoreFactor.Low, 12);
        Assert.True(own.CoreFactor.Low < 0.95);
    }

    [Fact]
    public void Of_a_modulus_of_ones_own_makes_the_print_even_in_all_directions()
    {
        PrintedPlastic printed = Found(new() { Printed = new() { ModulusGpa = 2.7, PoissonRatio = 0.35, StrengthMpa = 40, RangePercent = 20 } }).Printed;
        Assert.Equal(new Ranged(2.7e9, 2.7e9 * 0.8, 2.7e9 * 1.2), printed.ModulusAlong);
        Assert.Equal(printed.ModulusAlong, printed.ModulusAcross);
        Assert.Equal(1e9, printed.ShearModulus.Value, 1.0); // E/(2 (1 + ν))
        Assert.Equal(40e6, printed.StrengthAlong.Value, 1e-3);
        Assert.Equal(printed.StrengthAlong, printed.StrengthAcross);
    }

    [Fact]
    public void Of_values_across_the_layers_leaves_those_along_them()
    {
        PrintedPlastic printed = Found(new() { Printed = new() { ModulusAcrossGpa = 1.2, StrengthAcrossMpa = 15 } }).Printed, usual = MaterialLibrary.Get<PrintedPlastic>("petg-printed");
        Assert.Equal(1.2e9, printed.ModulusAcross.Value, 1e-3);
        Assert.Equal(15e6, printed.StrengthAcross.Value, 1e-3);
        Assert.Equal(usual.ModulusAlong, printed.ModulusAlong);
        Assert.Equal(usual.StrengthAlong, printed.StrengthAlong);
        Assert.Equal(usual.ShearModulus, printed.ShearModulus);
    }

    [Fact]
    public void Of_a_core_that_was_measured_does_not_mix()
    {
        FinMaterials own = Found(new() { Core = new() { ModulusGpa = 2, PoissonRatio = 0.25, StrengthMpa = 30, RangePercent = 10 } });
        Assert.Equal(new Ranged(2e9, 1.8e9, 2.2e9), own.Core.Modulus);
        Assert.Equal(0.8e9, own.Core.ShearModulus.Value, 1.0);
        Assert.Equal(30e6, own.CoreStrength.Value, 1e-3);
        Assert.Equal(0.9, own.CoreFactor.Low, 12);
        Assert.Equal(Found(new()).Core.Density.Value, own.Core.Density.Value, 9);
    }

    [Fact]
    public void Of_the_strength_of_a_rod_scales_what_it_bears_when_pressed()
    {
        Rod usual = MaterialLibrary.Get<Rod>("carbon-rod"), own = Found(new() { Rod = new() { StrengthMpa = 0.5e-6 * usual.TensileStrength.Value } }).Rod;
        Assert.Equal(0.5 * usual.CompressiveStrength.Value, own.CompressiveStrength.Value, 1.0);
    }

    [Fact]
    public void Of_what_the_bench_showed_replaces_the_range_of_the_material()
    {
        FinMaterials own = Found(new() { WallFactor = 0.8, WallFactorDeviationPercent = 5, CoreFactor = 1.2 });
        Assert.Equal(0.8, own.WallFactor.Value);
        Assert.Equal(0.72, own.WallFactor.Low, 12);
        Assert.Equal(0.88, own.WallFactor.High, 12);
        Assert.Equal(1.2, own.CoreFactor.Value);
        Assert.Equal(1.2 * own.Core.Modulus.High / own.Core.Modulus.Value, own.CoreFactor.High, 12);
    }

    [Fact]
    public void Of_more_infill_comes_nearer_to_the_plastic()
    {
        double Core(double percent) => Found(new(), percent).Core.Modulus.Value;
        double plastic = MaterialLibrary.Get<PrintedPlastic>("petg-printed").ModulusAlong.Value, resin = MaterialLibrary.Get<CastResin>("epoxy-ambient").Modulus.Value;
        Assert.True(plastic < Core(30) && Core(30) < Core(15) && Core(15) < resin);
    }

    [Fact]
    public void Of_the_text_of_a_file_is_that_material()
    {
        Rod softer = MaterialLibrary.Get<Rod>("carbon-rod") with { Name = "glass-rod", Modulus = new(45e9, 40e9, 50e9) };
        Assert.Equal(45e9, Found(new() { Rod = new() { Content = Text(softer) } }).Rod.Modulus.Value, 1e-3);
    }

    [Fact]
    public void Of_materials_that_are_not_known_or_do_not_fit_says_where()
    {
        List<Finding> findings = [];
        FinDesign design = With(new()
        {
            Printed = new() { Content = "{" },
            Resin = new() { Material = "honey" },
            Rod = new() { Material = "brass" },
            Bolt = new() { Content = Text(MaterialLibrary.Get<Rod>("carbon-rod")) },
        });
        Assert.Null(MaterialsFromDesign.Of(design, findings));
        Assert.All(findings, finding => Assert.True(finding.IsError));
        Assert.Contains(findings, finding => finding is { Code: "unknown-material", Path: "$.materials.resin.material" } && finding.Remedy.Contains("epoxy-ambient", StringComparison.Ordinal));
        Assert.Contains(findings, finding => finding is { Code: "wrong-material", Path: "$.materials.rod" } && finding.Remedy.Contains("carbon-rod", StringComparison.Ordinal));
        Assert.Contains(findings, finding => finding is { Code: "wrong-material", Path: "$.materials.bolt" });
        Assert.Contains(findings, finding => finding.Path == "$.materials.printed.content");
        Assert.Equal(4, findings.Select(finding => finding.Path).Distinct(StringComparer.Ordinal).Count());
    }

    [Fact]
    public void Embed_takes_in_the_text_beside_the_design_or_says_what_is_missing()
    {
        string folder = Directory.CreateTempSubdirectory("finwright-").FullName;
        try
        {
            string text = Text(MaterialLibrary.Get<Rod>("carbon-rod"));
            File.WriteAllText(Path.Combine(folder, "rod.material.json"), text);
            File.WriteAllText(Path.Combine(folder, "long.material.json"), new string(' ', 20_001));
            List<Finding> findings = [];
            FinDesign design = With(new() { Rod = new() { File = "rod.material.json", ModulusGpa = 90 }, Resin = new() { File = "none.material.json" }, Bolt = new() { File = "long.material.json" } });
            FinDesign embedded = MaterialFiles.Embed(design, folder, findings);
            Assert.Equal((text, null, 90), (embedded.Materials.Rod.Content, embedded.Materials.Rod.File, embedded.Materials.Rod.ModulusGpa));
            Assert.Equal([("material-file-missing", "$.materials.resin.file"), ("material-file-unusable", "$.materials.bolt.file")], findings.Select(finding => (finding.Code, finding.Path)));
            findings.Clear();
            Assert.Same(design, MaterialFiles.Embed(design, null, findings));
            Assert.Equal(3, findings.Count);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static FinDesign With(Design.Materials materials, double infillPercent = 15) =>
        BuiltFin.Plain with { Materials = materials, Print = new() { InfillPercent = infillPercent } };

    private static FinMaterials Found(Design.Materials materials, double infillPercent = 15)
    {
        List<Finding> findings = [];
        FinMaterials? found = MaterialsFromDesign.Of(With(materials, infillPercent), findings);
        Assert.Empty(findings);
        return found!;
    }

    private static string Text(Material material)
    {
        using MemoryStream stream = new();
        MaterialFile.Write(stream, material);
        return Encoding.UTF8.GetString(stream.ToArray());
    }
}
