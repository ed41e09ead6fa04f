using Finwright.Assessment.Caching;

namespace Finwright.Tests;

/// <summary>Names another folder for curves of sections, which all tests of this process would share: so no other runs beside it.</summary>
[CollectionDefinition(nameof(CurveCacheTests), DisableParallelization = true)]
[Collection(nameof(CurveCacheTests))]
public sealed class CurveCacheTests
{
    [Fact]
    public void Water_from_the_cache_gives_the_same_bytes_as_solved()
    {
        using TemporaryFolder folder = new();
        // One speed, so that few curves are solved.
        string design = folder.Write("one-speed.fin.json", DemoDesigns.Find("sandbar-delta")!.Replace("\"rider_mass_kg\": 78", "\"rider_mass_kg\": 78, \"getting_going_speed_m_per_s\": 8.9, \"cruise_speed_m_per_s\": 9, \"top_speed_m_per_s\": 9.1", StringComparison.Ordinal));
        string elsewhere = folder["another-cache"];
        Environment.SetEnvironmentVariable(CacheFolder.Variable, elsewhere);
        try
        {
            string solved = ProgramRun.Of("water", design, "--json").Out;
            Assert.NotEmpty(Directory.EnumerateFiles(elsewhere));
            Assert.Equal(solved, ProgramRun.Of("water", design, "--json").Out);
        }
        finally
        {
            TestCache.Set();
        }
    }
}
