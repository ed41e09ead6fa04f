using Finwright.Page.Outings;
using Finwright.Workshop.Tracks;

namespace Finwright.Page.Tests.Outings;

public sealed class TrackDrawingTests
{
    private const double EarthRadius = 6_371_000;

    [Fact]
    public void North_is_up_and_lengths_are_true_both_ways()
    {
        // 1000 m north at 10 m/s, then 1000 m east, at 56° north.
        TrackDrawing drawing = TrackDrawing.Of(Made(56, 3, 200, 100, (0, 1), (1, 0)))!;
        TrackMark first = drawing.Marks[0], corner = drawing.Marks[100], last = drawing.Marks[^1];
        Assert.True(corner.Y < first.Y);
        Assert.True(last.X > corner.X);
        double north = (first.Y - corner.Y) * drawing.MetresPerUnit, east = (last.X - corner.X) * drawing.MetresPerUnit;
        Assert.Equal(1000, north, 1.0);
        // Half a kilometre off the middle in latitude, a degree of longitude is longer or shorter by 0.01 %.
        Assert.Equal(990, east, 1.0);
    }

    [Fact]
    public void A_track_across_the_date_line_is_drawn_in_one_piece()
    {
        TrackDrawing drawing = TrackDrawing.Of(Made(10, 179.999, 100, 100, (1, 0), (1, 0)))!;
        Assert.True(drawing.Marks[^1].X > drawing.Marks[0].X);
        Assert.Equal(990, (drawing.Marks[^1].X - drawing.Marks[0].X) * drawing.MetresPerUnit, 2.0);
    }

    [Fact]
    public void Pieces_change_where_the_speed_changes_band_and_hang_together()
    {
        TrackDrawing drawing = TrackDrawing.Of(Made(56, 3, 120, 120, (1, 0), (1, 0), second => second < 60 ? 4 : 12))!;
        Assert.True(drawing.Pieces.Count >= 2);
        Assert.Equal(drawing.Pieces.Select(piece => piece.Band).Distinct().Count(), drawing.Pieces.Count);
        foreach ((TrackPiece before, TrackPiece after) in drawing.Pieces.Zip(drawing.Pieces.Skip(1)))
            Assert.Equal(before.Path[(before.Path.LastIndexOf('L') + 1)..], after.Path[1..after.Path.IndexOf('L', StringComparison.Ordinal)]);
    }

    [Fact]
    public void A_track_of_one_point_is_not_drawn() => Assert.Null(TrackDrawing.Of(Made(56, 3, 1, 1, (1, 0), (1, 0))));

    /// <summary>A track a second to the point: one way for some seconds, then another.</summary>
    private static Track Made(double latitudeDegrees, double longitudeDegrees, int seconds, int turn, (double East, double North) first, (double East, double North) then, Func<int, double>? speedAt = null)
    {
        List<TrackPoint> points = [];
        (double latitude, double longitude) = (double.DegreesToRadians(latitudeDegrees), double.DegreesToRadians(longitudeDegrees));
        for (int s = 0; s < seconds; s++)
        {
            double speed = speedAt?.Invoke(s) ?? 10;
            points.Add(new(s, latitude, Math.IEEERemainder(longitude, 2 * Math.PI), speed));
            (double east, double north) = s < turn ? first : then;
            latitude += speed * north / EarthRadius;
            longitude += speed * east / (EarthRadius * Math.Cos(latitude));
        }

        return new(new(2027, 5, 1, 12, 0, 0, TimeSpan.Zero), points);
    }
}
