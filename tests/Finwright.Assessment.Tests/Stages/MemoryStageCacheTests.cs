using Finwright.Assessment.Stages;

namespace Finwright.Assessment.Tests.Stages;

public sealed class MemoryStageCacheTests
{
    [Fact]
    public void Keep_beyond_the_capacity_drops_the_longest_unused()
    {
        MemoryStageCache cache = new(2);
        cache.Keep(Key("a"), Result("A"));
        cache.Keep(Key("b"), Result("B"));
        Assert.True(cache.TryGet(Key("a"), out StageResult<string>? _));
        cache.Keep(Key("c"), Result("C"));
        Assert.Equal(2, cache.Count);
        Assert.True(cache.TryGet(Key("a"), out StageResult<string>? a));
        Assert.Equal("A", a.Value);
        Assert.False(cache.TryGet(Key("b"), out StageResult<string>? _));
        Assert.True(cache.TryGet(Key("c"), out StageResult<string>? _));
    }

    [Fact]
    public void Keep_of_a_known_key_replaces_without_growing()
    {
        MemoryStageCache cache = new(2);
        cache.Keep(Key("a"), Result("old"));
        cache.Keep(Key("a"), Result("new"));
        Assert.Equal(1, cache.Count);
        Assert.True(cache.TryGet(Key("a"), out StageResult<string>? result));
        Assert.Equal("new", result.Value);
    }

    [Fact]
    public void Capacity_of_nothing_is_refused() => Assert.Throws<ArgumentOutOfRangeException>(() => new MemoryStageCache(0));

    [Fact]
    public void StageKey_of_fields_depends_on_where_they_are_parted() => Assert.NotEqual(StageKey.Of("ab", "c"), StageKey.Of("a", "bc"));

    // NIST FIPS 180-4 algorithm; digest of the seven bytes 03 00 00 00 61 62 63 worked out with sha256sum.
    [Fact]
    public void StageKey_is_the_sha256_of_length_and_text() =>
        Assert.Equal("3da9865b43fa2ec490f78da9db16acd5638704dbce5cc7b3df2e3c7a23addf19", StageKey.Of("abc").Hex);

    private static StageKey Key(string name) => StageKey.Of(name);

    private static StageResult<string> Result(string value) => new(value, []);
}
