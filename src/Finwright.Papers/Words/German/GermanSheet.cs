namespace Finwright.Papers.Words.German;

internal sealed class GermanSheet : SheetWords
{
}
