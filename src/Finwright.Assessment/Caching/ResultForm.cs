namespace Finwright.Assessment.Caching;

/// <summary>How one kind of result is written as bytes; the kinds without a form are not kept on disk.</summary>
public abstract class ResultForm
{
    private protected ResultForm(string name) => Name = name;

    /// <summary>Name of the kind in the file, with a number that is raised when the layout changes.</summary>
    public string Name { get; }
}

/// <summary>How a <typeparamref name="T"/> is written as bytes: exact, so that what is read equals what was written to the last bit.</summary>
/// <typeparam name="T">The kind of result.</typeparam>
public abstract class ResultForm<T> : ResultForm
    where T : class
{
    /// <summary>Declares a form.</summary>
    /// <param name="name">Name of the kind, unique among the forms.</param>
    protected ResultForm(string name)
        : base(name)
    {
    }

    /// <summary>Whether this result can be written whole.</summary>
    public virtual bool CanWrite(T value) => true;

    /// <summary>Writes a result.</summary>
    public abstract void Write(BinaryWriter writer, T value);

    /// <summary>Reads a result.</summary>
    /// <exception cref="InvalidDataException">The bytes are not such a result.</exception>
    /// <exception cref="EndOfStreamException">Bytes are missing.</exception>
    public abstract T Read(BinaryReader reader);
}
