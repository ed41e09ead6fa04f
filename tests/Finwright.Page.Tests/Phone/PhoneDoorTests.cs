using System.Net;
using Finwright.Page.Phone;

namespace Finwright.Page.Tests.Phone;

public sealed class PhoneDoorTests
{
    [Fact]
    public void Guessing_closes_the_door_until_a_new_code_is_asked_for()
    {
        PhoneDoor door = new(TimeProvider.System);
        string code = door.Code!;
        for (int i = 0; i < PhoneDoor.MostWrong; i++)
            Assert.Null(door.Admit("wrong", ""));
        Assert.Null(door.Code);
        Assert.Null(door.Admit(code, ""));
        door.NewCode();
        Assert.NotEqual(code, door.Code);
        Assert.NotNull(door.Admit(door.Code!.ToUpperInvariant() + " ", ""));
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("00")]
    [InlineData("zzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzz")]
    [InlineData("0000000000000000000000000000000000000000000000000000000000000000")]
    public void A_key_that_was_never_given_is_not_known(string? key)
    {
        PhoneDoor door = new(TimeProvider.System);
        Assert.True(door.Knows(door.Admit(door.Code!, "Mozilla (iPhone)")));
        Assert.False(door.Knows(key));
        Assert.Equal("iPhone", Assert.Single(door.Phones).Name);
    }

    [Theory]
    [InlineData("10.0.0.4", true)]
    [InlineData("172.16.0.1", true)]
    [InlineData("172.32.0.1", false)]
    [InlineData("192.168.178.20", true)]
    [InlineData("8.8.8.8", false)]
    [InlineData("127.0.0.1", false)]
    [InlineData("::1", false)]
    public void Only_addresses_of_home_networks_are_offered(string address, bool isPrivate) => Assert.Equal(isPrivate, HomeAddresses.IsPrivate(IPAddress.Parse(address)));
}
