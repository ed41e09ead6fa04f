namespace Finwright.Papers.Words.English;

internal sealed class EnglishViews : ViewWords
{
}
