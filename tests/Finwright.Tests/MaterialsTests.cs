using System.Text.Json;
using Finwright.Strength.Files;
using Finwright.Terminal;

namespace Finwright.Tests;

public sealed class MaterialsTests : IDisposable
{
    private static readonly string Delta = DemoDesigns.Find("sandbar-delta")!;
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Materials_lists_the_library_as_text_and_as_json()
    {
        ProgramRun text = ProgramRun.Of("materials");
        JsonElement json = ProgramRun.Of("materials", "--json").Json();
        Assert.All(MaterialLibrary.All, material => Assert.Contains($"  {material.Name} ", text.Out, StringComparison.Ordinal));
        Assert.Equal(MaterialLibrary.All.Select(material => material.Name), json.GetProperty("materials").EnumerateArray().Select(own => own.GetProperty("name").GetString()!), StringComparer.Ordinal);
        Assert.All(text.Out.Split('\n'), line => Assert.True(line.Length <= 80, line));
    }

    [Fact]
    public void Materials_of_a_name_shows_each_number_with_its_source()
    {
        string shown = ProgramRun.Of("materials", "petg-printed").Out;
        JsonElement numbers = Assert.Single(ProgramRun.Of("materials", "petg-printed", "--json").Json().GetProperty("materials").EnumerateArray()).GetProperty("numbers");
        Assert.All(numbers.EnumerateArray(), number =>
        {
            Assert.Contains(number.GetProperty("field").GetString()!, shown, StringComparison.Ordinal);
            Assert.False(string.IsNullOrEmpty(number.GetProperty("source").GetString()));
        });
        Assert.Equal(8, numbers.GetArrayLength());
        Assert.Contains("materials.printed", shown, StringComparison.Ordinal);
    }

    [Fact]
    public void A_copied_and_changed_material_bends_the_fin_as_its_modulus_says()
    {
        string copy = _folder["own.material.json"];
        Assert.Equal(ExitCode.Good, ProgramRun.Of("materials", "petg-printed", "--copy", copy).ExitCode);
        string design = _folder.Write("own.fin.json", Delta.Replace("\"materials\": {", "\"materials\": { \"printed\": { \"file\": \"own.material.json\" },", StringComparison.Ordinal));
        double plain = Tip(_folder.Write("plain.fin.json", Delta));
        // An unchanged copy is the library's own.
        Assert.Equal(plain, Tip(design), 1e-9);
        string text = File.ReadAllText(copy), stiffer = text.Replace("\"value\": 2,", "\"value\": 2.3,", StringComparison.Ordinal).Replace("\"value\": 1.8,", "\"value\": 2.1,", StringComparison.Ordinal);
        Assert.False(string.Equals(text, stiffer, StringComparison.Ordinal));
        File.WriteAllText(copy, stiffer);
        // The walls' modulus is 15 to 17 % higher and the core's little: at most 1/1.17 of the deflection, if the walls were all of the blade; they are a quarter of its bending or more.
        Assert.InRange(Tip(design) / plain, 1 / 1.17, 1 / (1 + 0.25 * 0.15));
    }

    [Fact]
    public void Copy_never_replaces_a_file_unasked_and_wants_the_ending()
    {
        string copy = _folder.Write("own.material.json", "mine");
        Assert.Contains("exists already", ProgramRun.Of("materials", "brass", "--copy", copy).IsRefusal().Error, StringComparison.Ordinal);
        Assert.Equal("mine", File.ReadAllText(copy));
        Assert.Equal(ExitCode.Good, ProgramRun.Of("materials", "brass", "--copy", copy, "--overwrite").ExitCode);
        Assert.Contains(".material.json", ProgramRun.Of("materials", "brass", "--copy", _folder["own.json"]).IsRefusal().Error, StringComparison.Ordinal);
        ProgramRun.Of("materials", "--copy", _folder["all.material.json"]).IsRefusal();
        ProgramRun.Of("materials", "brass", "--overwrite").IsRefusal();
        ProgramRun.Of("materials", "brass", "--copy", "").IsRefusal();
    }

    [Fact]
    public void An_unknown_name_is_refused_with_the_nearest() =>
        Assert.Contains("Perhaps \"petg-printed\" is meant", ProgramRun.Of("materials", "petg-printd").IsRefusal().Error.ReplaceLineEndings(" ").Replace("           ", "", StringComparison.Ordinal), StringComparison.Ordinal);

    [Fact]
    public void A_material_of_the_wrong_kind_is_refused_in_its_place()
    {
        Assert.Equal(ExitCode.Good, ProgramRun.Of("materials", "brass", "--copy", _folder["brass.material.json"]).ExitCode);
        string design = _folder.Write("brass.fin.json", Delta.Replace("\"materials\": {", "\"materials\": { \"printed\": { \"file\": \"brass.material.json\" },", StringComparison.Ordinal));
        ProgramRun run = ProgramRun.Of("bench", design);
        Assert.Equal(ExitCode.WrongInput, run.ExitCode);
        Assert.Contains("$.materials.printed", run.Error, StringComparison.Ordinal);
    }

    private static double Tip(string design) =>
        ProgramRun.Of("bench", design, "--root", "clamped", "--json").Json().GetProperty("deflectionMm").GetProperty("tip").GetProperty("midChord").GetDouble();
}
