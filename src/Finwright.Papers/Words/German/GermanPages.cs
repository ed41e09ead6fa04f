namespace Finwright.Papers.Words.German;

internal sealed class GermanPages : PageWords
{
    public override string PageOf(int page, int pages) => $"Seite {page} von {pages}";

    public override string Foot(string version, string day, string design) => $"Finwright {version} · {day} · Entwurf {design}";
}
