using System.CommandLine;
using System.Text;
using Finwright.Assessment.Packing;
using Finwright.Commands.Store;
using Finwright.Terminal;
using Finwright.Workshop.Exchange;
using Finwright.Workshop.Exchange.Bundles;
using Finwright.Workshop.Exchange.Stores;
using Finwright.Workshop.Exchange.Tables;
using Finwright.Workshop.Shelf;
using Finwright.Workshop.Storing;

namespace Finwright.Commands.Exchange;

/// <summary>Writes what the workshop holds into files that others can take in.</summary>
internal sealed class ExportCommand : StoreCommand
{
    private readonly Argument<string?> _name = new("NAME")
    {
        Description = "A design on the shelf with all its revisions, or one of them as NAME@2.",
        HelpName = "NAME",
        Arity = ArgumentArity.ZeroOrOne,
    };

    private readonly Option<string> _to = new("--to") { Description = $"The file to write: {BundleExport.Ending} for a design, {StoreExport.Ending} for everything, .csv for tables.", HelpName = "file", Required = true };
    private readonly Option<bool> _withBuilds = Inputs.Switch("--with-builds", "With a design: its builds too, with readings and outings. Tracks tell where someone was.");
    private readonly Option<bool> _everything = Inputs.Switch("--everything", "The whole workshop, deleted things too.");
    private readonly Option<string?> _readings = Inputs.Text("--readings", "build", "The bench readings of a build, as a table.");
    private readonly Option<bool> _outings = Inputs.Switch("--outings", "All outings without their tracks, as a table.");
    private readonly Option<bool> _stock = Inputs.Switch("--stock", "The stock, as a table.");
    private readonly Option<bool> _overwrite = Inputs.Switch("--overwrite", "Replace the file if it exists.");

    public ExportCommand()
        : base("export", "Write a design with its history, the whole workshop, or a table of readings, outings or stock into a file that \"finwright import\" takes in elsewhere.", $"finwright export \"Fairway upright\" --to fairway{BundleExport.Ending}", changes: false) =>
        AddAll(_name, _to, _withBuilds, _everything, _readings, _outings, _stock, _overwrite);

    protected override ExitCode Run(ParseResult arguments, WorkshopStore store, TextStreams streams, CancellationToken cancellation)
    {
        string? name = arguments.GetValue(_name), build = arguments.GetValue(_readings);
        bool everything = arguments.GetValue(_everything), outings = arguments.GetValue(_outings), stock = arguments.GetValue(_stock), withBuilds = arguments.GetValue(_withBuilds);
        int asked = ((bool[])[name is not null, build is not null, everything, outings, stock]).Count(own => own);
        if (asked != 1)
            throw new WrongInputException(asked == 0 ? "What to export is not said." : "More than one thing to export is said.", "Name a design, or give one of --everything, --readings BUILD, --outings and --stock.");
        if (withBuilds && name is null)
            throw new WrongInputException("--with-builds only matters with a design.", "Name the design, or leave --with-builds out.");
        // What is not there yet has nothing to give.
        if (store.Refusal is { Problem: StoreProblem.Wrong } refusal)
            throw refusal;
        string file = arguments.GetRequiredValue(_to);
        NewFile.Refuse(file, $"my-fin{BundleExport.Ending}", arguments.GetValue(_overwrite));
        string did = "";
        try
        {
            if (name is not null)
                NewFile.Write(file, stream => did = Said(BundleExport.Write(store, Reference.Parse(name), withBuilds, Program, stream)));
            else if (everything)
                NewFile.Write(file, stream => did = Said(StoreExport.Write(store, Program, stream)));
            else
                did = WriteTable(file, build is not null ? ReadingsCsv.Write(store, store.Builds.Get(build)) : outings ? OutingsCsv.Write(store) : StockCsv.Write(store));
        }
        catch (ExchangeException problem)
        {
            throw new WrongInputException(problem.Message, problem.Remedy);
        }

        if (WantsJson(arguments))
            streams.Out.Write(AnswerJson.Write(new StoreAnswer<ExportAnswer>("finwright-export", Program, new(file, did, new FileInfo(file).Length))));
        else
            streams.Out.WriteLine(Wrapping.Wrap($"Wrote {file}: {did}, {StoreText.Size(new FileInfo(file).Length)}.", streams.Width));
        return ExitCode.Good;
    }

    private static string Program => $"Finwright {ProgramVersion.Text}";

    private static string Said(BundleContents own) =>
        $"{own.Name} with {own.Revisions} {(own.Revisions == 1 ? "revision" : "revisions")}{(own.Builds > 0 ? $" and {own.Builds} {(own.Builds == 1 ? "build" : "builds")}" : "")}";

    private static string Said(StoreRows own) => $"the whole workshop, {own.Rows} rows of {own.Tables} tables";

    private static string WriteTable(string file, string text)
    {
        NewFile.Write(file, stream => stream.Write(Encoding.UTF8.GetBytes(text)));
        return "a table in CSV";
    }

    /// <summary>What was written.</summary>
    /// <param name="File">The file.</param>
    /// <param name="Holds">What it holds, in words.</param>
    /// <param name="Bytes">How long it is.</param>
    private sealed record ExportAnswer(string File, string Holds, long Bytes);
}
