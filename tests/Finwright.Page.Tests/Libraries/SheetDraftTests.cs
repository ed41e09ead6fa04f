using Finwright.Page.Libraries;
using Finwright.Strength.Files;
using Finwright.Strength.Materials;
using Finwright.Workshop.Library;

namespace Finwright.Page.Tests.Libraries;

public sealed class SheetDraftTests
{
    private readonly SheetDraft _draft = new(new KeptMaterial(MaterialLibrary.Get<PrintedPlastic>("petg-printed")));

    [Fact]
    public void A_typed_value_takes_its_range_along_and_names_the_maker_as_its_source()
    {
        _draft.TypeValue("modulus_along_gpa", "2,2");
        TypedNumber number = _draft["modulus_along_gpa"];
        Assert.Equal("judgement", number.Certainty);
        Assert.Equal(1.7 * 2.2 / 2, double.Parse(number.Low, System.Globalization.CultureInfo.InvariantCulture), 9);
        Assert.Equal(2.2e9, Assert.IsType<PrintedPlastic>(Assert.IsType<KeptMaterial>(_draft.Content).Material).ModulusAlong.Value, 1);
    }

    [Theory]
    [InlineData("modulus_along_gpa", "stiff")]
    [InlineData("density_kg_per_m3", "1e9")]
    [InlineData("poisson", "")]
    public void What_cannot_be_meant_is_said_at_its_field_and_nothing_is_given(string key, string typed)
    {
        _draft.TypeValue(key, typed);
        Assert.Null(_draft.Content);
        Assert.Contains(_draft.Findings, finding => finding.Path.StartsWith("$." + key, StringComparison.Ordinal));
        _draft.TypeValue(key, "1.2e3");
        _draft.TypeValue(key, key == "poisson" ? "0.38" : key == "density_kg_per_m3" ? "1270" : "2");
        Assert.NotNull(_draft.Content);
    }

    [Fact]
    public void A_name_for_people_becomes_a_name_for_files()
    {
        _draft.Name = "Graues PETG, Spule 3 (schön)";
        Assert.Equal("graues-petg-spule-3-schoen", Assert.IsType<KeptMaterial>(_draft.Content).Material.Name);
        Assert.Equal("own", LibraryShelf.SlugOf("…"));
        Assert.Equal(40, LibraryShelf.SlugOf(new string('a', 90)).Length);
    }
}
