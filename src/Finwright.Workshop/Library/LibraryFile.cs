using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Finwright.Design;
using Finwright.Making.Files;
using Finwright.Strength.Files;

namespace Finwright.Workshop.Library;

/// <summary>What came of reading a file of the library.</summary>
/// <param name="Content">The thing; null when the file cannot be used.</param>
/// <param name="Findings">Everything found.</param>
public sealed record LibraryReading(LibraryContent? Content, IReadOnlyList<Finding> Findings);

/// <summary>
/// Files of the library. Materials and resins have the forms of <see cref="MaterialFile"/> and <see cref="ResinFile"/>. Everything else is a small
/// JSON document, <c>*.library.json</c>: format, kind, name, note, and a design file that holds the fields of the kind and nothing else.
/// </summary>
public static class LibraryFile
{
    /// <summary>Ending of names of files that are neither material nor resin.</summary>
    public const string Ending = ".library.json";

    /// <summary>Longest file, bytes.</summary>
    public const int LargestFile = 256 * 1024;

    /// <summary>Longest note.</summary>
    public const int NoteLength = 2000;

    private const int CurrentFormat = 1;
    private const int NameLength = LibraryTable.NameLength;

    private static readonly JsonSerializerOptions Readable = new() { WriteIndented = true, IndentSize = 2, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };
    private static readonly string[] Keys = ["format", "kind", "name", "note", "design"];

    /// <summary>Ending of the file names of a kind.</summary>
    public static string EndingOf(LibraryKind kind) => kind switch
    {
        LibraryKind.Material => MaterialFile.Ending,
        LibraryKind.Resin => ResinFile.Ending,
        _ => Ending,
    };

    /// <summary>The word for a kind in files.</summary>
    public static string WordOf(LibraryKind kind) => JsonNamingPolicy.KebabCaseLower.ConvertName(kind.ToString());

    /// <summary>Reads a file of a kind; bad content never throws.</summary>
    /// <param name="kind">The kind that is wanted.</param>
    /// <param name="utf8">The file's bytes.</param>
    public static LibraryReading Read(LibraryKind kind, ReadOnlySpan<byte> utf8)
    {
        switch (kind)
        {
            case LibraryKind.Material:
                MaterialReading material = MaterialFile.Read(utf8);
                return new(material.Material is null ? null : new KeptMaterial(material.Material), material.Findings);
            case LibraryKind.Resin:
                ResinReading resin = ResinFile.Read(utf8);
                return new(resin.Resin is null ? null : new KeptResin(resin.Resin), resin.Findings);
            default:
                return ReadPart(kind, utf8);
        }
    }

    /// <inheritdoc cref="Read(LibraryKind, ReadOnlySpan{byte})"/>
    public static LibraryReading Read(LibraryKind kind, string text) => Read(kind, Encoding.UTF8.GetBytes(text));

    internal static string Write(DesignPart part) => new JsonObject
    {
        ["format"] = CurrentFormat,
        ["kind"] = WordOf(part.Kind),
        ["name"] = part.Name,
        ["note"] = part.Note,
        ["design"] = PartFields.Picked(part.Carrier, part.Kind),
    }.ToJsonString(Readable) + "\n";

    private static LibraryReading ReadPart(LibraryKind kind, ReadOnlySpan<byte> utf8)
    {
        if (utf8.Length > LargestFile)
            return Refused("too-large", "$", $"The file has {utf8.Length / 1024} kB; it needs a few.", $"Give a file of at most {LargestFile / 1024} kB.");
        if (utf8 is [0xEF, 0xBB, 0xBF, ..])
            utf8 = utf8[3..];
        JsonDocument document;
        try
        {
            document = JsonDocument.Parse(Encoding.UTF8.GetString(utf8), new() { MaxDepth = 32 });
        }
        catch (JsonException refusal)
        {
            return Refused("not-json", "$", $"The text stops being JSON on line {(refusal.LineNumber ?? 0) + 1}.", "Check commas, quotes and braces there.");
        }

        using (document)
        {
            return document.RootElement.ValueKind is JsonValueKind.Object
                ? ReadPart(kind, document.RootElement)
                : Refused("wrong-type", "$", "The file is one group in braces { }.", "Take a file that the library wrote, and change it.");
        }
    }

