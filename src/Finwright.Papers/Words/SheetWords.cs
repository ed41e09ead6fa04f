namespace Finwright.Papers.Words;

/// <summary>What the build sheet says.</summary>
public abstract class SheetWords
{
}
