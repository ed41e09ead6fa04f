using System.Text.Json;
using Finwright.Terminal;

namespace Finwright.Tests;

public sealed class StrengthTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Strength_as_json_has_its_fields_and_ends_with_1_just_when_a_verdict_fails()
    {
        // Plastic of a tenth of its strength breaks; one speed, so that few curves are solved.
        string weak = DemoDesigns.Find("sandbar-delta")!
            .Replace("\"rider_mass_kg\": 78", "\"rider_mass_kg\": 78, \"getting_going_speed_m_per_s\": 8.9, \"cruise_speed_m_per_s\": 9, \"top_speed_m_per_s\": 9.1", StringComparison.Ordinal)
            .Replace("\"materials\": {", "\"materials\": { \"printed\": { \"strength_mpa\": 4 },", StringComparison.Ordinal);
        ProgramRun run = ProgramRun.Of("strength", _folder.Write("weak.fin.json", weak), "--json");
        JsonElement answer = run.Json();
        Assert.Equal("finwright-strength", answer.GetProperty("kind").GetString());
        JsonElement[] verdicts = [.. answer.GetProperty("verdicts").EnumerateArray()];
        Assert.Contains(verdicts, own => own.GetProperty("state").GetString() == "fails");
        Assert.Equal(ExitCode.Fails, run.ExitCode);
        Assert.All(verdicts, own => Assert.False(string.IsNullOrEmpty(own.GetProperty("how_sure").GetString())));
        foreach (string field in (string[])["sentence", "load_cases", "frequencies_in_air_hz", "frequencies_in_water_hz", "root", "assumptions", "findings", "design_sha256"])
            Assert.True(answer.TryGetProperty(field, out _), field);
        Assert.NotEmpty(answer.GetProperty("load_cases").EnumerateArray());
    }
}
