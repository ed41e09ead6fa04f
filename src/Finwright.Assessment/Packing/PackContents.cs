using System.Text;
using Finwright.Assessment.Figures;
using Finwright.Assessment.Made;
using Finwright.Design;
using Finwright.Geometry;
using Finwright.Geometry.Files;
using Finwright.Geometry.FromDesign;
using Finwright.Geometry.Parts;
using Finwright.Geometry.Pictures;

namespace Finwright.Assessment.Packing;

/// <summary>Makes the files of a pack from a result. Same result, same bytes.</summary>
public static class PackContents
{
    private const int PictureWidth = 1200;
    private const int PictureHeight = 900;
    private const int ThumbnailWidth = 320;
    private const int ThumbnailHeight = 240;

    /// <summary>Makes all files.</summary>
    /// <param name="result">A result without errors, worked out to the parts.</param>
    /// <param name="summary">The same result summed up.</param>
    /// <param name="papers">Papers of the same result.</param>
    /// <param name="programVersion">Version of the program.</param>
    /// <param name="cancellation">Stops the work between files.</param>
    /// <returns>The summary with its list of files, and the files, the summary's own among them.</returns>
    /// <exception cref="ArgumentException">The result has errors or stops short of the parts.</exception>
    public static (FinSummary Summary, IReadOnlyList<PackFile> Files) Of(AssessmentResult result, FinSummary summary, IReadOnlyList<PackFile> papers, string programVersion, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(summary);
        ArgumentNullException.ThrowIfNull(papers);
        if (result is not { HasErrors: false, Design: { } design, Blade: { } blade, Parts: { } plan })
            throw new ArgumentException("Only a fin that can be made can be packed.", nameof(result));

        List<PackFile> files = [.. papers];
        foreach (Plate plate in plan.Plates)
            Add($"plate-{plate.Number}.3mf", $"plate {plate.Number} to print: {string.Join(", ", plate.Parts.Select(placed => placed.Part.Name))}", stream => ThreeMfFile.Write(stream, Document(design, result.DesignHash, plate)));
        foreach (PrintPart part in plan.Parts)
            Add(FileOf(part), $"{part.Name}, in the attitude in which it is printed", stream => StlFile.Write(stream, part.Mesh.Placed(part.PrintPlacement), $"{design.Name}, {part.Name}"));
        Add("blade.step", "the plain blade as a smooth solid, for other drawing programs", stream => StepFile.Write(stream, blade, design.Name));
        Add("picture.png", "the whole fin, seen from starboard", stream => stream.Write(Portrait(plan).ToPng()));

        if (result is { Afloat: { } afloat, Polars: { } polars })
        {
            foreach ((string name, string what, Figure figure) in AfloatFigures.Of(design.Name, afloat, polars))
                Add(name, what, stream => stream.Write(figure.ToSvg()));
            Add("water.json", "what the fin does when it sails, and the verdicts on it, for programs", stream => stream.Write(Encoding.UTF8.GetBytes(AnswerJson.Write(WaterSummary.Of(result, programVersion)))));
        }

        foreach ((string name, string what, Figure figure) in LoadedFigures.Of(design.Name, result.Loaded, result.Bench, result.Vibration))
            Add(name, what, stream => stream.Write(figure.ToSvg()));
        if (result.Loaded is not null)
            Add("strength.json", "whether the fin bends, twists, opens or breaks, and the verdicts on it, for programs", stream => stream.Write(Encoding.UTF8.GetBytes(AnswerJson.Write(StrengthSummary.Of(result, programVersion)))));
        if (result.Bench is not null)
            Add("bench.json", "what the bench test should show, to compare with what you measure", stream => stream.Write(Encoding.UTF8.GetBytes(AnswerJson.WriteTabular(BenchSummary.Of(result, programVersion)))));

        MakingResult made = MakingResult.Of(result);
        foreach ((string name, string what, Figure figure) in MakingFigures.Of(design.Name, made.Poured, made.Cured))
            Add(name, what, stream => stream.Write(figure.ToSvg()));
        PrintSummary? print = made.Printed is null ? null : PrintSummary.Of(made, programVersion);
        PourSummary? pour = made.Poured is null ? null : PourSummary.Of(made, programVersion);
        CureSummary? cure = made.Cured is null ? null : CureSummary.Of(made, programVersion);
        PlanSummary? takes = made.Plan is null ? null : PlanSummary.Of(made, programVersion);
        AddAnswer("print.json", "time, plastic and stops of every part and plate, and the verdicts on the print, for programs", print);
        AddAnswer("pour.json", "how every part is held and filled, cup by cup, and the air that stays, for programs", pour);
        AddAnswer("cure.json", "how warm every part grows while it cures, and the verdicts on it, for programs", cure);
        AddAnswer("plan.json", "what the fin takes and costs, and how long it takes, for programs", takes);

        // The two texts list every file, themselves included.
        (string Path, string What)[] texts = [("read-me-first.txt", "what each file is, in what order, and what to take care of"), (PackFolder.OfPacks.ListName, "every number and finding, for programs")];
        FinSummary full = summary with { Files = [.. files.Select(file => (file.Path, file.What)).Concat(texts).Select(file => new FileSummary(file.Path, file.What))] };
        Add(texts[0].Path, texts[0].What, stream => stream.Write(Encoding.UTF8.GetBytes(PackReadMe.Text(design, full, print, pour, cure, takes))));
        Add(texts[1].Path, texts[1].What, stream => stream.Write(Encoding.UTF8.GetBytes(AnswerJson.Write(full))));
        return (full, files);

        void AddAnswer<T>(string path, string what, T? answer)
            where T : class
        {
            if (answer is not null)
                Add(path, what, stream => stream.Write(Encoding.UTF8.GetBytes(AnswerJson.Write(answer))));
        }

        void Add(string path, string what, Action<Stream> write)
        {
            cancellation.ThrowIfCancellationRequested();
            using MemoryStream stream = new();
            write(stream);
            files.Add(new(path, stream.ToArray(), what));
        }
    }

    /// <summary>Path of a part's STL file within the pack.</summary>
    internal static string FileOf(PrintPart part) => $"parts/{part.Name.Replace(' ', '-')}.stl";

    private static ThreeMfDocument Document(FinDesign design, string hash, Plate plate)
    {
        ThreeMfPart[] parts = [.. plate.Parts.Select(placed => new ThreeMfPart(placed.Part.Name, placed.Part.Mesh.Placed(placed.Placement), Placement.Identity))];
        return new($"{design.Name}, plate {plate.Number}", parts)
        {
            Notes = [new("DesignSha256", hash)],
            Thumbnail = Rasteriser.Draw([.. parts.Select(part => part.Mesh)], View.Bed, ThumbnailWidth, ThumbnailHeight).ToPng(),
        };
    }

    /// <summary>Everything but the gauge, which is no part of the fin, in its place under the board.</summary>
    private static Picture Portrait(PartPlan plan) =>
        Rasteriser.Draw([.. plan.Parts.Where(part => !part.IsGauge).Select(part => part.Mesh)], View.Fin, PictureWidth, PictureHeight);
}
