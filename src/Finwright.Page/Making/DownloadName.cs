using System.Text;

namespace Finwright.Page.Making;

/// <summary>Names of files that are handed out: letters, digits and hyphens, whatever the fin is called.</summary>
internal static class DownloadName
{
    private const int Longest = 60;

    /// <summary>A name that every system takes and that leads nowhere.</summary>
    /// <param name="name">What it belongs to, as a person called it.</param>
    /// <param name="rest">What follows, with its ending; a name of ours.</param>
    public static string Of(string name, string rest)
    {
        StringBuilder safe = new();
        foreach (char letter in name)
        {
            if (char.IsLetterOrDigit(letter) || letter == '_')
                safe.Append(letter);
            else if (safe.Length > 0 && safe[^1] != '-')
                safe.Append('-');
        }

        string bare = safe.ToString().Trim('-');
        bare = bare[..Math.Min(Longest, bare.Length)].Trim('-');
        return (bare.Length > 0 ? bare : "fin") + rest;
    }
}
