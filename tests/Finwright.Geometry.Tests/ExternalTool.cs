using System.ComponentModel;
using System.Diagnostics;

namespace Finwright.Geometry.Tests;

/// <summary>
/// Independent programs that judge our files. A missing one fails the test and names the Debian package that brings it.
/// </summary>
internal static class ExternalTool
{
    /// <summary>Runs a program and returns what it printed; a non-zero exit code fails the test.</summary>
    public static string Run(string program, string debianPackages, params IReadOnlyList<string> arguments)
    {
        ProcessStartInfo start = new(program, arguments) { RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false };
        try
        {
            using Process process = Process.Start(start)!;
            Task<string> errors = process.StandardError.ReadToEndAsync();
            string output = process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            Assert.True(process.ExitCode == 0, $"{program} ended with {process.ExitCode} (needs the Debian packages {debianPackages}):\n{output}\n{errors.Result}");
            return output;
        }
        catch (Win32Exception)
        {
            Assert.Fail($"{program} was not found. Install the Debian packages {debianPackages}.");
            throw;
        }
    }

    /// <summary>Compiles one of our checkers in tests/tools into a folder and returns the program's path.</summary>
    public static string Compile(string source, string folder, string debianPackages, params IReadOnlyList<string> options)
    {
        string program = Path.Combine(folder, Path.GetFileNameWithoutExtension(source));
        Run("g++", $"g++ {debianPackages}", ["-O1", "-o", program, Path.Combine(RepositoryRoot(), "tests", "tools", source), .. options]);
        return program;
    }

    private static string RepositoryRoot()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "finwright.slnx")))
            folder = folder.Parent;
        return folder?.FullName ?? throw new InvalidOperationException("finwright.slnx was not found above the test's folder.");
    }
}
