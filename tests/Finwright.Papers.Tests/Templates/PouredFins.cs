using Finwright.Assessment;
using Finwright.Papers.Templates;
using Finwright.Papers.Words;

namespace Finwright.Papers.Tests.Templates;

/// <summary>The demo designs worked out at least to the pour, and their templates; once a test run.</summary>
internal static class PouredFins
{
    private static readonly Lazy<AssessmentResult> EelgrassPoured = new(() => MadeFins.Worked("eelgrass-rake", AssessmentDepth.Pour));

    public static AssessmentResult Fairway => MadeFins.Fairway;

    public static AssessmentResult Sandbar => MadeFins.Sandbar;

    /// <summary>A raked fin for weed, not farther than its pour.</summary>
    public static AssessmentResult Eelgrass => EelgrassPoured.Value;

    public static Tongue English { get; } = In(PaperLanguage.English);

    public static Tongue German { get; } = In(PaperLanguage.German);

    public static Template Named(AssessmentResult fin, string name, Tongue? tongue = null) => FinTemplates.Of(fin, tongue ?? English).Single(template => template.Name == name);

    private static Tongue In(PaperLanguage language) => new(new PaperSettings { Language = language, Date = new(2026, 11, 27), ProgramVersion = "1" });
}
