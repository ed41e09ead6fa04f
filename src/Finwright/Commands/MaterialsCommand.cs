using System.CommandLine;
using Finwright.Assessment.Packing;
using Finwright.Design.Reading;
using Finwright.Strength.Files;
using Finwright.Strength.Materials;
using Finwright.Terminal;

namespace Finwright.Commands;

/// <summary>Shows the materials that the program knows, and copies one to be changed.</summary>
internal sealed class MaterialsCommand : ProgramCommand
{
    private readonly Argument<string?> _name = new("NAME") { Description = "A material, to see each of its numbers with its source; all of them in short if left out.", HelpName = "NAME", Arity = ArgumentArity.ZeroOrOne };
    private readonly Option<string?> _copy = Inputs.Text("--copy", "file", $"Write the material to a file that you can change and name in a design; ends in {MaterialFile.Ending}.");
    private readonly Option<bool> _overwrite = Inputs.Switch("--overwrite", "With --copy: replace the file if it exists.");
    private readonly Option<bool> _json = Inputs.Json();

    public MaterialsCommand()
        : base(
            "materials",
            "List the materials that Finwright knows: stiffness, strength and the rest, each with its range, how sure it is and where it comes from.",
            "finwright materials petg-printed --copy my-petg.material.json")
    {
        Add(_name);
        foreach (Option option in (Option[])[_copy, _overwrite, _json])
            Add(option);
    }

    public override ExitCode Run(ParseResult arguments, TextStreams streams, CancellationToken cancellation)
    {
        Material? asked = arguments.GetValue(_name) is string name ? Find(name) : null;
        if (arguments.GetValue(_copy) is string copy)
        {
            Copy(asked, copy, arguments.GetValue(_overwrite));
            if (!arguments.GetValue(_json))
            {
                MaterialAnswer copied = MaterialAnswer.Of(asked!);
                streams.Out.WriteLine($"Wrote {copy}: {copied.Title}.");
                streams.Out.WriteLine(Wrapping.Wrap($"Next: change its numbers, give it a name of its own, and name the file in a design beside it, as {copied.Place}.file.", streams.Width));
                return ExitCode.Good;
            }
        }
        else if (arguments.GetValue(_overwrite))
        {
            throw new WrongInputException("--overwrite only matters with --copy.", "Name the file to write with --copy, or leave --overwrite out.");
        }

        MaterialAnswer[] answers = [.. (asked is null ? MaterialLibrary.All : [asked]).Select(MaterialAnswer.Of)];
        if (arguments.GetValue(_json))
            streams.Out.Write(AnswerJson.Write(new MaterialsAnswer($"Finwright {ProgramVersion.Text}", answers)));
        else if (asked is null)
            MaterialsText.WriteAll(streams, answers);
        else
            MaterialsText.WriteOne(streams, answers[0]);
        return ExitCode.Good;
    }

    private static Material Find(string name)
    {
        if (MaterialLibrary.Find(name.ToLowerInvariant()) is { } found)
            return found;
        string[] names = [.. MaterialLibrary.All.Select(material => material.Name)];
        string near = NearestName.Among(name, names) is string nearest ? $" Perhaps \"{nearest}\" is meant." : "";
        throw new WrongInputException($"There is no material \"{name}\".{near}", $"Materials: {string.Join(", ", names)}.");
    }

    private static void Copy(Material? material, string file, bool overwrite)
    {
        if (material is null)
            throw new WrongInputException("--copy needs the name of a material.", "Name it, for example: finwright materials petg-printed --copy my-petg.material.json.");
        if (!string.IsNullOrWhiteSpace(file) && !file.EndsWith(MaterialFile.Ending, StringComparison.Ordinal))
            throw new WrongInputException($"\"{file}\" does not end in {MaterialFile.Ending}, by which material files are known.", $"Name it, for example, my-petg{MaterialFile.Ending}.");
        NewFile.Refuse(file, $"my-petg{MaterialFile.Ending}", overwrite);
        NewFile.Write(file, stream => MaterialFile.Write(stream, material));
    }
}
