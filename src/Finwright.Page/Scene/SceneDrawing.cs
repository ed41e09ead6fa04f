using Finwright.Page.Editing;
using Finwright.Page.Words;

namespace Finwright.Page.Scene;

/// <summary>Keeps one tab's scene up to date: the plain fin at once, what takes longer beside the page's own work; the latest wins.</summary>
/// <param name="reader">The reader.</param>
/// <param name="drawn">Told when a scene that took longer is there; from any thread.</param>
internal sealed class SceneDrawing(Reader reader, Action drawn) : IDisposable
{
    private readonly Lock _gate = new();
    private (SceneRequest Asked, long Shape, long Sailing, bool IsQuick, long Made, int Cured, string State) _key;
    private CancellationTokenSource? _under;

    /// <summary>The scene as it is; null before the first.</summary>
    public DrawnScene? Scene { get; private set; }

    /// <summary>Counts the scenes.</summary>
    public long Number { get; private set; }

    /// <summary>Whether another one is being drawn.</summary>
    public bool IsUnderWay { get; private set; }

    /// <summary>Draws what is asked for, if it is not what is drawn or being drawn already.</summary>
    public void Ask(Standing standing, SceneRequest asked)
    {
        string state = standing.Sailing is null || standing.Made is null ? $"{standing.IsStopped} {standing.Fault} {standing.Findings.Any(finding => finding.IsError)}" : "";
        bool isSailing = asked.Surface is Surface.Pressure or Surface.Stress or Surface.Bent, isMaking = asked.Surface is Surface.Warmth or Surface.Air or Surface.Parts;
        // Old or new is told in words, so the design's own version counts as far as that.
        long shape = isMaking ? (standing.MadeIsOld ? 1 : 0) : standing.ShapeVersion;
        var key = (asked, shape, isSailing ? standing.SailingVersion : 0, isSailing && standing.SailingIsQuick, isMaking ? standing.MadeVersion : 0, isMaking && standing.Made?.Cured is not null ? 1 : 0, state);
        lock (_gate)
        {
            if (key == _key && (Scene is not null || IsUnderWay))
                return;
            _key = key;
            _under?.Cancel();
            _under = null;
            if (asked.Surface is Surface.Plain && !asked.Inside && asked.Place.Length == 0)
            {
                IsUnderWay = false;
                Take(FinScene.Of(standing, asked, reader));
                return;
            }

            CancellationTokenSource own = _under = new();
            IsUnderWay = true;
            _ = Task.Run(() => Draw(standing, asked, own));
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        lock (_gate)
        {
            _under?.Cancel();
            _under = null;
        }
    }

    private void Draw(Standing standing, SceneRequest asked, CancellationTokenSource own)
    {
        DrawnScene? scene;
        try
        {
            scene = FinScene.Of(standing, asked, reader, own.Token);
        }
        catch (OperationCanceledException)
        {
            return;
        }
#pragma warning disable CA1031 // A picture that cannot be drawn must not take the page with it; it is said in its place.
        catch (Exception fault)
#pragma warning restore CA1031
        {
            scene = SceneNotes.Instead(standing, asked with { Inside = false, Place = "" }, reader, reader["A fault in the program kept this from being drawn: {0}", fault.Message], "");
        }

        lock (_gate)
        {
            if (_under != own)
                return;
            IsUnderWay = false;
            Take(scene);
        }

        drawn();
    }

    private void Take(DrawnScene? scene)
    {
        if (scene is null)
            return;
        Scene = scene;
        Number++;
    }
}
