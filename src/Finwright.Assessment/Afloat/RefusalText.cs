namespace Finwright.Assessment.Afloat;

/// <summary>What a calculation said when it refused its input, without the names that only programmers know.</summary>
public static class RefusalText
{
    /// <summary>The message alone.</summary>
    public static string Of(ArgumentException refusal)
    {
        ArgumentNullException.ThrowIfNull(refusal);
        string message = refusal.Message.Split('\n')[0];
        return refusal.ParamName is string name ? message.Replace($" (Parameter '{name}')", "", StringComparison.Ordinal).TrimEnd() : message;
    }
}
