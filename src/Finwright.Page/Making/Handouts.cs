using System.IO.Compression;
using Finwright.Assessment;
using Finwright.Assessment.Packing;
using Finwright.Assessment.Stages;
using Finwright.Design;
using Finwright.Page.Hosting;
using Finwright.Page.Works;
using Finwright.Papers;
using Thread = System.Threading.Thread;

namespace Finwright.Page.Making;

/// <summary>Makes files in the background, one set at a time, and hands them out until they are old.</summary>
public sealed class Handouts : IDisposable
{
    /// <summary>So many finished sets are kept.</summary>
    public const int MostKept = 6;

    private static readonly TimeSpan Telling = TimeSpan.FromMilliseconds(200), KeptFor = TimeSpan.FromHours(12);

    // The same time in every archive: the same files give the same bytes.
    private static readonly DateTimeOffset Unmoved = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    private readonly WorkFloor _floor;
    private readonly TimeProvider _time;
    private readonly string _folder, _version;
    private readonly Lock _gate = new();
    private readonly Dictionary<string, Handout> _kept = new(StringComparer.Ordinal);
    private readonly Dictionary<string, CancellationTokenSource> _stopping = new(StringComparer.Ordinal);
    private readonly Queue<(string Key, FinDesign Design, PaperSettings Papers)> _waiting = [];
    private readonly AutoResetEvent _called = new(initialState: false);
    private readonly CancellationTokenSource _closing = new();
    private readonly Thread _worker;

    /// <summary>Opens the counter; what an earlier run left behind is thrown away.</summary>
    /// <param name="floor">Shares what it has worked out already.</param>
    /// <param name="settings">Where files may lie.</param>
    /// <param name="time">The clock.</param>
    public Handouts(WorkFloor floor, PageSettings settings, TimeProvider time)
    {
        ArgumentNullException.ThrowIfNull(settings);
        (_floor, _time, _version) = (floor, time, VersionOf(settings.MadeBy));
        _folder = Path.Combine(settings.KeepingFolder, "files");
        Sweep();
        _worker = new(Work) { IsBackground = true, Name = "handouts", Priority = ThreadPriority.BelowNormal };
        _worker.Start();
    }

    /// <summary>Something about a handout is new.</summary>
    public event Action? Changed;

    /// <summary>Asks for files of a design as it is now.</summary>
    /// <param name="designId">Number of the design.</param>
    /// <param name="design">The design.</param>
    /// <param name="kind">Which files.</param>
    /// <param name="papers">How papers are made.</param>
    public Handout Ask(long designId, FinDesign design, HandoutKind kind, PaperSettings papers)
    {
        ArgumentNullException.ThrowIfNull(design);
        string rest = kind switch { HandoutKind.Papers => "-papers.zip", HandoutKind.Parts => "-parts.zip", _ => ".zip" };
        Handout asked = new() { Key = UnguessableName.New(), DesignId = designId, Kind = kind, FileName = DownloadName.Of(design.Name, rest), AskedAt = _time.GetUtcNow() };
        lock (_gate)
        {
            _kept[asked.Key] = asked;
            _waiting.Enqueue((asked.Key, design, papers with { ProgramVersion = _version }));
            _stopping[asked.Key] = CancellationTokenSource.CreateLinkedTokenSource(_closing.Token);
        }

        _called.Set();
        Changed?.Invoke();
        return asked;
    }

    /// <summary>Hands out a file that lies on the disk already; it is thrown away with the handout.</summary>
    /// <param name="designId">Number of the design.</param>
    /// <param name="path">The file, in a folder of ours.</param>
    /// <param name="fileName">Name under which it is saved.</param>
    public Handout Offer(long designId, string path, string fileName)
    {
        Handout offered = new() { Key = UnguessableName.New(), DesignId = designId, Kind = HandoutKind.Parts, FileName = fileName, AskedAt = _time.GetUtcNow(), State = HandoutState.Ready, Path = path, Bytes = new FileInfo(path).Length };
        lock (_gate)
            _kept[offered.Key] = offered;
        Tidy();
        return offered;
    }

    /// <summary>A place for a file that is to be offered.</summary>
    public string NewPath(string ending)
    {
        Directory.CreateDirectory(_folder);
        return Path.Combine(_folder, UnguessableName.New() + ending);
    }

    /// <summary>A handout; null when it is none, or no more.</summary>
    public Handout? Find(string key)
    {
        lock (_gate)
            return _kept.GetValueOrDefault(key ?? "");
    }

    /// <summary>Sets of files of a design, the latest first; single files that were offered are not among them.</summary>
    public IReadOnlyList<Handout> Of(long designId)
    {
        lock (_gate)
            return [.. _kept.Values.Where(own => own.DesignId == designId && own.FileName.EndsWith(".zip", StringComparison.Ordinal)).OrderByDescending(own => own.AskedAt)];
    }

    /// <summary>Stops making a set of files.</summary>
    public void Stop(string key)
    {
        lock (_gate)
        {
            if (_stopping.TryGetValue(key, out CancellationTokenSource? stopping))
                stopping.Cancel();
        }
    }

    /// <summary>Throws a handout away.</summary>
    public void Drop(string key)
    {
        Stop(key);
        Handout? gone;
        lock (_gate)
            _kept.Remove(key, out gone);
        if (gone?.Path is { } path)
            Delete(path);
        Changed?.Invoke();
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        _closing.Cancel();
        _called.Set();
        if (Thread.CurrentThread != _worker)
            _worker.Join();
        foreach (Handout kept in _kept.Values)
        {
            if (kept.Path is { } path)
                Delete(path);
        }

        foreach (CancellationTokenSource stopping in _stopping.Values)
            stopping.Dispose();
        _called.Dispose();
        _closing.Dispose();
    }

