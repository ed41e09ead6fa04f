using System.Globalization;
using Microsoft.Data.Sqlite;

namespace Finwright.Workshop.Storing;

/// <summary>Questions and changes to the store's file; every problem of the database comes out as a <see cref="StoreException"/>.</summary>
/// <remarks>One thread at a time. A change is whole or not at all, and on the disk when the call that made it returns.</remarks>
internal sealed class StoreConnection : IDisposable
{
    private SqliteConnection _connection;
    private SqliteConnection? _damaged;
    private SqliteTransaction? _transaction;
    private StoreException? _undone;
    private int _parts;

    /// <summary>Takes over an open connection.</summary>
    /// <param name="connection">The connection.</param>
    /// <param name="path">The store's file, for messages.</param>
    /// <param name="time">The clock.</param>
    /// <param name="refusal">Why nothing may be changed; null when it may.</param>
    public StoreConnection(SqliteConnection connection, string path, TimeProvider time, StoreException? refusal) =>
        (_connection, Path, Time, Refusal) = (connection, path, time, refusal);

    /// <summary>The store's file.</summary>
    public string Path { get; }

    /// <summary>The clock.</summary>
    public TimeProvider Time { get; }

    /// <summary>Why nothing may be changed; null when it may. Damage that is met while reading counts from then on.</summary>
    public StoreException? Refusal { get; private set; }

    /// <summary>The database itself, for backups and checks.</summary>
    public SqliteConnection Database => _connection;

    /// <summary>All rows of a question.</summary>
    public IReadOnlyList<T> All<T>(string sql, Func<Row, T> read, params ReadOnlySpan<(string Name, object? Value)> values) => Ask<IReadOnlyList<T>>(
        sql,
        values,
        command =>
        {
            List<T> rows = [];
            using SqliteDataReader reader = command.ExecuteReader();
            while (reader.Read())
                rows.Add(read(new(reader)));
            return rows;
        });

    /// <summary>The first row of a question; null when there is none.</summary>
    public T? First<T>(string sql, Func<Row, T> read, params ReadOnlySpan<(string Name, object? Value)> values)
        where T : class => Ask(
        sql,
        values,
        command =>
        {
            using SqliteDataReader reader = command.ExecuteReader();
            return reader.Read() ? read(new(reader)) : null;
        });

    /// <summary>A number that a question answers with; 0 when it answers nothing.</summary>
    public long Count(string sql, params ReadOnlySpan<(string Name, object? Value)> values) =>
        Ask(sql, values, command => command.ExecuteScalar() is long count ? count : 0);

    /// <summary>Changes rows, inside <see cref="Change{T}"/>.</summary>
    /// <returns>How many.</returns>
    public int Execute(string sql, params ReadOnlySpan<(string Name, object? Value)> values)
    {
        if (_transaction is null)
            throw new InvalidOperationException("Changes are made inside Change, so that they are whole or not at all.");
        if (_undone is not null)
            throw _undone;
        using SqliteCommand command = Command(sql, values);
        return Guarded(command.ExecuteNonQuery);
    }

    /// <summary>Adds a row, inside <see cref="Change{T}"/>.</summary>
    /// <param name="table">The table: a name of ours.</param>
    /// <param name="values">Columns and values.</param>
    /// <returns>The new row's number.</returns>
    public long Insert(string table, params ReadOnlySpan<(string Name, object? Value)> values)
    {
        List<string> columns = [], places = [];
        foreach ((string name, _) in values)
        {
            columns.Add(name);
            places.Add("$" + name);
        }

        Execute($"INSERT INTO {table} ({string.Join(", ", columns)}) VALUES ({string.Join(", ", places)})", values);
        return Count("SELECT last_insert_rowid()");
    }

    /// <summary>Changes a row found by its number, inside <see cref="Change{T}"/>.</summary>
    /// <param name="table">The table: a name of ours.</param>
    /// <param name="id">The row's number.</param>
    /// <param name="values">Columns and their new values.</param>
    /// <exception cref="StoreException">There is no such row.</exception>
    public void Update(string table, long id, params ReadOnlySpan<(string Name, object? Value)> values)
    {
        List<string> columns = [];
        foreach ((string name, _) in values)
            columns.Add($"{name} = ${name}");
        if (Execute($"UPDATE {table} SET {string.Join(", ", columns)} WHERE id = $id", [.. values, ("id", id)]) == 0)
            throw new StoreException(StoreProblem.Wrong, $"There is no number {id} to change.", "List what there is. Nothing was changed.");
    }

    /// <summary>Makes changes that are whole or not at all. Inside another change they are a part of that one, undone alone when they fail.</summary>
    /// <param name="work">The changes.</param>
    /// <exception cref="StoreException">The store may not be changed, or it failed; nothing was changed.</exception>
    public T Change<T>(Func<T> work) =>
        Refusal is not null ? throw Refusal : _transaction is null ? Whole(work) : Part(work);

