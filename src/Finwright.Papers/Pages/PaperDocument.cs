namespace Finwright.Papers.Pages;

/// <summary>What stands on every page of a paper.</summary>
/// <param name="Title">Name of the fin.</param>
/// <param name="Kind">What the paper is, for example "Build sheet".</param>
/// <param name="Foot">Version of the program, date, hash of the design.</param>
/// <param name="PageOf">Page n of m in words.</param>
public sealed record PageMarks(string Title, string Kind, string Foot, Func<int, int, string> PageOf);

/// <summary>A PDF document in the making. Same calls, same bytes.</summary>
public sealed class PaperDocument
{
    private readonly PaperSettings _settings;
    private readonly PageMarks _marks;
    private readonly List<PaperPage> _pages = [];

    /// <summary>An empty document.</summary>
    /// <param name="settings">Paper and date.</param>
    /// <param name="marks">What stands on every page.</param>
    /// <exception cref="ArgumentOutOfRangeException">The paper is smaller than A5.</exception>
    public PaperDocument(PaperSettings settings, PageMarks marks)
    {
        ArgumentNullException.ThrowIfNull(settings);
        ArgumentNullException.ThrowIfNull(marks);
        if (!(settings.Paper.Width >= PageLook.LeastWidth) || !(settings.Paper.Height >= PageLook.LeastHeight))
            throw new ArgumentOutOfRangeException(nameof(settings), $"Paper \"{settings.Paper.Name}\" of {1e3 * settings.Paper.Width:0.#} x {1e3 * settings.Paper.Height:0.#} mm is smaller than A5, 148 x 210 mm.");
        (_settings, _marks) = (settings, marks);
    }

    /// <summary>Number of pages so far.</summary>
    public int PageCount => _pages.Count;

    /// <summary>Called before the file is written: whoever holds something back puts it on its page.</summary>
    internal Action? Closing { get; set; }

    /// <summary>Adds a page.</summary>
    /// <param name="landscape">Whether its long side lies level.</param>
    public PaperPage AddPage(bool landscape = false)
    {
        PaperPage page = NewPage(landscape);
        _pages.Add(page);
        return page;
    }

    /// <summary>Puts page numbers and marks on all pages and gives the file.</summary>
    /// <exception cref="InvalidOperationException">There is no page.</exception>
    public byte[] ToBytes()
    {
        Closing?.Invoke();
        return _pages.Count > 0 ? PdfFile.Write(_settings, _marks, _pages) : throw new InvalidOperationException("A document needs a page.");
    }

    /// <summary>A page of this document's paper that does not belong to it yet.</summary>
    internal PaperPage NewPage(bool landscape = false) => landscape ? new(_settings.Paper.Height, _settings.Paper.Width) : new(_settings.Paper.Width, _settings.Paper.Height);
}
