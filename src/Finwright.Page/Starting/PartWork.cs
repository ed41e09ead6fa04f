using Finwright.Assessment;
using Finwright.Assessment.Made;
using Finwright.Assessment.Packing;
using Finwright.Assessment.Stages;
using Finwright.Design;
using Finwright.Page.Editing;

namespace Finwright.Page.Starting;

/// <summary>Works out print, pour and cure of a part in the background; a change of its settings begins anew.</summary>
public sealed class PartWork(PartOnPage part) : IDisposable
{
    private CancellationTokenSource _stopping = new();
    private Task _work = Task.CompletedTask;

    /// <summary>The settings.</summary>
    public PartSettings Settings { get; private set; } = part.Settings;

    /// <summary>What is known; null before anything is.</summary>
    public MakingResult? Result { get; private set; }

    /// <summary>Whether the result is of earlier settings.</summary>
    public bool IsOld { get; private set; }

    /// <summary>What is being worked out; null when nothing is.</summary>
    public WorkUnderWay? Work { get; private set; }

    /// <summary>What went wrong in the program itself; null when nothing did.</summary>
    public string? Fault { get; private set; }

    /// <summary>Something is new.</summary>
    public event Action? Changed;

    /// <summary>Works the part out with other settings.</summary>
    public void Begin(PartSettings settings)
    {
        Stop();
        part.Settings = Settings = settings;
        (IsOld, Fault, Work) = (Result is not null, null, new("laying the part down layer by layer", 0));
        _stopping.Dispose();
        _stopping = new();
        CancellationToken stop = _stopping.Token;
        _work = Task.Run(() => Run(settings, stop), CancellationToken.None);
    }

    /// <summary>Stops the work and waits for it to end.</summary>
    public void Stop()
    {
        _stopping.Cancel();
        _work.Wait();
        Work = null;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        Stop();
        _stopping.Dispose();
    }

    private void Run(PartSettings settings, CancellationToken stop)
    {
        try
        {
            PartSettingsReading reading = PartSettingsReader.Check(settings);
            using Assessor assessor = new();
            Teller teller = new(this);
            MakingResult result = assessor.Make(part.Name, part.Mesh, reading, AssessmentDepth.Cure, teller, stop);
            part.Figures = [.. MakingFigures.Of(result.Name ?? part.Name, result.Poured, result.Cured).Select(own => (own.What, own.Figure.ToSvg()))];
            (Result, IsOld, Work) = (result, false, null);
        }
        catch (OperationCanceledException)
        {
            return;
        }
#pragma warning disable CA1031 // Whatever goes wrong in the background is told on the page; nobody else would hear of it.
        catch (Exception problem)
#pragma warning restore CA1031
        {
            (Fault, Work) = (problem.Message, null);
        }

        Changed?.Invoke();
    }

    private sealed class Teller(PartWork work) : IProgress<StageProgress>
    {
        private static readonly TimeSpan Often = TimeSpan.FromMilliseconds(300);

        private long _told;

        void IProgress<StageProgress>.Report(StageProgress value)
        {
            if (_told != 0 && TimeProvider.System.GetElapsedTime(_told) < Often)
                return;
            _told = TimeProvider.System.GetTimestamp();
            work.Work = new(value.Words, value.Fraction);
            work.Changed?.Invoke();
        }
    }
}
