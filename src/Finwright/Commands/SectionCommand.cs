using System.CommandLine;
using System.Globalization;
using Finwright.Assessment.Packing;
using Finwright.Geometry;
using Finwright.Geometry.Sections;
using Finwright.Terminal;

namespace Finwright.Commands;

/// <summary>Shows one section: its numbers and its coordinates.</summary>
internal sealed class SectionCommand : ProgramCommand
{
    private const int UsualPoints = 81;

    private readonly Argument<string> _section = Inputs.Needed("SECTION", $"Name of a section ({Forms}), or a file of coordinate columns.");
    private readonly Option<double?> _thickness = Inputs.Number("--thickness-percent", "percent", "Scale the section to this thickness ratio.");
    private readonly Option<double?> _trailingEdge = Inputs.Number("--trailing-edge-percent", "percent", "Make the trailing edge this thick, as a share of the chord.");
    private readonly Option<int?> _points = Inputs.Whole("--points", $"Points once round; {UsualPoints} if left out.", 5, 10_001);
    private readonly Option<bool> _json = Inputs.Json();

    public SectionCommand()
        : base(
            "section",
            "Show a section: area, thickness, camber, nose radius and coordinates, for a chord of 1. The coordinates run from the starboard trailing edge round the nose to the port trailing edge.",
            "finwright section naca-0010 --thickness-percent 9.5 --points 41")
    {
        Add(_section);
        foreach (Option option in (Option[])[_thickness, _trailingEdge, _points, _json])
            Add(option);
    }

    private static string Forms => "naca-0010, naca-2412, naca-0010-35, naca-16-009";

    public override ExitCode Run(ParseResult arguments, TextStreams streams, CancellationToken cancellation)
    {
        string asked = arguments.GetRequiredValue(_section);
        List<string> remarks = [];
        Section section = Changed(Find(asked, remarks), arguments);
        int count = arguments.GetValue(_points) ?? UsualPoints;
        Point2[] points = [.. Enumerable.Range(0, count).Select(i => SectionGeometry.PointAt(section, i / (count - 1.0)))];
        SectionAnswer answer = SectionAnswer.Of(section, points);
        if (arguments.GetValue(_json))
        {
            streams.Out.Write(AnswerJson.Write(answer));
            return ExitCode.Good;
        }

        TextWriter o = streams.Out;
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
