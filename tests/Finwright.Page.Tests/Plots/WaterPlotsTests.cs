using Finwright.Assessment.Afloat;
using Finwright.Page.Plots;
using Finwright.Papers;
using Finwright.Water.Lifting;
using Finwright.Water.Sailing;

namespace Finwright.Page.Tests.Plots;

public sealed class WaterPlotsTests
{
    private static readonly FinAfloat Afloat = MadeFin.Sailing.Afloat!;

    private static readonly CaseAfloat Cruise = Afloat[LoadCaseKind.Cruise]!;

    [Fact]
    public void Side_force_over_leeway_is_that_of_the_answer_and_the_load_case_lies_on_it()
    {
        PlotSheet sheet = new WaterPlots(MadeFin.Reader()).SideForce(Afloat, ("the other", Afloat))!;
        PlotLine hull = Assert.Single(sheet.Lines, line => line.Name == "under this board");
        // Far past stall a point may have no answer; it is left out rather than drawn where the search ended.
        LiftingResult[] solved = [.. Afloat.Sweep.Where(result => result.Status is LiftingStatus.Attached or LiftingStatus.Stalled)];
        Assert.InRange(solved.Length, Afloat.Sweep.Count - 2, Afloat.Sweep.Count);
        Assert.Equal(solved.Select(result => result.SideForce), hull.Points.Select(point => point.Y));
        PlotPoint at = Assert.Single(Assert.Single(sheet.Lines, line => line.Dash is PlotDash.Marks).Points);
        Assert.Equal(double.RadiansToDegrees(Cruise.UnderHull.Result.Flow.Leeway), at.X, 1e-6);
        // The mark stands on the line as it is drawn: straight between steps of half a degree.
        Assert.Equal(Cruise.Load.SideForce, hull.At(at.X)!.Value, 0.01 * Cruise.Load.SideForce);
        Assert.Equal(Cruise.Load.SideForce, sheet.Limits[0].Value, 1e-9);
        PlotLine ghost = Assert.Single(sheet.Lines, line => line.IsGhost);
        Assert.Equal("the other", ghost.Name);
        Assert.Equal(hull.Points, ghost.Points);
    }

    [Fact]
    public void Load_along_the_span_adds_up_to_the_side_force_and_stalls_where_the_strips_do()
    {
        PlotSheet sheet = new WaterPlots(MadeFin.Reader()).SpanLoad(Afloat, beside: null)!;
        LiftingResult at = Cruise.UnderHull.Result;
        Assert.True(sheet.IsUpright);
        // N/cm times the width of each strip in cm; the tip's own force comes on top.
        double sum = sheet.Lines[0].Points.Zip(at.Strips, (point, strip) => point.Y * 100 * strip.Width).Sum();
        Assert.Equal(at.ForceZ - at.TipForce - at.VortexForce, sum, 0.02 * at.ForceZ);
        Assert.All(at.Strips.Where(strip => Math.Abs(strip.Cl) > 0.01), strip =>
            Assert.Equal(Math.Abs(strip.ClPeak!.Value / strip.Cl), WaterPlots.StallLoad(strip, at.Flow) / Math.Abs(strip.Load), 0.02 * Math.Abs(strip.ClPeak.Value / strip.Cl)));
    }

    [Fact]
    public void Inches_change_the_numbers_and_not_the_fin()
    {
        PlotSheet metric = new WaterPlots(MadeFin.Reader()).SideForce(Afloat, null)!, inch = new WaterPlots(MadeFin.Reader(units: PaperUnits.Inch)).SideForce(Afloat, null)!;
        Assert.Equal("N", metric.Y.Unit);
        Assert.Equal("lbf", inch.Y.Unit);
        Assert.Equal(4.4482216152605, metric.Lines[2].Points[^1].Y / inch.Lines[2].Points[^1].Y, 1e-9);
    }

    [Fact]
    public void The_suction_side_has_the_lowest_pressure_and_the_drag_polar_goes_by_rising_lift()
    {
        WaterPlots plots = new(MadeFin.Reader());
        PlotSheet pressure = plots.Pressure(Afloat)!;
        Assert.Equal(Afloat.Pressure!.Cp.Min(), pressure.Lines[0].Points.Min(point => point.Y), 1e-12);
        Assert.True(pressure.Y.IsReversed);
        PlotSheet polar = plots.SectionDrag(Afloat, MadeFin.Sailing.Polars!.Family!)!;
        Assert.All(polar.Lines, line => Assert.Equal(line.Points.Select(point => point.X).Order(), line.Points.Select(point => point.X)));
        Assert.Equal(3, polar.Lines.Count);
    }

    [Fact]
    public void A_table_has_a_row_for_each_place_and_an_empty_cell_where_a_line_is_not()
    {
        PlotSheet sheet = new("plot", new("depth", "mm", 0), new("load", "N", 1), [new("a", [new(0, 1), new(10, 2), new(20, 4)], PlotInk.Water), new("b", [new(5, 7.25)], PlotInk.Ink, PlotDash.Marks)]);
        PlotTable table = PlotTable.Of(sheet, MadeFin.Reader(PaperLanguage.German));
        Assert.Equal(["depth, mm", "a", "b"], table.Heads);
        Assert.Equal([["0", "1,0", ""], ["5", "1,5", "7,2"], ["10", "2,0", ""], ["20", "4,0", ""]], table.Rows);
    }
}
