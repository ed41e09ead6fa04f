using System.Globalization;

namespace Finwright.Geometry.Sections;

/// <summary>Reads the coordinates of a section from columns of text or from a list of points.</summary>
/// <remarks>
/// Accepted: either order round the section, or side by side; heading lines, comments (#, !, %, //), blank lines; commas,
/// semicolons, tabs or blanks between the numbers, decimal commas where they can be told from separators; closed or open trailing edge; any chord and
/// unit; a small rotation. Content that cannot be used is answered with problems, never with an exception.
/// </remarks>
public static class CoordinateReader
{
    private const int FewestPoints = 12;
    private const double SteepestChord = Math.PI / 6;
    private const double ThinnestSection = 0.005;
    private const double ThickestSection = 0.6;
    private const double FarthestAft = 0.9;

    // Shares of the chord. Steps back along a side up to this come from coordinates given to three decimals.
    private const double StepBack = 0.001;
    private const double MostStepsBack = 0.1;
    private const double SideEndsEarly = 0.02;
    private const double WidestGap = 0.3;
    private const double WorthSaying = 1e-4;

    // A fit that stays this close is as good as the points; 0.01 mm on a chord of 100 mm.
    private const double CloseEnough = 1e-4;

    // Camber within this is how the points were rounded.
    private const double Rounding = 2e-5;

    // Unknowns a fit may have for each point: more would follow the errors of the points.
    private const double UnknownsAPoint = 0.6;

    // So close to the nose the rounding of x moves a surface point by more than the sides are apart.
    private const double LeastCheckedForCrossing = 1e-4;

    // How much thicker than its points a spline may come out.
    private const double MostSwing = 1.05;

    private const int CheckStations = 400;

    private static int[] FitOrders { get; } = [6, 8, 10, 12, 16, 20, 24];

    /// <summary>Reads columns of text.</summary>
    /// <param name="name">Name of the section.</param>
    /// <param name="reader">Text of up to a megabyte.</param>
    /// <returns>A section of unit chord and notes, or problems with their lines.</returns>
    /// <exception cref="IOException">The text cannot be read from its source.</exception>
    public static CoordinateReading Read(string name, TextReader reader)
    {
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(reader);
        (List<CoordinateRow> rows, List<CoordinateProblem> problems) = CoordinateText.Read(reader);
        return problems.Count > 0 ? CoordinateReading.Refused(problems) : FromRows(name, rows);
    }

    /// <summary>Takes points that were already read, for example from a design file.</summary>
    /// <param name="name">Name of the section.</param>
    /// <param name="points">Pairs x, y in any of the orders that a file may have.</param>
    /// <returns>A section of unit chord and notes, or problems with the numbers of the points, from 1.</returns>
    public static CoordinateReading FromPoints(string name, IReadOnlyList<IReadOnlyList<double>> points)
    {
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(points);
        if (points.Count > CoordinateText.MostPoints)
            return CoordinateReading.Refused(new CoordinateProblem($"There are more than {CoordinateText.MostPoints} points. Thin them out; a few hundred describe a section.", null));
        List<CoordinateRow> rows = [];
        for (int i = 0; i < points.Count; i++)
        {
            if (points[i] is not { Count: 2 } pair)
                return CoordinateReading.Refused(new CoordinateProblem("A point has two numbers, x and y.", i + 1));
            if ((CoordinateText.NumberProblem(pair[0]) ?? CoordinateText.NumberProblem(pair[1])) is string problem)
                return CoordinateReading.Refused(new CoordinateProblem(problem, i + 1));
            rows.Add(new(new(pair[0], pair[1]), i + 1, 0));
        }

        return FromRows(name, rows);
    }

