using Finwright.Assessment.Verdicts;
using Finwright.Geometry;
using Finwright.Papers.Drawings;

namespace Finwright.Papers.Pages;

/// <summary>Lays out blocks one below the other, from page to page. What belongs together stays together; what is longer than its room is broken, never cut off.</summary>
public sealed class PageFlow
{
    /// <summary>An entry of a table that becomes a box to tick.</summary>
    public const string TickEntry = "☐";

    // Of the room of a page: tables and blanks no higher than this are not broken.
    private const double WholeTable = 0.3;

    // Above a picture, metres.
    private const double PictureGap = 3 * PageLook.Space;

    // What rounding may add, metres.
    private const double Close = 1e-9;

    private readonly PaperDocument _document;

    // Heads that wait for what they stand above.
    private readonly List<Slice> _held = [];
    private PaperPage? _page;
    private double _y;
    private bool _isFresh = true;

    /// <summary>A flow on a document. It adds pages as it needs them.</summary>
    public PageFlow(PaperDocument document)
    {
        ArgumentNullException.ThrowIfNull(document);
        _document = document;
        PaperPage page = document.NewPage();
        Width = page.RoomTo.X - PaperPage.RoomFrom.X;
        PageHeight = page.RoomTo.Y - PaperPage.RoomFrom.Y;
        document.Closing += Release;
    }

    /// <summary>Width of the column, metres.</summary>
    public double Width { get; }

    /// <summary>Room of a whole page, metres.</summary>
    public double PageHeight { get; }

    /// <summary>Room left on the page, metres.</summary>
    public double Left => Free - HeightOf(_held, _isFresh);

    /// <summary>Height that a picture may have so that a box and texts stand on the same page below it, metres; below zero when there is no room.</summary>
    /// <param name="title">Title of the box.</param>
    /// <param name="lines">Lines of the box.</param>
    /// <param name="texts">Plain texts below the box.</param>
    public double RoomAbove(string title, IReadOnlyList<string> lines, IReadOnlyList<string> texts)
    {
        IReadOnlyList<Slice> below = [.. BoxSlices.Of(title, lines, Width), .. texts.SelectMany(TextOf)];
        return Left - HeightOf(below, isFresh: false) - PictureGap;
    }

    private double TextWidth => Math.Min(Width, PageLook.TextWidth);

    private double Free => _page is null ? PageHeight : _page.RoomTo.Y - _y;

    /// <summary>The title of the whole paper, large.</summary>
    public void Title(string text, string below) => Add(
    [
        .. Slice.Text(text, 0, Width, PageLook.Title, 6 * PageLook.Space, keepsNext: true),
        .. Slice.Text(below, 0, TextWidth, PageLook.Sub, PageLook.Space, keepsNext: true),
    ]);

    /// <summary>A chapter: its number, its name, and one sentence in plain words. It is never the last on a page.</summary>
    /// <param name="number">Number; 0 for none.</param>
    /// <param name="name">Name.</param>
    /// <param name="sentence">The sentence; empty for none.</param>
    public void Chapter(int number, string name, string sentence) => Add(
    [
        Slice.Of(2.5 * PageLook.Space, drawing => drawing.Line(PageLook.Rule, new(0, 0), new(Width, 0)), 6 * PageLook.Space, keepsNext: true),
        ChapterName(number > 0 ? $"{number}" : "", name),
        .. Slice.Text(sentence, 0, TextWidth, PageLook.Text, PageLook.Space, keepsNext: true),
    ]);

    /// <summary>A smaller head within a chapter. It is never the last on a page.</summary>
    public void Head(string text) => Add([.. Slice.Text(text, 0, TextWidth, PageLook.Head, 4 * PageLook.Space, keepsNext: true)]);

    /// <summary>Plain text.</summary>
    public void Text(string text, bool quiet = false) => Add([.. TextOf(text, quiet)]);

    /// <summary>A step to tick, with its reason in a quiet line and, when there are any, its cautions.</summary>
    /// <param name="text">What to do.</param>
    /// <param name="reason">Why; may be empty.</param>
    /// <param name="cautions">What to take care of.</param>
    /// <param name="keepsNext">Whether the picture or table that follows belongs to it and stays on its page.</param>
    public void Step(string text, string reason, IReadOnlyList<string>? cautions = null, bool keepsNext = false)
    {
        IReadOnlyList<Slice> step = StepSlices.Of(text, reason, cautions ?? [], TextWidth);
        Add(keepsNext ? [.. step.SkipLast(1), step[^1] with { KeepsNext = true }] : step);
    }

