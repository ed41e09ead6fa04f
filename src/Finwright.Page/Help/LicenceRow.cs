namespace Finwright.Page.Help;

/// <summary>A package that is part of the product.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Version">Its version.</param>
/// <param name="Licence">Its licence.</param>
public sealed record LicenceRow(string Name, string Version, string Licence)
{
    /// <summary>All of them, from the list that the tests keep true.</summary>
    public static IReadOnlyList<LicenceRow> All { get; } =
    [
        .. DocumentTable.Read("licences.md")
            .Where(row => row.Chapter.StartsWith("In the product", StringComparison.Ordinal))
            .Select(row => new LicenceRow(row["Package"], row["Version"], row.Cells[2])),
    ];
}
