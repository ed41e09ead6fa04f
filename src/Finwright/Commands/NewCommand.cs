using System.CommandLine;
using Finwright.Design;
using Finwright.Geometry.FromDesign;
using Finwright.Terminal;

namespace Finwright.Commands;

/// <summary>Writes a new design file, from a few numbers or from a demo design.</summary>
internal sealed class NewCommand : ProgramCommand
{
    private readonly Argument<string> _file = Inputs.Needed("FILE", "The design file to write, for example my-fin.fin.json.");
    private readonly Option<string?> _demo = Inputs.Text("--demo", "name", $"Copy a demo design instead. One of: {string.Join(", ", DemoDesigns.Names)}.");
    private readonly Option<OutlineFamily?> _family = Inputs.OneOf<OutlineFamily>("--family", "Outline family; upright if left out.");
    private readonly Option<string?> _name = Inputs.Text("--name", "text", "Name of the fin; the file's name if left out.");
    private readonly Option<double?> _span = Inputs.Number("--span-mm", "mm", "Depth of the tip below the hull; a usual one for the family if left out.");
    private readonly Option<double?> _area = Inputs.Number("--area-cm2", "cm2", "Area seen from the side; give this or the root chord.");
    private readonly Option<double?> _rootChord = Inputs.Number("--root-chord-mm", "mm", "Chord at the root; give this or the area.");
    private readonly Option<double?> _rake = Inputs.Number("--rake-degrees", "degrees", "Angle of the 25 % chord line from straight down, positive aft; the family's own if left out.");
    private readonly Option<double?> _tipChord = Inputs.Number("--tip-chord-percent", "percent", "Chord near the tip as a share of the root chord; the family's own if left out.");
    private readonly Option<double?> _thickness = Inputs.Number("--thickness-percent", "percent", "Thickness ratio at the root; the design file's own if left out.");
    private readonly Option<BoxKind?> _box = Inputs.OneOf<BoxKind>("--box", "Kind of fin box; two-bolt-tapered if left out.");
    private readonly Option<Fixing?> _fixing = Inputs.OneOf<Fixing>("--fixing", "How blade, base and bolts hold together; base-only if left out.");
    private readonly Option<double?> _boxLength = Inputs.Number("--box-length-mm", "mm", "With --box measured: inside length of your box at the hull.");
    private readonly Option<double?> _boxWidth = Inputs.Number("--box-width-mm", "mm", "With --box measured: inside width of your box at the hull.");
    private readonly Option<double?> _boxDepth = Inputs.Number("--box-depth-mm", "mm", "With --box measured: depth of your box.");
    private readonly Option<bool> _points = Inputs.Switch("--points", "Write the outline as points that you can move, instead of the family's few numbers.");
    private readonly Option<bool> _full = Inputs.Switch("--full", "Write every field with its default, not only those that differ.");
    private readonly Option<bool> _overwrite = Inputs.Switch("--overwrite", "Replace the file if it exists.");

    public NewCommand()
        : base(
            "new",
            "Write a new design file, from a few numbers or from a demo design. An existing file is never replaced unless you say so.",
            "finwright new my-fin.fin.json --family wide-delta --span-mm 212 --area-cm2 286")
    {
        Add(_file);
        foreach (Option option in (Option[])[_demo, _family, _name, _span, _area, _rootChord, _rake, _tipChord, _thickness, _box, _fixing, _boxLength, _boxWidth, _boxDepth, _points, _full, _overwrite])
            Add(option);
    }

    public override ExitCode Run(ParseResult arguments, TextStreams streams, CancellationToken cancellation)
    {
        string file = arguments.GetRequiredValue(_file);
        NewFile.Refuse(file, "my-fin.fin.json", arguments.GetValue(_overwrite));
        string text = arguments.GetValue(_demo) is string demo ? Demo(demo) : FromNumbers(arguments, file);

        DesignReading reading = DesignReader.Read(text);
        if (reading.HasErrors)
        {
            FindingText.Write(streams.Error, reading.Findings.Select(finding => finding with { Line = null }), "the new design", streams.Width);
            throw new WrongInputException("The design was not written, because it could not be made.", "Change the options named above.");
        }

        NewFile.Write(file, stream => stream.Write(System.Text.Encoding.UTF8.GetBytes(text)));
        streams.Out.WriteLine($"Wrote {file}: {reading.Design!.Name}.");
        streams.Out.WriteLine($"Next: finwright check {file}");
        return ExitCode.Good;
    }

