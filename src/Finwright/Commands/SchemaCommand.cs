using System.CommandLine;
using Finwright.Design;
using Finwright.Terminal;

namespace Finwright.Commands;

/// <summary>Prints the JSON Schema of the design file.</summary>
internal sealed class SchemaCommand() : ProgramCommand(
    "schema",
    "Print the JSON Schema of the design file: every field with its meaning, range, default and the reason for the default. Editors use it to help while you type.",
    "finwright schema > fin.schema.json")
{
    public override ExitCode Run(ParseResult arguments, TextStreams streams, CancellationToken cancellation)
    {
        streams.Out.Write(DesignSchema.Generate());
        return ExitCode.Good;
    }
}
