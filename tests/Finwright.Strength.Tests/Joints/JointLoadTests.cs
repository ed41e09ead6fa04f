using Finwright.Strength.Joints;

namespace Finwright.Strength.Tests.Joints;

public sealed class JointLoadTests
{
    [Fact]
    public void Times_takes_each_part_of_the_load_times_the_factor() => Assert.Equal(new JointLoad(5, -7.5, 10), new JointLoad(2, -3, 4).Times(2.5));
}
