using Finwright.Assessment;
using Finwright.Assessment.Packing;

namespace Finwright.Papers;

/// <summary>All papers of a fin: build sheet, templates, drawing.</summary>
public static class FinPapers
{
    /// <summary>Makes them.</summary>
    /// <param name="result">A fin without errors, worked out in full.</param>
    /// <param name="settings">How they are made.</param>
    /// <param name="cancellation">Stops the work between papers.</param>
    /// <returns>The files with their paths within a pack. Same result and settings, same bytes.</returns>
    /// <exception cref="ArgumentException">The fin has errors, or was not worked out in full.</exception>
    public static IReadOnlyList<PackFile> Of(AssessmentResult result, PaperSettings settings, CancellationToken cancellation = default) => throw new NotImplementedException();
}
