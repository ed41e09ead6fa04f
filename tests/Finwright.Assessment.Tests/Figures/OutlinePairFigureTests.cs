using System.Runtime.CompilerServices;
using Finwright.Assessment.Figures;
using Finwright.Design;
using Finwright.Geometry.Blades;

namespace Finwright.Assessment.Tests.Figures;

public sealed class OutlinePairFigureTests
{
    private static readonly FinDesign Delta = DesignReader.ReadFile(Path.Combine(Path.GetDirectoryName(Here())!, "..", "..", "..", "examples", "sandbar-delta.fin.json")).Design!;
    private static readonly Blade First = BladeOf(Delta), Second = BladeOf(With(190, 270));

    [Fact]
    public void Draw_shows_one_in_line_and_the_other_dashed_each_with_letter_name_and_measures()
    {
        DrawnFigure drawn = new(OutlinePairFigure.Draw("Mudflat@1", First, "Mudflat@2", Second));
        // Outline, three sections and the sample of the line.
        Assert.Equal(5, drawn.Dashed);
        // At the outline, and before each of the measures' lines.
        Assert.Equal(2, drawn.Texts.Count(text => text == "A"));
        Assert.Equal(2, drawn.Texts.Count(text => text == "B"));
        Assert.Contains(drawn.Texts, text => text.StartsWith("Mudflat@1: 212 mm deep, 286 cm²", StringComparison.Ordinal));
        Assert.Contains(drawn.Texts, text => text.StartsWith("Mudflat@2: 190 mm deep, 270 cm²", StringComparison.Ordinal));
        Assert.Equal(3, drawn.Texts.Count(text => text is "at the root" or "at half span" or "at 90 % of the span"));
        double chord = First.Outline.Chord(0);
        Assert.Contains(drawn.Texts, text => text.StartsWith($"A {1e3 * chord:0.0} x ", StringComparison.Ordinal));
        Assert.Contains("A, Mudflat@1", drawn.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void Draw_keeps_every_word_on_the_sheet_whatever_the_fins_and_their_names()
    {
        Blade narrow = BladeOf(With(700, 400)), tiny = BladeOf(With(130, 110));
        string longest = new('W', 80);
        foreach ((Blade one, Blade other) in (ReadOnlySpan<(Blade, Blade)>)[(First, Second), (First, First), (narrow, tiny), (tiny, narrow)])
        {
            Assert.Empty(new DrawnFigure(OutlinePairFigure.Draw("one", one, "other", other)).Outside());
            Assert.Empty(new DrawnFigure(OutlinePairFigure.Draw(longest, one, longest, other)).Outside());
        }
    }

    [Fact]
    public void Draw_of_the_same_gives_the_same_bytes() =>
        Assert.Equal(OutlinePairFigure.Draw("a", First, "b", Second).ToSvg(), OutlinePairFigure.Draw("a", First, "b", Second).ToSvg());

    private static FinDesign With(double spanMm, double areaCm2) => Delta with { Shape = Delta.Shape with { Outline = Delta.Shape.Outline with { SpanMm = spanMm, AreaCm2 = areaCm2 } } };

    private static Blade BladeOf(FinDesign design)
    {
        using Assessor assessor = new();
        AssessmentResult result = assessor.Assess(design, AssessmentDepth.Shape);
        return result.Blade ?? throw new InvalidOperationException(string.Join(' ', result.Findings.Select(finding => finding.Message)));
    }

    private static string Here([CallerFilePath] string path = "") => path;
}
