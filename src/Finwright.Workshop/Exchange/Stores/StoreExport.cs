using System.Buffers;
using System.Text.Encodings.Web;
using System.Text.Json;
using Finwright.Workshop.Exchange.Archives;
using Finwright.Workshop.Storing;
using Microsoft.Data.Sqlite;

namespace Finwright.Workshop.Exchange.Stores;

/// <summary>Writes a whole store, deleted things too, in an open form.</summary>
public static class StoreExport
{
    /// <summary>How names of such files end.</summary>
    public const string Ending = ".fin-workshop.zip";

    private static readonly JsonWriterOptions Plain = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>Writes everything that a store holds, as it is at one moment: the same content gives the same bytes.</summary>
    /// <param name="store">The store.</param>
    /// <param name="madeBy">The program and its version.</param>
    /// <param name="stream">Where it goes; must be able to tell its position. Left open.</param>
    /// <returns>How many rows of how many tables were written.</returns>
    /// <exception cref="StoreException">The store cannot be read.</exception>
    /// <exception cref="ExchangeException">It is larger than such a file may be.</exception>
    public static StoreRows Write(WorkshopStore store, string madeBy, Stream stream)
    {
        ArgumentNullException.ThrowIfNull(store);
        ArgumentNullException.ThrowIfNull(stream);
        SealedWriter archive = new(stream, StoreForm.Limits, "Copy it with \"finwright store backup\" instead: a copy may have any size.");
        SqliteConnection connection = store.Connection.Database;
        try
        {
            // One moment for all tables, while other programs may write.
            using SqliteTransaction moment = connection.BeginTransaction(deferred: true);
            List<StoreForm.ListedTable> tables = [.. StoredTable.All(connection, moment).Select(table => Write(archive, table, connection, moment))];
            archive.Complete(StoreForm.List, files => new StoreForm.Contents(StoreForm.Kind, StoreForm.Layout, StoreSchema.Current, madeBy, tables, files));
            return new(tables.Count, tables.Sum(table => table.Rows));
        }
        catch (SqliteException problem)
        {
            throw StoreException.Of(problem, store.Path);
        }
    }

    private static StoreForm.ListedTable Write(SealedWriter archive, StoredTable table, SqliteConnection connection, SqliteTransaction moment)
    {
        using SqliteCommand command = connection.CreateCommand();
        command.Transaction = moment;
#pragma warning disable CA2100 // Names that the database itself tells.
        command.CommandText = table.Select;
#pragma warning restore CA2100
        ArrayBufferWriter<byte> lines = new();
        List<string> entries = [];
        long rows = 0;
        using SqliteDataReader reader = command.ExecuteReader();
        while (reader.Read())
        {
            rows++;
            WriteRow(lines, table, reader);
            if (lines.WrittenCount >= StoreForm.EntryBytes)
                Flush();
        }

        if (lines.WrittenCount > 0)
            Flush();
        return new(table.Name, [.. table.Columns.Select(column => column.Name)], rows, entries);

        void Flush()
        {
            // Names in an archive have no underscore.
            entries.Add($"tables/{table.Name.Replace('_', '-')}.{entries.Count + 1}.jsonl");
            archive.Add(entries[^1], lines.WrittenSpan);
            lines.ResetWrittenCount();
        }
    }

    private static void WriteRow(ArrayBufferWriter<byte> lines, StoredTable table, SqliteDataReader reader)
    {
        using (Utf8JsonWriter writer = new(lines, Plain))
        {
            writer.WriteStartObject();
            for (int i = 0; i < table.Columns.Count; i++)
            {
                writer.WritePropertyName(table.Columns[i].Name);
                if (reader.IsDBNull(i))
                    writer.WriteNullValue();
                else if (table.Columns[i].Kind == StoredKind.Integer)
                    writer.WriteNumberValue(reader.GetInt64(i));
                else if (table.Columns[i].Kind == StoredKind.Real)
                    writer.WriteNumberValue(reader.GetDouble(i));
                else if (table.Columns[i].Kind == StoredKind.Text)
                    writer.WriteStringValue(reader.GetString(i));
                else
                    writer.WriteBase64StringValue(reader.GetFieldValue<byte[]>(i));
            }

            writer.WriteEndObject();
        }

        lines.Write("\n"u8);
    }
}

/// <summary>How much of a store went out or came in.</summary>
/// <param name="Tables">How many tables.</param>
/// <param name="Rows">How many rows.</param>
public sealed record StoreRows(int Tables, long Rows);
