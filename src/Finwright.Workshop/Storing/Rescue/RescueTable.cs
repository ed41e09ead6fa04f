using Microsoft.Data.Sqlite;

namespace Finwright.Workshop.Storing.Rescue;

/// <summary>A table of the new store: its columns, and which of the rows that were found can be its own.</summary>
internal sealed class RescueTable
{
    private static readonly object Nothing = new();

    private RescueTable(string name, IReadOnlyList<Column> columns, IReadOnlyList<string> indexes) => (Name, Columns, Indexes) = (name, columns, indexes);

    /// <summary>A column.</summary>
    /// <param name="Name">Its name.</param>
    /// <param name="Type">Its type, as STRICT tables have it.</param>
    /// <param name="IsNeeded">Whether it may not be null.</param>
    /// <param name="IsRowId">Whether it is another name of the row's number, and so not written in the record.</param>
    public sealed record Column(string Name, string Type, bool IsNeeded, bool IsRowId);

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>Its columns, in their order.</summary>
    public IReadOnlyList<Column> Columns { get; }

    /// <summary>Indexes that name each of its rows.</summary>
    public IReadOnlyList<string> Indexes { get; }

    /// <summary>Numbers of the rows that were kept.</summary>
    public HashSet<long> Kept { get; } = [];

    /// <summary>Numbers of the rows that indexes name.</summary>
    public HashSet<long> Named { get; } = [];

    /// <summary>Rows that were found but could not be read or kept.</summary>
    public int Refused { get; set; }

    /// <summary>Rows that were kept and had to go, because they mean nothing without what they hung on.</summary>
    public int Removed { get; set; }

    /// <summary>The tables of a store, in the order in which they were made: what is hung on stands before what hangs on it.</summary>
    public static IReadOnlyList<RescueTable> Of(SqliteConnection store)
    {
        List<RescueTable> tables = [];
        foreach (object?[] table in Rows(store, "SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite_%' ORDER BY rowid"))
        {
            string name = (string)table[0]!;
            object?[][] columns = [.. Rows(store, $"SELECT name, type, \"notnull\", pk FROM pragma_table_info('{name}')")];
            int keys = columns.Count(column => (long)column[3]! > 0);
            tables.Add(new(
                name,
                [.. columns.Select(column => ColumnOf((string)column[0]!, (string)column[1]!, isNeeded: (long)column[2]! != 0, isKey: (long)column[3]! > 0, keys))],
                [.. Rows(store, $"SELECT name FROM pragma_index_list('{name}') WHERE partial = 0").Select(index => (string)index[0]!)]));
        }

        return tables;
    }

    private static Column ColumnOf(string name, string type, bool isNeeded, bool isKey, int keys) =>
        new(name, type, isNeeded || isKey, isKey && keys == 1 && type == "INTEGER");

    /// <summary>The values of a row that was found, one for each column; null when it cannot be a row of this table.</summary>
    /// <param name="row">The row.</param>
    /// <param name="isWhole">Whether it must have every column; a row written before a column was added has fewer.</param>
    public object?[]? Fit(SalvagedRow row, bool isWhole)
    {
        if (row.Values.Count > Columns.Count || (isWhole && row.Values.Count < Columns.Count))
            return null;
        object?[] values = new object?[Columns.Count];
        for (int i = 0; i < values.Length; i++)
        {
            object? value = i < row.Values.Count ? row.Values[i] : null;
            Column column = Columns[i];
            if (column.IsRowId)
            {
                if (value is not null)
                    return null;
                values[i] = row.RowId;
                continue;
            }

            values[i] = (column.Type, value) switch
            {
                (_, null) when !column.IsNeeded => null,
                ("INTEGER", long) or ("REAL", double) or ("TEXT", string) or ("BLOB", byte[]) => value,
                // Whole numbers are written short.
                ("REAL", long whole) => (double)whole,
                _ => Nothing,
            };
            if (ReferenceEquals(values[i], Nothing))
                return null;
        }

        return values;
    }

    /// <summary>Where a column stands.</summary>
    public int At(string column)
    {
        for (int i = 0; i < Columns.Count; i++)
        {
            if (string.Equals(Columns[i].Name, column, StringComparison.Ordinal))
                return i;
        }

        throw new ArgumentException($"{Name} has no column {column}.", nameof(column));
    }

    /// <summary>All rows of a question.</summary>
    internal static IReadOnlyList<object?[]> Rows(SqliteConnection store, string sql)
    {
        using SqliteCommand command = store.CreateCommand();
#pragma warning disable CA2100 // Names of our own tables.
        command.CommandText = sql;
#pragma warning restore CA2100
        using SqliteDataReader reader = command.ExecuteReader();
        List<object?[]> rows = [];
        while (reader.Read())
        {
            object?[] values = new object?[reader.FieldCount];
            for (int i = 0; i < values.Length; i++)
                values[i] = reader.IsDBNull(i) ? null : reader.GetValue(i);
            rows.Add(values);
        }

        return rows;
    }
}
