using Finwright.Assessment;

namespace Finwright.Papers.Tests.Views;

/// <summary>The demo designs worked out to their parts, once a test run.</summary>
internal static class DrawnFins
{
    private static readonly Dictionary<string, Lazy<AssessmentResult>> Made = new[] { "fairway-upright", "sandbar-delta", "eelgrass-rake" }
        .ToDictionary(demo => demo, demo => new Lazy<AssessmentResult>(() => MadeFins.Worked(demo, AssessmentDepth.Parts)), StringComparer.Ordinal);

    public static TheoryData<string> Demos { get; } = new(Made.Keys);

    public static PaperSettings Settings { get; } = new() { Date = new(2026, 11, 27), ProgramVersion = "0.9.0" };

    public static AssessmentResult Of(string demo) => Made[demo].Value;
}