    private static LibraryReading ReadPart(LibraryKind kind, JsonElement root)
    {
        List<Finding> findings = [];
        HashSet<string> seen = new(StringComparer.Ordinal);
        foreach (JsonProperty member in root.EnumerateObject())
        {
            if (!Keys.Contains(member.Name, StringComparer.Ordinal))
                Report("unknown-field", $"$.{Shown(member.Name)}", $"\"{Shown(member.Name)}\" is not a field of a library file, so it would change nothing.", $"Take it out. Known here: {string.Join(", ", Keys)}.");
            else if (!seen.Add(member.Name))
                Report("duplicate-field", $"$.{member.Name}", $"\"{member.Name}\" stands here a second time; only one of them can count.", "Take one of them out.");
        }

        if (!(root.TryGetProperty("format", out JsonElement format) && format.ValueKind is JsonValueKind.Number && format.TryGetInt32(out int number) && number == CurrentFormat))
            Report("unknown-format", "$.format", $"This program reads format {CurrentFormat} of library files.", $"Write \"format\": {CurrentFormat}, or use a newer program.");
        string word = Text("kind", 40, isNeeded: true), name = Text("name", NameLength, isNeeded: true).Trim(), note = Text("note", NoteLength, isNeeded: false);
        if (word.Length > 0 && word != WordOf(kind))
            Report("other-kind", "$.kind", $"The file holds a thing of the kind \"{Shown(word)}\"; here a \"{WordOf(kind)}\" is wanted.", "Open it on the page of its own kind.");
        FinDesign? carrier = null;
        if (!root.TryGetProperty("design", out JsonElement design) || design.ValueKind is not JsonValueKind.Object)
            Report("missing-field", "$.design", "\"design\" must be given: the fields of the design file that belong to it.", "Take a file that the library wrote, and change it.");
        else
            carrier = Carrier(kind, design, findings);
        return findings.Exists(finding => finding.IsError) || carrier is null ? new(null, findings) : new(new DesignPart(kind, name, note, carrier), findings);

        string Text(string key, int longest, bool isNeeded)
        {
            if (!root.TryGetProperty(key, out JsonElement given))
            {
                if (isNeeded)
                    Report("missing-field", $"$.{key}", $"\"{key}\" must be given.", "Give a text in double quotes.");
                return "";
            }

            if (given.ValueKind is not JsonValueKind.String || given.GetString() is not { } text || (isNeeded && string.IsNullOrWhiteSpace(text)))
                Report("wrong-type", $"$.{key}", $"\"{key}\" must be a text{(isNeeded ? " that says something" : "")}.", "Put it in double quotes.");
            else if (text.Length > longest)
                Report("too-long", $"$.{key}", $"\"{key}\" has {text.Length} characters; at most {longest} are accepted.", "Shorten it.");
            else
                return text;
            return "";
        }

        void Report(string code, string path, string message, string remedy) => findings.Add(new(code, Severity.Error, path, message, remedy));
    }

    // The design file's own reader does the work, so that ranges, words and rules are the same everywhere.
    private static FinDesign? Carrier(LibraryKind kind, JsonElement design, List<Finding> findings)
    {
        IReadOnlyList<string> fields = PartFields.Of(kind);
        foreach (JsonProperty group in design.EnumerateObject().Where(group => group.Name is not "format"))
        {
            IEnumerable<string> given = group.Value.ValueKind is JsonValueKind.Object ? group.Value.EnumerateObject().Select(field => $"$.{group.Name}.{field.Name}") : [$"$.{group.Name}"];
            foreach (string path in given.Where(path => !fields.Contains(path, StringComparer.Ordinal)))
                findings.Add(new("unknown-field", Severity.Error, Shown(path), $"{Shown(path)} is not a part of this kind of thing.", $"Take it out. Known here: {string.Join(", ", fields)}."));
        }

        if (findings.Count > 0)
            return null;
        // Members of the text itself, so that one given twice is found.
        string inside = design.GetRawText().Trim()[1..^1].Trim();
        string shape = JsonSerializer.Serialize(PartFields.Tree(PartFields.Blank())["shape"]);
        DesignReading reading = DesignReader.Read($"{{\"name\": \"library\", \"shape\": {shape}{(inside.Length > 0 ? ", " : "")}{inside}}}");
        // What hangs on the rest of a design is said when the thing is taken into one.
        findings.AddRange(reading.Findings.Where(finding => fields.Any(field => IsWithin(finding.Path, field) || IsWithin(field, finding.Path))).Select(finding => finding with { Line = null }));
        return reading.Design;
    }

    private static bool IsWithin(string path, string group) => path.StartsWith(group, StringComparison.Ordinal) && (path.Length == group.Length || path[group.Length] is '.' or '[');

    private static LibraryReading Refused(string code, string path, string message, string remedy) => new(null, [new(code, Severity.Error, path, message, remedy)]);

    // A stranger's text, cut and cleaned for a message.
    private static string Shown(string text) =>
        string.Concat((text.Length > 60 ? text[..60] + "…" : text).Select(letter => char.IsControl(letter) || char.IsSurrogate(letter) ? '\uFFFD' : letter));
}
