using System.Text.Json;
using Finwright.Assessment.Stages;
using Finwright.Terminal;

namespace Finwright.Tests;

/// <summary>One call of the program within the test's own process: exit code and both texts.</summary>
internal sealed record ProgramRun(ExitCode ExitCode, string Out, string Error)
{
    // Stages of the demos as they come, by the text of their file: dozens of tests call for them, and the cure of one alone takes long.
    private static readonly Dictionary<string, MemoryStageCache> Demos = DemoDesigns.Names.ToDictionary(name => DemoDesigns.Find(name)!, _ => new MemoryStageCache(), StringComparer.Ordinal);

    // No demo is as large; other files may be.
    private const long LargestDemo = 1 << 16;

    /// <summary>Calls the program. What an earlier test has worked out of an unchanged demo is not worked out again.</summary>
    public static ProgramRun Of(params string[] arguments) => Of(TestContext.Current.CancellationToken, arguments);

    /// <summary>Calls the program with a token of one's own.</summary>
    public static ProgramRun Of(CancellationToken cancellation, params string[] arguments)
    {
        if (ResultsFor(arguments) is not { } results)
            return Run(arguments, null, cancellation);
        // Who comes second waits, and finds what the first has worked out.
        lock (results)
            return Run(arguments, results, cancellation);
    }

    /// <summary>Calls the program with results of stages kept between calls by the caller.</summary>
    public static ProgramRun With(IStageCache results, params string[] arguments) => Run(arguments, results, TestContext.Current.CancellationToken);

    /// <summary>Calls the program as a shell does: everything is worked out anew.</summary>
    public static ProgramRun Anew(params string[] arguments) => Run(arguments, null, TestContext.Current.CancellationToken);

    /// <summary>Calls a command that goes on until it is stopped, and stops it as soon as it has told something.</summary>
    public static ProgramRun UntilItTells(params string[] arguments)
    {
        using CancellationTokenSource stop = CancellationTokenSource.CreateLinkedTokenSource(TestContext.Current.CancellationToken);
        using StopsWhenTold output = new(stop);
        using StringWriter error = new() { NewLine = "\n" };
        ExitCode code = CommandLine.Run(arguments, new(output, error, TextStreams.PlainWidth, ShowsProgress: false), stop.Token);
        return new(code, output.ToString(), error.ToString());
    }

    /// <summary>Standard output as JSON; fails when anything else is there.</summary>
    public JsonElement Json()
    {
        using JsonDocument document = JsonDocument.Parse(Out);
        return document.RootElement.Clone();
    }

    /// <summary>Holds that the program refused wrong input as it should: exit code, silent standard output, a short message and what to do, no trace.</summary>
    public ProgramRun IsRefusal()
    {
        Assert.Equal(ExitCode.WrongInput, ExitCode);
        Assert.Equal("", Out);
        Assert.Contains("What to do: ", Error, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", Error, StringComparison.Ordinal);
        Assert.DoesNotContain("Exception", Error, StringComparison.Ordinal);
        return this;
    }

    private static ProgramRun Run(string[] arguments, IStageCache? results, CancellationToken cancellation)
    {
        using StringWriter output = new() { NewLine = "\n" }, error = new() { NewLine = "\n" };
        ExitCode code = CommandLine.Run(arguments, new(output, error, TextStreams.PlainWidth, ShowsProgress: false), cancellation, results);
        return new(code, output.ToString(), error.ToString());
    }

    private static MemoryStageCache? ResultsFor(string[] arguments) =>
        Array.Find(arguments, word => word.EndsWith(".fin.json", StringComparison.Ordinal) && new FileInfo(word) is { Exists: true, Length: < LargestDemo }) is string file
            ? Demos.GetValueOrDefault(File.ReadAllText(file))
            : null;

    private sealed class StopsWhenTold(CancellationTokenSource stop) : StringWriter
    {
        public override void Flush() => stop.Cancel();
    }
}
