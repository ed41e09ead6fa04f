using System.Text;
using Finwright.Design;
using Finwright.Making.Files;
using Finwright.Page.Works;
using Finwright.Strength.Files;
using Finwright.Workshop.Library;

namespace Finwright.Page.Libraries;

/// <summary>A thing of the library: one that came along, or one of the maker's own.</summary>
/// <param name="Content">What it is; null when the file that is kept cannot be read.</param>
/// <param name="Item">Where it is kept; null for one that came along.</param>
/// <param name="Findings">What is to be said against its file.</param>
public sealed record LibraryEntry(LibraryContent? Content, LibraryItem? Item, IReadOnlyList<Finding> Findings)
{
    /// <summary>What it is called.</summary>
    public string Name => Content?.Name ?? Item!.Name;

    /// <summary>Where it comes from, what to know of it.</summary>
    public string Note => Content?.Note ?? "";

    /// <summary>Whether it came with the program.</summary>
    public bool IsKnown => Item is null;

    /// <summary>What it is.</summary>
    public LibraryKind Kind => Content?.Kind ?? Item!.Kind;

    /// <summary>Its address on the page.</summary>
    public string Address => IsKnown ? $"/libraries/{LibraryFile.WordOf(Kind)}/known/{Uri.EscapeDataString(Key)}" : $"/libraries/{LibraryFile.WordOf(Kind)}/{Item!.Id}";

    /// <summary>A name that is no other's, for lists.</summary>
    public string Key => Item is null ? LibraryShelf.KeyOf(Content!) : $"own-{Item.Id}";
}

/// <summary>All there is in the library: what came along first, then the maker's own.</summary>
public sealed class LibraryShelf(Desk desk)
{
    private static readonly LibraryContent[] Known = [.. Parts(), .. MaterialLibrary.All.Select(material => new KeptMaterial(material)), .. ResinLibrary.All.Select(resin => new KeptResin(resin))];

    /// <summary>The kinds in the order of the job.</summary>
    public static IReadOnlyList<LibraryKind> Kinds { get; } =
    [
        LibraryKind.Board, LibraryKind.Sail, LibraryKind.Rider, LibraryKind.Spot, LibraryKind.Box, LibraryKind.Hardware, LibraryKind.Printer, LibraryKind.Material, LibraryKind.Resin,
    ];

    /// <summary>The kind of a word in an address; null when there is none.</summary>
    public static LibraryKind? KindOf(string word) => Kinds.Cast<LibraryKind?>().FirstOrDefault(kind => LibraryFile.WordOf(kind!.Value) == word);

    /// <summary>What came along of a kind.</summary>
    internal static IEnumerable<LibraryContent> KnownOf(LibraryKind kind) => Known.Where(own => own.Kind == kind);

    /// <summary>Everything of a kind.</summary>
    /// <param name="kind">The kind.</param>
    public IReadOnlyList<LibraryEntry> All(LibraryKind kind) =>
    [
        .. KnownOf(kind).Select(own => new LibraryEntry(own, null, [])),
        .. desk.Ask(store => store.Library.List(kind)).Select(Entry),
    ];

    /// <summary>What was deleted of a kind.</summary>
    public IReadOnlyList<LibraryItem> Deleted(LibraryKind kind) => desk.Ask(store => store.Library.Deleted(kind));

    /// <summary>One of the maker's own; null when there is none of that kind and number.</summary>
    public LibraryEntry? Find(LibraryKind kind, long number) => desk.Ask(store => store.Library.Find(number)) is { DeletedAt: null } item && item.Kind == kind ? Entry(item) : null;

    /// <summary>One that came along; null when there is none.</summary>
    public static LibraryEntry? FindKnown(LibraryKind kind, string key) =>
        KnownOf(kind).FirstOrDefault(own => KeyOf(own) == key) is { } found ? new(found, null, []) : null;

    /// <summary>Keeps a further thing of the maker's own, under its name or that name with a number.</summary>
    /// <param name="content">The thing.</param>
    public LibraryItem Keep(LibraryContent content) => desk.Change(store => store.Library.Add(Renamed(content, store.Library.FreeName(content.Kind, content.Name))));

