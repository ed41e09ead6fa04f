using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Sockets;
using System.Text.Json;
using Finwright.Terminal;

namespace Finwright.Tests;

/// <summary>The page served as a process of its own, and how it ends.</summary>
public sealed class ServeTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task It_tells_where_the_page_is_and_ends_well_with_Ctrl_C()
    {
        using Process served = Start("serve", "--no-browser", "--json", "--port", "0", "--store", _folder["a.finstore"]);
        using JsonDocument said = JsonDocument.Parse(await Answer(served));
        Assert.Equal("finwright-serve", said.RootElement.GetProperty("format").GetString());
        Uri entry = new(said.RootElement.GetProperty("address").GetString()!);
        Assert.Equal("127.0.0.1", entry.Host);
        await End(served);
        Assert.Equal(0, served.ExitCode);
        Assert.Equal("", await served.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task A_second_start_leads_to_the_page_that_is_open_already_and_a_foreign_store_does_not()
    {
        using Process first = Start("serve", "--no-browser", "--json", "--port", "0", "--store", _folder["a.finstore"]);
        Uri entry = AddressOf(await Answer(first));
        string port = entry.Port.ToString(CultureInfo.InvariantCulture);
        using Process second = Start("serve", "--no-browser", "--json", "--port", port, "--store", _folder["a.finstore"]);
        Uri again = AddressOf(await Answer(second));
        await second.WaitForExitAsync(TestContext.Current.CancellationToken);
        Assert.Equal((0, entry.Port), (second.ExitCode, again.Port));
        Assert.NotEqual(entry, again);
        using HttpClient client = new(new SocketsHttpHandler { AllowAutoRedirect = false, UseCookies = false, UseProxy = false });
        foreach (HttpStatusCode expected in new[] { HttpStatusCode.Redirect, HttpStatusCode.Forbidden })
        {
            using HttpResponseMessage entered = await client.GetAsync(again, TestContext.Current.CancellationToken);
            Assert.Equal(expected, entered.StatusCode);
        }

        Directory.CreateDirectory(_folder["b"]);
        using Process other = Start("serve", "--no-browser", "--port", port, "--store", Path.Combine(_folder["b"], "b.finstore"));
        string error = await other.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        await other.WaitForExitAsync(TestContext.Current.CancellationToken);
        Assert.Equal(2, other.ExitCode);
        Assert.Contains($"Port {port} is taken", error, StringComparison.Ordinal);
        await End(first);
    }

    [Fact]
    public async Task Somebody_else_on_the_port_is_told_and_learns_nothing()
    {
        // One start makes the key; what listens on the port afterwards is another program.
        using (Process made = Start("serve", "--no-browser", "--json", "--port", "0", "--store", _folder["a.finstore"]))
        {
            await Answer(made);
            await End(made);
        }

        using TcpListener other = new(IPAddress.Loopback, 0);
        other.Start();
        string key = await File.ReadAllTextAsync(Path.Combine(_folder.Path, "page", "page.key"), TestContext.Current.CancellationToken);
        using Process served = Start("serve", "--no-browser", "--port", ((IPEndPoint)other.LocalEndpoint).Port.ToString(CultureInfo.InvariantCulture), "--store", _folder["a.finstore"]);
        using TcpClient asked = await other.AcceptTcpClientAsync(TestContext.Current.CancellationToken);
        await using NetworkStream stream = asked.GetStream();
        byte[] bytes = new byte[4096];
        int length = await stream.ReadAsync(bytes, TestContext.Current.CancellationToken);
        string question = System.Text.Encoding.ASCII.GetString(bytes, 0, length);
        Assert.DoesNotContain(key, question, StringComparison.OrdinalIgnoreCase);
        await stream.WriteAsync("HTTP/1.1 200 OK\r\nContent-Length: 9\r\n\r\nrun proof"u8.ToArray(), TestContext.Current.CancellationToken);
        string error = await served.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        await served.WaitForExitAsync(TestContext.Current.CancellationToken);
        Assert.Equal(2, served.ExitCode);
        Assert.Contains("is taken", error, StringComparison.Ordinal);
        Assert.Contains("What to do:", error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_store_that_is_none_is_told() =>
        Assert.Contains("is not a workshop store", ProgramRun.Of("serve", "--no-browser", "--port", "0", "--store", _folder.Write("notes.txt", "what the wind was like")).IsRefusal().Error, StringComparison.Ordinal);

    [Theory]
    [InlineData(true, "DISPLAY", "/dev/null", "/dev/null", "/dev/null")]
    [InlineData(true, "WAYLAND_DISPLAY", "/dev/null", "socket:[123]", "socket:[123]")]
    [InlineData(true, "DISPLAY", "/dev/null", "/home/a/.xsession-errors", "/home/a/.xsession-errors")]
    [InlineData(false, "HOME", "/dev/null", "/dev/null", "/dev/null")]
    [InlineData(false, "DISPLAY", "/dev/pts/0", "/dev/pts/0", "/dev/pts/0")]
    [InlineData(false, "DISPLAY", "/dev/null", "/dev/pts/0", "/dev/null")]
    [InlineData(false, "DISPLAY", "/dev/null", "pipe:[5]", "/dev/null")]
    [InlineData(false, "DISPLAY", "pipe:[5]", "/dev/null", "/dev/null")]
    [InlineData(false, "DISPLAY", "", "", "")]
    public void A_double_click_is_told_from_a_call(bool isOne, string variable, params string[] streams) =>
        Assert.Equal(isOne, DesktopStart.IsSo(name => name == variable ? ":0" : null, streams));

    [Fact]
    public async Task Started_by_a_double_click_it_serves_and_shows_in_a_browser_what_keeps_it_from_that()
    {
        // A browser of our own that writes down what it is asked to open.
        string opener = _folder.Write("xdg-open", "#!/bin/sh\necho \"$1\" > \"$FINWRIGHT_OPENED.part\" && mv \"$FINWRIGHT_OPENED.part\" \"$FINWRIGHT_OPENED\"\n");
        File.SetUnixFileMode(opener, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        string opened = _folder["opened"];
        // Its streams lead where a desktop leads them.
        ProcessStartInfo start = new("/bin/sh", ["-c", "exec dotnet \"$0\" < /dev/null > /dev/null 2> /dev/null", Program]) { UseShellExecute = false };
        start.Environment["DISPLAY"] = ":99";
        start.Environment["FINWRIGHT_STORE"] = _folder.Write("notes.txt", "what the wind was like");
        start.Environment["FINWRIGHT_OPENED"] = opened;
        start.Environment["PATH"] = _folder.Path + ":" + Environment.GetEnvironmentVariable("PATH");
        using Process process = Process.Start(start)!;
        for (int i = 0; i < 600 && !File.Exists(opened); i++)
            await Task.Delay(100, TestContext.Current.CancellationToken);
        using HttpClient client = new(new SocketsHttpHandler { UseProxy = false });
        Uri address = new((await File.ReadAllTextAsync(opened, TestContext.Current.CancellationToken)).Trim());
        using HttpResponseMessage answer = await client.GetAsync(address, TestContext.Current.CancellationToken);
        string text = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        Assert.Contains("is not a workshop store", text, StringComparison.Ordinal);
        using HttpResponseMessage guessed = await client.GetAsync(new Uri(address, "/"), TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.NotFound, guessed.StatusCode);
        await End(process);
    }

    // The program as the build left it: its files for the browser lie there.
    private static string Program => Path.GetFullPath(Path.Combine(AppContext.BaseDirectory, "..", "..", "Finwright", Path.GetFileName(AppContext.BaseDirectory.TrimEnd(Path.DirectorySeparatorChar)), "Finwright.dll"));

    private Process Start(params string[] words) =>
        Process.Start(new ProcessStartInfo("dotnet", [Program, .. words]) { UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true, WorkingDirectory = _folder.Path })!;

    private static async Task<string> Answer(Process served)
    {
        string answer = "";
        while (!answer.EndsWith('}'))
            answer += await served.StandardOutput.ReadLineAsync(TestContext.Current.CancellationToken) ?? throw new InvalidOperationException(await served.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken));
        return answer;
    }

    private static Uri AddressOf(string answer)
    {
        using JsonDocument said = JsonDocument.Parse(answer);
        return new(said.RootElement.GetProperty("address").GetString()!);
    }

    private static async Task End(Process process)
    {
        using Process signal = Process.Start("kill", ["-INT", process.Id.ToString(CultureInfo.InvariantCulture)])!;
        await signal.WaitForExitAsync(TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
    }
}
