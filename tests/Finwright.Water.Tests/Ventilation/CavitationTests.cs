using Finwright.Water.Ventilation;

namespace Finwright.Water.Tests.Ventilation;

public sealed class CavitationTests
{
    private static readonly WaterProperties Sea = WaterProperties.Sea(15);

    [Fact]
    public void InceptionSpeed_is_where_the_suction_equals_the_cavitation_number() =>
        Assert.Equal(1.7, Cavitation.Number(Sea, 0.12, Cavitation.InceptionSpeed(Sea, 0.12, -1.7)!.Value), 1e-12);

    [Fact]
    public void InceptionSpeed_without_suction_is_never() => Assert.Null(Cavitation.InceptionSpeed(Sea, 0.3, 0.1));

    [Fact]
    public void Number_falls_with_speed_squared_and_rises_with_depth()
    {
        Assert.Equal(4, Cavitation.Number(Sea, 0.2, 7) / Cavitation.Number(Sea, 0.2, 14), 1e-12);
        Assert.True(Cavitation.Number(Sea, 0.4, 7) > Cavitation.Number(Sea, 0.2, 7));
    }

    [Fact]
    public void Number_at_rest_refuses() => Assert.Throws<ArgumentOutOfRangeException>(() => Cavitation.Number(Sea, 0.2, 0));
}
