using Finwright.Design.Fields;

namespace Finwright.Design.Reading;

/// <summary>The findings about fields that do not fit the format.</summary>
internal static class FieldFindings
{
    public static Finding Unknown(RecordForm form, Member member, string path)
    {
        string shown = JsonPath.Shown(member.Key);
        string remedy = form.Find(member.Key.ToLowerInvariant()) is Field sameLetters ? $"Write it in small letters: \"{sameLetters.Key}\"."
            : HomeOf(member.Key) is string home ? $"It belongs in {home}: move it there."
            : NearestName.Among(member.Key, form.Fields.Select(field => field.Key)) is string near ? $"Did you mean \"{near}\"?"
            : $"Take it out. Known here: {string.Join(", ", form.Fields.Select(field => field.Key))}.";
        return new Finding("unknown-field", Severity.Error, path, $"\"{shown}\" is not a field of this group, so it would change nothing.", remedy)
        {
            Line = member.Line,
            Value = shown,
        };
    }

    public static Finding Duplicate(Member member, string path) =>
        new("duplicate-field", Severity.Error, path, $"\"{member.Key}\" stands here a second time; only one of them can count.", "Take one of them out.")
        {
            Line = member.Line,
        };

    public static Finding Missing(Field field, string path, int line) =>
        new("missing-field", Severity.Error, path, $"\"{field.Key}\" must be given. {field.Meaning}", $"Add \"{field.Key}\"{(field.Unit.Length > 0 ? $", a number in {field.Unit}" : "")}.")
        {
            Line = line,
        };

    public static Finding TooLarge(Node node, string path) =>
        new("not-finite", Severity.Error, path, $"{JsonPath.Shown(node.Text)} is larger than any number that can be worked with.", "Give the number meant.")
        {
            Line = node.Line,
            Value = JsonPath.Shown(node.Text),
        };

    public static Finding UnknownWord(ValueForm form, Node node, string path)
    {
        string candidates = string.Join(", ", form.Words.Select(word => word.Text));
        string near = NearestName.Among(node.Text, form.Words.Select(word => word.Text)) is string name ? $"Did you mean \"{name}\"? " : "";
        return new Finding("unknown-word", Severity.Error, path, $"\"{JsonPath.Shown(node.Text)}\" is not one of the words known here.", $"{near}Choose one of: {candidates}.")
        {
            Line = node.Line,
            Value = JsonPath.Shown(node.Text),
            Limit = candidates,
        };
    }

    public static Finding TooMany(Field field, Node node, string path) =>
        new("too-many-items", Severity.Error, path, $"The list has {node.Items.Count} items; at most {field.MaximumLength} are accepted.", "Shorten the list.")
        {
            Line = node.Line,
            Value = $"{node.Items.Count} items",
            Limit = $"{field.MaximumLength} items",
        };

    public static Finding WrongType(ValueForm form, Field field, Node node, string path)
    {
        string wanted = Wanted(form);
        string found = Found(node);
        if (node.Kind == NodeKind.Null)
        {
            return new Finding("null-not-allowed", Severity.Error, path, $"\"{field.Key}\" is null; it must be {wanted}.", field.IsRequired ? $"Give {wanted}." : "Give a value, or take the field out to have its default.")
            {
                Line = node.Line,
                Value = "null",
                Limit = wanted,
            };
        }

        string remedy = form.Kind is FieldKind.Number or FieldKind.WholeNumber && node.Kind == NodeKind.Text
            ? "Write the number without quotes and without its unit, with a decimal point."
            : $"Write {wanted}{(form.Kind == FieldKind.Word ? $": one of {string.Join(", ", form.Words.Select(word => $"\"{word.Text}\""))}" : "")}.";
        return new Finding("wrong-type", Severity.Error, path, $"\"{field.Key}\" must be {wanted}; it is {found}.", remedy)
        {
            Line = node.Line,
            Value = found,
            Limit = wanted,
        };
    }

    private static string Wanted(ValueForm form) => form.Kind switch
    {
        FieldKind.Number => "a number",
        FieldKind.WholeNumber => "a whole number",
        FieldKind.Text => "a text in double quotes",
        FieldKind.Switch => "true or false",
        FieldKind.Word => "a word in double quotes",
        FieldKind.Point => "a pair of numbers [x, y]",
        FieldKind.Record => "a group in braces { }",
        _ => "a list in brackets [ ]",
    };

    private static string Found(Node node) => node.Kind switch
    {
        NodeKind.Object => "a group in braces",
        NodeKind.List => node.Items.Count == 1 ? "a list of 1 item" : $"a list of {node.Items.Count} items",
        NodeKind.Number => $"the number {JsonPath.Shown(node.Text)}",
        NodeKind.Text => $"the text \"{JsonPath.Shown(node.Text)}\"",
        NodeKind.Switch => node.IsOn ? "true" : "false",
        _ => "null",
    };

    /// <summary>Where in the file a field of this name belongs; null when nowhere, or in several places.</summary>
    private static string? HomeOf(string key)
    {
        string[] homes = [.. Groups(RecordForm.Of(typeof(FinDesign)), JsonPath.Root).Where(group => group.Form.Find(key) is not null).Select(group => group.Path)];
        return homes.Length == 1 ? homes[0] : null;
    }

    private static IEnumerable<(RecordForm Form, string Path)> Groups(RecordForm form, string path)
    {
        yield return (form, path);
        foreach (Field field in form.Fields)
        {
            string fieldPath = JsonPath.Field(path, field.Key);
            (RecordForm? inner, string innerPath) = field.Form switch
            {
                { Kind: FieldKind.Record } => (field.Form.Record, fieldPath),
                { Item.Kind: FieldKind.Record } => (field.Form.Item.Record, fieldPath + "[…]"),
                _ => (null, fieldPath),
            };
            if (inner is null)
                continue;
            foreach ((RecordForm, string) group in Groups(inner, innerPath))
                yield return group;
        }
    }
}
