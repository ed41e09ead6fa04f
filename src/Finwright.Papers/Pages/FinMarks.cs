using Finwright.Assessment;
using Finwright.Papers.Words;

namespace Finwright.Papers.Pages;

/// <summary>What stands on every page of a fin's papers.</summary>
internal static class FinMarks
{
    /// <summary>So many letters of the design's hash tell two designs apart on paper.</summary>
    public const int HashLetters = 12;

    /// <summary>The marks of a paper.</summary>
    /// <param name="result">The fin.</param>
    /// <param name="settings">Date and version.</param>
    /// <param name="tongue">How it speaks.</param>
    /// <param name="kind">What the paper is.</param>
    public static PageMarks Of(AssessmentResult result, PaperSettings settings, Tongue tongue, string kind) =>
        new(result.Design?.Name ?? "", kind, tongue.Words.Pages.Foot(settings.ProgramVersion, tongue.Date(settings.Date), Hash(result)), tongue.Words.Pages.PageOf);

    /// <summary>The beginning of the design's hash.</summary>
    public static string Hash(AssessmentResult result) => result.DesignHash[..Math.Min(HashLetters, result.DesignHash.Length)];
}
