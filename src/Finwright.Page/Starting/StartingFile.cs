using System.Text;
using Finwright.Assessment;
using Finwright.Design;
using Finwright.Geometry;
using Finwright.Geometry.Files;
using Finwright.Geometry.FromDesign;
using Finwright.Geometry.Sections;
using Finwright.Workshop.Exchange;

namespace Finwright.Page.Starting;

/// <summary>A file that someone brings, and what it turned out to be.</summary>
public abstract record StartingFile
{
    private const string Stl = ".stl", ThreeMf = ".3mf";

    private StartingFile()
    {
    }

    /// <summary>A design.</summary>
    /// <param name="Design">The design, with the files that it names taken in.</param>
    /// <param name="Blade">Its blade.</param>
    public sealed record OfDesign(FinDesign Design, Geometry.Blades.Blade? Blade) : StartingFile;

    /// <summary>A design with its revisions.</summary>
    public sealed record OfBundle : StartingFile;

    /// <summary>A whole workshop.</summary>
    public sealed record OfWorkshop : StartingFile;

    /// <summary>A table.</summary>
    /// <param name="Kind">Of what.</param>
    public sealed record OfTable(ExchangeKind Kind) : StartingFile;

    /// <summary>A part as a mesh.</summary>
    /// <param name="Mesh">The mesh, z up as it is printed, metres.</param>
    public sealed record OfMesh(TriangleMesh Mesh) : StartingFile;

    /// <summary>A section.</summary>
    /// <param name="Section">As it is drawn.</param>
    /// <param name="Points">Its points, as a design takes them in.</param>
    /// <param name="Notes">What was done to the points.</param>
    public sealed record OfSection(Section Section, ImportedSection Points, IReadOnlyList<string> Notes) : StartingFile;

    /// <summary>Nothing that can be used.</summary>
    /// <param name="Message">What is wrong.</param>
    /// <param name="Remedy">What to do.</param>
    /// <param name="Findings">Everything that is wrong, where there is more to tell.</param>
    public sealed record Refused(string Message, string Remedy, IReadOnlyList<Finding> Findings) : StartingFile;

    /// <summary>Tells what a file is, and reads it as far as nothing is changed by it.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="stream">The file; must be able to seek. Left at its beginning.</param>
    /// <param name="cancellation">Stops the reading.</param>
    public static StartingFile Read(string name, Stream stream, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(stream);
        try
        {
            if (stream.Length == 0)
                return new Refused("The file is empty.", "Choose another.", []);
            string ending = Path.GetExtension(name);
            StartingFile found = ending.Equals(Stl, StringComparison.OrdinalIgnoreCase) ? new OfMesh(StlFile.Read(stream))
                : ending.Equals(ThreeMf, StringComparison.OrdinalIgnoreCase) ? Only(ThreeMfFile.Read(stream))
                : ExchangeFile.KindOf(stream) switch
                {
                    ExchangeKind.Bundle => new OfBundle(),
                    ExchangeKind.Workshop => new OfWorkshop(),
                    ExchangeKind.Design => ReadDesign(stream, cancellation),
                    ExchangeKind.Unknown => ReadSection(Path.GetFileNameWithoutExtension(name), stream),
                    var table => new OfTable(table),
                };
            stream.Position = 0;
            return found;
        }
        catch (FileFormatException problem)
        {
            return new Refused(problem.Message, "Export the part again as STL or 3MF.", []);
        }
        catch (ExchangeException problem)
        {
            return new Refused(problem.Message, problem.Remedy, problem.Findings);
        }
    }

    private static StartingFile ReadDesign(Stream stream, CancellationToken cancellation)
    {
        // One byte more than the reader takes, so that it can say that the file is too large.
        byte[] bytes = new byte[Math.Min(stream.Length, DesignLimits.FileBytes + 1)];
        stream.ReadExactly(bytes);
        using Assessor assessor = new();
        // No folder: a file from elsewhere must not name files of this computer.
        AssessmentResult result = assessor.Assess(DesignReader.Read(bytes), AssessmentDepth.Shape, cancellation: cancellation);
        return result is { InputIsWrong: false, Design: { } design }
            ? new OfDesign(design, result.Blade)
            : new Refused("The design file cannot be used as it is.", "Correct what is said here, and bring it again.", [.. result.Findings.Where(finding => finding.IsError)]);
    }

    private static StartingFile Only(ThreeMfDocument document) => document.Parts is [{ } part]
        ? new OfMesh(part.Mesh.Placed(part.Placement))
        : new Refused($"The file holds {document.Parts.Count} parts.", "Export the part alone.", []);

    private static StartingFile ReadSection(string name, Stream stream)
    {
        using StreamReader reader = new(stream, Encoding.UTF8, detectEncodingFromByteOrderMarks: true, leaveOpen: true);
        (CoordinateReading reading, ImportedSection? section) = SectionFiles.Take(CalledFor(name), reader);
        if (reading.Section is { } drawn && section is not null)
            return new OfSection(drawn, section, reading.Notes);
        // Numbers in columns are meant as a section; anything else is something else.
        stream.Position = 0;
        reader.DiscardBufferedData();
        char[] start = new char[4096];
        string text = new(start, 0, reader.ReadBlock(start));
        return LooksLikeColumns(text)
            ? new Refused($"The section cannot be used. {reading.Problems[0].Message}", "Two columns of numbers are needed, x and y, once round the section.", [])
            : Unknown();

        static Refused Unknown() => new("The file holds nothing that is known here.", "Bring a design file, a bundle, a whole workshop, a mesh (STL or 3MF), section coordinates, or a table of stock or outings.", []);
    }

    private static bool LooksLikeColumns(string text) => text.Split('\n').Count(line => line.Trim() is { Length: > 0 } own && own.All(letter => char.IsAsciiDigit(letter) || " \t\r.,;+-eE".Contains(letter, StringComparison.Ordinal))) > 3;

    // A design takes names to 60 signs.
    private static string CalledFor(string name)
    {
        string clean = string.Concat(name.Where(letter => !char.IsControl(letter))).Trim();
        return clean.Length == 0 ? "section" : clean[..Math.Min(clean.Length, 60)];
    }
}
