namespace Finwright.Papers.Tests.Sheet;

/// <summary>Sheets of the demos, written once a test run.</summary>
internal static class Sheets
{
    private static readonly Lazy<ReadSheet> FairwayRead = new(() => ReadSheet.Of(MadeFins.Fairway));
    private static readonly Lazy<ReadSheet> FairwayGermanRead = new(() => ReadSheet.Of(MadeFins.Fairway, PaperLanguage.German, letter: true));

    /// <summary>In English on A4.</summary>
    public static ReadSheet Fairway => FairwayRead.Value;

    /// <summary>In German on Letter.</summary>
    public static ReadSheet FairwayGerman => FairwayGermanRead.Value;
}
