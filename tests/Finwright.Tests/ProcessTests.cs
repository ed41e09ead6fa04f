using System.Diagnostics;
using System.Globalization;
using System.Text;
using System.Text.Json;

namespace Finwright.Tests;

/// <summary>The program as a shell starts it: real streams, real exit codes, real Ctrl-C.</summary>
public sealed class ProcessTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData(0, "--version")]
    [InlineData(0, "section", "naca-0010")]
    [InlineData(2, "section", "banana")]
    [InlineData(2, "check", "missing.fin.json")]
    [InlineData(2, "sail")]
    public async Task Exit_code_reaches_the_shell(int code, params string[] words) => Assert.Equal(code, (await Call(words)).Code);

    [Fact]
    public async Task Exit_code_1_reaches_the_shell_when_the_fin_cannot_be_made()
    {
        string file = _folder.Write("a.fin.json", DemoDesigns.Find("sandbar-delta")!.Replace("\"from_front_mm\": 98", "\"from_front_mm\": 150", StringComparison.Ordinal));
        Assert.Equal(1, (await Call("check", file)).Code);
    }

    [Fact]
    public async Task Output_is_utf8_without_a_mark_and_progress_is_silent_away_from_a_terminal()
    {
        string file = _folder.Write("a.fin.json", DemoDesigns.Find("sandbar-delta")!.Replace("Sandbar delta", "Möwe 21", StringComparison.Ordinal));
        (int code, byte[] output, string error) = await Call("check", file, "--json");
        Assert.Equal(0, code);
        Assert.Equal("", error);
        Assert.Equal((byte)'{', output[0]);
        Assert.Equal("Möwe 21", JsonDocument.Parse(output).RootElement.GetProperty("name").GetString());
    }

    [Fact]
    public async Task Numbers_are_written_with_a_point_whatever_the_language_of_the_system()
    {
        (_, byte[] output, _) = await Call("section", "naca-0010");
        Assert.Contains("0.068508", Encoding.UTF8.GetString(output), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Ctrl_C_ends_with_130_and_leaves_nothing_behind()
    {
        // A tolerance of half a micrometre keeps the loft and the cutting busy for long enough to be stopped.
        string file = _folder.Write("a.fin.json", DemoDesigns.Find("fairway-upright")!.Replace("\"trailing_edge_mm\"", "\"skin_tolerance_mm\": 0.0005, \"trailing_edge_mm\"", StringComparison.Ordinal));
        using Process process = Start("pack", file, "--out", _folder["out"]);
        await UntilInterruptsAreCaught(process);
        using (Process signal = Process.Start("kill", ["-INT", process.Id.ToString(CultureInfo.InvariantCulture)])!)
            await signal.WaitForExitAsync(TestContext.Current.CancellationToken);
        string error = await process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        Assert.Contains("stopped", error, StringComparison.Ordinal);
        Assert.Equal(130, process.ExitCode);
        Assert.Equal(["a.fin.json"], _folder.Files());
    }

    /// <summary>A signal sent while the program still starts would end it, or be lost, before it can answer.</summary>
    private static async Task UntilInterruptsAreCaught(Process process)
    {
        const ulong Interrupt = 1 << 1;
        string status = $"/proc/{process.Id}/status";
        for (int i = 0; i < 300 && File.Exists(status); i++)
        {
            string? caught = Array.Find(await File.ReadAllLinesAsync(status, TestContext.Current.CancellationToken), line => line.StartsWith("SigCgt:", StringComparison.Ordinal));
            if (caught is not null && (ulong.Parse(caught[7..].Trim(), NumberStyles.HexNumber, CultureInfo.InvariantCulture) & Interrupt) != 0)
                break;
            await Task.Delay(100, TestContext.Current.CancellationToken);
        }

        await Task.Delay(TimeSpan.FromSeconds(1.5), TestContext.Current.CancellationToken);
    }

    private async Task<(int Code, byte[] Output, string Error)> Call(params string[] words)
    {
        using Process process = Start(words);
        Task<string> error = process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        using MemoryStream output = new();
        await process.StandardOutput.BaseStream.CopyToAsync(output, TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        return (process.ExitCode, output.ToArray(), await error);
    }

    private Process Start(params string[] words)
    {
        ProcessStartInfo start = new("dotnet", [Path.Combine(AppContext.BaseDirectory, "Finwright.dll"), .. words])
        {
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = _folder.Path,
        };
        start.Environment["LANG"] = "de_DE.UTF-8";
        return Process.Start(start)!;
    }
}
