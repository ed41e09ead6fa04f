namespace Finwright.Terminal;

/// <summary>A file, an option or a folder is wrong; ends the command with <see cref="ExitCode.WrongInput"/>.</summary>
/// <param name="message">What is wrong, where and why.</param>
/// <param name="remedy">What to do.</param>
#pragma warning disable CA1032 // Only ever thrown with both texts.
internal sealed class WrongInputException(string message, string remedy) : Exception(message)
#pragma warning restore CA1032
{
    /// <summary>What to do, in one sentence.</summary>
    public string Remedy { get; } = remedy;
}
