using System.Reflection;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Finwright.Design.Fields;

/// <summary>The form of a value in the design file: its kind, and what its words, items or fields are.</summary>
public sealed class ValueForm
{
    private readonly Type? _recordType;

    private ValueForm(FieldKind kind, Type type, ValueForm? item = null, IReadOnlyList<Word>? words = null)
    {
        Kind = kind;
        Type = type;
        Item = item;
        Words = words ?? [];
        _recordType = kind == FieldKind.Record ? type : null;
    }

    /// <summary>Kind of value.</summary>
    public FieldKind Kind { get; }

    /// <summary>The type in code, never nullable.</summary>
    public Type Type { get; }

    /// <summary>Form of the items; null when the value is not a list.</summary>
    public ValueForm? Item { get; }

    /// <summary>The words that may be chosen; empty for other kinds.</summary>
    public IReadOnlyList<Word> Words { get; }

    /// <summary>The fields of a group.</summary>
    /// <exception cref="InvalidOperationException">The value is not a group.</exception>
    public RecordForm Record => RecordForm.Of(_recordType ?? throw new InvalidOperationException($"A {Kind} has no fields."));

    /// <summary>The word for an enum value; null when the value is not one of the list.</summary>
    /// <param name="value">The enum value.</param>
    public Word? WordFor(object value) => Words.FirstOrDefault(word => word.Value.Equals(value));

    internal static ValueForm Of(Type type)
    {
        if (type == typeof(double))
            return new ValueForm(FieldKind.Number, type);
        if (type == typeof(int))
            return new ValueForm(FieldKind.WholeNumber, type);
        if (type == typeof(string))
            return new ValueForm(FieldKind.Text, type);
        if (type == typeof(bool))
            return new ValueForm(FieldKind.Switch, type);
        if (type.IsEnum)
            return new ValueForm(FieldKind.Word, type, words: WordsOf(type));
        if (type == typeof(IReadOnlyList<double>))
            return new ValueForm(FieldKind.Point, type);
        if (type.IsGenericType && type.GetGenericTypeDefinition() == typeof(IReadOnlyList<>))
            return new ValueForm(FieldKind.List, type, Of(type.GetGenericArguments()[0]));
        if (type.IsClass && type.Namespace == typeof(FinDesign).Namespace)
            return new ValueForm(FieldKind.Record, type);
        throw new ArgumentException($"The design file has no form for {type}.", nameof(type));
    }

    private static Word[] WordsOf(Type type) =>
    [
        .. type.GetFields(BindingFlags.Public | BindingFlags.Static).Select(member => new Word(
            member.GetCustomAttribute<JsonStringEnumMemberNameAttribute>()?.Name ?? JsonNamingPolicy.KebabCaseLower.ConvertName(member.Name),
            (Enum)member.GetValue(null)!,
            member.GetCustomAttribute<InputAttribute>()?.Meaning ?? "")),
    ];
}

/// <summary>One word of a fixed list.</summary>
/// <param name="Text">As the design file spells it.</param>
/// <param name="Value">The value in code.</param>
/// <param name="Meaning">One sentence for the person who chooses.</param>
public sealed record Word(string Text, Enum Value, string Meaning);