    private static CoordinateReading FromRows(string name, List<CoordinateRow> rows)
    {
        if (rows.Count < FewestPoints)
            return Refused($"There are only {rows.Count} points; at least {FewestPoints} are needed to draw a section.");
        if (ContourAssembly.TryAssemble(rows, out CoordinateProblem? problem) is not { } contour)
            return CoordinateReading.Refused(problem!);
        if (contour.Count < FewestPoints)
            return Refused($"There are only {contour.Count} different points; at least {FewestPoints} are needed to draw a section.");

        List<Point2> points = [.. contour.Select(r => r.Point)];
        Point2 tail = 0.5 * (points[0] + points[^1]);
        double reach = points.Max(p => (p - tail).Length);
        if (!((points[0] - tail).Length < reach / 4))
            return Refused("The two ends of the points lie far apart. They must meet, or nearly meet, at the trailing edge.", contour[^1].Line);
        AlignedContour aligned = AlignedContour.Of(points);
        if (Math.Abs(aligned.Rotation) > SteepestChord)
            return Refused($"The chord lies at {Degrees(aligned.Rotation)} degrees to the x axis. Turn the section so that x runs from the nose to the trailing edge.");
        if (aligned.Stretch > SideEndsEarly)
            return Refused($"One side ends {100 * aligned.Stretch:0.#} % of the chord away from the trailing edge.", contour[^1].Line);

        List<string> notes = Notes(aligned);
        int dropped = 0;
        if (Rising(aligned.Starboard, contour, ref dropped, out List<Point2> starboard) is { } above)
            return CoordinateReading.Refused(above);
        if (Rising(aligned.Port, contour, ref dropped, out List<Point2> port) is { } below)
            return CoordinateReading.Refused(below);
        if (dropped > MostStepsBack * points.Count)
            return Refused($"{dropped} of {points.Count} points step back along x. Sort the points, give fewer of them, or give them with more digits.");
        int repeats = rows.Count - contour.Count;
        if (dropped > 0)
            notes.Add($"{dropped} points that stepped back along x by less than {StepBack} chords were left out.");
        if (repeats > 1)
            notes.Add($"{repeats} repeated points, or points on the end of the trailing edge, were left out.");
        return Drawn(name, starboard, port, contour, aligned, notes);
    }

    private static CoordinateReading Refused(string message, int? line = null) =>
        CoordinateReading.Refused(new CoordinateProblem(message, line));

    private static string Degrees(double angle) => (180 / Math.PI * angle).ToString("0.##", CultureInfo.InvariantCulture);

    private static List<string> Notes(AlignedContour aligned)
    {
        List<string> notes = [];
        if (Math.Abs(aligned.Chord - 1) > WorthSaying)
            notes.Add($"Scaled from a chord of {aligned.Chord:0.######} to 1.");
        if (Math.Abs(aligned.Rotation) > WorthSaying)
            notes.Add($"Turned by {Degrees(-aligned.Rotation)} degrees, so that the nose and the middle of the trailing edge lie on the chord.");
        if (aligned.Stretch > WorthSaying)
            notes.Add($"Stretched by up to {100 * aligned.Stretch:0.##} % of the chord, so that both sides end at the trailing edge.");
        return notes;
    }

    // The side without its nose, x rising strictly; null when all is well.
    private static CoordinateProblem? Rising(IReadOnlyList<AlignedPoint> side, List<CoordinateRow> contour, ref int dropped, out List<Point2> rising)
    {
        rising = [];
        double before = 0;
        foreach ((Point2 p, int source) in side.Skip(1))
        {
            int line = contour[source].Line;
            if (p.X < before - StepBack)
                return new($"The points go back and forth along x near x = {p.X:0.####} chords. Go once round the section, or down one side and then the other.", line);
            if (p.X - before > WidestGap)
                return new($"There is no point between {100 * before:0} % and {100 * p.X:0} % of the chord on this side. Give more points.", line);
            if (p.X > before)
            {
                rising.Add(p);
                before = p.X;
            }
            else
            {
                dropped++;
            }
        }

        return rising.Count >= 4 ? null : new($"One side has only {rising.Count} points. Give more points.", null);
    }

