using Finwright.Assessment;
using Finwright.Papers.Drawings;
using Finwright.Papers.Words;

namespace Finwright.Papers.Pictures;

/// <summary>Pictures of the build sheet. Each fits a room, in metres; scale and numbers stand in it. They may be smaller than the room, never larger.</summary>
public static class SheetPictures
{
    /// <summary>The parts of a plate on the bed, seen from above, with their names.</summary>
    /// <param name="result">A fin whose parts were worked out.</param>
    /// <param name="number">Number of the plate, from 1.</param>
    /// <param name="tongue">How it speaks.</param>
    /// <param name="width">Width of the room, metres, 50 mm or more.</param>
    /// <param name="height">Height of the room, metres, 50 mm or more.</param>
    public static Drawing Plate(AssessmentResult result, int number, Tongue tongue, double width, double height)
    {
        PictureRoom.Check(width, height);
        return PlatePicture.Draw(result, number, tongue, width, height);
    }

    /// <summary>A part as it is held for the pour: ports numbered in the order of pour.json, feed and vents told apart, funnel, water level.</summary>
    /// <param name="result">A fin whose pour was worked out.</param>
    /// <param name="part">Name of a part that is poured.</param>
    /// <param name="tongue">How it speaks.</param>
    /// <param name="width">Width of the room, metres, 50 mm or more.</param>
    /// <param name="height">Height of the room, metres, 50 mm or more.</param>
    public static Drawing Pour(AssessmentResult result, string part, Tongue tongue, double width, double height)
    {
        PictureRoom.Check(width, height);
        return PourPicture.Draw(result, part, tongue, width, height);
    }

    /// <summary>The fin held for the bench: weight, its distance, places to read lettered A to F.</summary>
    /// <param name="result">A fin whose blade and solids were worked out; bent as predicted when the bench was.</param>
    /// <param name="tongue">How it speaks.</param>
    /// <param name="width">Width of the room, metres, 140 mm or more.</param>
    /// <param name="height">Height of the room, metres, 80 mm or more.</param>
    public static Drawing Bench(AssessmentResult result, Tongue tongue, double width, double height)
    {
        PictureRoom.Check(width, height, PictureRoom.LeastBenchWidth, PictureRoom.LeastBenchHeight);
        return BenchPicture.Draw(result, tongue, width, height);
    }

    /// <summary>The strip in its slot, cut across; null when the fin has none.</summary>
    /// <param name="result">A fin whose blade and solids were worked out.</param>
    /// <param name="tongue">How it speaks.</param>
    /// <param name="width">Width of the room, metres, 50 mm or more.</param>
    /// <param name="height">Height of the room, metres, 50 mm or more.</param>
    public static Drawing? Strip(AssessmentResult result, Tongue tongue, double width, double height)
    {
        PictureRoom.Check(width, height);
        return StripPicture.Draw(result, tongue, width, height);
    }
}
