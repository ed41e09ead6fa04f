using System.Diagnostics;

namespace Finwright.Bench.References;

/// <summary>How often a piece of work is repeated: the same rule for our code and for the references, who are told it.</summary>
/// <param name="WarmUp">Repeated for so long before anything is measured, seconds.</param>
/// <param name="Measuring">Measured for so long at least, seconds.</param>
/// <param name="LeastSamples">Measured so often at least.</param>
internal sealed record Sampling(double WarmUp, double Measuring, int LeastSamples)
{
    /// <summary>Half a second is what the runtime needs to compile what it has seen often once more.</summary>
    public static Sampling Usual { get; } = new(0.5, 0.5, 7);

    /// <summary>The rule as a reference reads it.</summary>
    public object Told => new { warmUp = WarmUp, sampling = Measuring, leastSamples = LeastSamples };

    /// <summary>Measures a piece of work, and hands back its last result.</summary>
    public (Times Times, T Result) Measure<T>(Func<T> work)
    {
        Stopwatch clock = Stopwatch.StartNew();
        T result = work();
        while (clock.Elapsed.TotalSeconds < WarmUp)
            result = work();
        List<double> samples = [];
        double spent = 0;
        while (samples.Count < LeastSamples || spent < Measuring)
        {
            clock.Restart();
            result = work();
            samples.Add(clock.Elapsed.TotalSeconds);
            spent += samples[^1];
        }

        return (Times.Of(samples), result);
    }
}

/// <summary>How long something took.</summary>
/// <param name="Median">Seconds.</param>
/// <param name="Quickest">Seconds: what other programs on the machine have lengthened least.</param>
internal readonly record struct Times(double Median, double Quickest)
{
    public static Times Of(IReadOnlyList<double> samples)
    {
        double[] sorted = [.. samples.Order()];
        int middle = sorted.Length / 2;
        return new(sorted.Length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2, sorted[0]);
    }
}
