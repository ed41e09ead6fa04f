using Finwright.Water.Sailing;

namespace Finwright.Assessment.Verdicts;

/// <summary>Load cases within a sentence.</summary>
internal static class CaseWords
{
    /// <summary>When it is: "at cruise".</summary>
    public static string When(LoadCaseKind kind) => kind switch
    {
        LoadCaseKind.GettingGoing => "when getting going",
        LoadCaseKind.Cruise => "at cruise",
        LoadCaseKind.TopSpeed => "at top speed",
        LoadCaseKind.Overload => "in a gust or landing",
        LoadCaseKind.Grounding => "when grounding",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Unknown load case."),
    };
}
