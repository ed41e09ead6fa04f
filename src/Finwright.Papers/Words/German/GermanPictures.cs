namespace Finwright.Papers.Words.German;

internal sealed class GermanPictures : PictureWords
{
}
