using System.Text;
using System.Text.RegularExpressions;
using Finwright.Assessment;
using Finwright.Papers.Sheet;
using Finwright.Papers.Words;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Graphics;

namespace Finwright.Papers.Tests.Sheet;

/// <summary>A build sheet as an independent reader sees it.</summary>
internal sealed class ReadSheet
{
    // Heads of chapters are larger than text and smaller than the title, points.
    private const double LeastHead = 11.5, GreatestHead = 17;

    // Boxes to tick are 4 mm wide, points.
    private const double Tick = 4 * 72 / 25.4, Off = 0.02;

    // Beginning, four sides, end.
    private const int MostOfSquare = 6;

    private readonly List<(string Head, StringBuilder Text)> _chapters = [("", new())];

    private ReadSheet(byte[] pdf, int written)
    {
        (Pdf, Written) = (pdf, written);
        using PdfDocument document = PdfDocument.Open(pdf);
        foreach (Page page in document.GetPages())
            Read(page);
    }

    /// <summary>The file.</summary>
    public byte[] Pdf { get; }

    /// <summary>Boxes to tick that were written.</summary>
    public int Written { get; }

    /// <summary>Text of each page without spaces.</summary>
    public List<string> Pages { get; } = [];

    /// <summary>Words of each page.</summary>
    public List<string> Words { get; } = [];

    /// <summary>Widths and heights of pages, points.</summary>
    public List<(double Width, double Height)> Sizes { get; } = [];

    /// <summary>How far letters reach beyond the margin of 10 mm, points, at worst.</summary>
    public double Beyond { get; private set; } = double.NegativeInfinity;

    /// <summary>Squares of the size of a box to tick.</summary>
    public int Ticks { get; private set; }

    /// <summary>Heads of the chapters, without spaces.</summary>
    public IReadOnlyList<string> Heads => [.. _chapters.Skip(1).Select(chapter => chapter.Head)];

    /// <summary>Everything, without spaces.</summary>
    public string All => string.Concat(Pages);

    /// <summary>Text of a chapter without spaces; the cover has no name.</summary>
    public string Chapter(string name) => _chapters.First(chapter => chapter.Head.EndsWith(Bare(name), StringComparison.Ordinal)).Text.ToString();

    /// <summary>Settings of a test.</summary>
    public static PaperSettings Settings(PaperLanguage language = PaperLanguage.English, bool letter = false) => new()
    {
        Language = language,
        Paper = letter ? PaperSize.Letter : PaperSize.A4,
        Date = new(2026, 11, 27),
        ProgramVersion = "1.0.0",
    };

    /// <summary>Writes a sheet and reads it.</summary>
    public static ReadSheet Of(AssessmentResult result, PaperLanguage language = PaperLanguage.English, bool letter = false)
    {
        PaperSettings settings = Settings(language, letter);
        (byte[] pdf, int ticks) = BuildSheet.Written(result, settings, new Tongue(settings));
        return new(pdf, ticks);
    }

    /// <summary>A text without spaces: lines of a page may be broken anywhere.</summary>
    public static string Bare(string text) => string.Concat(text.Where(letter => !char.IsWhiteSpace(letter)));

    /// <summary>Asserts that a text stands somewhere.</summary>
    public static void Stands(string needle, string text) => Assert.True(text.Contains(Bare(needle), StringComparison.Ordinal), $"\"{needle}\" does not stand in: {text[..Math.Min(text.Length, 4000)]}");

    /// <summary>Whether a text stands somewhere though its first line may have numbers at its right.</summary>
    public static bool StandsWrapped(string needle, string text) => Regex.IsMatch(
        text, string.Join(".{0,50}?", needle.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(Regex.Escape)), RegexOptions.CultureInvariant | RegexOptions.Singleline | RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(10));

    private void Read(Page page)
    {
        Sizes.Add((page.Width, page.Height));
        StringBuilder whole = new();
        StringBuilder head = new();
        const double margin = 10 * 72 / 25.4;
        foreach (Letter letter in page.Letters)
        {
            PdfRectangle box = letter.BoundingBox;
            Beyond = Math.Max(Beyond, Math.Max(Math.Max(margin - box.Left, box.Right - (page.Width - margin)), Math.Max(margin - box.Bottom, box.Top - (page.Height - margin))));
            if (string.IsNullOrWhiteSpace(letter.Value))
                continue;
            whole.Append(letter.Value);
            bool isHead = letter.PointSize is > LeastHead and < GreatestHead;
            if (isHead)
            {
                head.Append(letter.Value);
                continue;
            }

            if (head.Length > 0)
                Begin(head);
            _chapters[^1].Text.Append(letter.Value);
        }

        if (head.Length > 0)
            Begin(head);
        Pages.Add(whole.ToString());
        Words.Add(string.Join(' ', page.GetWords().Select(word => word.Text)));
        Ticks += page.Paths.Count(path => path.IsStroked && IsTick(path));
    }

    private void Begin(StringBuilder head)
    {
        _chapters.Add((head.ToString(), new()));
        head.Clear();
    }

    // Four sides, no more: rings of pictures may be as wide.
    private static bool IsTick(PdfPath path) => path is [{ Commands.Count: <= MostOfSquare }] && path.GetBoundingRectangle() is { } box && Math.Abs(box.Width - Tick) < Off && Math.Abs(box.Height - Tick) < Off;
}
