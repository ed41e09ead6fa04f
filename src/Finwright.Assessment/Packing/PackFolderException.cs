namespace Finwright.Assessment.Packing;

/// <summary>A pack cannot be written where it was asked for; the folder is as it was.</summary>
/// <param name="message">What is wrong with the folder.</param>
/// <param name="remedy">What to do.</param>
/// <param name="cause">What the system said; null when we refused by ourselves.</param>
#pragma warning disable CA1032 // Only ever thrown with both texts.
public sealed class PackFolderException(string message, string remedy, Exception? cause = null) : Exception(message, cause)
#pragma warning restore CA1032
{
    /// <summary>What to do, in one sentence.</summary>
    public string Remedy { get; } = remedy;
}
