using System.CommandLine;
using Finwright.Assessment;
using Finwright.Assessment.Packing;
using Finwright.Commands.Store;
using Finwright.Design;
using Finwright.Terminal;
using Finwright.Workshop.Builds;
using Finwright.Workshop.Exchange;
using Finwright.Workshop.Exchange.Bundles;
using Finwright.Workshop.Exchange.Stores;
using Finwright.Workshop.Exchange.Tables;
using Finwright.Workshop.Storing;

namespace Finwright.Commands.Exchange;

/// <summary>Takes a file into the workshop that this or another one exported.</summary>
internal sealed class ImportCommand : StorePathCommand
{
    private readonly Argument<string> _file = Inputs.Needed("FILE", "What \"finwright export\" wrote, or a table of readings, outings or stock in CSV; what it is, is seen from what it holds.");
    private readonly Option<string?> _as = Inputs.Text("--as", "name", "With a design: another name for it.");
    private readonly Option<string?> _build = Inputs.Text("--build", "build", "With readings: the build that they were taken of.");
    private readonly Option<DateOnly?> _date = Inputs.Day("--date", "With readings: the day; today when left out.");
    private readonly Option<RootHold?> _root = Inputs.OneOf<RootHold>("--root", "With readings: how the root was held; else the design's own.");

    public ImportCommand()
        : base("import", "Take in a design with its history, a whole workshop, or a table. Everything is checked first; all of it comes in or nothing, and nothing twice.", $"finwright import fairway{BundleExport.Ending} --as \"Fairway of a friend\"") =>
        AddAll(_file, _as, _build, _date, _root);

    public override ExitCode Run(ParseResult arguments, TextStreams streams, CancellationToken cancellation)
    {
        string file = arguments.GetRequiredValue(_file), path = PathOf(arguments);
        using FileStream stream = Open(file);
        try
        {
            ExchangeKind kind = ExchangeFile.KindOf(stream);
            RefuseForeign(kind, file);
            RefuseUnfit(arguments, kind);
            // A store that is not there yet is not made for a file that turns out to be wrong.
            if (!File.Exists(path))
            {
                using WorkshopStore trial = WorkshopStore.InMemory();
                Take(arguments, kind, stream, trial, cancellation);
                stream.Position = 0;
            }

            using WorkshopStore store = WorkshopStore.Open(path);
            Taken taken = Take(arguments, kind, stream, store, cancellation);
            if (WantsJson(arguments))
                streams.Out.Write(AnswerJson.Write(new StoreAnswer<ImportAnswer>("finwright-import", $"Finwright {ProgramVersion.Text}", new(file, store.Path, kind, taken.Added, taken.Known))));
            else
                streams.Out.WriteLine(Wrapping.Wrap($"{taken.Said}", streams.Width));
            return ExitCode.Good;
        }
        catch (ExchangeException problem)
        {
            if (problem.Findings.Count > 0)
            {
                FindingText.Write(streams.Error, problem.Findings, file, streams.Width);
                streams.Error.WriteLine();
            }

            throw new WrongInputException($"{file}: {problem.Message}", problem.Remedy);
        }
    }

    private static FileStream Open(string file)
    {
        if (string.IsNullOrWhiteSpace(file))
            throw new WrongInputException("The name of the file is empty.", "Name the file to take in.");
        if (Directory.Exists(file))
            throw new WrongInputException($"\"{file}\" is a folder.", "Name the file in it.");
        try
        {
            FileStream stream = File.OpenRead(file);
            if (stream.CanSeek)
                return stream;
            stream.Dispose();
            throw new WrongInputException($"\"{file}\" is no file that can be read from its end.", "Save it as a file first.");
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            string why = problem is FileNotFoundException or DirectoryNotFoundException ? "There is no such file." : problem.Message;
            throw new WrongInputException($"\"{file}\" cannot be read. {why}", "Check the path.");
        }
    }

    private static void RefuseForeign(ExchangeKind kind, string file)
    {
        if (kind == ExchangeKind.Design)
            throw new WrongInputException($"\"{file}\" is a design file, or other JSON.", $"\"finwright shelf add {file}\" puts a design onto the shelf.");
        if (kind == ExchangeKind.Unknown)
            throw new WrongInputException($"\"{file}\" holds nothing that is known here.", "Choose a file that \"finwright export\" wrote, or a table whose first line names its columns (docs/exchange.md).");
    }

