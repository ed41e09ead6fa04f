using Finwright.Assessment.Made;
using Finwright.Making.Pores;
using OxyPlot;

namespace Finwright.Assessment.Figures;

/// <summary>Draws a part as it is held for the pour, with its ports and the air that stays.</summary>
internal static class TrappedAirFigure
{
    private const double PanelWidth = 250, Tallest = 500, LineHeight = 17, ArrowRoom = 52;

    // Room above and below for the numbers of ports.
    private const double Rim = 30;

    // Bubbles told one by one; the rest are told together.
    private const int MostBubbles = 8;

    private const double Millilitres = 1e6, Millimetres = 1e3;

    // Below this no air is said to stay, m³: less than a drop.
    private const double Nothing = 0.05e-6;

    // Air is drawn where at least this share of a cell's width is air.
    private const double SeenShare = 0.3;

    private static readonly OxyColor PartTone = OxyColor.Parse("#c9d3d6");

    /// <summary>Draws the figure.</summary>
    /// <param name="title">Which fin and part.</param>
    /// <param name="part">The part as it is poured.</param>
    /// <returns>The figure.</returns>
    public static Figure Draw(string title, PartPoured part)
    {
        SideView view = new(part.Voxels, part.Layers, part.Up, part.Layers.ToLayers.Turn(new(1, 0, 0)));
        double scale = Math.Min((FigurePaper.Width - PanelWidth - ArrowRoom - 16) / view.Width, Tallest / view.Height);
        TrappedRegion[] bubbles = part.Air.Volume < Nothing ? [] : [.. part.Air.Regions.Take(MostBubbles)];
        double list = (6 + part.Ports.Count + bubbles.Length + (part.Air.Regions.Count > bubbles.Length ? 1 : 0)) * LineHeight;
        double height = Math.Max(scale * view.Height + 2 * Rim, list + 16);
        string[] notes = [$"Held with the {part.Attitude.Name}{(part.ArePortsSuggested ? "; the part has no ports of its own, these are suggested" : "")}."];
        FigurePaper paper = new(title, notes, height);
        DataPoint On(DataPoint p) => new(ArrowRoom + scale * p.X, Rim + scale * p.Y);
        IReadOnlyList<IReadOnlyList<DataPoint>> Placed(IReadOnlyList<IReadOnlyList<DataPoint>> rings) => [.. rings.Select(ring => (IReadOnlyList<DataPoint>)[.. ring.Select(On)])];

        Arrow(paper);
        IReadOnlyList<IReadOnlyList<DataPoint>> outline = Placed(view.Silhouette);
        paper.Fill(outline, PartTone);
        if (bubbles.Length > 0 && AirShares(part) is { } shares)
        {
            double edge = Math.Min(part.Voxels.Cell.X, Math.Min(part.Voxels.Cell.Y, part.Voxels.Cell.Z));
            IReadOnlyList<IReadOnlyList<DataPoint>> air = Placed(view.Through(shares).RegionFrom(SeenShare * edge));
            paper.Fill(air, FigureSheet.Paper);
            paper.Ring(air, FigureSheet.Fails, 1.25);
        }

        paper.Ring(outline, FigureSheet.Ink, 1);
        double x = FigurePaper.Width - PanelWidth + 16, y = 16;
        Say("Ports", isBold: true);
        foreach ((int index, PouredPort port) in part.Ports.Index())
        {
            Port(paper, On(view.At(port.Port.Mouth)), view.Way(port.Port.Outward), index + 1, port.IsFeed);
            string role = port.IsFeed ? "feed" : "vent", name = port.Name.StartsWith(role, StringComparison.Ordinal) ? role : $"{role}, {port.Name}";
            Item($"{index + 1}", $"{name}, {Millimetres * port.Port.Diameter:0.#} mm wide");
        }

        y += LineHeight / 2;
        Say("Air that stays", isBold: true);
        string told = part.Air.Volume < Nothing ? "None: all air finds its way out." : $"{Millilitres * part.Air.Volume:0.0} ml, {100 * part.Air.Share:0.0} % of the pores.";
        Say(told);
        foreach ((int index, TrappedRegion bubble) in bubbles.Index())
        {
            char letter = (char)('A' + index);
            Letter(paper, On(view.At(bubble.Highest)), letter);
            Item($"{letter}", $"{Millilitres * bubble.Volume:0.00} ml{(bubble.IsClosed ? ", no way to any vent" : $", {Millimetres * bubble.Depth:0} mm high")}");
        }

        if (bubbles.Length > 0 && part.Air.Regions.Count > bubbles.Length)
            Say($"and {part.Air.Regions.Count - bubbles.Length} smaller, {Millilitres * part.Air.Regions.Skip(bubbles.Length).Sum(bubble => bubble.Volume):0.00} ml in all");
        return paper.Finish($"Air that stays: {told}");

        void Item(string mark, string text)
        {
            paper.Text(x, y, mark, FigureSheet.Ink, isBold: true);
            paper.Text(x + 18, y, text, FigureSheet.Ink);
            y += LineHeight;
        }

        void Say(string text, bool isBold = false)
        {
            paper.Text(x, y, text, FigureSheet.Ink, isBold: isBold);
            y += LineHeight;
        }
    }

    /// <summary>Share of each cell of the part's grid that is air; null when the result did not keep it.</summary>
    internal static double[]? AirShares(PartPoured part)
    {
        PoreGrid grid = PoreGrid.Create(part.Voxels, part.Layers.Settings.InfillShare);
        if (part.Air.Cells.Count != grid.Count)
            return null;
        double[] shares = new double[part.Voxels.Count];
        for (int cell = 0; cell < grid.Count; cell++)
            shares[grid.CellOf(cell)] = part.Air.Cells[cell] * grid.CoreShareOf(cell);
        return shares;
    }

    private static void Arrow(FigurePaper paper)
    {
        paper.Line([new(14, 74), new(14, 14)], FigureSheet.Ink, 1.5);
        paper.Fill([[new(14, 6), new(9, 18), new(19, 18)]], FigureSheet.Ink);
        paper.Text(14, 84, "up", FigureSheet.Ink, HorizontalAlignment.Center);
    }

    // Feed: a filled disc; vent: an open one. The number stands outside the part.
    private static void Port(FigurePaper paper, DataPoint at, DataPoint way, int number, bool isFeed)
    {
        double length = Math.Sqrt(way.X * way.X + way.Y * way.Y);
        // A port that points to the eye gets its number above it.
        (double dx, double dy) = length > 0.3 ? (way.X / length, way.Y / length) : (0, -1);
        DataPoint end = new(at.X + 16 * dx, at.Y + 16 * dy);
        paper.Line([at, end], FigureSheet.Ink, 1.5);
        paper.Mark(at, 4, isFeed ? FigureSheet.Ink : FigureSheet.Paper, FigureSheet.Ink);
        paper.Text(at.X + 25 * dx, at.Y + 25 * dy, $"{number}", FigureSheet.Ink, HorizontalAlignment.Center, isBold: true);
    }

    private static void Letter(FigurePaper paper, DataPoint at, char letter)
    {
        paper.Line([at, new(at.X + 12, at.Y + 16)], FigureSheet.Fails, 0.75);
        paper.Mark(at, 2, FigureSheet.Fails, FigureSheet.Fails);
        paper.Text(at.X + 14, at.Y + 20, $"{letter}", FigureSheet.Fails, isBold: true);
    }
}
