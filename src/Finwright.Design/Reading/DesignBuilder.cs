using System.Collections;
using Finwright.Design.Fields;

namespace Finwright.Design.Reading;

/// <summary>
/// Builds the design's records from a JSON tree by what <see cref="RecordForm"/> knows of their fields, and reports everything that does not fit.
/// A value that cannot be used is replaced by its default, or by a stand-in when it has none, so that the rest can still be checked.
/// </summary>
internal sealed class DesignBuilder(List<Finding> findings)
{
    private readonly HashSet<string> _unusable = new(StringComparer.Ordinal);

    /// <summary>Paths of the values that could not be used.</summary>
    public IReadOnlySet<string> Unusable => _unusable;

    /// <summary>Whether a value that must be given is missing or unusable: the built design is then good for checking only.</summary>
    public bool IsIncomplete { get; private set; }

    /// <summary>How many errors were found beyond those that are listed.</summary>
    public int NotListed { get; private set; }

    /// <summary>Builds the record that a whole file describes.</summary>
    /// <typeparam name="T">A design, or settings.</typeparam>
    public T Build<T>(Node root)
        where T : class => (T)Record(root, RecordForm.Of(typeof(T)), JsonPath.Root);

    private object Record(Node node, RecordForm form, string path)
    {
        object record = form.Create();
        var given = new HashSet<string>(StringComparer.Ordinal);
        foreach (Member member in node.Members)
        {
            string memberPath = JsonPath.Field(path, member.Key);
            if (form.Find(member.Key) is not Field field)
                Report(() => FieldFindings.Unknown(form, member, memberPath));
            else if (!given.Add(member.Key))
                Report(() => FieldFindings.Duplicate(member, memberPath));
            else
                Assign(record, field, member, memberPath);
        }

        foreach (Field field in form.Fields.Where(field => field.IsRequired && !given.Contains(field.Key)))
        {
            string missing = JsonPath.Field(path, field.Key);
            Report(() => FieldFindings.Missing(field, missing, node.Line));
            StandIn(record, field, missing);
        }

        return record;
    }

    private void Assign(object record, Field field, Member member, string path)
    {
        if (member.Value.Kind == NodeKind.Null && field.MayBeNull)
            field.Set(record, null);
        else if (Value(member.Value, field.Form, field, path) is object value)
            field.Set(record, value);
        else if (field.IsRequired)
            StandIn(record, field, path);
        else
            _unusable.Add(path);
    }

    /// <summary>The value in code; null, with a finding, when the node does not fit.</summary>
    private object? Value(Node node, ValueForm form, Field field, string path)
    {
        switch (form.Kind, node.Kind)
        {
            case (FieldKind.Number, NodeKind.Number) when double.IsFinite(node.Number):
                return node.Number;
            case (FieldKind.Number or FieldKind.WholeNumber, NodeKind.Number) when !double.IsFinite(node.Number):
                Report(() => FieldFindings.TooLarge(node, path));
                return null;
            case (FieldKind.WholeNumber, NodeKind.Number) when double.IsInteger(node.Number) && Math.Abs(node.Number) <= int.MaxValue:
                return (int)node.Number;
            case (FieldKind.Text, NodeKind.Text):
                return node.Text;
            case (FieldKind.Switch, NodeKind.Switch):
                return node.IsOn;
            case (FieldKind.Word, NodeKind.Text):
                if (form.Words.FirstOrDefault(word => word.Text == node.Text) is Word known)
                    return known.Value;
                Report(() => FieldFindings.UnknownWord(form, node, path));
                return null;
            case (FieldKind.Point, NodeKind.List) when node.Items.Count == 2:
                return Point(node, field, path);
            case (FieldKind.Record, NodeKind.Object):
                return Record(node, form.Record, path);
            case (FieldKind.List, NodeKind.List):
                return Items(node, form.Item!, field, path);
            default:
                Report(() => FieldFindings.WrongType(form, field, node, path));
                return null;
        }
    }

    private double[]? Point(Node node, Field field, string path)
    {
        var number = ValueForm.Of(typeof(double));
        object? x = Value(node.Items[0], number, field, JsonPath.Item(path, 0));
        object? y = Value(node.Items[1], number, field, JsonPath.Item(path, 1));
        return x is double px && y is double py ? [px, py] : null;
    }

    private object? Items(Node node, ValueForm form, Field field, string path)
    {
        if (node.Items.Count > field.MaximumLength)
        {
            Report(() => FieldFindings.TooMany(field, node, path));
            return null;
        }

        var list = (IList)Activator.CreateInstance(typeof(List<>).MakeGenericType(form.Type), node.Items.Count)!;
        for (int i = 0; i < node.Items.Count; i++)
        {
            string itemPath = JsonPath.Item(path, i);
            if (Value(node.Items[i], form, field, itemPath) is object item)
                list.Add(item);
            else
                _unusable.Add(itemPath);
        }

        // Items that were dropped would move the numbers of those behind them; such a list is not used at all.
        return list.Count == node.Items.Count ? list : null;
    }

    // Working out what a name may have meant takes time; a hostile file has hundreds of thousands of them.
    private void Report(Func<Finding> finding)
    {
        if (findings.Count < DesignLimits.Findings)
            findings.Add(finding());
        else
            NotListed++;
    }

    private void StandIn(object record, Field field, string path)
    {
        IsIncomplete = true;
        _unusable.Add(path);
        field.Set(record, field.Form.Kind switch
        {
            // Every comparison with it is false, so no rule fires on it.
            FieldKind.Number => double.NaN,
            FieldKind.Text => "",
            FieldKind.Word => field.Form.Words[0].Value,
            FieldKind.Record => StandInRecord(field.Form.Record, path),
            _ => throw new InvalidOperationException($"No stand-in for a required {field.Form.Kind}."),
        });
    }

    private object StandInRecord(RecordForm form, string path)
    {
        object record = form.Create();
        foreach (Field field in form.Fields.Where(field => field.IsRequired))
            StandIn(record, field, JsonPath.Field(path, field.Key));
        return record;
    }
}
