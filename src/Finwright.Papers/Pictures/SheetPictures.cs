using Finwright.Assessment;
using Finwright.Papers.Drawings;
using Finwright.Papers.Words;

namespace Finwright.Papers.Pictures;

/// <summary>Pictures of the build sheet. Each fits a room, in metres; scale and numbers stand in it.</summary>
public static class SheetPictures
{
    /// <summary>The parts of a plate on the bed, seen from above, with their names.</summary>
    public static Drawing Plate(AssessmentResult result, int number, Tongue tongue, double width, double height) => throw new NotImplementedException();

    /// <summary>A part as it is held for the pour: ports numbered in the order of pour.json, feed and vents told apart, funnel, water level.</summary>
    public static Drawing Pour(AssessmentResult result, string part, Tongue tongue, double width, double height) => throw new NotImplementedException();

    /// <summary>The fin held for the bench: weight, its distance, places to read lettered A to F.</summary>
    public static Drawing Bench(AssessmentResult result, Tongue tongue, double width, double height) => throw new NotImplementedException();

    /// <summary>The strip in its slot, cut across; null when the fin has none.</summary>
    public static Drawing? Strip(AssessmentResult result, Tongue tongue, double width, double height) => throw new NotImplementedException();
}
