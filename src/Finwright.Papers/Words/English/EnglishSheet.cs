namespace Finwright.Papers.Words.English;

internal sealed class EnglishSheet : SheetWords
{
}
