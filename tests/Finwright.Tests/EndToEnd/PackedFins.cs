using System.Text.Json;
using Finwright.Assessment;
using Finwright.Assessment.Caching;
using Finwright.Assessment.Stages;
using Finwright.Design;
using Finwright.Workshop.Comparing;

namespace Finwright.Tests.EndToEnd;

/// <summary>The five fins, each packed on first need; what one command has worked out the next one finds.</summary>
public sealed class PackedFins : IDisposable
{
    private readonly Dictionary<string, PackedFin> _fins = new(StringComparer.Ordinal);

    /// <summary>The fins by the name of their file.</summary>
    public static IReadOnlyList<string> Names { get; } = ["harbour-upright", "heron-raked", "reedbank-steep", "mudflat-delta", "skerry-free"];

    /// <summary>Folder of the design files and of what is expected of them.</summary>
    public static string Source { get; } = Path.Combine(Repository(), "tests", "Finwright.Tests", "EndToEnd");

    public TemporaryFolder Folder { get; } = new();

    internal PackedFin this[string name] => _fins.TryGetValue(name, out PackedFin? packed) ? packed : _fins[name] = new(name, Folder[name]);

    public void Dispose() => Folder.Dispose();

    private static string Repository()
    {
        string folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "finwright.slnx")))
            folder = Path.GetDirectoryName(folder) ?? throw new InvalidOperationException("The tests do not run from within the repository.");
        return folder;
    }
}

/// <summary>Tests that share the five fins, so that each is packed once.</summary>
[CollectionDefinition(Name)]
public sealed class FiveFins : ICollectionFixture<PackedFins>
{
    public const string Name = "five fins";
}

/// <summary>One fin and its pack.</summary>
internal sealed class PackedFin
{
    private readonly MemoryStageCache _results = new();
    private readonly Dictionary<string, JsonElement> _answers = new(StringComparer.Ordinal);
    private readonly string _folder;
    private FinResults? _lines;

    public PackedFin(string name, string folder)
    {
        Design = Path.Combine(PackedFins.Source, $"{name}.fin.json");
        _folder = folder;
        // The day on the papers does not matter.
        Pack = Run("pack", "--out", folder, "--date", "2027-04-18");
    }

    /// <summary>The design file.</summary>
    public string Design { get; }

    /// <summary>The call that packed it.</summary>
    public ProgramRun Pack { get; }

    public JsonElement Summary => Answer("summary.json");

    public JsonElement Water => Answer("water.json");

    public JsonElement Strength => Answer("strength.json");

    public JsonElement Bench => Answer("bench.json");

    public JsonElement Print => Answer("print.json");

    public JsonElement Pour => Answer("pour.json");

    public JsonElement Cure => Answer("cure.json");

    /// <summary>Every result as lines, of the same stages that the commands used.</summary>
    public FinResults Lines
    {
        get
        {
            if (_lines is null)
            {
                using Assessor assessor = new(_results, curves: CacheFolder.OpenCurves());
                _lines = FinResults.Of(assessor.Assess(DesignReader.ReadFile(Design), AssessmentDepth.Everything, cancellation: TestContext.Current.CancellationToken));
            }

            return _lines;
        }
    }

    /// <summary>A file of the pack.</summary>
    public string FileOf(string name) => Path.Combine(_folder, name);

    /// <summary>Calls a command for this fin, with the answer as JSON.</summary>
    public ProgramRun Run(string command, params string[] more) => ProgramRun.With(_results, [command, Design, .. more, "--json"]);

    private JsonElement Answer(string file)
    {
        if (!_answers.TryGetValue(file, out JsonElement answer))
        {
            using JsonDocument document = JsonDocument.Parse(File.ReadAllText(FileOf(file)));
            _answers[file] = answer = document.RootElement.Clone();
        }

        return answer;
    }
}
