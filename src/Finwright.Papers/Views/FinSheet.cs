using Finwright.Design;
using Finwright.Geometry;
using Finwright.Geometry.Pictures;
using Finwright.Papers.Drawings;
using Finwright.Papers.Templates;
using Finwright.Papers.Words;

namespace Finwright.Papers.Views;

/// <summary>Lays the views of a fin on a sheet: from the side, from ahead and from below at the left, base and sections at the right, the title block below these.</summary>
internal sealed class FinSheet
{
    private const double Aside = 6e-3, Level = 4.5e-3, Between = 7e-3, BlockWidth = 92e-3, BlockShare = 0.46, KeySize = 3e-3, NameSize = 2.8e-3;

    // Places of the three sections, as shares of the span.
    private static readonly double[] Cuts = [0.2, 0.5, 0.8];

    private readonly TemplateFin _fin;
    private readonly string _hash;
    private readonly PaperSettings _settings;
    private readonly Tongue _tongue;
    private readonly SectionCut[] _sections;

    public FinSheet(TemplateFin fin, string hash, PaperSettings settings, Tongue tongue)
    {
        (_fin, _hash, _settings, _tongue) = (fin, hash, settings, tongue);
        _sections = [.. Cuts.Select(share => SectionCut.Of(fin, share * fin.Blade.Span))];
    }

    private ViewWords Words => _tongue.Words.Views;

    /// <summary>The sheet with its main views in a scale; null when they do not fit.</summary>
    /// <param name="scale">Scale of the main views.</param>
    /// <param name="compact">Whether sections tell their sizes in words, which takes less room.</param>
    /// <param name="width">Width of the room, metres.</param>
    /// <param name="height">Height of the room, metres.</param>
    public Drawing? TryLay(double scale, bool compact, double width, double height)
    {
        Drawing main = Main(scale);
        DrawnBox box = main.Bounds;
        double block = Math.Min(BlockWidth, BlockShare * width), rows = TitleBlock.Height(Rows(scale).Count), right = width - box.Width - Between;
        if (box.Height > height || right < block)
            return null;
        foreach (double detail in ViewScale.All.Where(detail => detail >= scale))
        {
            foreach (bool beside in (ReadOnlySpan<bool>)[false, true])
            {
                Drawing details = Details(detail, compact, beside);
                DrawnBox reach = details.Bounds;
                if (reach.Width > right || reach.Height > height - rows - Between)
                    continue;
                Drawing sheet = new();
                sheet.Add(main, new Point2(0, (height - box.Height) / 2) - box.From);
                sheet.Add(details, new Point2(width - reach.Width - (right - reach.Width) / 2, 0) - reach.From);
                TitleBlock.Draw(sheet, new(width - block, height - rows), block, _fin.Design.Name, Rows(scale));
                return sheet;
            }
        }

        return null;
    }

    private Drawing Main(double scale)
    {
        Drawing side = new();
        ViewFrame frame = new(scale, default);
        SideOfFin.Draw(side, _fin, frame);
        DrawnBox body = side.GeometryBounds;
        Places(side, frame);
        SideDimensions.Main(side, _fin, _tongue, frame, Aside);
        SideDimensions.Hull(side, _fin, _tongue, frame, body);
        Water(side, frame, body);
        double ahead = side.Bounds.To.X + Between;
        SideDimensions.Tip(side, _fin, _tongue, frame, Aside);

        Drawing front = new();
        FrontOfFin.Draw(front, _fin, _tongue, frame, Aside);
        Drawing plan = new();
        PlanOfFin.Draw(plan, _fin, _tongue, frame, Aside);

        // The view from ahead shares depths with the one from the side, the view from below its places fore and aft.
        Drawing main = new();
        main.Add(side, default);
        main.Add(front, new(ahead - front.Bounds.From.X, 0));
        main.Add(plan, new(0, side.Bounds.To.Y + Between - plan.Bounds.From.Y));
        return main;
    }

    /// <summary>Where the sections are taken: strokes on both sides of the blade with their letters.</summary>
    private void Places(Drawing side, ViewFrame frame)
    {
        const double stroke = 3e-3, clear = 1e-3;
        for (int i = 0; i < _sections.Length; i++)
        {
            double y = _sections[i].Depth, behind = _fin.Overhang;
            Point2 leading = frame.At(_fin.Blade.Outline.LeadingEdge(y), y), trailing = frame.At(_fin.Blade.Outline.TrailingEdge(y) + 1.6 * behind, y), sink = new(0, 0.36 * Dimensions.WordSize);
            foreach ((Point2 at, int way) in new[] { (leading, -1), (trailing, 1) })
            {
                Point2 from = at + new Point2(way * clear, 0), to = from + new Point2(way * stroke, 0);
                side.Add(new DrawnStroke("places", ViewPens.Edge, [from, to], Closed: false));
                side.Add(new DrawnText(Dimensions.WordLayer, Letter(i), to + new Point2(way * clear, 0) + sink, new(Dimensions.WordSize, Palette.Line, way < 0 ? TextAnchor.End : TextAnchor.Start, Bold: true)));
            }
        }
    }

