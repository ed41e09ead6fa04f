using System.Text;
using Finwright.Assessment.Figures;
using Finwright.Assessment.Made;
using Finwright.Assessment.Packing;
using Finwright.Geometry;
using Finwright.Making.Cure;
using Finwright.Making.Layers;
using Finwright.Making.Pores;
using Finwright.Making.Voxels;
using OxyPlot;

namespace Finwright.Assessment.Tests.Figures;

public sealed class MakingFiguresTests
{
    private const double Kelvin = 273.15;

    private static readonly string[] Names = ["pores-test-box.svg", "air-test-box.svg", "cure-map-test-box.svg", "cure-test-box.svg"];

    [Fact]
    public void Of_a_cured_part_draws_all_four_with_every_word_on_the_sheet()
    {
        (string File, string What, Figure Figure)[] figures = [.. Draw("test fin")];
        Assert.Equal(Names, figures.Select(figure => figure.File), StringComparer.Ordinal);
        Assert.All(figures, figure =>
        {
            DrawnFigure drawn = new(figure.Figure);
            Assert.Empty(drawn.Outside());
            Assert.StartsWith("test fin, test box: ", drawn.Title, StringComparison.Ordinal);
            Assert.EndsWith(".", drawn.Words, StringComparison.Ordinal);
            Assert.DoesNotContain("NaN", Encoding.UTF8.GetString(figure.Figure.ToSvg()), StringComparison.Ordinal);
        });
    }

    [Fact]
    public void Of_the_same_part_gives_the_same_bytes() =>
        Assert.All(Draw("a").Zip(Draw("a")), pair => Assert.True(pair.First.Figure.ToSvg().AsSpan().SequenceEqual(pair.Second.Figure.ToSvg()), pair.First.File));

    [Fact]
    public void A_long_name_stays_on_the_sheet() => Assert.All(Draw(new string('m', 60)), figure => Assert.Empty(new DrawnFigure(figure.Figure).Outside()));

