using System.Text.Json;
using Finwright.Numerics;

namespace Finwright.Design.DataFiles;

/// <summary>Builds a data sheet from its JSON tree and says everything that does not fit.</summary>
/// <param name="subject">What the sheet is about.</param>
internal sealed class DataSheetReader(DataSubject subject)
{
    // Longest text; a source may name several papers.
    private const int TextLength = 500;

    private const int NameLength = 40;
    private static readonly string[] TextKeys = ["format", "name", "title", "kind", "remark"];
    private static readonly string[] NumberKeys = ["value", "low", "high", "certainty", "source"];

    private readonly List<Finding> _findings = [];

    public DataReading Read(JsonElement root)
    {
        if (root.ValueKind is not JsonValueKind.Object)
        {
            Report("wrong-type", "$", $"A {subject.What} file is one group in braces {{ }}.", $"Copy a {subject.What} of the library and change it.");
            return new(null, _findings);
        }

        Dictionary<string, JsonElement> given = Members(root, "$");
        if (given.TryGetValue("format", out JsonElement format) && !(format.ValueKind is JsonValueKind.Number && format.TryGetInt32(out int number) && number is 1))
            Report("unknown-format", "$.format", $"Format {Shown(format.ToString())} is not known; this program reads format 1.", "Write 1, or use a newer program.");
        else if (!given.ContainsKey("format"))
            Missing("$", "format", "Write \"format\": 1.");
        bool hasKinds = subject.Forms[0].Kind is not null;
        string name = Text(given, "name", NameLength), title = Text(given, "title", TextLength), kind = hasKinds ? Text(given, "kind", TextLength) : "", remark = Text(given, "remark", TextLength);
        if (name.Length > 0 && !name.All(c => c is >= 'a' and <= 'z' or >= '0' and <= '9' or '-'))
            Report("bad-name", "$.name", $"\"{Shown(name)}\" cannot be a name: it goes into commands and design files.", "Use small letters, digits and hyphens only.");

        DataForm? form = hasKinds ? subject.Forms.FirstOrDefault(f => f.Kind == kind) : subject.Forms[0];
        if (form is null)
        {
            if (kind.Length > 0)
                Report("unknown-word", "$.kind", $"\"{Shown(kind)}\" is not a kind of {subject.What}.", $"Choose one of: {string.Join(", ", subject.Forms.Select(f => f.Kind))}.");
            return new(null, _findings);
        }

        string called = form.Kind ?? subject.What;
        foreach (string key in given.Keys.Where(key => !(TextKeys.Contains(key, StringComparer.Ordinal) && (hasKinds || key is not "kind")) && form.Fields.All(f => f.Key != key)))
        {
            Report("unknown-field", Path("$", key), $"\"{Shown(key)}\" is not a field of a {called}, so it would change nothing.",
                $"Take it out. Known here: {string.Join(", ", form.Fields.Select(f => f.Key))}.");
        }

        Dictionary<string, DataNumber> numbers = new(StringComparer.Ordinal);
        foreach (DataField field in form.Fields)
        {
            if (!given.TryGetValue(field.Key, out JsonElement group))
            {
                if (!field.Optional)
                    Missing("$", field.Key, $"Give its value, low, high, certainty and source; a {called} of the library shows how.");
            }
            else if (group.ValueKind is JsonValueKind.Number)
            {
                if (Within(field, group, field.Key, Path("$", field.Key)) is double alone)
                    numbers[field.Key] = new(Ranged.Exact(alone), Certainty.Judgement, DataSheetFile.NoSource);
            }
            else if (group.ValueKind is not JsonValueKind.Object)
            {
                Report("wrong-type", Path("$", field.Key), $"\"{field.Key}\" must be a number, or a group with value, low, high, certainty and source.",
                    $"Write \"{field.Key}\": {{ \"value\": …, \"low\": …, \"high\": …, \"certainty\": \"judgement\", \"source\": \"…\" }}.");
            }
            else
            {
                Number(field, group, numbers);
            }
        }

        return _findings.Count > 0 ? new(null, _findings) : new(new(name, title, form.Kind, remark, numbers), []);
    }

