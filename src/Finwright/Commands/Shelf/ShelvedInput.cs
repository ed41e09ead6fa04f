using Finwright.Assessment;
using Finwright.Design;
using Finwright.Terminal;
using Finwright.Workshop.Shelf;

namespace Finwright.Commands.Shelf;

/// <summary>A design file on its way onto the shelf.</summary>
internal static class ShelvedInput
{
    /// <summary>Reads a design file, takes the files that it names into it, and draws it.</summary>
    /// <param name="file">The file, as the person named it.</param>
    /// <param name="note">What is tried.</param>
    /// <param name="streams">Where findings go.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <exception cref="WrongInputException">It cannot be read, or is wrong.</exception>
    public static ShelfEntry Read(string file, string note, TextStreams streams, CancellationToken cancellation)
    {
        DesignReading reading = DesignFile.Read(file);
        using Assessor assessor = new();
        AssessmentResult result = assessor.Assess(reading, AssessmentDepth.Shape, cancellation: cancellation);
        if (result.InputIsWrong || result.Design is not { } design)
        {
            FindingText.Write(streams.Error, result.Findings, file, streams.Width);
            streams.Error.WriteLine();
            throw new WrongInputException($"{FindingText.Count(result.Findings)} in the design file; it was not kept.", $"Correct {Path.GetFileName(file)} as said above.");
        }

        return new(design, result.Blade is { } blade ? ShelfPicture.Of(blade) : null, note, $"Finwright {ProgramVersion.Text}");
    }
}
