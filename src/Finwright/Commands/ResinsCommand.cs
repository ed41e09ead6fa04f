using System.CommandLine;
using Finwright.Assessment.Packing;
using Finwright.Making.Files;
using Finwright.Making.Resins;
using Finwright.Terminal;

namespace Finwright.Commands;

/// <summary>Shows the resins that the program knows, and copies one to be changed.</summary>
internal sealed class ResinsCommand : ProgramCommand
{
    private readonly Argument<string?> _name = new("NAME") { Description = "A resin, or a resin file, to see each of its numbers with its source; all of them in short if left out.", HelpName = "NAME", Arity = ArgumentArity.ZeroOrOne };
    private readonly Option<string?> _copy = Inputs.Text("--copy", "file", $"Write the resin to a file that you can change and name in a design; ends in {ResinFile.Ending}.");
    private readonly Option<bool> _overwrite = Inputs.Switch("--overwrite", "With --copy: replace the file if it exists.");
    private readonly Option<bool> _json = Inputs.Json();

    public ResinsCommand()
        : base(
            "resins",
            "List the resins that Finwright knows: how they cure, thicken and weigh, each number with its range and where it comes from. \"resins fit\" learns one from a cup of it or from its data sheet.",
            "finwright resins laminating-slow --copy my-resin.resin.json")
    {
        Add(_name);
        foreach (Option option in (Option[])[_copy, _overwrite, _json])
            Add(option);
        Add(new ResinsFitCommand());
    }

    public override ExitCode Run(ParseResult arguments, TextStreams streams, CancellationToken cancellation)
    {
        ResinSystem? asked = arguments.GetValue(_name) is string name ? ResinInput.Find(name, streams) : null;
        if (arguments.GetValue(_copy) is string copy)
        {
            Copy(asked, copy, arguments.GetValue(_overwrite));
            if (!arguments.GetValue(_json))
            {
                streams.Out.WriteLine($"Wrote {copy}: {asked!.Title}.");
                streams.Out.WriteLine(Wrapping.Wrap("Next: change its numbers, give it a name of its own, and name the file in a design beside it, as pour.system.file.", streams.Width));
                return ExitCode.Good;
            }
        }
        else if (arguments.GetValue(_overwrite))
        {
            throw new WrongInputException("--overwrite only matters with --copy.", "Name the file to write with --copy, or leave --overwrite out.");
        }

        IReadOnlyList<ResinSystem> resins = asked is null ? ResinLibrary.All : [asked];
        if (arguments.GetValue(_json))
            streams.Out.Write(AnswerJson.Write(new ResinsAnswer($"Finwright {ProgramVersion.Text}", [.. resins.Select(ResinAnswer.Of)])));
        else if (asked is null)
            ResinsText.WriteAll(streams, resins);
        else
            ResinsText.WriteOne(streams, asked);
        return ExitCode.Good;
    }

    private static void Copy(ResinSystem? resin, string file, bool overwrite)
    {
        if (resin is null)
            throw new WrongInputException("--copy needs the name of a resin.", "Name it, for example: finwright resins laminating-slow --copy my-resin.resin.json.");
        Refuse(file, overwrite);
        NewFile.Write(file, stream => ResinFile.Write(stream, resin));
    }

    /// <summary>Refuses a name that cannot be that of a resin file, or that may not be written to.</summary>
    internal static void Refuse(string file, bool overwrite)
    {
        if (!string.IsNullOrWhiteSpace(file) && !file.EndsWith(ResinFile.Ending, StringComparison.Ordinal))
            throw new WrongInputException($"\"{file}\" does not end in {ResinFile.Ending}, by which resin files are known.", $"Name it, for example, my-resin{ResinFile.Ending}.");
        NewFile.Refuse(file, $"my-resin{ResinFile.Ending}", overwrite);
    }
}
