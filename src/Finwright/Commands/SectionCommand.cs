using System.CommandLine;
using System.Globalization;
using Finwright.Assessment.Afloat;
using Finwright.Assessment.Packing;
using Finwright.Design;
using Finwright.Geometry;
using Finwright.Geometry.Sections;
using Finwright.Terminal;
using Finwright.Water.Finishes;
using Finwright.Water.FromDesign;
using Finwright.Water.Polars;
using Finwright.Water.Sections;

namespace Finwright.Commands;

/// <summary>Shows one section: its numbers and its coordinates.</summary>
internal sealed class SectionCommand : ProgramCommand
{
    private const int UsualPoints = 81;
    private const string UsualAngles = "-4:14:1";
    private const double UsualAmplification = 9;

    // Where the empirical laws of transition were drawn from measurements.
    private const double LeastAmplification = 1, GreatestAmplification = 14;

    private readonly Argument<string> _section = Inputs.Needed("SECTION", $"Name of a section ({Forms}), or a file of coordinate columns.");
    private readonly Option<double?> _thickness = Inputs.Number("--thickness-percent", "percent", "Scale the section to this thickness ratio.");
    private readonly Option<double?> _trailingEdge = Inputs.Number("--trailing-edge-percent", "percent", "Make the trailing edge this thick, as a share of the chord.");
    private readonly Option<int?> _points = Inputs.Whole("--points", $"Points once round; {UsualPoints} if left out.", 5, 10_001);
    private readonly Option<double?> _reynolds = Inputs.Number("--reynolds", "number", $"Work out the flow past the section at this Reynolds number (speed times chord over viscosity), {SectionFlow.LeastReynolds:0} to {SectionFlow.GreatestReynolds:0}.");
    private readonly Option<string?> _alpha = Inputs.Text("--alpha", "degrees", $"Angles of attack as first:last:step, within -20 to 20; {UsualAngles} if left out.");
    private readonly Option<double?> _n = Inputs.Number("--n", "number", "Amplification exponent at which a laminar layer turns turbulent: 9 in a quiet tunnel and if left out, 4 to 6 in chop.");
    private readonly Option<double?> _trip = Inputs.Number("--trip", "share", "Trip both sides here, as a share of the chord from the nose, 0 to 1.");
    private readonly Option<double?> _tripUpper = Inputs.Number("--trip-upper", "share", "Trip the upper (starboard) side here.");
    private readonly Option<double?> _tripLower = Inputs.Number("--trip-lower", "share", "Trip the lower (port) side here.");
    private readonly Option<Finish?> _finish = Inputs.OneOf<Finish>("--finish", "Finish of both sides; smooth if left out. Needs --chord-mm. A bare print has layers of 0.2 mm.");
    private readonly Option<PrintAttitude?> _printed = Inputs.OneOf<PrintAttitude>("--printed", "With --finish bare-print: how the blade lay on the printer; standing if left out.");
    private readonly Option<double?> _chord = Inputs.Number("--chord-mm", "mm", "With --finish: the chord on which it lies, 10 to 500.");
    private readonly Option<bool> _json = Inputs.Json();

    public SectionCommand()
        : base(
            "section",
            "Show a section: area, thickness, camber, nose radius and coordinates, for a chord of 1; with --reynolds what it does in the water instead of the coordinates: lift, drag, moment, transition and separation over the angle of attack. The coordinates run from the starboard trailing edge round the nose to the port trailing edge.",
            "finwright section naca-0010 --reynolds 1e6 --alpha 0:12:2")
    {
        Add(_section);
        foreach (Option option in (Option[])[_thickness, _trailingEdge, _points, _reynolds, _alpha, _n, _trip, _tripUpper, _tripLower, _finish, _printed, _chord, _json])
            Add(option);
    }

    private static string Forms => "naca-0010, naca-2412, naca-0010-35, naca-16-009";

