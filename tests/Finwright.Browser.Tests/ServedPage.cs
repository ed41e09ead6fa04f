using System.Diagnostics;
using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text.Json;

namespace Finwright.Browser.Tests;

/// <summary>The program serving its page, as a process of its own, on a store of its own.</summary>
internal sealed class ServedPage : IAsyncDisposable
{
    // Sections solved, and the invented season: made once for all servers, away from the data of the person who runs the tests.
    private static readonly string Common = Path.GetFullPath(Path.Combine(AppContext.BaseDirectory, "..", "..", "..", "test-cache"));

    private static readonly Lazy<Task<string>> SeasonMade = new(MakeSeason);

    private readonly string _folder = Directory.CreateTempSubdirectory("finwright-page-").FullName;
    private Process? _process;
    private Uri? _entry;

    private readonly IReadOnlyDictionary<string, string> _environment;

    private ServedPage(IReadOnlyDictionary<string, string>? environment, bool worksAhead)
    {
        _environment = environment ?? new Dictionary<string, string>(StringComparer.Ordinal);
        if (worksAhead)
            return;
        // As a reader on a battery has it: most tests have no need of print, pour and cure.
        Directory.CreateDirectory(Path.Combine(_folder, "page"));
        File.WriteAllText(Path.Combine(_folder, "page", "reader.json"), """{ "WorksAhead": false }""");
    }

    /// <summary>The store's file.</summary>
    public string StorePath => Path.Combine(_folder, "workshop.finstore");

    /// <summary>A folder for what a test brings along.</summary>
    public string Folder => _folder;

    /// <summary>Where the page is.</summary>
    public Uri Address => new(_entry!.GetLeftPart(UriPartial.Authority));

    /// <summary>The address that lets one browser in.</summary>
    public Uri Entry => _entry!;

    /// <summary>Number of the process.</summary>
    public int ProcessId => _process!.Id;

    /// <summary>Serves an empty workshop.</summary>
    /// <param name="worksAhead">Whether print, pour and cure are worked out unasked.</param>
    public static async Task<ServedPage> Empty(bool worksAhead = false)
    {
        ServedPage served = new(environment: null, worksAhead);
        await served.Start();
        return served;
    }

    /// <summary>Serves the invented season.</summary>
    /// <param name="worksAhead">Whether print, pour and cure are worked out unasked.</param>
    public static async Task<ServedPage> Season(bool worksAhead = false)
    {
        ServedPage served = new(environment: null, worksAhead);
        File.Copy(await SeasonMade.Value, served.StorePath);
        await served.Start();
        return served;
    }

    /// <summary>Serves a workshop on which commands of the program were run first.</summary>
    /// <param name="environment">Variables of the environment; null for none of its own.</param>
    /// <param name="worksAhead">Whether print, pour and cure are worked out unasked.</param>
    /// <param name="commands">The commands; <c>--store</c> is added.</param>
    public static async Task<ServedPage> Prepared(IReadOnlyDictionary<string, string>? environment, bool worksAhead, params string[][] commands)
    {
        ServedPage served = new(environment, worksAhead);
        foreach (string[] command in commands)
            await served.RunToItsEnd(command);
        await served.Start();
        return served;
    }

    /// <summary>Starts serving; after <see cref="Kill"/> on the same port as before.</summary>
    public async Task Start()
    {
        _process = Serve();
        _entry = await Told(_process);
    }

    /// <summary>A further address that lets one browser in: told by a second start while the first serves.</summary>
    public async Task<Uri> SecondEntry()
    {
        using Process second = Serve();
        Uri entry = await Told(second);
        await second.WaitForExitAsync();
        return entry;
    }

    /// <summary>Ends the process as a crash would.</summary>
    public async Task Kill()
    {
        _process!.Kill();
        await _process.WaitForExitAsync();
        _process.Dispose();
        _process = null;
    }

    /// <summary>Runs a command of the program on this store.</summary>
    public Process Run(params string[] arguments)
    {
        ProcessStartInfo start = new("dotnet", [Program, .. arguments, "--store", StorePath]) { UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true, WorkingDirectory = _folder };
        start.Environment["FINWRIGHT_CACHE"] = Common;
        foreach ((string name, string value) in _environment)
            start.Environment[name] = value;
        return Process.Start(start)!;
    }

    public async ValueTask DisposeAsync()
    {
        if (_process is not null)
            await Kill();
        Directory.Delete(_folder, recursive: true);
    }

    private static async Task<string> MakeSeason()
    {
        await using ServedPage maker = new(environment: null, worksAhead: false);
        await maker.RunToItsEnd("store", "demo");
        string made = Path.Combine(Common, "season.finstore");
        Directory.CreateDirectory(Common);
        File.Move(maker.StorePath, made, overwrite: true);
        return made;
    }

    private async Task RunToItsEnd(params string[] command)
    {
        using Process done = Run(command);
        await done.StandardOutput.ReadToEndAsync();
        await done.WaitForExitAsync();
        Assert.Equal(0, done.ExitCode);
    }

    private Process Serve() => Run("serve", "--json", "--no-browser", "--port", (_entry?.Port ?? 0).ToString(CultureInfo.InvariantCulture));

    private static async Task<Uri> Told(Process serving)
    {
        string answer = "";
        // The answer is one group of JSON over several lines.
        while (!answer.EndsWith('}'))
            answer += await serving.StandardOutput.ReadLineAsync() ?? throw new InvalidOperationException("The page did not start: " + await serving.StandardError.ReadToEndAsync());
        using JsonDocument said = JsonDocument.Parse(answer);
        return new(said.RootElement.GetProperty("address").GetString()!);
    }

    /// <summary>The program as the build left it, beside this project's own output.</summary>
    private static string Program => Path.GetFullPath(Path.Combine(AppContext.BaseDirectory, "..", "..", "Finwright", Path.GetFileName(AppContext.BaseDirectory.TrimEnd(Path.DirectorySeparatorChar)), "Finwright.dll"));

    /// <summary>Top of the sources.</summary>
    public static string Sources([CallerFilePath] string here = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", ".."));
}
