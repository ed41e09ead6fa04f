using Microsoft.Data.Sqlite;

namespace Finwright.Workshop.Exchange.Stores;

/// <summary>What kind of value a column of the store holds.</summary>
internal enum StoredKind
{
    /// <summary>Whole numbers.</summary>
    Integer,

    /// <summary>Numbers.</summary>
    Real,

    /// <summary>Texts.</summary>
    Text,

    /// <summary>Bytes; in JSON they are base64 (RFC 4648).</summary>
    Blob,
}

/// <summary>A column of a table.</summary>
internal sealed record TableColumn(string Name, StoredKind Kind);

/// <summary>A table of the store, as the database itself describes it: a table that comes later is exported without more ado.</summary>
internal sealed record StoredTable(string Name, IReadOnlyList<TableColumn> Columns)
{
    /// <summary>Question for all rows, in the order in which they were added.</summary>
    public string Select => $"SELECT {Names} FROM {Name} ORDER BY rowid";

    /// <summary>Change that adds a row; its values are $0, $1 and so on.</summary>
    public string Insert => $"INSERT INTO {Name} ({Names}) VALUES ({string.Join(", ", Columns.Select((_, i) => $"${i}"))})";

    private string Names => string.Join(", ", Columns.Select(column => column.Name));

    /// <summary>All tables of a database, by name.</summary>
    public static IReadOnlyList<StoredTable> All(SqliteConnection connection, SqliteTransaction? transaction)
    {
        List<(string Table, string Column, string Kind)> rows = [];
        using (SqliteCommand command = connection.CreateCommand())
        {
            command.Transaction = transaction;
            command.CommandText = "SELECT m.name, c.name, c.type FROM sqlite_master m JOIN pragma_table_info(m.name) c WHERE m.type = 'table' AND m.name NOT LIKE 'sqlite\\_%' ESCAPE '\\' ORDER BY m.name, c.cid";
            using SqliteDataReader reader = command.ExecuteReader();
            while (reader.Read())
                rows.Add((reader.GetString(0), reader.GetString(1), reader.GetString(2)));
        }

        return [.. rows.GroupBy(row => row.Table, StringComparer.Ordinal).Select(table => new StoredTable(table.Key, [.. table.Select(row => new TableColumn(row.Column, Enum.Parse<StoredKind>(row.Kind, ignoreCase: true)))]))];
    }
}