    /// <summary>The version alone: files name the program themselves.</summary>
    private static string VersionOf(string madeBy) => madeBy[(madeBy.LastIndexOf(' ') + 1)..];

    private static void Delete(string path)
    {
        try
        {
            File.Delete(path);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            // Someone reads it at this moment: it goes with the next sweep.
        }
    }

    private void Sweep()
    {
        if (!Directory.Exists(_folder))
            return;
        foreach (string file in Directory.EnumerateFiles(_folder))
        {
            if (File.GetLastWriteTimeUtc(file) < _time.GetUtcNow().UtcDateTime - KeptFor)
                Delete(file);
        }
    }

    private void Tidy()
    {
        Handout[] old;
        lock (_gate)
        {
            old = [.. _kept.Values.Where(own => own.State is not (HandoutState.Waiting or HandoutState.AtWork)).OrderByDescending(own => own.AskedAt).Where((own, index) => index >= MostKept || own.AskedAt < _time.GetUtcNow() - KeptFor)];
        }

        foreach (Handout one in old)
            Drop(one.Key);
    }

    private void Work()
    {
        while (!_closing.IsCancellationRequested)
        {
            (string Key, FinDesign Design, PaperSettings Papers) next;
            CancellationToken stop;
            bool hasNext;
            lock (_gate)
            {
                hasNext = _waiting.TryDequeue(out next);
                stop = hasNext && _stopping.TryGetValue(next.Key, out CancellationTokenSource? stopping) ? stopping.Token : _closing.Token;
            }

            if (!hasNext)
            {
                _called.WaitOne();
                continue;
            }

            try
            {
                Make(next.Key, next.Design, next.Papers, stop);
            }
            catch (OperationCanceledException)
            {
                Put(next.Key, handout => handout with { State = HandoutState.Stopped, Words = "" });
            }
#pragma warning disable CA1031 // A fault in one set of files must not end the making of all others; it is told on the page.
            catch (Exception fault)
#pragma warning restore CA1031
            {
                Put(next.Key, handout => handout with { State = HandoutState.Refused, Findings = [new("files-fault", Severity.Error, "files", $"The files could not be made: {fault.Message}", "Free some space on the disk, and try again.")] });
            }

            lock (_gate)
            {
                if (_stopping.Remove(next.Key, out CancellationTokenSource? over))
                    over.Dispose();
            }

            Tidy();
        }
    }

    private void Make(string key, FinDesign design, PaperSettings papers, CancellationToken stop)
    {
        stop.ThrowIfCancellationRequested();
        if (Find(key) is not { } asked)
            return;
        Put(key, handout => handout with { State = HandoutState.AtWork });
        using Assessor assessor = _floor.OpenAssessor();
        AssessmentResult result = assessor.Assess(design, FinFiles.DepthOf(asked.Kind), new Teller(this, key), stop);
        if (result.HasErrors)
        {
            Put(key, handout => handout with { State = HandoutState.Refused, Findings = [.. result.Findings.Where(finding => finding.IsError)] });
            return;
        }

        Put(key, handout => handout with { Words = "writes the files", Fraction = 0.95 });
        IReadOnlyList<PackFile> files = FinFiles.Of(asked.Kind, result, papers, _version, stop);
        string path = NewPath(".zip");
        try
        {
            Write(path, files, stop);
        }
        catch
        {
            Delete(path);
            throw;
        }

        Put(key, handout => handout with
        {
            State = HandoutState.Ready,
            Fraction = 1,
            Path = path,
            Bytes = new FileInfo(path).Length,
            Files = [.. files.Select(file => new HandoutFile(file.Path, file.What, file.Content.Length))],
            Findings = [.. result.Findings.Where(finding => finding.Severity is Severity.Caution)],
        });
        // It was thrown away meanwhile.
        if (Find(key) is null)
            Delete(path);
    }

    private static void Write(string path, IReadOnlyList<PackFile> files, CancellationToken stop)
    {
        using ZipArchive archive = new(new FileStream(path, FileMode.CreateNew, FileAccess.ReadWrite), ZipArchiveMode.Create);
        foreach (PackFile file in files)
        {
            stop.ThrowIfCancellationRequested();
            // What is packed already does not grow smaller.
            bool isPacked = Path.GetExtension(file.Path) is ".3mf" or ".png" or ".pdf";
            ZipArchiveEntry entry = archive.CreateEntry(file.Path, isPacked ? CompressionLevel.NoCompression : CompressionLevel.Fastest);
            entry.LastWriteTime = Unmoved;
            using Stream stream = entry.Open();
            stream.Write(file.Content.Span);
        }
    }

    private void Put(string key, Func<Handout, Handout> change)
    {
        lock (_gate)
        {
            if (_kept.TryGetValue(key, out Handout? handout))
                _kept[key] = change(handout);
        }

        Changed?.Invoke();
    }

    private sealed class Teller(Handouts handouts, string key) : IProgress<StageProgress>
    {
        private long _told;

        void IProgress<StageProgress>.Report(StageProgress value)
        {
            if (_told != 0 && handouts._time.GetElapsedTime(_told) < Telling)
                return;
            _told = handouts._time.GetTimestamp();
            handouts.Put(key, handout => handout with { Words = value.Words, Fraction = 0.95 * value.Fraction });
        }
    }
}