    /// <summary>An arrow with the water, left of the leading edge.</summary>
    private void Water(Drawing side, ViewFrame frame, DrawnBox body)
    {
        const double length = 9e-3;
        double y = 0.35 * _fin.Blade.Span;
        // Left of the letters of the sections as well, which may stand at the same height.
        double firstLetter = frame.At(_fin.Blade.Outline.LeadingEdge(_sections[0].Depth), 0).X - 8e-3;
        Point2 tip = new(Math.Min(body.From.X - 2e-3, firstLetter), frame.At(0, y).Y), start = tip - new Point2(length, 0);
        Dimensions dimensions = new(side, _tongue);
        side.Add(new DrawnStroke("water", new(Palette.Quiet, 0.25e-3), [start, tip], Closed: false));
        dimensions.Arrow(tip, new(1, 0));
        side.Add(new DrawnText(Dimensions.WordLayer, Words.Water, start - new Point2(0, 1.2e-3), new(Dimensions.WordSize, Palette.Quiet)));
    }

    /// <summary>Base and sections, below or beside one another.</summary>
    private Drawing Details(double scale, bool compact, bool beside)
    {
        ViewFrame frame = new(scale, default);
        Drawing fixing = new();
        BaseOfFin.Draw(fixing, _fin, _tongue, frame, Level);
        Drawing sections = new();
        for (int i = 0; i < _sections.Length; i++)
        {
            Drawing section = new();
            SectionView.Draw(section, _sections[i], Letter(i), _tongue, frame, Level, compact);
            sections.Add(section, new(0, (i == 0 ? 0 : sections.Bounds.To.Y + Level) - section.Bounds.From.Y));
        }

        Key(sections);
        Named(fixing, Words.BaseView, scale);
        Named(sections, Words.SectionsView, scale);
        DrawnBox first = fixing.Bounds, second = sections.Bounds;
        Drawing details = new();
        details.Add(fixing, -1 * first.From);
        details.Add(sections, (beside ? new Point2(first.Width + Between, 0) : new Point2(0, first.Height + Between)) - second.From);
        return details;
    }

    private void Named(Drawing view, string name, double scale)
    {
        DrawnBox box = view.Bounds;
        view.Add(new DrawnText(Dimensions.WordLayer, $"{name}, {_tongue.Ratio(scale)}", new(box.From.X, box.From.Y - NameSize), new(NameSize, Palette.Line, Bold: true)));
    }

    /// <summary>What tones and hatching mean.</summary>
    private void Key(Drawing details)
    {
        DrawnBox box = details.Bounds;
        double x = box.From.X, y = box.To.Y + Between / 2;
        foreach ((string text, Action<Point2[]> fill) in new (string, Action<Point2[]>)[]
        {
            (Words.Wall, patch => details.Add(new DrawnArea("key", ViewPens.Wall, [patch]))),
            (Words.Core, patch => Hatching.Draw(details, "key", ViewPens.Hatch, [patch], Math.PI / 4, 1e-3)),
            (Words.Rod, patch => details.Add(new DrawnArea("key", ViewPens.Rod, [patch]))),
        })
        {
            Point2[] patch = [new(x, y), new(x + 2 * KeySize, y), new(x + 2 * KeySize, y + KeySize), new(x, y + KeySize)];
            fill(patch);
            details.Add(new DrawnStroke("key", ViewPens.Fine, patch, Closed: true));
            details.Add(new DrawnText(Dimensions.WordLayer, text, new(x + 2 * KeySize + 1.2e-3, y + KeySize / 2 + 0.36 * Dimensions.WordSize), new(Dimensions.WordSize, Palette.Line)));
            x += 2 * KeySize + 5e-3 + Extent.Length(text, Dimensions.WordSize);
        }
    }

    private IReadOnlyList<IReadOnlyList<(string Label, string Entry)>> Rows(double scale)
    {
        FinDesign design = _fin.Design;
        string sections = string.Join(", ", design.Shape.Sections.Select(station => station.Section).Distinct(StringComparer.Ordinal));
        string resin = _fin.Poured is { } poured ? _tongue.Words.Names.Resin(poured.Resin.Name) : Words.Resin;
        return
        [
            [(Words.ScaleLabel, _tongue.Ratio(scale)), (Words.LengthsLabel, _tongue.LengthUnit), (Words.DateLabel, _tongue.Date(_settings.Date))],
            [(Words.AreaLabel, _tongue.Area(_fin.Planform.Area)), (Words.AspectRatioLabel, _tongue.Number(_fin.Planform.AspectRatio, 2)), (Words.RakeLabel, _tongue.Angle(_fin.Planform.Rake))],
            [(Words.SectionsLabel, sections)],
            [(Words.MaterialLabel, Words.Material(design.Print.Filament, _tongue.Percent(design.Print.InfillPercent / 100), resin))],
            [(Words.DesignLabel, _hash), (Words.NumberLabel, design.Parts.Number ?? ""), (Words.ProgramLabel, _settings.ProgramVersion)],
        ];
    }

    private static string Letter(int index) => ((char)('A' + index)).ToString();
}
