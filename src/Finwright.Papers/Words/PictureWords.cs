namespace Finwright.Papers.Words;

/// <summary>What the pictures of the build sheet say.</summary>
public abstract class PictureWords
{
}
