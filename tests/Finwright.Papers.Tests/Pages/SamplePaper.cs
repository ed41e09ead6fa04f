using Finwright.Assessment.Verdicts;
using Finwright.Geometry.Pictures;
using Finwright.Papers.Drawings;
using Finwright.Papers.Pages;

namespace Finwright.Papers.Tests.Pages;

/// <summary>A paper with every kind of block, once or several times over.</summary>
internal static class SamplePaper
{
    public static IReadOnlyList<TableColumn> Columns { get; } = [new("Depth", 1, IsNumber: true), new("Deflection", 1, IsNumber: true), new("Note", 2)];

    public static void Write(PageFlow flow, int times)
    {
        flow.Title("Mudflat 21", "A fin for shallow water, span 210.0 mm");
        for (int i = 1; i <= times; i++)
        {
            flow.Chapter(i, "How the fin stands", "One check fails, one is tight.");
            flow.Box("Read this first", ["Curing resin gets hot: never mix more at once than this sheet says, and leave a cup that smokes outdoors, on stone, until it is cold.", "Wear gloves."]);
            flow.Verdict(VerdictState.Fails, "fails", "Spin-out reserve when getting going", "0.90, limit 0.70", "more area or a thicker nose");
            flow.Verdict(VerdictState.NotKnown, "nicht bekannt", "Handfest nach", "", "Zahlen des Datenblatts eintragen");
            flow.Head("Print");
            flow.Step("Print the gauge first and measure it.", "Nothing shows sooner whether the printer keeps its sizes.", ["Nozzle and bed are hot."]);
            flow.Text("The rear nut comes 0.6 mm out of the wall at 42 mm depth. Move it 1 mm forward or thicken the root to 14.6 mm; both keep the span as it is.");
            flow.Text("Common practice, no source.", quiet: true);
            flow.Table(Columns, [["50.0 mm", "0.31 mm", "first"], ["100.0 mm", "1.24 mm", "a note that is longer than its cell is wide and has to go on below, line by line"]]);
            flow.Table(Columns, [["50.0 mm", "", PageFlow.TickEntry]], boxed: true);
            flow.Blanks(["Poured at", "Into the water at", "Out at"]);
            flow.Picture(Square(0.05), "A square of 50 mm");
            flow.Figure(PlotSample.Figure(), 0.08, "Predicted");
        }
    }

    public static Drawing Square(double edge)
    {
        Drawing drawing = new();
        drawing.Add(new DrawnStroke("outline", new(Palette.Line, 0.2e-3), [new(-edge, 0.1), new(0, 0.1), new(0, 0.1 + edge), new(-edge, 0.1 + edge)], Closed: true));
        return drawing;
    }
}
