using System.ComponentModel;
using System.Diagnostics;
using System.Text.Json;

namespace Finwright.Bench.References;

/// <summary>Asks a script in <c>bench/references</c>: one question as JSON in, one answer as JSON out.</summary>
internal static class ReferenceProgram
{
    // The scripts end so when what they build on is not there.
    private const int NotInstalled = 3;

    /// <summary>Debian's own Python, which finds Debian's packages; another one on the path may not.</summary>
    public static string Python => File.Exists("/usr/bin/python3") ? "/usr/bin/python3" : "python3";

    /// <summary>Runs a script to its end.</summary>
    /// <param name="program">What runs it.</param>
    /// <param name="script">Its file name.</param>
    /// <param name="packages">The Debian packages it needs.</param>
    /// <param name="question">What it is asked.</param>
    /// <exception cref="ReferenceMissingException">Program or packages are not installed.</exception>
    /// <exception cref="InvalidOperationException">The script failed.</exception>
    public static JsonElement Ask(string program, string script, string packages, object question)
    {
        ProcessStartInfo start = new(program)
        {
            UseShellExecute = false,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = Examples.Repository,
        };
        if (script.EndsWith(".py", StringComparison.Ordinal))
            start.ArgumentList.Add("-B");
        start.ArgumentList.Add(Path.Combine(Examples.Repository, "bench", "references", script));
        // Ours is measured on one thread, too.
        foreach (string threads in new[] { "OMP_NUM_THREADS", "OPENBLAS_NUM_THREADS", "MKL_NUM_THREADS" })
            start.Environment[threads] = "1";
        using Process process = Start(start, packages);
        Task<string> errors = process.StandardError.ReadToEndAsync(), output = process.StandardOutput.ReadToEndAsync();
        try
        {
            JsonSerializer.Serialize(process.StandardInput.BaseStream, question);
            process.StandardInput.Close();
        }
        catch (IOException)
        {
            // It ended before it had read everything; its exit code tells why.
        }

        process.WaitForExit();
        if (process.ExitCode == NotInstalled)
            throw new ReferenceMissingException(packages, errors.Result.Trim());
        if (process.ExitCode != 0)
            throw new InvalidOperationException($"{script} ended with {process.ExitCode}: {errors.Result.Trim()}");
        return JsonSerializer.Deserialize<JsonElement>(output.Result);
    }

    /// <summary>The times in an answer.</summary>
    public static Times Times(JsonElement answer) => References.Times.Of(Numbers(answer, "seconds"));

    /// <summary>A list of numbers in an answer.</summary>
    public static double[] Numbers(JsonElement answer, string name) => [.. answer.GetProperty(name).EnumerateArray().Select(number => number.GetDouble())];

    /// <summary>What answered: its version, and the libraries below it.</summary>
    public static string Name(JsonElement answer)
    {
        string version = answer.GetProperty("version").GetString()!;
        return answer.TryGetProperty("libraries", out JsonElement libraries)
            ? $"{version} on {string.Join(", ", libraries.EnumerateArray().Select(library => library.GetString()))}"
            : version;
    }

    private static Process Start(ProcessStartInfo start, string packages)
    {
        try
        {
            return Process.Start(start)!;
        }
        catch (Win32Exception)
        {
            throw new ReferenceMissingException(packages, $"{start.FileName} was not found.");
        }
    }
}

/// <summary>A reference is not installed; the comparison is then left out.</summary>
/// <param name="packages">The Debian packages that bring it.</param>
/// <param name="message">What was not found.</param>
internal sealed class ReferenceMissingException(string packages, string message) : Exception(message)
{
    public string Packages { get; } = packages;
}