    public override ExitCode Run(ParseResult arguments, TextStreams streams, CancellationToken cancellation)
    {
        string asked = arguments.GetRequiredValue(_section);
        List<string> remarks = [];
        Section section = Changed(Find(asked, remarks), arguments);
        SectionPolar? polar = PolarOf(section, arguments, cancellation);
        int count = arguments.GetValue(_points) ?? UsualPoints;
        Point2[] points = [.. Enumerable.Range(0, count).Select(i => SectionGeometry.PointAt(section, i / (count - 1.0)))];
        SectionAnswer answer = SectionAnswer.Of(section, points) with { Polar = polar };
        if (arguments.GetValue(_json))
        {
            streams.Out.Write(AnswerJson.Write(answer));
            return ExitCode.Good;
        }

        TextWriter o = streams.Out;
        if (polar is not null)
        {
            PolarText.Write(streams, answer.Name, polar);
            foreach (string remark in remarks)
                o.WriteLine("\n" + Wrapping.Wrap(remark, streams.Width));
            return ExitCode.Good;
        }

        o.WriteLine($"{answer.Name}, for a chord of 1");
        o.WriteLine();
        NumberTable table = new(o);
        table.Row("thickness", answer.ThicknessPercent, "0.000", "%", $"at {answer.ThickestAtPercent:0.0} % of the chord");
        table.Row("camber", answer.CamberPercent, "0.000", "%", answer.CamberPercent is 0 ? "" : $"at {answer.HighestAtPercent:0.0} % of the chord");
        table.Row("area", answer.AreaPerChordSquared, "0.000000", "chord²");
        table.Row("centroid", answer.CentroidAtPercent, "0.000", "%", "of the chord from the nose");
        table.Row("nose radius", answer.NoseRadiusPercent, "0.0000", "%", "of the chord");
        table.Row("trailing edge", answer.TrailingEdgePercent, "0.000", "%", $"thick, {answer.TrailingEdgeAngleDegrees:0.0}° between its sides");
        table.Row("second moment", answer.SecondMomentPerChord4, "0.0000e+0", "chord⁴", "about the chord line");
        foreach (string remark in remarks)
            o.WriteLine("\n" + Wrapping.Wrap(remark, streams.Width));
        o.WriteLine();
        foreach (Point2 p in points)
            o.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{p.X,10:F6} {p.Y + 0.0,10:F6}"));
        return ExitCode.Good;
    }

    private SectionPolar? PolarOf(Section section, ParseResult arguments, CancellationToken cancellation)
    {
        if (arguments.GetValue(_reynolds) is not double reynolds)
        {
            Option? idle = ((Option[])[_alpha, _n, _trip, _tripUpper, _tripLower, _finish, _printed, _chord]).FirstOrDefault(option => arguments.GetResult(option) is not null);
            return idle is null ? null : throw new WrongInputException($"{idle.Name} needs --reynolds too.", "Give the Reynolds number, for example --reynolds 1e6 (a chord of 130 mm at 9 m/s).");
        }

        if (!(reynolds >= SectionFlow.LeastReynolds && reynolds <= SectionFlow.GreatestReynolds))
            throw new WrongInputException($"A Reynolds number of {reynolds:0.###e+0} is outside {SectionFlow.LeastReynolds:0} to {SectionFlow.GreatestReynolds:0}, for which the method holds.", "Give --reynolds a value between them.");
        double n = arguments.GetValue(_n) ?? UsualAmplification;
        if (!(n >= LeastAmplification && n <= GreatestAmplification))
            throw new WrongInputException($"An amplification exponent of {n} is outside {LeastAmplification} to {GreatestAmplification}.", "Give --n a value between them: 9 in a quiet tunnel, 4 to 6 in chop.");
        Sweep angles = Sweep.Read("--alpha", arguments.GetValue(_alpha) ?? UsualAngles, -PolarGrid.GreatestAngleDegrees, PolarGrid.GreatestAngleDegrees, "degrees", "where the method holds");
        SectionPolar.Check(section);
        (SideFinish surface, string? finish) = SurfaceOf(arguments);
        SectionConditions conditions = new()
        {
            ReynoldsNumber = reynolds,
            CriticalAmplification = n,
            Upper = surface with { TripAt = Trip(arguments, _tripUpper) },
            Lower = surface with { TripAt = Trip(arguments, _tripLower) },
        };
        try
        {
            return SectionPolar.Of(section, conditions, angles.Values, finish, SectionCurves.Solve, cancellation);
        }
        catch (ArgumentException problem) when (problem is not ArgumentNullException)
        {
            throw new WrongInputException($"The flow past {section.Name} cannot be worked out: {RefusalText.Of(problem)}", "Check the shape of the section with \"finwright section\" without --reynolds.");
        }
    }

