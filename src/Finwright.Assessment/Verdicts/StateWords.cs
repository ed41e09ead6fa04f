namespace Finwright.Assessment.Verdicts;

/// <summary>Marks and words for the states of verdicts: never a mark without its word.</summary>
public static class StateWords
{
    /// <summary>The mark.</summary>
    public static string Mark(VerdictState state) => state switch
    {
        VerdictState.Holds => "●",
        VerdictState.Tight => "◐",
        VerdictState.Fails => "✕",
        VerdictState.NotKnown => "?",
        _ => throw new ArgumentOutOfRangeException(nameof(state), state, "Unknown state."),
    };

    /// <summary>The word.</summary>
    public static string Word(VerdictState state) => state switch
    {
        VerdictState.Holds => "holds",
        VerdictState.Tight => "tight",
        VerdictState.Fails => "fails",
        VerdictState.NotKnown => "not known",
        _ => throw new ArgumentOutOfRangeException(nameof(state), state, "Unknown state."),
    };
}
