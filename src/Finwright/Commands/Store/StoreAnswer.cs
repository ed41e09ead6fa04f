namespace Finwright.Commands.Store;

/// <summary>What a command of the store answers with <c>--json</c>.</summary>
/// <param name="Kind">Says what the answer is.</param>
/// <param name="MadeBy">Name and version of the program.</param>
/// <param name="Answer">The answer itself.</param>
internal sealed record StoreAnswer<T>(string Kind, string MadeBy, T Answer)
{
    /// <summary>Version of this layout; raised when a field changes its meaning or goes.</summary>
    public int Layout { get; } = 1;
}