    private (SideFinish Surface, string? Words) SurfaceOf(ParseResult arguments)
    {
        if (arguments.GetValue(_finish) is not Finish finish)
        {
            return arguments.GetValue(_chord) is null
                ? (SideFinish.Smooth, null)
                : throw new WrongInputException("--chord-mm only matters with --finish.", "Name a finish, or leave --chord-mm out: without roughness the chord is in the Reynolds number.");
        }

        if (arguments.GetValue(_chord) is not double chord)
            throw new WrongInputException("--finish needs --chord-mm: the same roughness counts more on a short chord.", "Give the chord, for example --chord-mm 120.");
        if (!(chord is >= 10 and <= 500))
            throw new WrongInputException($"A chord of {chord} mm is outside 10 to 500 mm.", "Give --chord-mm a value between them.");
        // A design with this finish and all else as usual, so that a word means here what it means there.
        FinDesign design = new()
        {
            Name = "",
            Shape = new() { Outline = new() { Family = OutlineFamily.Upright }, StarboardFinish = finish },
            Parts = new() { BladeAttitude = arguments.GetValue(_printed) ?? PrintAttitude.Auto },
        };
        SurfaceFinish surface = FinishFromDesign.Starboard(design);
        return (surface.OnChord(1e-3 * chord), $"{surface.Description} on a chord of {chord:0.#} mm");
    }

    private double? Trip(ParseResult arguments, Option<double?> ofSide)
    {
        Option<double?> given = arguments.GetValue(ofSide) is not null ? ofSide : _trip;
        if (given == ofSide && arguments.GetValue(_trip) is not null)
            throw new WrongInputException($"{ofSide.Name} and --trip say two things about one side.", "Give --trip for both sides, or one option for each side.");
        return arguments.GetValue(given) is not double at ? null
            : at is >= 0 and <= 1 ? at
            : throw new WrongInputException($"{given.Name} {at} is not on the section.", "Give a share of the chord from the nose, 0 to 1; 0.05 is 5 %.");
    }

    /// <summary>A file of that name goes before a section of that name.</summary>
    private static Section Find(string asked, List<string> remarks)
    {
        if (Directory.Exists(asked))
            throw new WrongInputException($"\"{asked}\" is a folder.", "Name the file of coordinates in it.");
        if (!File.Exists(asked))
        {
            return SectionCatalogue.TryFind(asked, null, out Section? known, out string problem)
                ? known
                : throw new WrongInputException($"{problem} There is no file of that name either.", $"Give one of these forms: {Forms}; or the path of a file of coordinates.");
        }

        CoordinateReading reading;
        try
        {
            using StreamReader file = File.OpenText(asked);
            reading = CoordinateReader.Read(Path.GetFileNameWithoutExtension(asked), file);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            throw new WrongInputException($"\"{asked}\" cannot be read: {problem.Message}", "Check the path and your right to read it.");
        }

        if (reading.Section is null)
        {
            CoordinateProblem first = reading.Problems[0];
            string more = reading.Problems.Count > 1 ? $" There are {reading.Problems.Count - 1} more like it." : "";
            throw new WrongInputException($"{asked}{(first.Line is int line ? $":{line}" : "")}: {first.Message}{more}", "Correct the file; it should hold two columns of numbers, x and y, once round the section.");
        }

        remarks.AddRange(reading.Notes);
        return reading.Section;
    }

    private Section Changed(Section section, ParseResult arguments)
    {
        if (arguments.GetValue(_thickness) is double thickness)
        {
            if (thickness is < 1 or > 40)
                throw new WrongInputException($"A thickness ratio of {thickness} % is outside 1 to 40 %.", "Give --thickness-percent a value between them.");
            section = new ScaledSection(section, thickness / 100, null);
        }

        if (arguments.GetValue(_trailingEdge) is double edge)
        {
            double most = 100 * BluntedSection.Thickest(section);
            if (edge < 0 || edge > most)
                throw new WrongInputException($"A trailing edge of {edge} % of the chord is outside 0 to {Math.Round(most, 2)} %, the section's own thickness.", "Give --trailing-edge-percent a value between them.");
            section = new BluntedSection(section, edge / 100);
        }

        return section;
    }
}
