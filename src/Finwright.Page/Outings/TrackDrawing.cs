using System.Globalization;
using System.Text;
using Finwright.Page.Scene;
using Finwright.Workshop.Tracks;

namespace Finwright.Page.Outings;

/// <summary>A piece of a track that was sailed at speeds of one band.</summary>
/// <param name="Band">The band.</param>
/// <param name="Path">The way, as SVG tells it.</param>
public sealed record TrackPiece(int Band, string Path);

/// <summary>A point of a track as it is read out.</summary>
/// <param name="X">Right, units of the drawing.</param>
/// <param name="Y">Down, units of the drawing.</param>
/// <param name="Time">Seconds since the first trusted point.</param>
/// <param name="Speed">m/s.</param>
public readonly record struct TrackMark(double X, double Y, double Time, double Speed);

/// <summary>A track drawn as seen from above, north up, without any map: the trusted points, thinned to what a screen can show.</summary>
public sealed class TrackDrawing
{
    /// <summary>Width of the drawing, units.</summary>
    public const double Width = 800;

    private const double Rim = 24, ScaleRoom = 22, Highest = 520, Lowest = 160, EarthRadius = 6_371_000, Thinnest = 1.2, Thickest = 4.2;
    private const int MostPoints = 3000;

    private TrackDrawing(double height, double metresPerUnit, IReadOnlyList<TrackPiece> pieces, IReadOnlyList<TrackMark> marks, ColourScale speeds) =>
        (Height, MetresPerUnit, Pieces, Marks, Speeds) = (height, metresPerUnit, pieces, marks, speeds);

    /// <summary>Height of the drawing, units.</summary>
    public double Height { get; }

    /// <summary>Metres in one unit.</summary>
    public double MetresPerUnit { get; }

    /// <summary>The pieces, in the order sailed.</summary>
    public IReadOnlyList<TrackPiece> Pieces { get; }

    /// <summary>Points to be read out, in the order sailed.</summary>
    public IReadOnlyList<TrackMark> Marks { get; }

    /// <summary>The bands, knots.</summary>
    public ColourScale Speeds { get; }

    /// <summary>Width of the line of a band, units: speed is told by more than colour.</summary>
    public double LineWidth(int band) => Thinnest + (Thickest - Thinnest) * band / Math.Max(1, Speeds.Colours.Count - 1);

    /// <summary>A round length for a scale, about a fifth of the width, metres.</summary>
    public double ScaleMetres
    {
        get
        {
            double wanted = Width / 5 * MetresPerUnit, power = Math.Pow(10, Math.Floor(Math.Log10(wanted)));
            return power * (wanted / power >= 5 ? 5 : wanted / power >= 2 ? 2 : 1);
        }
    }

    /// <summary>Draws a track.</summary>
    /// <param name="track">The track.</param>
    /// <returns>The drawing; null when there are fewer than two points that can be trusted.</returns>
    public static TrackDrawing? Of(Track track)
    {
        CleanTrack clean = TrackCleaning.Clean(track).Track;
        if (clean.Count < 2)
            return null;
        ReadOnlySpan<TrackPoint> points = clean.Points;
        double middle = 0, first = points[0].Longitude;
        foreach (TrackPoint point in points)
            middle += point.Latitude / clean.Count;
        // Flat round its middle: over the few kilometres of an outing the error is below the receiver's own. Longitudes are taken from the first, so that the date line cuts nothing.
        double east = EarthRadius * Math.Cos(middle);
        double[] xs = new double[clean.Count], ys = new double[clean.Count];
        for (int i = 0; i < clean.Count; i++)
            (xs[i], ys[i]) = (east * Math.IEEERemainder(points[i].Longitude - first, 2 * Math.PI), EarthRadius * (middle - points[i].Latitude));
        (double left, double right, double top, double bottom) = (xs.Min(), xs.Max(), ys.Min(), ys.Max());
        double scale = Math.Min((Width - 2 * Rim) / Math.Max(right - left, 1), (Highest - 2 * Rim) / Math.Max(bottom - top, 1));
        double height = Math.Max(Lowest, scale * (bottom - top) + 2 * Rim), aside = (Width - scale * (right - left)) / 2, above = (height - scale * (bottom - top)) / 2;
        double fastest = 0;
        foreach (double speed in clean.Speeds)
            fastest = Math.Max(fastest, speed);
        ColourScale speeds = ColourScale.Rising(0, fastest / SpeedUnits.Knot);

        int every = Math.Max(1, clean.Count / MostPoints);
        List<TrackPiece> pieces = [];
        List<TrackMark> marks = [];
        StringBuilder path = new();
        int band = -1, stretch = -1;
        for (int i = 0; i < clean.Count; i++)
        {
            bool starts = clean.Stretches[i] != stretch, ends = i + 1 == clean.Count || clean.Stretches[i + 1] != clean.Stretches[i];
            if (i % every != 0 && !starts && !ends)
                continue;
            TrackMark mark = new(aside + scale * (xs[i] - left), above + scale * (ys[i] - top), points[i].Time - points[0].Time, clean.Speeds[i]);
            int own = speeds.BandOf(mark.Speed / SpeedUnits.Knot);
            string at = $"{Number(mark.X)} {Number(mark.Y)}";
            if (starts)
            {
                Close();
                path.Append('M').Append(at);
                (band, stretch) = (own, clean.Stretches[i]);
            }
            else
            {
                path.Append('L').Append(at);
                if (own != band)
                {
                    Close();
                    path.Append('M').Append(at);
                    band = own;
                }
            }

            marks.Add(mark);
        }

        Close();
        return new(height + ScaleRoom, 1 / scale, pieces, marks, speeds);

        void Close()
        {
            if (path.Length > 0 && path.ToString().Contains('L', StringComparison.Ordinal))
                pieces.Add(new(band, path.ToString()));
            path.Clear();
        }
    }

    private static string Number(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);
}