    /// <summary>Keeps a changed thing in its old place.</summary>
    public LibraryItem Keep(long id, LibraryContent content) => desk.Change(store => store.Library.Change(id, content));

    /// <summary>Deletes a thing.</summary>
    public void Delete(long id) => desk.Change(store => store.Library.Delete(id));

    /// <summary>Has it back.</summary>
    public void Restore(long id) => desk.Change(store => store.Library.Restore(id));

    /// <summary>A thing under another name.</summary>
    public static LibraryContent Renamed(LibraryContent content, string name) => content switch
    {
        DesignPart part => part with { Name = name },
        KeptMaterial material => new KeptMaterial(material.Material with { Title = name, Name = SlugOf(name) }),
        KeptResin resin => new KeptResin(resin.Resin with { Title = name, Name = SlugOf(name) }),
        _ => throw new ArgumentOutOfRangeException(nameof(content), content.GetType().Name, "No kind of thing that the library keeps."),
    };

    /// <summary>A name as data sheets have it: small letters, digits and hyphens.</summary>
    /// <param name="title">A name for people.</param>
    public static string SlugOf(string title)
    {
        ArgumentNullException.ThrowIfNull(title);
        StringBuilder letters = new();
        foreach (char letter in title.ToLowerInvariant())
        {
            letters.Append(letter switch
            {
                'ä' => "ae",
                'ö' => "oe",
                'ü' => "ue",
                'ß' => "ss",
                >= 'a' and <= 'z' or >= '0' and <= '9' => letter.ToString(),
                _ => "-",
            });
        }

        string slug = string.Join('-', letters.ToString().Split('-', StringSplitOptions.RemoveEmptyEntries));
        slug = slug.Length > 40 ? slug[..40].TrimEnd('-') : slug;
        return slug.Length > 0 ? slug : "own";
    }

    internal static string KeyOf(LibraryContent content) => content switch
    {
        KeptMaterial material => material.Material.Name,
        KeptResin resin => resin.Resin.Name,
        _ => SlugOf(content.Name),
    };

    private static LibraryEntry Entry(LibraryItem item)
    {
        LibraryReading reading = LibraryFile.Read(item.Kind, item.Text);
        return new(reading.Content, item, reading.Findings);
    }

    private static IEnumerable<LibraryContent> Parts()
    {
        yield return Box("Two bolts, tapered", "Dimensions as two descriptions of the drawing agree on them (common practice, no source). Try the gauge in your board before the long print.", BoxKind.TwoBoltTapered);
        yield return Box("Two bolts, deep", "The same bolts and ends with a deeper base, for long fins (common practice, no source).", BoxKind.TwoBoltDeep);
        yield return Box("Long slot", "Starting values from memory: slots differ, so measure yours.", BoxKind.LongSlot);
        yield return DesignPart.Usual(LibraryKind.Printer, "A mid-size printer", "A common bed and a 0.4 mm nozzle, driven gently (common practice, no source). Copy it and write in your own.");
        yield return DesignPart.Usual(LibraryKind.Hardware, "M6 bolts with hexagon nuts", "No rods. M6 in nearly every box (common practice, no source).");
        yield return DesignPart.Usual(LibraryKind.Board, "A middling freeride board", "Common practice, no source. Copy it and measure your own.");
        yield return DesignPart.Usual(LibraryKind.Sail, "A middling sail", "Common practice, no source.");
        yield return DesignPart.Usual(LibraryKind.Rider, "An adult of 80 kg", "Common practice, no source.");
        yield return DesignPart.Usual(LibraryKind.Spot, "Deep sea, 15 °C, chop", "No limit of depth, no weed.");
    }

    private static DesignPart Box(string name, string note, BoxKind kind)
    {
        FinDesign blank = PartFields.Blank();
        return new(LibraryKind.Box, name, note, blank with { Base = blank.Base with { Box = kind } });
    }
}
