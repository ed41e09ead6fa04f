using System.Text.Json;
using Finwright.Terminal;

namespace Finwright.Tests;

/// <summary>One call of the program within the test's own process: exit code and both texts.</summary>
internal sealed record ProgramRun(ExitCode ExitCode, string Out, string Error)
{
    /// <summary>Calls the program.</summary>
    public static ProgramRun Of(params string[] arguments) => Of(TestContext.Current.CancellationToken, arguments);

    /// <summary>Calls the program with a token of one's own.</summary>
    public static ProgramRun Of(CancellationToken cancellation, params string[] arguments)
    {
        using StringWriter output = new() { NewLine = "\n" }, error = new() { NewLine = "\n" };
        ExitCode code = CommandLine.Run(arguments, new(output, error, TextStreams.PlainWidth, ShowsProgress: false), cancellation);
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
}
