using Finwright.Page.Hosting;
using Microsoft.AspNetCore.Http;

namespace Finwright.Page.Tests.Hosting;

public sealed class LocalDoorTests : IDisposable
{
    private const int Port = 5614;

    private readonly string _folder = Directory.CreateTempSubdirectory("finwright-door-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public async Task A_ticket_is_good_once()
    {
        LocalDoor door = LocalDoor.Of(_folder);
        string ticket = door.Ticket();
        Assert.Equal(StatusCodes.Status302Found, await Enter(door, ticket));
        Assert.Equal(StatusCodes.Status403Forbidden, await Enter(door, ticket));
    }

    [Fact]
    public void The_key_outlives_the_program_so_that_an_open_page_comes_back()
    {
        LocalDoor before = LocalDoor.Of(_folder), after = LocalDoor.Of(_folder);
        Assert.Equal(before.Cookie, after.Cookie);
        Assert.Equal(before.Proof(Port, "a"), after.Proof(Port, "a"));
        Assert.NotEqual(before.Run, after.Run);
    }

    [Fact]
    public void A_key_file_that_makes_no_sense_is_made_anew()
    {
        File.WriteAllText(Path.Combine(_folder, "page.key"), "no key");
        Assert.Null(LocalDoor.Existing(_folder));
        LocalDoor door = LocalDoor.Of(_folder);
        Assert.Equal(door.Cookie, LocalDoor.Existing(_folder)!.Cookie);
    }

    [Fact]
    public void A_proof_is_worth_nothing_for_another_port_question_or_key()
    {
        LocalDoor door = LocalDoor.Of(_folder), other = LocalDoor.Of(Directory.CreateDirectory(Path.Combine(_folder, "other")).FullName);
        Assert.Equal(4, new[] { door.Proof(Port, "a"), door.Proof(Port + 1, "a"), door.Proof(Port, "b"), other.Proof(Port, "a") }.Distinct(StringComparer.Ordinal).Count());
        Assert.NotEqual(door.Cookie, other.Cookie);
    }

    [Fact]
    public async Task A_pass_lets_in_once_at_its_port_in_its_run()
    {
        LocalDoor running = LocalDoor.Of(_folder), second = LocalDoor.Existing(_folder)!;
        string pass = second.Pass(Port, running.Run);
        Assert.Equal(StatusCodes.Status403Forbidden, await Enter(running, pass, Port + 1));
        Assert.Equal(StatusCodes.Status302Found, await Enter(running, pass));
        Assert.Equal(StatusCodes.Status403Forbidden, await Enter(running, pass));
        Assert.Equal(StatusCodes.Status403Forbidden, await Enter(running, second.Pass(Port, second.Run)));
        Assert.Equal(StatusCodes.Status403Forbidden, await Enter(running, pass.Split('.')[0] + "." + new string('0', 64)));
    }

    private static async Task<int> Enter(LocalDoor door, string key, int port = Port)
    {
        DefaultHttpContext context = new();
        context.Request.QueryString = new("?key=" + key);
        context.Connection.LocalPort = port;
        await door.Enter(context);
        return context.Response.StatusCode;
    }
}
