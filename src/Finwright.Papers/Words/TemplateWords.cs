namespace Finwright.Papers.Words;

/// <summary>What templates and their tiles say.</summary>
public abstract class TemplateWords
{
}