    private void RefuseUnfit(ParseResult arguments, ExchangeKind kind)
    {
        if (kind != ExchangeKind.Bundle && arguments.GetValue(_as) is not null)
            throw new WrongInputException("--as only matters with a design.", "Leave --as out.");
        if (kind == ExchangeKind.Readings && arguments.GetValue(_build) is null)
            throw new WrongInputException("The file holds readings, and the build that they were taken of is not named.", "Name it with --build.");
        if (kind != ExchangeKind.Readings && (arguments.GetValue(_build) is not null || arguments.GetValue(_date) is not null || arguments.GetValue(_root) is not null))
            throw new WrongInputException("--build, --date and --root only matter with readings.", "Leave them out.");
    }

    private Taken Take(ParseResult arguments, ExchangeKind kind, FileStream stream, WorkshopStore store, CancellationToken cancellation) => kind switch
    {
        ExchangeKind.Bundle => Taken.Of(BundleImport.Read(stream, store, arguments.GetValue(_as))),
        ExchangeKind.Workshop => Taken.Of(StoreImport.Read(stream, store)),
        ExchangeKind.Outings => Taken.Of("outings", OutingsCsv.Read(stream, store)),
        ExchangeKind.Stock => Taken.Of("items of stock", StockCsv.Read(stream, store)),
        ExchangeKind.Readings => Taken.Of("readings", Readings(arguments, stream, store, cancellation)),
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Nothing that is taken in."),
    };

    private TableTaken Readings(ParseResult arguments, FileStream stream, WorkshopStore store, CancellationToken cancellation)
    {
        Build build = store.Builds.Get(arguments.GetValue(_build)!);
        DesignReading reading = store.Shelf.Read(build.RevisionId);
        using Assessor assessor = new();
        AssessmentResult result = assessor.Assess(reading, AssessmentDepth.Shape, cancellation: cancellation);
        if (result.Blade is not { } blade || reading.Design is not { } design)
            throw new WrongInputException($"The design of \"{build.Name}\", {build.Revision}, cannot be worked out any more.", "\"finwright shelf show\" says why.");
        DateOnly day = arguments.GetValue(_date) ?? DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().DateTime);
        return ReadingsCsv.Read(stream, store, build, day, arguments.GetValue(_root) ?? design.Base.RootHold, blade.Span);
    }

    /// <summary>What came in, in words and as numbers.</summary>
    private sealed record Taken(string Said, long Added, long Known)
    {
        public static Taken Of(BundleTaken own)
        {
            List<string> parts = [];
            if (own.Added.Count > 0)
                parts.Add($"{Revisions(own.Added)} came in");
            if (own.Known.Count > 0)
                parts.Add($"{Revisions(own.Known)} {(own.Known.Count == 1 ? "was" : "were")} there already");
            if (own.Builds.Count > 0)
                parts.Add($"{Counted(own.Builds.Count)} came in: {string.Join(", ", own.Builds)}");
            if (own.KnownBuilds.Count > 0)
                parts.Add($"{Counted(own.KnownBuilds.Count)} {(own.KnownBuilds.Count == 1 ? "was" : "were")} there already");
            return new($"{own.Name}: {string.Join("; ", parts)}.", own.Added.Count + own.Builds.Count, own.Known.Count + own.KnownBuilds.Count);
        }

        public static Taken Of(StoreRows own) => new($"The whole workshop came in: {own.Rows} rows of {own.Tables} tables.", own.Rows, 0);

        public static Taken Of(string what, TableTaken own) =>
            new($"{char.ToUpperInvariant(what[0])}{what[1..]}: {own.Added} came in{(own.Known > 0 ? $", {own.Known} {(own.Known == 1 ? "was" : "were")} there already" : "")}.", own.Added, own.Known);

        private static string Counted(int builds) => builds == 1 ? "1 build" : $"{builds} builds";

        private static string Revisions(IReadOnlyList<int> numbers) => $"{(numbers.Count == 1 ? "revision" : "revisions")} {string.Join(", ", numbers)}";
    }

    /// <summary>What came in.</summary>
    /// <param name="File">The file.</param>
    /// <param name="Store">The store.</param>
    /// <param name="Kind">What the file was.</param>
    /// <param name="Added">How much came in: revisions and builds, or rows.</param>
    /// <param name="Known">How much of it was there already.</param>
    private sealed record ImportAnswer(string File, string Store, ExchangeKind Kind, long Added, long Known);
}
