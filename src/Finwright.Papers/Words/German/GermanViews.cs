namespace Finwright.Papers.Words.German;

internal sealed class GermanViews : ViewWords
{
}
