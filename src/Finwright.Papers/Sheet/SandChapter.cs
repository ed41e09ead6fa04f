using Finwright.Design;
using Finwright.Making.Quantities;
using Finwright.Papers.Words;
using FinShape = Finwright.Design.Shape;

namespace Finwright.Papers.Sheet;

/// <summary>Sanding and finish.</summary>
internal static class SandChapter
{
    /// <summary>Writes it.</summary>
    public static void Write(SheetPaper paper)
    {
        (SheetWords words, FinShape shape) = (paper.Words, paper.Design.Shape);
        paper.Chapter(words.Sand, words.SandSentence(words.FinishOf(shape.StarboardFinish), words.FinishOf(shape.PortFinish)));
        paper.Step(words.Wash);
        if (shape.StarboardFinish != Finish.BarePrint || shape.PortFinish != Finish.BarePrint)
        {
            paper.Step(words.SandShape, Cautions.Dust);
            paper.Step(words.CheckSections);
            paper.Step(words.FillHollows, Cautions.Skin);
            paper.Step(words.SandFair);
            paper.Step(words.SandWet);
        }

        paper.Step(words.FinishSide(Side.Starboard, shape.StarboardFinish));
        paper.Step(words.FinishSide(Side.Port, shape.PortFinish));
        paper.Step(words.LeadingEdge);
        paper.Step(shape.Strip is { } strip ? words.StripEdge(paper.Tongue.Length(1e-3 * strip.SheetMm, 2)) : words.TrailingEdge(paper.Tongue.Length(1e-3 * shape.TrailingEdgeMm)), Cautions.Edges);
    }
}
