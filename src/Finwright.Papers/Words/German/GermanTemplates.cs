namespace Finwright.Papers.Words.German;

internal sealed class GermanTemplates : TemplateWords
{
}
