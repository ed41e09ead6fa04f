using Finwright.Assessment;
using Finwright.Papers.Templates;
using Finwright.Papers.Words;

namespace Finwright.Papers.Tests.Templates;

/// <summary>The demo designs worked out to the pour, and their templates; once a test run.</summary>
internal static class PouredFins
{
    private static readonly Lazy<AssessmentResult>[] Made =
        [.. new[] { "fairway-upright", "sandbar-delta", "eelgrass-rake" }.Select(name => new Lazy<AssessmentResult>(() => MadeFins.Worked(name, AssessmentDepth.Pour)))];

    public static AssessmentResult Fairway => Made[0].Value;

    public static AssessmentResult Sandbar => Made[1].Value;

    public static AssessmentResult Eelgrass => Made[2].Value;

    public static Tongue English { get; } = In(PaperLanguage.English);

    public static Tongue German { get; } = In(PaperLanguage.German);

    public static Template Named(AssessmentResult fin, string name, Tongue? tongue = null) => FinTemplates.Of(fin, tongue ?? English).Single(template => template.Name == name);

    private static Tongue In(PaperLanguage language) => new(new PaperSettings { Language = language, Date = new(2026, 11, 27), ProgramVersion = "1" });
}
