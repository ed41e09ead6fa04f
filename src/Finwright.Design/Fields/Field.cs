using System.Reflection;
using System.Runtime.CompilerServices;
using System.Text.Json;

namespace Finwright.Design.Fields;

/// <summary>
/// One field of the design file, as its property describes it: key, unit, range, default, meaning and reason.
/// The reader, the writer, the checks, the schema and the documentation all work from here.
/// </summary>
public sealed class Field
{
    private readonly PropertyInfo _property;
    private readonly InputAttribute _input;

    internal Field(PropertyInfo property, object defaults)
    {
        _property = property;
        _input = property.GetCustomAttribute<InputAttribute>()
            ?? throw new ArgumentException($"{property.DeclaringType?.Name}.{property.Name} has no [Input].", nameof(property));
        Type? nullable = Nullable.GetUnderlyingType(property.PropertyType);
        Key = JsonNamingPolicy.SnakeCaseLower.ConvertName(property.Name);
        Form = ValueForm.Of(nullable ?? property.PropertyType);
        Unit = Units.Of(property.Name);
        IsRequired = property.IsDefined(typeof(RequiredMemberAttribute));
        MayBeNull = nullable is not null
            || (!property.PropertyType.IsValueType && new NullabilityInfoContext().Create(property).WriteState == NullabilityState.Nullable);
        Default = IsRequired ? null : property.GetValue(defaults);
    }

    /// <summary>Name in the design file, for example <c>span_mm</c>.</summary>
    public string Key { get; }

    /// <summary>Name in code, for example <c>SpanMm</c>.</summary>
    public string PropertyName => _property.Name;

    /// <summary>Form of the value.</summary>
    public ValueForm Form { get; }

    /// <summary>Unit as it is shown, for example <c>mm</c>; empty when there is none.</summary>
    public string Unit { get; }

    /// <summary>Whether the field must be given.</summary>
    public bool IsRequired { get; }

    /// <summary>Whether the field may be left empty (null).</summary>
    public bool MayBeNull { get; }

    /// <summary>The default; null when there is none or when it is "left out".</summary>
    public object? Default { get; }

    /// <summary>One sentence for the person who fills in the field.</summary>
    public string Meaning => _input.Meaning;

    /// <summary>Why the default is what it is.</summary>
    public string Reason => _input.Reason;

    /// <summary>Smallest value accepted, in the field's own unit; null for no lower limit.</summary>
    public double? Minimum => double.IsNaN(_input.Minimum) ? null : _input.Minimum;

    /// <summary>Largest value accepted, in the field's own unit; null for no upper limit.</summary>
    public double? Maximum => double.IsNaN(_input.Maximum) ? null : _input.Maximum;

    /// <summary>Most characters of a text, most items of a list; null for other kinds.</summary>
    public int? MaximumLength => (Form.Kind, _input.MaximumLength) switch
    {
        (FieldKind.Text, 0) => DesignLimits.TextLength,
        (FieldKind.List, 0) => DesignLimits.ListLength,
        (FieldKind.Text or FieldKind.List, var given) => given,
        _ => null,
    };

    /// <summary>Whether a text may have several lines.</summary>
    public bool MayHaveLines => _input.Lines;

    /// <summary>The field's value in a group.</summary>
    /// <param name="record">The group that has this field.</param>
    public object? Get(object record) => _property.GetValue(record);

    internal void Set(object record, object? value) => _property.SetValue(record, value);
}
