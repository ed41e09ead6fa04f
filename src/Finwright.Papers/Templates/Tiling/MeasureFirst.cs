using Finwright.Papers.Drawings;
using Finwright.Papers.Pages;
using Finwright.Papers.Words;

namespace Finwright.Papers.Templates.Tiling;

/// <summary>The first pages of the templates: rulers to measure, what to type when they are off, the list of templates, and how sheets go together.</summary>
internal static class MeasureFirst
{
    private const double MapHeight = 62e-3, CornerRoom = 6e-3;

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
            [.. templates.Select(template => (IReadOnlyList<string>)[template.Template.Title, template.Template.What, Sheets(template.Plan, words)])]);
        TiledTemplate[] joined = [.. templates.Where(template => template.Plan.Tiles.Count > 1)];
        if (joined.Length == 0)
            return;
        flow.Need(MapHeight + 40e-3);
        flow.Head(words.AssemblyHead);
        flow.Text(words.JoinSheets);
        foreach (TiledTemplate template in joined)
            flow.Picture(AssemblyMap.Draw(template, Math.Min(flow.Width, 2 * MapHeight), MapHeight), template.Template.Title);
    }

    // Both start from one corner, so that a steel rule lies along both without turning the page.
    private static Drawing Rulers(PrinterScale scale)
    {
        Drawing rulers = new();
        RulerPair.Down(rulers, default, scale);
        RulerPair.Across(rulers, new(CornerRoom, scale.Down * RulerReading.Meant), scale);
        return rulers;
    }

    private static string Sheets(TilePlan plan, TemplateWords words) => plan.Tiles.Count == 1 ? "1" : words.SheetsFromTo(plan.Tiles[0].Name, plan.Tiles[^1].Name);
}
