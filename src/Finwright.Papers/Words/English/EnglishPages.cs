namespace Finwright.Papers.Words.English;

internal sealed class EnglishPages : PageWords
{
    public override string PageOf(int page, int pages) => $"page {page} of {pages}";

    public override string Foot(string version, string day, string design) => $"Finwright {version} · {day} · design {design}";
}
