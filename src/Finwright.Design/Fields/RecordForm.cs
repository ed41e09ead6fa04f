using System.Collections.Concurrent;
using System.Reflection;

namespace Finwright.Design.Fields;

/// <summary>A group of the design file and its fields, in the order in which they are written.</summary>
public sealed class RecordForm
{
    private static readonly ConcurrentDictionary<Type, RecordForm> Known = new();

    private readonly Dictionary<string, Field> _byKey;

    private RecordForm(Type type)
    {
        Type = type;
        object defaults = Create();
        Fields =
        [
            .. type.GetProperties(BindingFlags.Public | BindingFlags.Instance)
                .OrderBy(property => property.MetadataToken) // the order of declaration
                .Select(property => new Field(property, defaults)),
        ];
        _byKey = Fields.ToDictionary(field => field.Key, StringComparer.Ordinal);
    }

    /// <summary>The record type in code.</summary>
    public Type Type { get; }

    /// <summary>The fields.</summary>
    public IReadOnlyList<Field> Fields { get; }

    /// <summary>The form of a group; worked out once for each type.</summary>
    /// <param name="type">One of the record types of the design file.</param>
    public static RecordForm Of(Type type) => Known.GetOrAdd(type, static t => new RecordForm(t));

    /// <summary>The field of a key; null when there is none.</summary>
    /// <param name="key">Name in the design file.</param>
    public Field? Find(string key) => _byKey.GetValueOrDefault(key);

    /// <summary>A new group in which every field has its default, and the required ones nothing yet.</summary>
    internal object Create() => Activator.CreateInstance(Type)!;
}
