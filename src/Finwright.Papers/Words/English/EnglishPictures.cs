namespace Finwright.Papers.Words.English;

internal sealed class EnglishPictures : PictureWords
{
}
