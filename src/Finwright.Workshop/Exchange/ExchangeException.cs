using Finwright.Design;

namespace Finwright.Workshop.Exchange;

/// <summary>A file cannot be taken in, or not be made. Nothing was written.</summary>
#pragma warning disable CA1032 // Only ever thrown with what is wrong and what to do.
public sealed class ExchangeException : Exception
#pragma warning restore CA1032
{
    /// <summary>A refusal.</summary>
    /// <param name="message">What is wrong, where and why.</param>
    /// <param name="remedy">What to do.</param>
    /// <param name="inner">What the system said; null for nothing.</param>
    public ExchangeException(string message, string remedy, Exception? inner = null)
        : base(message, inner) => (Remedy, Findings) = (remedy, []);

    /// <summary>A refusal of a table with all that is wrong in it.</summary>
    /// <param name="message">What is wrong, in short.</param>
    /// <param name="remedy">What to do.</param>
    /// <param name="findings">Everything that is wrong, with its lines.</param>
    public ExchangeException(string message, string remedy, IReadOnlyList<Finding> findings)
        : base(message) => (Remedy, Findings) = (remedy, findings);

    /// <summary>What to do, in a sentence.</summary>
    public string Remedy { get; }

    /// <summary>Everything that is wrong, where there is more to tell than one sentence; else empty.</summary>
    public IReadOnlyList<Finding> Findings { get; }
}