    [Fact]
    public void The_pores_of_a_box_are_its_rectangle_less_walls_and_gyroid()
    {
        PartLayers layers = CuredBox.Poured.Layers;
        PrintSettings settings = layers.Settings;
        // Closed form: the rectangle less the walls on all four sides, less the gyroid's share.
        double inside = (layers.Size.X - 2 * settings.WallThickness) * (layers.Size.Y - 2 * settings.WallThickness) / (layers.Size.X * layers.Size.Y);
        DrawnFigure drawn = new(PoreSlicesFigure.Draw("box", layers));
        Assert.Contains($"pores {100 * inside * (1 - settings.InfillShare):0} %", drawn.Texts, StringComparer.Ordinal);
        Assert.Contains($"{1e6 * (1 - settings.InfillShare) * layers.CoreVolume:0.0} ml", drawn.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void What_lies_inside_the_walls_has_the_area_the_layer_tells()
    {
        PartLayers layers = CuredBox.Poured.Layers;
        Layer layer = layers.Layers[layers.Layers.Count / 2];
        IReadOnlyList<Point2> ring = Assert.Single(LayerRings.Inside(layer, layers.Settings));
        double twice = 0;
        for (int i = 0; i < ring.Count; i++)
            twice += ring[i].Cross(ring[(i + 1) % ring.Count]);
        // The same polygon: rounding only.
        Assert.Equal(layer.InsideArea, twice / 2, 1e-12);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(20)]
    [InlineData(45)]
    public void A_box_seen_from_its_broad_side_shows_that_side_however_it_is_tilted(double degrees)
    {
        PartLayers layers = CuredBox.Poured.Layers;
        (double sin, double cos) = Math.SinCos(double.DegreesToRadians(degrees));
        SideView view = new(CuredBox.Poured.Voxels, layers, new(sin, 0, cos), new(1, 0, 0));
        // Closed form: length times height, mm². A dot of the outline is a third of a millimetre wide, and half of one may be lost or won all round: 220 mm x 0.17 mm.
        Assert.Equal(1e6 * CuredBox.Length * CuredBox.Height, Math.Abs(view.Silhouette.Sum(Area)), 37.0);
        // Up on the paper is up: the highest corner lies at the top of the frame, within its empty rim.
        DataPoint top = view.At(new(degrees > 0 ? layers.Size.X : 0, 0, layers.Size.Z));
        Assert.InRange(top.Y, 0, 5);
    }

    [Fact]
    public void When_no_air_stays_the_figure_says_so()
    {
        PartPoured part = CuredBox.Poured with { Air = CuredBox.Poured.Air with { Volume = 0, Regions = [], Cells = [] } };
        Assert.Contains("None: all air finds its way out.", new DrawnFigure(TrappedAirFigure.Draw("box", part)).Texts, StringComparer.Ordinal);
    }

    [Fact]
    public void Air_above_the_only_vent_is_drawn_and_told_with_its_volume()
    {
        PartPoured part = CuredBox.WithAir();
        // The vent sits at half height: about half of the pores stay air.
        Assert.InRange(part.Air.Share, 0.3, 0.6);
        DrawnFigure with = new(TrappedAirFigure.Draw("box", part)), without = new(TrappedAirFigure.Draw("box", part with { Air = part.Air with { Cells = [] } }));
        Assert.Contains($"{1e6 * part.Air.Volume:0.0} ml, {100 * part.Air.Share:0.0} % of the pores.", with.Texts, StringComparer.Ordinal);
        Assert.Contains("A", with.Texts, StringComparer.Ordinal);
        Assert.Empty(with.Outside());
        // The bubble is one more filled area: what the grid knows is drawn.
        Assert.Equal(without.Areas.Count + 1, with.Areas.Count);
    }

    [Fact]
    public void Each_cell_of_the_pores_lies_where_the_part_has_core()
    {
        PartVoxels voxels = CuredBox.Poured.Voxels;
        PoreGrid grid = PoreGrid.Create(voxels, 0.15);
        Assert.All(Enumerable.Range(0, grid.Count), cell => Assert.Equal(voxels.Core[grid.CellOf(cell)], grid.CoreShareOf(cell), 1e-9));
        Assert.Equal(grid.Count, Enumerable.Range(0, grid.Count).Select(grid.CellOf).Distinct().Count());
    }

    [Fact]
    public void The_map_tells_the_peak_where_and_when()
    {
        PartCured part = CuredBox.Cured;
        CurePeak peak = part.Band.Nominal.Resin;
        DrawnFigure drawn = new(CureMapFigure.Draw("box", part, CuredBox.Softening));
        Assert.Contains($"{peak.Temperature - Kelvin:0.0} °C: hottest,", drawn.Texts, StringComparer.Ordinal);
        Assert.Contains($"{peak.Time / 3600:0.0} h after the first pour", drawn.Texts, StringComparer.Ordinal);
        Assert.Contains("65: the walls soften", drawn.Texts, StringComparer.Ordinal);
    }

    [Fact]
    public void The_curves_tell_peak_softening_bath_and_handling()
    {
        PartCureBand band = CuredBox.Cured.Band;
        DrawnFigure drawn = new(CureCurvesFigure.Draw("box", band, CuredBox.Softening, CuredBox.Cured.Case.Bath));
        Assert.Contains($"{band.Nominal.Resin.Temperature - Kelvin:0.0} °C", drawn.Texts, StringComparer.Ordinal);
        Assert.Contains("the walls soften at 65 °C", drawn.Texts, StringComparer.Ordinal);
        Assert.Contains("out of the bath, 4.0 h", drawn.Texts, StringComparer.Ordinal);
        Assert.Contains($"can be handled, {band.Nominal.Handling / 3600:0.0} h", drawn.Texts, StringComparer.Ordinal);
        Assert.All((string[])["hottest resin", "resin, slow", "resin, fast", "wall inside", "wall outside", "surroundings"], name => Assert.Contains(name, drawn.Texts, StringComparer.Ordinal));
    }

    [Fact]
    public void The_steps_hold_the_numbers_of_the_answers()
    {
        Design.FinDesign design = Afloat.SailedFin.Design;
        PourSummary pour = PourSummary.Of(CuredBox.Made, "0");
        CureSummary cure = CureSummary.Of(CuredBox.Made, "0");
        string steps = string.Join('\n', MakingSteps.Print(design, PrintSummary.Of(CuredBox.Made, "0")).Concat(MakingSteps.Pour(design, pour)).Concat(MakingSteps.Cure(design, cure)));
        Assert.Contains($"{pour.Parts[0].Batches[0].MassGrams.Value:0.0} g", steps, StringComparison.Ordinal);
        Assert.Contains($"held with the {pour.Parts[0].Attitude}", steps, StringComparison.Ordinal);
        Assert.Contains($"peak at {cure.Parts[0].Nominal.PeakResinCelsius:0} °C", steps, StringComparison.Ordinal);
        Assert.Contains("Never let it pass 65 °C", steps, StringComparison.Ordinal);
        Assert.Contains("nitrile gloves", steps, StringComparison.Ordinal);
    }

    private static IEnumerable<(string File, string What, Figure Figure)> Draw(string name) => MakingFigures.Of(name, CuredBox.Made.Poured, CuredBox.Made.Cured);

    private static double Area(IReadOnlyList<DataPoint> ring)
    {
        double twice = 0;
        for (int i = 0; i < ring.Count; i++)
        {
            (DataPoint a, DataPoint b) = (ring[i], ring[(i + 1) % ring.Count]);
            twice += a.X * b.Y - b.X * a.Y;
        }

        return twice / 2;
    }
}
