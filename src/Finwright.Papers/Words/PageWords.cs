namespace Finwright.Papers.Words;

/// <summary>What stands on every page.</summary>
public abstract class PageWords
{
    /// <summary>Page n of m.</summary>
    public abstract string PageOf(int page, int pages);

    /// <summary>Foot of a page.</summary>
    /// <param name="version">Version of the program.</param>
    /// <param name="day">The date.</param>
    /// <param name="design">Beginning of the design's hash.</param>
    public abstract string Foot(string version, string day, string design);
}
