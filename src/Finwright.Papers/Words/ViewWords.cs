namespace Finwright.Papers.Words;

/// <summary>What the dimensioned drawing and the cover's drawing say.</summary>
public abstract class ViewWords
{
}
