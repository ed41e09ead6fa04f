using System.Globalization;
using Finwright.Page.Words;
using Finwright.Strength.Margins;

namespace Finwright.Page.Answers;

/// <summary>Names of the parts that are strained, in the reader's language.</summary>
internal static class PeakNames
{
    private const string BondOfRod = "bond of the ", BondOfCut = "bond of cut ";

    /// <summary>Its name.</summary>
    public static string Of(StressPeak peak, Reader reader) => peak.Part switch
    {
        StressedPart.Rod => reader.Tongue.Words.Names.Feature(peak.Name),
        StressedPart.RodBond when peak.Name.StartsWith(BondOfRod, StringComparison.Ordinal) => reader["bond of {0}", reader.Tongue.Words.Names.Feature(peak.Name[BondOfRod.Length..])],
        StressedPart.Cut when peak.Name.StartsWith(BondOfCut, StringComparison.Ordinal) && int.TryParse(peak.Name.AsSpan(BondOfCut.Length), NumberStyles.None, CultureInfo.InvariantCulture, out int cut) => reader["bond of cut {0}", cut],
        _ => reader[peak.Name],
    };
}
