using System.CommandLine;
using Finwright.Design;
using Finwright.Terminal;
using Finwright.Workshop.Starting;

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
    private readonly Option<double?> _rake = Inputs.Number("--rake-degrees", "degrees", "Angle of the 25 % chord line from straight down, positive aft; a usual one for the family if left out.");
    private readonly Option<double?> _tipChord = Inputs.Number("--tip-chord-percent", "percent", "Chord near the tip as a share of the root chord; a usual one for the family if left out.");
    private readonly Option<double?> _thickness = Inputs.Number("--thickness-percent", "percent", "Thickness ratio at the root; a usual one for the family if left out.");
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
        BoxKind box = arguments.GetValue(_box) ?? BoxKind.TwoBoltTapered;
        NewFin fin = new()
        {
            Name = arguments.GetValue(_name) ?? Path.GetFileName(file).Split('.')[0],
            Family = family,
            SpanMm = arguments.GetValue(_span),
            AreaCm2 = arguments.GetValue(_area),
            RootChordMm = arguments.GetValue(_rootChord),
            RakeDegrees = arguments.GetValue(_rake),
            TipChordPercent = arguments.GetValue(_tipChord),
            ThicknessPercent = arguments.GetValue(_thickness),
            Box = box,
            Fixing = arguments.GetValue(_fixing) ?? Fixing.BaseOnly,
            Measured = box == BoxKind.Measured ? MeasuredBox(arguments) : null,
            AsPoints = arguments.GetValue(_points),
        };
        DesignReading drawn = fin.Draw();
        return drawn.Design is { } design
            ? DesignWriter.Write(design, compact: !arguments.GetValue(_full))
            : throw new WrongInputException(drawn.Findings[0].Message, drawn.Findings[0].Remedy);
    }

    private MeasuredBox MeasuredBox(ParseResult arguments) =>
        arguments.GetValue(_boxLength) is double length && arguments.GetValue(_boxWidth) is double width && arguments.GetValue(_boxDepth) is double depth
            ? new() { HullLengthMm = length, HullWidthMm = width, FrontDepthMm = depth, FrontAngleDegrees = 0, RearAngleDegrees = 0 }
            : throw new WrongInputException("A measured box needs its measurements.", "Give --box-length-mm, --box-width-mm and --box-depth-mm; angles and bolts can be added in the file.");
}