    /// <summary>A framed box with a heavy left edge, for safety.</summary>
    public void Box(string title, IReadOnlyList<string> lines) => Add(BoxSlices.Of(title, lines, Width));

    /// <summary>A verdict: mark and word of its state, what was checked, numbers, and what to change.</summary>
    /// <param name="state">Its state; drawn as a mark whose shape alone tells it.</param>
    /// <param name="stateWord">The state in a word.</param>
    /// <param name="what">What was checked.</param>
    /// <param name="numbers">Value and limit; may be empty.</param>
    /// <param name="change">What to change; may be empty.</param>
    public void Verdict(VerdictState state, string stateWord, string what, string numbers, string change) => Add(VerdictSlices.Of(state, stateWord, what, numbers, change, Width));

    /// <summary>
    /// A table. Heads are repeated on each page it runs over; cells wrap; an empty cell is a box to write in when <paramref name="boxed"/>,
    /// and <see cref="TickEntry"/> a box to tick.
    /// </summary>
    /// <param name="columns">Its columns.</param>
    /// <param name="rows">Its rows, with an entry for each column.</param>
    /// <param name="boxed">Whether each cell has a frame.</param>
    /// <exception cref="ArgumentException">A row has more or fewer entries than there are columns.</exception>
    public void Table(IReadOnlyList<TableColumn> columns, IReadOnlyList<IReadOnlyList<string>> rows, bool boxed = false)
    {
        TableSlices table = new(columns, boxed, Width);
        IReadOnlyList<Slice> heads = table.Heads(), body = [.. rows.SelectMany(row => table.Row(row, PageHeight - HeightOf(heads, isFresh: true)))];
        IReadOnlyList<Slice> all = [.. heads, .. body];
        if (HeightOf(all, isFresh: true) <= WholeTable * PageHeight)
            all = [.. all.Select((slice, i) => slice with { KeepsNext = i < all.Count - 1 })];
        Add(all, heads);
    }

    /// <summary>Lines to write on: each with a word before it. A few of them are not parted.</summary>
    public void Blanks(IReadOnlyList<string> labels)
    {
        IReadOnlyList<Slice> rows = BlankSlices.Of(labels, Width);
        Add(HeightOf(rows, isFresh: true) <= WholeTable * PageHeight ? [.. rows.Select((row, i) => row with { KeepsNext = i < rows.Count - 1 })] : rows);
    }

    /// <summary>A drawing in the middle of the column, in its own size, with words below it.</summary>
    /// <param name="drawing">The drawing.</param>
    /// <param name="caption">Words below it; may be empty.</param>
    /// <exception cref="ArgumentException">It is larger than the room of a page, or nothing is drawn.</exception>
    public void Picture(Drawing drawing, string caption)
    {
        ArgumentNullException.ThrowIfNull(drawing);
        (Point2 low, Point2 high) = DrawnExtent.Of(drawing) ?? throw new ArgumentException("Nothing is drawn in the picture.", nameof(drawing));
        Point2 size = high - low;
        Shown(nameof(drawing), size, caption, (page, at) => page.Draw(drawing, at + new Point2((Width - size.X) / 2, 0) - low));
    }

    /// <summary>A figure in its own proportions, as wide as the column unless that makes it too high; then in the middle.</summary>
    /// <param name="figure">The figure.</param>
    /// <param name="height">Its greatest height, metres.</param>
    /// <param name="caption">Words below it; may be empty.</param>
    /// <exception cref="ArgumentException">It is still higher than the room of a page.</exception>
    public void Figure(Assessment.Figures.Figure figure, double height, string caption)
    {
        ArgumentNullException.ThrowIfNull(figure);
        double width = Math.Min(Width, height * Assessment.Figures.Figure.Width / figure.Height);
        Shown(nameof(height), new(width, width * figure.Height / Assessment.Figures.Figure.Width), caption, (page, at) => page.Draw(figure, at + new Point2((Width - width) / 2, 0), width));
    }

    /// <summary>Goes on to a new page, unless nothing stands on this one.</summary>
    public void NewPage()
    {
        if (!_isFresh)
            Turn();
    }

