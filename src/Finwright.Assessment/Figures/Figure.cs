using OxyPlot;

namespace Finwright.Assessment.Figures;

/// <summary>A finished figure, drawn the same way into every file.</summary>
/// <param name="model">What it shows.</param>
/// <param name="words">What it says, in one sentence, for those who cannot see it.</param>
/// <param name="notes">What to know before reading it, line by line below the title.</param>
/// <param name="height">Height, points.</param>
public sealed class Figure(PlotModel model, string words, IReadOnlyList<string> notes, double height)
{
    /// <summary>Width, points.</summary>
    public static double Width => FigureSheet.Width;

    /// <summary>Height, points.</summary>
    public double Height => height;

    /// <summary>What it says in one sentence.</summary>
    public string Words => words;

    /// <summary>The figure as SVG; the same figure gives the same bytes.</summary>
    public byte[] ToSvg() => FigureSheet.Svg(model, words, notes, height);

    /// <summary>Draws it on another paper.</summary>
    /// <param name="paper">The paper, in points.</param>
    /// <param name="room">Where on it.</param>
    public void Draw(IRenderContext paper, OxyRect room)
    {
        ((IPlotModel)model).Update(updateData: true);
        ((IPlotModel)model).Render(paper, room);
    }
}
