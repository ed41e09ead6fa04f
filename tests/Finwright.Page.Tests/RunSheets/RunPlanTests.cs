using Finwright.Page.RunSheets;

namespace Finwright.Page.Tests.RunSheets;

public sealed class RunPlanTests
{
    private const string Good = """{"layout":1,"language":"en","fahrenheit":false,"origin":"Reed fin","failing":[],"danger":null,"chapters":[{"title":"Pour","said":"","steps":[{"id":"s1","text":"Pour.","reason":"","cautions":["Gloves."],"facts":[{"name":"Cup","value":"85 mm"}],"notes":[],"timer":null,"due":null,"thermometer":null}]}]}""";

    [Fact]
    public void A_plan_that_was_kept_is_read() => Assert.Equal("s1", Assert.Single(RunPlan.Of(Good).Steps()).Id);

    [Theory]
    [InlineData("\"chapters\":", "\"chapter\":")]
    [InlineData("\"steps\":", "\"stairs\":")]
    [InlineData("\"value\":\"85 mm\"", "\"values\":1")]
    [InlineData("\"cautions\":[\"Gloves.\"]", "\"cautions\":[null]")]
    [InlineData("{\"name\":\"Cup\",\"value\":\"85 mm\"}", "null")]
    [InlineData("\"failing\":[]", "\"failing\":null")]
    [InlineData("\"danger\":null", "\"danger\":{\"title\":\"80\",\"lines\":[null]}")]
    [InlineData("\"text\":\"Pour.\"", "\"text\":null")]
    public void A_plan_with_a_gap_is_none(string whole, string broken)
    {
        Assert.Contains(whole, Good, StringComparison.Ordinal);
        Assert.Throws<InvalidDataException>(() => RunPlan.Of(Good.Replace(whole, broken, StringComparison.Ordinal)));
    }

    [Fact]
    public void A_chapter_or_step_that_is_nothing_makes_it_none()
    {
        Assert.Throws<InvalidDataException>(() => RunPlan.Of("""{"language":"en","origin":"Reed fin","chapters":[null]}"""));
        Assert.Throws<InvalidDataException>(() => RunPlan.Of("""{"language":"en","origin":"Reed fin","chapters":[{"title":"Pour","said":"","steps":[null]}]}"""));
    }
}
