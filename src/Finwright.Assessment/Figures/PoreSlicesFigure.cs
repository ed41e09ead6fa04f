using Finwright.Geometry;
using Finwright.Making.Layers;
using OxyPlot;

namespace Finwright.Assessment.Figures;

/// <summary>Draws a part cut across at a few heights as it is printed, to scale: walls, solid plastic, and the core that the resin fills.</summary>
internal static class PoreSlicesFigure
{
    // Room beside the cuts for what is said of them, and between them.
    private const double TextWidth = 176, Gap = 16, LineHeight = 17, LeastRow = 5 * LineHeight;

    private const double TallestCut = 190, HighestSheet = 820, Legend = 44;

    private const double Millimetres = 1e3, Percent = 100, SquareCentimetres = 1e4;

    // Shares of the height at which it is cut: a part that is thick in the middle and thin at both ends shows all of itself.
    private static readonly double[] Heights = [0.1, 0.3, 0.5, 0.7, 0.9];

    private static readonly double[] Steps = [1, 2, 5, 10, 20, 50, 100, 200];

    private static readonly OxyColor SolidTone = OxyColor.Parse("#a89d84"), CoreTone = OxyColor.Parse("#dce9ee");

    /// <summary>Draws the figure.</summary>
    /// <param name="title">Which fin and part.</param>
    /// <param name="part">The part.</param>
    /// <returns>The figure.</returns>
    public static Figure Draw(string title, PartLayers part)
    {
        double scale = (FigurePaper.Width - TextWidth) / Math.Max(part.Size.X, 1e-3);
        scale = Math.Min(scale, TallestCut / Math.Max(part.Size.Y, 1e-3));
        double row = Math.Max(LeastRow, scale * part.Size.Y) + Gap;
        Layer[] cuts = Cuts(part, (int)Math.Clamp((HighestSheet - Legend) / row, 1, Heights.Length));
        double open = 1 - part.Settings.InfillShare, pores = open * part.CoreVolume / part.EnvelopeVolume;
        string[] notes =
        [
            $"Cut across at {(cuts.Length == 1 ? "one height" : $"{cuts.Length} heights")} above the bed. The gyroid is not drawn: {Percent * part.Settings.InfillShare:0} % of the core is plastic, the rest is pores.",
        ];
        FigurePaper paper = new(title, notes, Legend + cuts.Length * row);
        Key(paper, scale);
        double y = Legend;
        foreach (Layer layer in cuts.Reverse())
        {
            Cut(paper, part, layer, scale, y);
            Said(paper, part, layer, open, y + (row - Gap) / 2);
            y += row;
        }

        return paper.Finish($"In all, {Percent * pores:0} % of the part is pores: {1e6 * open * part.CoreVolume:0.0} ml.");
    }

    /// <summary>Layers at the heights shown, from the bed up.</summary>
    private static Layer[] Cuts(PartLayers part, int most)
    {
        IEnumerable<double> shares = most switch
        {
            1 => [Heights[2]],
            2 => [Heights[1], Heights[3]],
            3 => [Heights[0], Heights[2], Heights[4]],
            4 => [Heights[0], Heights[1], Heights[3], Heights[4]],
            _ => Heights,
        };
        return [.. shares.Select(share => (int)(share * part.Layers.Count)).Distinct().Select(index => part.Layers[index])];
    }

    private static void Cut(FigurePaper paper, PartLayers part, Layer layer, double scale, double top)
    {
        double right = scale * part.Size.X, bottom = top + scale * part.Size.Y;
        // Of a row higher than the cut, the middle.
        double moved = Math.Max(0, LeastRow - scale * part.Size.Y) / 2;
        IReadOnlyList<IReadOnlyList<DataPoint>> outline = Rings(layer.Outline);
        paper.Fill(outline, FigureSheet.Ink);
        paper.Fill(Rings(LayerRings.Inside(layer, part.Settings)), SolidTone);
        IReadOnlyList<IReadOnlyList<DataPoint>> core = Rings(layer.Core);
        paper.Fill(core, CoreTone);
        paper.Ring(core, FigureSheet.QuietInk, 0.5);
        paper.Ring(outline, FigureSheet.Ink, 0.75);

        IReadOnlyList<IReadOnlyList<DataPoint>> Rings(IReadOnlyList<IReadOnlyList<Point2>> rings) =>
            [.. rings.Where(ring => ring.Count > 2).Select(ring => (IReadOnlyList<DataPoint>)[.. ring.Select(p => new DataPoint(Math.Clamp(scale * p.X, 0, right), Math.Min(bottom, bottom - scale * p.Y) + moved))])];
    }

    private static void Said(FigurePaper paper, PartLayers part, Layer layer, double open, double middle)
    {
        double x = FigurePaper.Width - TextWidth + 12, all = Math.Max(layer.OutlineArea, 1e-12);
        int number = part.Layers.Index().First(entry => ReferenceEquals(entry.Item, layer)).Index + 1;
        (string Text, bool IsBold)[] lines =
        [
            ($"{Millimetres * layer.Middle:0.0} mm up, layer {number}", true),
            ($"{SquareCentimetres * layer.OutlineArea:0.0} cm² in all", false),
            ($"walls {Percent * layer.WallArea / all:0} %, solid {Percent * layer.SolidArea / all:0} %", false),
            ($"core {Percent * layer.CoreArea / all:0} %, so", false),
            ($"pores {Percent * open * layer.CoreArea / all:0} %", true),
        ];
        double y = middle - (lines.Length - 1) * LineHeight / 2;
        foreach ((string text, bool isBold) in lines)
        {
            paper.Text(x, y, text, FigureSheet.Ink, isBold: isBold);
            y += LineHeight;
        }
    }

    private static void Key(FigurePaper paper, double scale)
    {
        double x = 0;
        foreach ((string name, OxyColor tone) in ((string, OxyColor)[])[("walls", FigureSheet.Ink), ("solid layers", SolidTone), ("core: gyroid and pores", CoreTone)])
        {
            paper.Box(x, 6, 18, 12, tone, FigureSheet.QuietInk);
            paper.Text(x + 24, 12, name, FigureSheet.Ink);
            x += 24 + FigureSheet.WidthOf(name) + 24;
        }

        double length = Steps.Last(step => step * scale / Millimetres <= 160 || step == Steps[0]), wide = length * scale / Millimetres, from = FigurePaper.Width - wide - 70;
        paper.Line([new(from, 8), new(from, 16)], FigureSheet.Ink, 1);
        paper.Line([new(from, 12), new(from + wide, 12)], FigureSheet.Ink, 1);
        paper.Line([new(from + wide, 8), new(from + wide, 16)], FigureSheet.Ink, 1);
        paper.Text(from + wide + 8, 12, $"{length:0} mm", FigureSheet.Ink);
    }
}
