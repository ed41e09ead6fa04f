using System.Globalization;
using System.Text.Json.Nodes;
using Finwright.Design;
using Finwright.Design.DataFiles;
using Finwright.Making.Files;
using Finwright.Strength.Files;
using Finwright.Workshop.Library;

namespace Finwright.Page.Libraries;

/// <summary>One number of a data sheet as it is typed.</summary>
/// <param name="Value">The value; empty when it is left out.</param>
/// <param name="Low">Lower end of its range.</param>
/// <param name="High">Upper end.</param>
/// <param name="Certainty">The word for how sure it is.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record TypedNumber(string Value, string Low, string High, string Certainty, string Source)
{
    /// <summary>A number that is left out.</summary>
    public static TypedNumber None { get; } = new("", "", "", "judgement", "");
}

/// <summary>A material or resin that is being changed: its file's own reader says what is wrong with it.</summary>
public sealed class SheetDraft : ILibraryDraft
{
    private readonly LibraryKind _kind;
    private readonly Dictionary<string, TypedNumber> _numbers = new(StringComparer.Ordinal);
    private string _name, _note;

    /// <summary>Begins with a material or resin.</summary>
    /// <exception cref="ArgumentException">It is neither.</exception>
    public SheetDraft(LibraryContent content)
    {
        ArgumentNullException.ThrowIfNull(content);
        DataSubject subject = content.Kind switch
        {
            LibraryKind.Material => MaterialFile.Subject,
            LibraryKind.Resin => ResinFile.Subject,
            _ => throw new ArgumentException("Only materials and resins are data sheets.", nameof(content)),
        };
        DataSheet sheet = DataSheetFile.Read(System.Text.Encoding.UTF8.GetBytes(content.Write()), subject).Sheet!;
        Form = subject.Forms.First(form => form.Kind == sheet.Kind);
        (_kind, _name, _note) = (content.Kind, content.Name, content.Note);
        foreach ((string key, DataNumber number) in sheet.Numbers)
            _numbers[key] = new(Text(number.Range.Value), Text(number.Range.Low), Text(number.Range.High), DataSheetFile.Words[(int)number.Certainty], number.Source);
        Read();
    }

    /// <summary>Its kind and numbers.</summary>
    public DataForm Form { get; }

    /// <inheritdoc/>
    public string Name
    {
        get => _name;
        set
        {
            _name = value;
            Read();
        }
    }

    /// <inheritdoc/>
    public string Note
    {
        get => _note;
        set
        {
            _note = value;
            Read();
        }
    }

    /// <inheritdoc/>
    public IReadOnlyList<Finding> Findings { get; private set; } = [];

    /// <inheritdoc/>
    public LibraryContent? Content { get; private set; }

    /// <summary>A number as it is typed.</summary>
    public TypedNumber this[string key] => _numbers.GetValueOrDefault(key, TypedNumber.None);

    /// <summary>Types a value; its range moves along, and its source is the maker until they say otherwise.</summary>
    /// <param name="key">The field.</param>
    /// <param name="text">What was typed; empty leaves the number out.</param>
    public void TypeValue(string key, string text)
    {
        TypedNumber before = this[key];
        TypedNumber after = before with { Value = text };
        if (Number(text) is double value && Number(before.Value) is double old && Number(before.Low) is double low && Number(before.High) is double high && old != 0 && value / old > 0)
            after = after with { Low = Text(double.Round(low * value / old, 9)), High = Text(double.Round(high * value / old, 9)) };
        else
            after = after with { Low = text, High = text };
        Type(key, after with { Certainty = "judgement", Source = before.Source.Length > 0 && before.Certainty == "judgement" ? before.Source : "my own" });
    }

    /// <summary>Types a number with all that goes with it.</summary>
    public void Type(string key, TypedNumber number)
    {
        if (number.Value.Trim().Length == 0)
            _numbers.Remove(key);
        else
            _numbers[key] = number;
        Read();
    }

    private void Read()
    {
        JsonObject sheet = new() { ["format"] = 1, ["name"] = LibraryShelf.SlugOf(Name), ["title"] = Name.Trim() };
        if (Form.Kind is not null)
            sheet["kind"] = Form.Kind;
        sheet["remark"] = Note.Trim().Length > 0 ? Note.Trim() : "my own";
        foreach (DataField field in Form.Fields.Where(field => _numbers.ContainsKey(field.Key)))
        {
            TypedNumber number = _numbers[field.Key];
            sheet[field.Key] = new JsonObject
            {
                ["value"] = Json(number.Value),
                ["low"] = Json(number.Low),
                ["high"] = Json(number.High),
                ["certainty"] = number.Certainty,
                ["source"] = number.Source,
            };
        }

        LibraryReading reading = LibraryFile.Read(_kind, sheet.ToJsonString());
        (Content, Findings) = (reading.Content, reading.Findings);
    }

    // What is no number goes in as it is: the reader of the file says so, with what to do.
    private static JsonValue Json(string text) => Number(text) is double number ? JsonValue.Create(number) : JsonValue.Create(text);

    private static double? Number(string text) =>
        double.TryParse(text.Trim().Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture, out double number) && double.IsFinite(number) ? number : null;

    private static string Text(double number) => number.ToString("R", CultureInfo.InvariantCulture);
}