    /// <inheritdoc cref="Change{T}"/>
    public void Change(Action work) => Change(() =>
    {
        work();
        return 0;
    });

    /// <inheritdoc/>
    public void Dispose()
    {
        if (_transaction is not null)
            End(_transaction);
        _connection.Dispose();
        _damaged?.Dispose();
    }

    /// <summary>Asks; where damage is met, what can be saved of the store answers in its place from then on.</summary>
    private T Ask<T>(string sql, ReadOnlySpan<(string Name, object? Value)> values, Func<SqliteCommand, T> ask)
    {
        using (SqliteCommand command = Command(sql, values))
        {
            try
            {
                return Guarded(() => ask(command));
            }
            catch (StoreException problem) when (problem.Problem == StoreProblem.Damaged && TurnToWhatCanBeSaved())
            {
                // Asked again below.
            }
        }

        using SqliteCommand again = Command(sql, values);
        return Guarded(() => ask(again));
    }

    private bool TurnToWhatCanBeSaved()
    {
        // Within a change, an answer from elsewhere would be written.
        if (_transaction is not null || _damaged is not null || !File.Exists(Path))
            return false;
        try
        {
            (SqliteConnection saved, Rescue.RescueReport report) = Rescue.StoreRescue.InMemory(Path, Time.GetUtcNow());
            (_damaged, _connection, Refusal) = (_connection, saved, StoreException.Saved(report));
            return true;
        }
        catch (StoreException)
        {
            return false;
        }
    }

    private T Whole<T>(Func<T> work)
    {
        // Begun for writing at once: a transaction that reads first and writes later may find that another has written between.
        SqliteTransaction transaction = Guarded(() => _connection.BeginTransaction(deferred: false));
        _transaction = transaction;
        try
        {
            T answer = work();
            if (_undone is not null)
                throw _undone;
            Guarded(() =>
            {
                transaction.Commit();
                return 0;
            });
            return answer;
        }
        finally
        {
            (_transaction, _undone, _parts) = (null, null, 0);
            End(transaction);
        }
    }

    /// <summary>A change within a change: who catches its failure and goes on does not keep the half of it.</summary>
    private T Part<T>(Func<T> work)
    {
        if (_undone is not null)
            throw _undone;
        SqliteTransaction transaction = _transaction!;
        string name = string.Create(CultureInfo.InvariantCulture, $"part_{++_parts}");
        Guarded(() => Run(transaction.Save));
        try
        {
            T answer = work();
            if (_undone is not null)
                throw _undone;
            Guarded(() => Run(transaction.Release));
            return answer;
        }
        catch
        {
            if (_undone is null)
            {
                Guarded(() => Run(transaction.Rollback));
                Guarded(() => Run(transaction.Release));
            }

            throw;
        }

        int Run(Action<string> step)
        {
            step(name);
            return 0;
        }
    }

    /// <summary>Undoes what was not committed. What the disk says to that is no news: the change has failed already, and is undone at the next opening at the latest.</summary>
    private static void End(SqliteTransaction transaction)
    {
        try
        {
            transaction.Dispose();
        }
        catch (SqliteException)
        {
            // Said above.
        }
    }

    private SqliteCommand Command(string sql, ReadOnlySpan<(string Name, object? Value)> values)
    {
        SqliteCommand command = _connection.CreateCommand();
        command.Transaction = _transaction;
#pragma warning disable CA2100 // Texts of ours; what a person typed goes in as values.
        command.CommandText = sql;
#pragma warning restore CA2100
        foreach ((string name, object? value) in values)
            command.Parameters.AddWithValue("$" + name, StoredForm.Of(value));
        return command;
    }

    private T Guarded<T>(Func<T> work)
    {
        try
        {
            return work();
        }
        catch (SqliteException problem)
        {
            throw Noted(StoreException.Of(problem, Path));
        }
        catch (Exception problem) when (problem is InvalidDataException or InvalidCastException or ArgumentOutOfRangeException or System.Text.Json.JsonException)
        {
            throw Noted(StoreException.Damage(Path, problem));
        }
    }

    /// <summary>Remembers what a problem means for what comes after it.</summary>
    private StoreException Noted(StoreException problem)
    {
        // Nothing is written to a store in which damage was met.
        if (problem.Problem == StoreProblem.Damaged)
            Refusal ??= problem;
        // A full or failing disk undoes the whole transaction by itself: changes after that would each stand alone.
        if (_transaction is not null && (problem.Problem == StoreProblem.Damaged || SQLitePCL.raw.sqlite3_get_autocommit(_connection.Handle) != 0))
            _undone ??= problem;
        return problem;
    }
}
