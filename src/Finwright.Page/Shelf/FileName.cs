namespace Finwright.Page.Shelf;

/// <summary>Names of files that the browser saves.</summary>
internal static class FileName
{
    // Signs that some system does not take in a name.
    private const string Refused = "\\/:*?\"<>|";

    /// <summary>A name that every system takes.</summary>
    /// <param name="name">What the file is to be called, without an ending.</param>
    public static string Of(string name)
    {
        string clean = string.Concat(name.Select(letter => char.IsControl(letter) || Refused.Contains(letter, StringComparison.Ordinal) ? '-' : letter)).Trim(' ', '.');
        return clean.Length == 0 ? "fin" : clean;
    }
}
