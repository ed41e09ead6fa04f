using Finwright.Geometry;
using Finwright.Geometry.Pictures;
using Finwright.Papers.Drawings;
using Finwright.Papers.Pages;
using Finwright.Papers.Words;

namespace Finwright.Papers.Templates.Tiling;

/// <summary>The first pages of the templates: rulers to measure, what to type when they are off, the list of templates, and how sheets go together.</summary>
internal static class MeasureFirst
{
    private const double MapWidth = 55e-3, MapHeight = 50e-3, MapGap = 6e-3, TitleSize = 2.6e-3, TitleRoom = 5e-3, HeadRoom = 30e-3, CornerRoom = 6e-3;

    public static void Write(PaperDocument document, string fin, IReadOnlyList<TiledTemplate> templates, PrinterScale scale, Tongue tongue)
    {
        TemplateWords words = tongue.Words.Templates;
        PageFlow flow = new(document);
        flow.Title(words.MeasureTitle, fin);
        flow.Text(words.PrintTrue);
        if (!scale.IsTrue)
            flow.Text(TilePage.ScaleWords(scale, tongue));
        flow.Picture(Rulers(scale), words.MeasureBoth);
        flow.Table(
            [new(words.RulerHead, 3), new(words.MeasuredHead, 2), new(words.TypeHead, 4)],
            [[words.RulerAcross, "", "--ruler-across-mm"], [words.RulerDown, "", "--ruler-down-mm"]],
            boxed: true);
        flow.Text(words.WhatToType, quiet: true);
        flow.Head(words.ListHead);
        flow.Table(
            [new(words.TemplateHead, 3), new(words.UseHead, 7), new(words.SheetsHead, 2)],
            [.. templates.Select(template => (IReadOnlyList<string>)[template.Template.Title, FirstSentence(template.Template.What), Sheets(template, words)])]);
        TiledTemplate[] joined = [.. templates.Where(template => template.IsJoined)];
        if (joined.Length == 0)
            return;
        int abreast = Math.Max(1, (int)((flow.Width + MapGap) / (MapWidth + MapGap)));
        Drawing[] rows = [.. joined.Chunk(abreast).Select(Maps)];
        flow.Need(Math.Min(flow.PageHeight, rows.Sum(row => row.Bounds.Height + MapGap) + HeadRoom));
        flow.Head(words.AssemblyHead);
        flow.Text(words.JoinSheets);
        foreach (Drawing row in rows)
            flow.Picture(row, "");
    }

    // Each template tells the rest itself.
    private static string FirstSentence(string text) => text.IndexOf(". ", StringComparison.Ordinal) is >= 0 and int end ? text[..(end + 1)] : text;

    /// <summary>Maps side by side, each with its title below it.</summary>
    private static Drawing Maps(TiledTemplate[] templates)
    {
        Drawing[] maps = [.. templates.Select(template => AssemblyMap.Draw(template, MapWidth, MapHeight))];
        double height = maps.Max(map => map.Bounds.Height);
        Drawing row = new();
        foreach ((int index, Drawing map) in maps.Index())
        {
            double left = index * (MapWidth + MapGap);
            row.Add(map, new Point2(left + (MapWidth - map.Bounds.Width) / 2, 0) - map.Bounds.From);
            row.Add(new DrawnText("titles", templates[index].Template.Title, new(left + MapWidth / 2, height + TitleRoom), new(TitleSize, Palette.Line, TextAnchor.Middle)));
        }

        return row;
    }

    // Both start from one corner, so that a steel rule lies along both without turning the page.
    private static Drawing Rulers(PrinterScale scale)
    {
        Drawing rulers = new();
        RulerPair.Down(rulers, default, scale);
        RulerPair.Across(rulers, new(CornerRoom, scale.Down * RulerReading.Meant), scale);
        return rulers;
    }

    private static string Sheets(TiledTemplate template, TemplateWords words) => template.IsJoined ? words.SheetsFromTo(template.Sheets[0].Name, template.Sheets[^1].Name) : "1";
}
