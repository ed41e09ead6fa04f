using Finwright.Assessment;
using Finwright.Papers.Pages;
using Finwright.Papers.Words;

namespace Finwright.Papers.Sheet;

/// <summary>The build sheet: from what to buy to the first sail, each step with a box to tick. Whoever has it and the templates beside it can build the fin.</summary>
public static class BuildSheet
{
    /// <summary>Writes it.</summary>
    /// <param name="result">A fin without errors.</param>
    /// <param name="settings">How it is made.</param>
    /// <param name="tongue">How it speaks.</param>
    /// <returns>The PDF. Same arguments, same bytes.</returns>
    /// <exception cref="ArgumentException">The fin has errors or no shape.</exception>
    public static byte[] Write(AssessmentResult result, PaperSettings settings, Tongue tongue) => Written(result, settings, tongue).Pdf;

    /// <summary>Writes it, and tells how many boxes to tick it holds.</summary>
    internal static (byte[] Pdf, int Ticks) Written(AssessmentResult result, PaperSettings settings, Tongue tongue)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(settings);
        ArgumentNullException.ThrowIfNull(tongue);
        if (result.HasErrors || result.Design is null || result.Planform is null)
            throw new ArgumentException("A fin with errors has no build sheet.", nameof(result));
        PaperDocument document = new(settings, FinMarks.Of(result, settings, tongue, tongue.Words.Sheet.Kind));
        SheetPaper paper = new(result, tongue, new(document));
        CoverChapter.Write(paper);
        NeedsChapter.Write(paper);
        PrintChapter.Write(paper);
        BondingChapter.Write(paper);
        PourChapter.Write(paper);
        CureChapter.Write(paper);
        JoinChapter.Write(paper);
        SandChapter.Write(paper);
        FitChapter.Write(paper);
        ProveChapter.Write(paper);
        SailChapter.Write(paper);
        return (document.ToBytes(), paper.Ticks);
    }
}