    private static string Demo(string name) =>
        DemoDesigns.Find(name) ?? throw new WrongInputException($"There is no demo design \"{name}\".", $"Choose one of {string.Join(", ", DemoDesigns.Names)}.");

    private string FromNumbers(ParseResult arguments, string file)
    {
        OutlineFamily family = arguments.GetValue(_family) ?? OutlineFamily.Upright;
        if (family == OutlineFamily.Free)
            throw new WrongInputException("The family \"free\" has no numbers to start from.", "Choose a family and add --points: its outline is then written as points that you can move.");
        if (arguments.GetValue(_area) is not null && arguments.GetValue(_rootChord) is not null)
            throw new WrongInputException("Area and root chord cannot both be given: each follows from the other.", "Leave out --area-cm2 or --root-chord-mm.");
        (double span, double area) = Usual(family);
        Outline outline = new()
        {
            Family = family,
            SpanMm = arguments.GetValue(_span) ?? span,
            RootChordMm = arguments.GetValue(_rootChord),
            AreaCm2 = arguments.GetValue(_rootChord) is null ? arguments.GetValue(_area) ?? area : null,
            RakeDegrees = arguments.GetValue(_rake),
            TipChordPercent = arguments.GetValue(_tipChord),
        };
        Shape shape = new() { Outline = arguments.GetValue(_points) ? AsPoints(outline) : outline };
        if (arguments.GetValue(_thickness) is double thickness)
            shape = shape with { Sections = [shape.Sections[0] with { ThicknessPercent = thickness }, .. shape.Sections.Skip(1)] };
        BoxKind box = arguments.GetValue(_box) ?? BoxKind.TwoBoltTapered;
        Fixing fixing = arguments.GetValue(_fixing) ?? Fixing.BaseOnly;
        // The shallow tab of a long slot has no room for rods: it is one print with its blade. Elsewhere two rods hold the blade.
        bool asOne = fixing == Fixing.BaseOnly && box == BoxKind.LongSlot;
        FinDesign design = new()
        {
            Name = arguments.GetValue(_name) ?? Path.GetFileName(file).Split('.')[0],
            Shape = shape,
            Base = new()
            {
                Box = box,
                Fixing = fixing,
                Printed = asOne ? BasePrinting.AsOne : BasePrinting.Separate,
                Measured = box == BoxKind.Measured ? MeasuredBox(arguments) : null,
            },
            Hardware = new()
            {
                CarbonRods = fixing == Fixing.BaseOnly && !asOne ? HoldingRods : [],
                ClampRods = fixing == Fixing.ClampRods ? ClampRods : [],
            },
        };
        return DesignWriter.Write(design, compact: !arguments.GetValue(_full));
    }

    /// <summary>Two rods through the joint, clear of the box bolts of a usual base.</summary>
    private static IReadOnlyList<CarbonRod> HoldingRods { get; } =
    [
        new() { RootChordPercent = 28, IntoBaseMm = 25 },
        new() { RootChordPercent = 52, IntoBaseMm = 25 },
    ];

    /// <summary>Two rods between the box bolts of a usual base; shallow ones, for the blade is thickest near the root.</summary>
    private static IReadOnlyList<ClampRod> ClampRods { get; } = [new() { FromFrontMm = 58, BladeDepthMm = 25 }, new() { FromFrontMm = 84, BladeDepthMm = 25 }];

    private static Outline AsPoints(Outline outline)
    {
        List<Finding> findings = [];
        return OutlineFromDesign.AsFreePoints(outline, findings) ?? throw new WrongInputException(findings[0].Message, findings[0].Remedy);
    }

    /// <summary>Span in mm and area in cm² in the middle of what is usual (starting values, from memory).</summary>
    private static (double Span, double Area) Usual(OutlineFamily family) => family switch
    {
        OutlineFamily.Raked => (240, 170),
        OutlineFamily.SteepRake => (300, 310),
        OutlineFamily.WideDelta => (215, 290),
        _ => (360, 300),
    };

    private MeasuredBox MeasuredBox(ParseResult arguments) =>
        arguments.GetValue(_boxLength) is double length && arguments.GetValue(_boxWidth) is double width && arguments.GetValue(_boxDepth) is double depth
            ? new() { HullLengthMm = length, HullWidthMm = width, FrontDepthMm = depth, FrontAngleDegrees = 0, RearAngleDegrees = 0 }
            : throw new WrongInputException("A measured box needs its measurements.", "Give --box-length-mm, --box-width-mm and --box-depth-mm; angles and bolts can be added in the file.");
}
