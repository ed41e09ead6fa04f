using Finwright.Assessment.Verdicts;
using Finwright.Papers.Drawings;

namespace Finwright.Papers.Pages;

/// <summary>A column of a table.</summary>
/// <param name="Title">Its head.</param>
/// <param name="Share">Its share of the width; the shares of all columns are taken together.</param>
/// <param name="IsNumber">Whether its entries stand to the right.</param>
public sealed record TableColumn(string Title, double Share, bool IsNumber = false);

/// <summary>Lays out blocks one below the other, from page to page. What belongs together stays together; what is longer than its room is broken, never cut off.</summary>
public sealed class PageFlow
{
    /// <summary>A flow on a document.</summary>
    public PageFlow(PaperDocument document) => throw new NotImplementedException();

    /// <summary>Width of the column, metres.</summary>
    public double Width => throw new NotImplementedException();

    /// <summary>Room left on the page, metres.</summary>
    public double Left => throw new NotImplementedException();

    /// <summary>The title of the whole paper, large.</summary>
    public void Title(string text, string below) => throw new NotImplementedException();

    /// <summary>A chapter: its number, its name, and one sentence in plain words.</summary>
    /// <param name="number">Number; 0 for none.</param>
    /// <param name="name">Name.</param>
    /// <param name="sentence">The sentence; empty for none.</param>
    public void Chapter(int number, string name, string sentence) => throw new NotImplementedException();

    /// <summary>A smaller head within a chapter.</summary>
    public void Head(string text) => throw new NotImplementedException();

    /// <summary>Plain text.</summary>
    public void Text(string text, bool quiet = false) => throw new NotImplementedException();

    /// <summary>A step to tick, with its reason in a quiet line and, when there are any, its cautions.</summary>
    public void Step(string text, string reason, IReadOnlyList<string>? cautions = null) => throw new NotImplementedException();

    /// <summary>A framed box with a heavy left edge, for safety.</summary>
    public void Box(string title, IReadOnlyList<string> lines) => throw new NotImplementedException();

    /// <summary>A verdict: mark and word of its state, what was checked, numbers, and what to change.</summary>
    /// <param name="state">Its state; drawn as a mark whose shape alone tells it (● ◐ ✕ ?).</param>
    /// <param name="stateWord">The state in a word.</param>
    /// <param name="what">What was checked.</param>
    /// <param name="numbers">Value and limit; may be empty.</param>
    /// <param name="change">What to change; may be empty.</param>
    public void Verdict(VerdictState state, string stateWord, string what, string numbers, string change) => throw new NotImplementedException();

    /// <summary>A table. Heads are repeated on each page it runs over; cells wrap; an empty cell is a box to write in when <paramref name="boxed"/>.</summary>
    public void Table(IReadOnlyList<TableColumn> columns, IReadOnlyList<IReadOnlyList<string>> rows, bool boxed = false) => throw new NotImplementedException();

    /// <summary>Lines to write on: each with a word before it.</summary>
    public void Blanks(IReadOnlyList<string> labels) => throw new NotImplementedException();

    /// <summary>A drawing in the middle of the column, in its own size, with words below it.</summary>
    public void Picture(Drawing drawing, string caption) => throw new NotImplementedException();

    /// <summary>A figure in the width of the column.</summary>
    /// <param name="figure">The figure.</param>
    /// <param name="height">Its height, metres.</param>
    /// <param name="caption">Words below it; may be empty.</param>
    public void Figure(Assessment.Figures.Figure figure, double height, string caption) => throw new NotImplementedException();

    /// <summary>Goes on to a new page, unless nothing stands on this one.</summary>
    public void NewPage() => throw new NotImplementedException();

    /// <summary>Goes on to a new page when less than this is left, metres.</summary>
    public void Need(double height) => throw new NotImplementedException();
}
