namespace Finwright.Workshop.Storing.Rescue;

/// <summary>What became of the rows of a table.</summary>
/// <param name="Table">The table.</param>
/// <param name="Kept">Rows that are in the new store.</param>
/// <param name="Lost">Rows that are known to have been there and are not in the new store; there may have been more.</param>
public sealed record RescuedTable(string Table, int Kept, int Lost);

/// <summary>What was saved of a damaged store.</summary>
/// <param name="Damaged">The damaged store; it was only read.</param>
/// <param name="Rescued">The new store.</param>
/// <param name="Tables">Each table with rows kept or lost.</param>
/// <param name="Remarks">What is not as it was, in sentences.</param>
public sealed record RescueReport(string Damaged, string Rescued, IReadOnlyList<RescuedTable> Tables, IReadOnlyList<string> Remarks)
{
    /// <summary>Rows that are in the new store.</summary>
    public int Kept => Tables.Sum(table => table.Kept);

    /// <summary>Rows that are known to be lost.</summary>
    public int Lost => Tables.Sum(table => table.Lost);
}
