namespace Finwright.Papers.Words.English;

internal sealed class EnglishTemplates : TemplateWords
{
}
