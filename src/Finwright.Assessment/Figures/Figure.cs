using System.Globalization;
using System.Security;
using System.Text;
using OxyPlot;

namespace Finwright.Assessment.Figures;

/// <summary>A finished figure, drawn the same way into every file.</summary>
/// <param name="model">What it shows.</param>
/// <param name="words">What it says, in one sentence, for those who cannot see it.</param>
/// <param name="notes">What to know before reading it, line by line below the title.</param>
/// <param name="height">Height, points.</param>
public sealed class Figure(PlotModel model, string words, IReadOnlyList<string> notes, double height)
{
    // Text: shares of the letters' height by which the base line lies below their top, or their middle.
    private static readonly (string Hung, string Moved)[] Hung =
    [
        ("dominant-baseline=\"middle\"", "dy=\"0.35em\""),
        ("dominant-baseline=\"hanging\"", "dy=\"0.75em\""),
        // Snapped to whole dots, the thin lines of the grid vanish on some screens.
        (" shape-rendering=\"crispEdges\"", ""),
    ];

    // How far letters reach below their base line, over the size of the type.
    private const double BelowBaseLine = 0.24;

    /// <summary>Width of every figure, points.</summary>
    public static double Width => FigureSheet.Width;

    /// <summary>Height, points.</summary>
    public double Height => height;

    /// <summary>What it says in one sentence.</summary>
    public string Words => words;

    /// <summary>The figure as SVG; the same figure gives the same bytes.</summary>
    public byte[] ToSvg()
    {
        SvgExporter exporter = new() { Width = Width, Height = height, IsDocument = false };
        string svg = exporter.ExportToString(model).ReplaceLineEndings("\n").TrimEnd();
        int start = svg.IndexOf("<svg", StringComparison.Ordinal), end = svg.IndexOf('>', start);
        string said = $" role=\"img\" viewBox=\"0 0 {Width} {height}\"><title>{Escaped(model.Title)}</title><desc>{Escaped(string.Join(' ', [.. notes, words]))}</desc>";
        string body = svg[(end + 1)..];
        int last = body.LastIndexOf("</svg>", StringComparison.Ordinal);
        body = body[..last] + string.Concat(FigureSheet.Placed(notes).Select(Note)) + body[last..];
        // Many programs do not know how to hang text from a line; all know how to move it.
        foreach ((string hung, string moved) in Hung)
            body = body.Replace(hung, moved, StringComparison.Ordinal);
        return Encoding.UTF8.GetBytes(svg[start..end] + said + body + "\n");
    }

    /// <summary>Draws it on another paper, from its upper left corner, in points.</summary>
    /// <param name="paper">The paper.</param>
    public void Draw(IRenderContext paper)
    {
        ArgumentNullException.ThrowIfNull(paper);
        ((IPlotModel)model).Update(updateData: true);
        ((IPlotModel)model).Render(paper, new(0, 0, Width, height));
        foreach ((string note, ScreenPoint foot, double size) in FigureSheet.Placed(notes))
            paper.DrawText(new(foot.X, foot.Y + BelowBaseLine * size), note, FigureSheet.QuietInk, FigureSheet.Type, size, FontWeights.Normal, 0, HorizontalAlignment.Center, VerticalAlignment.Bottom);
    }

    private static string Note((string Note, ScreenPoint Foot, double Size) placed) =>
        string.Create(CultureInfo.InvariantCulture, $"<text x=\"{placed.Foot.X}\" y=\"{placed.Foot.Y}\" text-anchor=\"middle\" font-family=\"{FigureSheet.Type}\" font-size=\"{placed.Size:0.##}\" fill=\"#5b6b78\">{Escaped(placed.Note)}</text>\n");

    private static string Escaped(string text) => SecurityElement.Escape(text);
}