    private static CoordinateReading Drawn(string name, List<Point2> starboard, List<Point2> port, List<CoordinateRow> contour, AlignedContour aligned, List<string> notes)
    {
        double edge = starboard[^1].Y - port[^1].Y;
        if (edge is < 0 and > -Rounding)
        {
            double middle = 0.5 * (starboard[^1].Y + port[^1].Y);
            (starboard[^1], port[^1], edge) = (new(1, middle), new(1, middle), 0);
        }

        if (Crossing(starboard, port) is double crossing)
            return Refused($"The two sides cross near {100 * crossing:0.#} % of the chord.", LineNear(crossing, contour, aligned));
        (double thickestAt, double half) = ChordPeak.Of(x => HalfBetween(starboard, port, x));
        if (2 * half < ThinnestSection)
            return Refused($"The section is only {200 * half:0.###} % thick; at least {100 * ThinnestSection} % are needed.");
        if (2 * half > ThickestSection)
            return Refused($"The section is {200 * half:0} % thick; more than {100 * ThickestSection} % is no section.");
        if (thickestAt > FarthestAft)
            return Refused($"The section is thickest at {100 * thickestAt:0} % of the chord. The nose must be at the small x.");

        if (Fitted(name, starboard, port, edge) is { } fitted)
        {
            string kind = fitted.Section.MaximumCamber is 0 ? "symmetric class-shape section" : "class-shape section";
            notes.Add($"Drawn as a {kind} of order {fitted.Section.ThicknessCoefficients.Count - 1}; no point lies farther off than {100 * fitted.MaximumError:0.####} % of the chord.");
            return new(fitted.Section, [], notes, fitted.MaximumError);
        }

        // A spline is free between the points: where they are rough and bunched it may swing out.
        CoordinateSection exact = new(name, starboard, port);
        if (!IsSolid(exact) || exact.ThicknessRatio > MostSwing * 2 * half)
            return Refused("No smooth section follows these points. Check them for slips, or give them evenly spread and with more digits.");
        notes.Add("Drawn as a spline through every point: no class-shape section of a sensible order follows them closely. Rough points leave a rough surface.");
        return new(exact, [], notes, 0);
    }

    private static double? Crossing(List<Point2> starboard, List<Point2> port)
    {
        foreach (double x in starboard.Concat(port).Select(p => p.X).Where(x => x > LeastCheckedForCrossing).Order())
            if (HalfBetween(starboard, port, x) < -Rounding)
                return x;
        return null;
    }

    // Half the distance between the sides along y, each drawn straight over √x from point to point.
    private static double HalfBetween(List<Point2> starboard, List<Point2> port, double x) => (Ordinate(starboard, x) - Ordinate(port, x)) / 2;

    private static double Ordinate(List<Point2> side, double x)
    {
        int low = -1, high = side.Count - 1;
        while (high - low > 1)
            if ((low + high) / 2 is int middle && side[middle].X < x)
                low = middle;
            else
                high = middle;
        Point2 from = low < 0 ? default : side[low], to = side[high];
        double start = Math.Sqrt(from.X), share = (Math.Sqrt(x) - start) / (Math.Sqrt(to.X) - start);
        return from.Y + Math.Min(share, 1) * (to.Y - from.Y);
    }

    private static int LineNear(double place, List<CoordinateRow> contour, AlignedContour aligned) =>
        contour[aligned.Starboard.Concat(aligned.Port).Where(p => p.Source >= 0).MinBy(p => Math.Abs(p.Point.X - place)).Source].Line;

    // The lowest order that follows the points closely, symmetric when the points are; null when none does.
    private static ClassShapeFitted? Fitted(string name, List<Point2> starboard, List<Point2> port, double edge)
    {
        foreach (int order in FitOrders)
        {
            if (2 * order + 1 > UnknownsAPoint * (starboard.Count + port.Count))
                return null;
            if (!ClassShapeFit.TryFit(name, starboard, port, edge, new(order, order - 1), out ClassShapeFitted? fitted))
                return null;
            if (Math.Abs(fitted.Section.MaximumCamber) < Rounding
                && ClassShapeFit.TryFit(name, starboard, port, edge, new(order, null), out ClassShapeFitted? symmetric)
                && symmetric.MaximumError < fitted.MaximumError + Rounding)
                fitted = symmetric;
            if (fitted.MaximumError <= CloseEnough && IsSolid(fitted.Section))
                return fitted;
        }

        return null;
    }

    private static bool IsSolid(Section section)
    {
        for (int i = 1; i < CheckStations; i++)
            if (!(section.HalfThickness(SectionGeometry.Station(0.5 * i / CheckStations)) > 0))
                return false;
        return true;
    }
}
