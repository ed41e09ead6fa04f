namespace Finwright.Page.Help;

/// <summary>A package that is part of the product.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Version">Its version.</param>
/// <param name="Licence">Its licence.</param>
public sealed record LicenceRow(string Name, string Version, string Licence)
{
    /// <summary>All of them, from the list that the tests keep true.</summary>
    public static IReadOnlyList<LicenceRow> All { get; } = Read();

    private static LicenceRow[] Read()
    {
        using Stream stream = typeof(LicenceRow).Assembly.GetManifestResourceStream("licences.md")!;
        using StreamReader reader = new(stream);
        List<LicenceRow> rows = [];
        bool isProduct = false;
        while (reader.ReadLine() is { } line)
        {
            if (line.StartsWith("## ", StringComparison.Ordinal))
                isProduct = line.StartsWith("## In the product", StringComparison.Ordinal);
            if (isProduct && line.Trim().Trim('|').Split('|', StringSplitOptions.TrimEntries) is [var name, var version, var licence, ..] && name is not "Package" && !name.StartsWith("---", StringComparison.Ordinal))
                rows.Add(new(name, version, licence));
        }

        return [.. rows];
    }
}
