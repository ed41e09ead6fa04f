using Finwright.Assessment;
using Finwright.Papers.Drawings;
using Finwright.Papers.Words;

namespace Finwright.Papers.Views;

/// <summary>The fin drawn from its sides.</summary>
public static class FinViews
{
    /// <summary>The fin from the side with base, parts, rods and nuts, span and root chord, in the largest round scale that fits a room; the scale stands below it.</summary>
    /// <param name="result">A fin that can be made.</param>
    /// <param name="tongue">How it speaks.</param>
    /// <param name="width">Width of the room, metres.</param>
    /// <param name="height">Height of the room, metres.</param>
    public static Drawing Cover(AssessmentResult result, Tongue tongue, double width, double height) => throw new NotImplementedException();
}
