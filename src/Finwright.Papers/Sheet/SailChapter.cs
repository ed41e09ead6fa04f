using Finwright.Making.Quantities;
using Finwright.Papers.Words;

namespace Finwright.Papers.Sheet;

/// <summary>The first sail, and room for notes.</summary>
internal static class SailChapter
{
    /// <summary>Writes it.</summary>
    public static void Write(SheetPaper paper)
    {
        SheetWords words = paper.Words;
        paper.Chapter(words.Sail, words.SailSentence);
        foreach ((int index, StepWords step) in words.SailSteps.Index())
        {
            if (index == 0)
                paper.Step(step, Cautions.Proof);
            else
                paper.Step(step);
        }

        if (paper.HasUntold)
        {
            paper.Flow.Head(words.SailHeed);
            paper.Judge(_ => true);
        }

        paper.Flow.Blanks(words.SailBlanks);
    }
}
