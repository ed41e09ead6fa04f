using System.Diagnostics;
using System.Globalization;

namespace Finwright.Page.Tests.RunSheets;

/// <summary>The script that judges a thermometer's reading on a phone, run as a browser runs it.</summary>
public sealed class JudgeScriptTests
{
    // By hand: from 293 to 313 K in an hour, 10 K either way at its end.
    private const string Curve = "[[0,293,293,293],[3600,303,313,323]]", Limit = "338";

    [Theory]
    [InlineData("303", "1800", "expected")]
    [InlineData("309.9", "1800", "expected")]
    [InlineData("310.1", "1800", "warm")]
    [InlineData("295.9", "1800", "cool")]
    [InlineData("333.1", "1800", "danger")]
    [InlineData("350", "null", "danger")]
    [InlineData("303", "null", "unknown")]
    [InlineData("303", "-5", "unknown")]
    [InlineData("303", "7200", "unknown")]
    public async Task A_reading_is_held_against_the_range_and_the_limit(string kelvin, string seconds, string state) =>
        Assert.Equal(state, await Ask($"judge({Limit}, {Curve}, {kelvin}, {seconds}).state"));

    [Fact]
    public async Task Without_a_limit_nothing_is_a_danger() => Assert.Equal("warm", await Ask($"judge(null, {Curve}, 350, 1800).state"));

    [Fact]
    public async Task Between_points_the_curve_is_straight() => Assert.Equal("900 295.5 298 300.5", await Ask($"expectedAt({Curve}, 900).join(' ')"));

    private static async Task<string> Ask(string expression)
    {
        // Node takes a file for a module by its name.
        string module = Path.Combine(Path.GetTempPath(), string.Create(CultureInfo.InvariantCulture, $"finwright-judge-{Guid.NewGuid():N}.mjs"));
        string script = await File.ReadAllTextAsync(Path.Combine(MadeFin.Root, "src", "Finwright.Page", "wwwroot", "js", "judge.js"), TestContext.Current.CancellationToken);
        await File.WriteAllTextAsync(module, $"{script}\nconsole.log({expression});\n", TestContext.Current.CancellationToken);
        try
        {
            using Process node = Process.Start(new ProcessStartInfo("node", [module]) { UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true })!;
            Task<string> told = node.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken), wrong = node.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
            await node.WaitForExitAsync(TestContext.Current.CancellationToken);
            Assert.True(node.ExitCode == 0, await wrong);
            return (await told).Trim();
        }
        finally
        {
            File.Delete(module);
        }
    }
}
