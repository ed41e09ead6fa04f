using Finwright.Water.Sailing;

namespace Finwright.Assessment.Verdicts;

/// <summary>Load cases within a sentence.</summary>
public static class CaseWords
{
    /// <summary>Its name: "gust or landing".</summary>
    public static string Name(LoadCaseKind kind) => kind switch
    {
        LoadCaseKind.GettingGoing => "getting going",
        LoadCaseKind.Cruise => "cruise",
        LoadCaseKind.TopSpeed => "top speed",
        LoadCaseKind.Overload => "gust or landing",
        LoadCaseKind.Grounding => "grounding",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Unknown load case."),
    };

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
