using System.Diagnostics;
using System.Net;

namespace Finwright.Browser.Tests;

/// <summary>The folder that is handed on, made and started as its user does. Takes minutes: runs by hand, see docs/page.md.</summary>
[Trait("Pace", "long")]
public sealed class PublishedTests
{
    [Fact]
    public async Task The_folder_runs_from_anywhere_without_dotnet()
    {
        // Without the wish it is held that the folder's own files are there to be handed out.
        foreach (string name in new[] { "add-to-menu.sh", "Finwright.cmd", "Finwright.command" })
            Assert.True(File.Exists(Path.Combine(ServedPage.Sources(), "src", "Finwright", "Handout", name)), name);
        string folder = Directory.CreateTempSubdirectory("finwright published ").FullName;
        try
        {
            string made = Path.Combine(folder, "made"), moved = Path.Combine(folder, "moved elsewhere");
            using Process publish = Process.Start(new ProcessStartInfo("dotnet", ["publish", "src/Finwright", "-c", "Release", "-r", "linux-x64", "--self-contained", "--artifacts-path", Path.Combine(folder, "artifacts"), "-o", made, "-v", "q"]) { WorkingDirectory = ServedPage.Sources() })!;
            await publish.WaitForExitAsync(TestContext.Current.CancellationToken);
            Assert.Equal(0, publish.ExitCode);
            Directory.Move(made, moved);
            Assert.All((List<string>)["LICENSE", "licences.md", "add-to-menu.sh"], name => Assert.True(File.Exists(Path.Combine(moved, name)), name));
            await Works(Path.Combine(moved, "Finwright"), folder);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static async Task Works(string program, string folder)
    {
        // A computer without .NET: nothing of this environment, and no way to it.
        ProcessStartInfo Call(params string[] words)
        {
            ProcessStartInfo start = new(program, words) { UseShellExecute = false, WorkingDirectory = "/", RedirectStandardOutput = true, RedirectStandardError = true };
            start.Environment.Clear();
            start.Environment["PATH"] = "/nowhere";
            start.Environment["HOME"] = folder;
            return start;
        }

        using (Process pack = Process.Start(Call("pack", Path.Combine(ServedPage.Sources(), "examples", "sandbar-delta.fin.json"), "--out", Path.Combine(folder, "pack")))!)
        {
            await pack.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
            await pack.WaitForExitAsync(TestContext.Current.CancellationToken);
            Assert.True(pack.ExitCode is 0 or 1, await pack.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken));
            Assert.True(File.Exists(Path.Combine(folder, "pack", "build-sheet.pdf")));
        }

        using Process serve = Process.Start(Call("serve", "--no-browser", "--port", "0", "--store", Path.Combine(folder, "a.finstore")))!;
        try
        {
            Uri entry = new((await serve.StandardOutput.ReadLineAsync(TestContext.Current.CancellationToken))!.Split(' ')[^1]);
            using HttpClient client = new(new SocketsHttpHandler { UseProxy = false, CookieContainer = new() });
            foreach (string path in new[] { entry.PathAndQuery, "/", "/_content/Finwright.Page/css/page.css", "/_content/Finwright.Page/js/page.js", "/_content/Finwright.Page/vendor/three.module.js", "/_framework/blazor.web.js" })
            {
                using HttpResponseMessage answer = await client.GetAsync(new Uri(entry, path), TestContext.Current.CancellationToken);
                Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
                Assert.True((await answer.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken)).Length > 500, path);
            }
        }
        finally
        {
            serve.Kill();
            await serve.WaitForExitAsync(TestContext.Current.CancellationToken);
        }
    }
}