    private void Number(DataField field, JsonElement group, Dictionary<string, DataNumber> numbers)
    {
        string path = Path("$", field.Key);
        Dictionary<string, JsonElement> given = Members(group, path);
        foreach (string key in given.Keys.Where(key => !NumberKeys.Contains(key, StringComparer.Ordinal)))
            Report("unknown-field", Path(path, key), $"\"{Shown(key)}\" is not a part of a number, so it would change nothing.", $"Take it out. Known here: {string.Join(", ", NumberKeys)}.");
        double? value = One(field, given, "value", path), low = One(field, given, "low", path), high = One(field, given, "high", path);
        if (value > high || low > value)
            Report("range-order", path, $"low {low}, value {value}, high {high} do not rise: the value must lie within its range.", "Give low ≤ value ≤ high; three equal numbers for a value without a range.");

        string source = Text(given, "source", TextLength, path), word = Text(given, "certainty", TextLength, path);
        int certainty = DataSheetFile.Words.ToList().IndexOf(word);
        if (certainty < 0 && word.Length > 0)
            Report("unknown-word", Path(path, "certainty"), $"\"{Shown(word)}\" does not say how sure the number is.", $"Choose one of: {string.Join(", ", DataSheetFile.Words)}.");
        numbers[field.Key] = new(new(value ?? 0, low ?? 0, high ?? 0), (Certainty)Math.Max(certainty, 0), source);
    }

    private double? One(DataField field, Dictionary<string, JsonElement> given, string key, string parent)
    {
        string path = Path(parent, key);
        if (!given.TryGetValue(key, out JsonElement element))
        {
            Missing(parent, key, "Give a number.");
            return null;
        }

        return Within(field, element, key, path);
    }

    private double? Within(DataField field, JsonElement element, string key, string path)
    {
        if (element.ValueKind is not JsonValueKind.Number || !element.TryGetDouble(out double number) || !double.IsFinite(number))
        {
            Report("wrong-type", path, $"\"{key}\" must be a number; it is {Shown(element.GetRawText())}.", "Write the number without quotes and without its unit, with a decimal point.");
            return null;
        }

        if (number >= field.Least && number <= field.Greatest)
            return number;
        Report("out-of-range", path, $"{number} cannot be meant for {field.Key}: it must lie between {field.Least} and {field.Greatest}.", "Check the number and the unit in the field's name.");
        return null;
    }

    private string Text(Dictionary<string, JsonElement> given, string key, int longest, string parent = "$")
    {
        if (!given.TryGetValue(key, out JsonElement element))
            Missing(parent, key, "Give a text in double quotes.");
        else if (element.ValueKind is not JsonValueKind.String)
            Report("wrong-type", Path(parent, key), $"\"{key}\" must be a text; it is {Shown(element.GetRawText())}.", "Put it in double quotes.");
        else if (element.GetString() is not { Length: > 0 } text || string.IsNullOrWhiteSpace(text))
            Report("empty-text", Path(parent, key), $"\"{key}\" is empty.", "Say something, if only \"my own guess\".");
        else if (text.Length > longest)
            Report("too-long", Path(parent, key), $"\"{key}\" has {text.Length} characters; at most {longest} are accepted.", "Shorten it.");
        else
            return text;
        return "";
    }

    private Dictionary<string, JsonElement> Members(JsonElement group, string path)
    {
        Dictionary<string, JsonElement> members = new(StringComparer.Ordinal);
        foreach (JsonProperty member in group.EnumerateObject())
        {
            if (!members.TryAdd(member.Name, member.Value))
                Report("duplicate-field", Path(path, member.Name), $"\"{Shown(member.Name)}\" stands here a second time; only one of them can count.", "Take one of them out.");
        }

        return members;
    }

    private void Missing(string parent, string key, string remedy) => Report("missing-field", Path(parent, key), $"\"{key}\" must be given.", remedy);

    private void Report(string code, string path, string message, string remedy) => _findings.Add(new(code, Severity.Error, path, message, remedy));

    private static string Path(string parent, string key) => $"{parent}.{Shown(key)}";

    // A stranger's text, cut and cleaned for a message.
    private static string Shown(string text) =>
        string.Concat((text.Length > NameLength ? text[..NameLength] + "…" : text).Select(c => char.IsControl(c) || char.IsSurrogate(c) ? '\uFFFD' : c));
}
