namespace Finwright.Geometry.Sections;

/// <summary>Something that keeps section coordinates from being used.</summary>
/// <param name="Message">What is wrong and what to do.</param>
/// <param name="Line">Line of the file, or number of the point in a list, from 1; null when it concerns the whole.</param>
public sealed record CoordinateProblem(string Message, int? Line);

/// <summary>What came of reading section coordinates: a section, or the problems that prevented it.</summary>
/// <param name="Section">The section; null when there are problems.</param>
/// <param name="Problems">Why there is no section; empty when there is one.</param>
/// <param name="Notes">What was done to the points on the way: turned, scaled, thinned, fitted.</param>
/// <param name="MaximumError">Greatest distance between a point and the section, chords; 0 when it passes through all of them.</param>
public sealed record CoordinateReading(
    Section? Section,
    IReadOnlyList<CoordinateProblem> Problems,
    IReadOnlyList<string> Notes,
    double MaximumError)
{
    internal static CoordinateReading Refused(params IReadOnlyList<CoordinateProblem> problems) => new(null, problems, [], 0);
}

/// <summary>A point as it was read, and where it stood.</summary>
/// <param name="Point">Coordinates in the file's own unit.</param>
/// <param name="Line">Line or point number, from 1.</param>
/// <param name="Block">Number of the block, raised by each blank line.</param>
internal readonly record struct CoordinateRow(Point2 Point, int Line, int Block);