    /// <summary>Goes on to a new page when less than this is left, metres.</summary>
    public void Need(double height)
    {
        if (Left < height)
            NewPage();
    }

    private IEnumerable<Slice> TextOf(string text) => TextOf(text, isQuiet: false);

    private IEnumerable<Slice> TextOf(string text, bool isQuiet) => Slice.Text(text, 0, TextWidth, isQuiet ? PageLook.Quiet : PageLook.Text, 1.5 * PageLook.Space);

    private Slice ChapterName(string number, string name)
    {
        TextLook look = PageLook.Chapter;
        double indent = number.Length == 0 ? 0 : Math.Max(PageLook.Indent, TextMeasure.Width(number, look.Size, bold: true) + 2 * PageLook.Space);
        IReadOnlyList<string> lines = TextMeasure.Lines(name, TextWidth - indent, look.Size, bold: true);
        return Slice.Of(lines.Count * PageLook.LineOf(look), drawing =>
        {
            drawing.Write(number, 0, 0, look with { Colour = PageLook.Accent });
            drawing.Write(lines, indent, 0, look);
        }, keepsNext: true);
    }

    // What is seen, with its words below it in the middle.
    private void Shown(string argument, Point2 size, string caption, Action<PaperPage, Point2> paint)
    {
        TextLook look = PageLook.Quiet with { Anchor = TextAnchor.Middle };
        IReadOnlyList<string> words = caption.Length == 0 ? [] : TextMeasure.Lines(caption, TextWidth, look.Size);
        double below = words.Count * PageLook.LineOf(look) + (words.Count > 0 ? PageLook.Space : 0);
        if (!(size.X <= Width + Close) || !(size.Y + below <= PageHeight + Close))
            throw new ArgumentException($"A picture of {1e3 * size.X:0.0} x {1e3 * size.Y:0.0} mm with {1e3 * below:0.0} mm of words does not fit the room of a page, {1e3 * Width:0.0} x {1e3 * PageHeight:0.0} mm.", argument);
        Slice picture = new(size.Y, paint, PictureGap, words.Count > 0);
        Add(words.Count == 0 ? [picture] : [picture, Slice.Of(below - PageLook.Space, drawing => drawing.Write(words, Width / 2, 0, look), PageLook.Space)]);
    }

    // Places slices; those that keep with what follows wait for it.
    private void Add(IReadOnlyList<Slice> slices, IReadOnlyList<Slice>? repeated = null)
    {
        List<Slice> together = [.. _held];
        _held.Clear();
        bool isFirst = true;
        foreach (Slice slice in slices)
        {
            together.Add(slice);
            if (slice.KeepsNext)
                continue;
            Place(together, isFirst ? [] : repeated ?? []);
            together.Clear();
            isFirst = false;
        }

        _held.AddRange(together);
    }

    private void Place(IReadOnlyList<Slice> together, IReadOnlyList<Slice> repeated)
    {
        if (HeightOf(together, _isFresh) > Free + Close && !_isFresh)
            Turn(repeated);
        foreach (Slice slice in together)
        {
            // Only what does not fit a whole page gets here twice.
            if (slice.Height + (_isFresh ? 0 : slice.Gap) > Free + Close && !_isFresh)
                Turn(repeated);
            Put(slice);
        }
    }

    private void Put(Slice slice)
    {
        if (_page is null)
            Turn();
        _y += _isFresh ? 0 : slice.Gap;
        slice.Paint(_page!, new(PaperPage.RoomFrom.X, _y));
        _y += slice.Height;
        _isFresh = false;
    }

    private void Turn(IReadOnlyList<Slice>? repeated = null)
    {
        _page = _document.AddPage();
        (_y, _isFresh) = (PaperPage.RoomFrom.Y, true);
        foreach (Slice slice in repeated ?? [])
            Put(slice);
    }

    // Nothing more will come: heads stand where they are.
    private void Release()
    {
        IReadOnlyList<Slice> waiting = [.. _held];
        _held.Clear();
        if (waiting.Count > 0)
            Place(waiting, []);
    }

    private static double HeightOf(IReadOnlyList<Slice> slices, bool isFresh) => slices.Select((slice, i) => slice.Height + (i == 0 && isFresh ? 0 : slice.Gap)).Sum();
}
