using Finwright.Papers.Words.English;
using Finwright.Papers.Words.German;

namespace Finwright.Papers.Words;

/// <summary>Everything that papers say, in one language. A new language is a new set of these classes; the compiler says what is missing.</summary>
/// <param name="Pages">What stands on every page.</param>
/// <param name="Numbers">What stands beside numbers.</param>
/// <param name="Names">Names of parts, ports, attitudes and bought things.</param>
/// <param name="Verdicts">Verdicts and cautions.</param>
/// <param name="Sheet">The build sheet.</param>
/// <param name="Templates">Templates and tiles.</param>
/// <param name="Views">The dimensioned drawing and the cover's drawing.</param>
/// <param name="Pictures">Pictures of the build sheet.</param>
public sealed record PaperWords(PageWords Pages, NumberWords Numbers, NameWords Names, VerdictWords Verdicts, SheetWords Sheet, TemplateWords Templates, ViewWords Views, PictureWords Pictures)
{
    /// <summary>The words of a language.</summary>
    public static PaperWords Of(PaperLanguage language) => language switch
    {
        PaperLanguage.German => new(new GermanPages(), new GermanNumbers(), new GermanNames(), new GermanVerdicts(), new GermanSheet(), new GermanTemplates(), new GermanViews(), new GermanPictures()),
        _ => new(new EnglishPages(), new EnglishNumbers(), new EnglishNames(), new EnglishVerdicts(), new EnglishSheet(), new EnglishTemplates(), new EnglishViews(), new EnglishPictures()),
    };
}
