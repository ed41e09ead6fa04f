using Finwright.Assessment;
using Finwright.Assessment.Packing;
using Finwright.Papers;

namespace Finwright.Page.Making;

/// <summary>The files of a fin that was worked out, the same as the commands write.</summary>
internal static class FinFiles
{
    /// <summary>How far the fin must be worked out.</summary>
    public static AssessmentDepth DepthOf(HandoutKind kind) => kind is HandoutKind.Parts ? AssessmentDepth.Parts : AssessmentDepth.Everything;

    /// <summary>Makes them.</summary>
    /// <param name="kind">Which.</param>
    /// <param name="result">A fin without errors.</param>
    /// <param name="papers">How papers are made.</param>
    /// <param name="version">Version of the program.</param>
    /// <param name="cancellation">Stops the work between files.</param>
    public static IReadOnlyList<PackFile> Of(HandoutKind kind, AssessmentResult result, PaperSettings papers, string version, CancellationToken cancellation) => kind switch
    {
        HandoutKind.Papers => PapersSummary.Of(result, papers).With(FinPapers.Of(result, papers, cancellation)).Files,
        HandoutKind.Parts => [.. Packed(result, [], version, cancellation).Where(file => file.Path.StartsWith("plate-", StringComparison.Ordinal) || file.Path.StartsWith("parts/", StringComparison.Ordinal) || file.Path == "blade.step")],
        _ => Packed(result, FinPapers.Of(result, papers, cancellation), version, cancellation),
    };

    private static IReadOnlyList<PackFile> Packed(AssessmentResult result, IReadOnlyList<PackFile> papers, string version, CancellationToken cancellation) =>
        PackContents.Of(result, FinSummary.Of(result, version), papers, version, cancellation).Files;
}
