using System.Text.RegularExpressions;
using Finwright.Geometry.FromDesign;

namespace Finwright.Papers.Words.German;

/// <summary>German names for the names that the house gives. A name that fits none of its patterns was given by a person and stays.</summary>
internal sealed partial class GermanNames : NameWords
{
    // The resins that come along keep the names by which commands know them; the last is the design file's own word when it names none.
    private static readonly Dictionary<string, string> Resins = new(StringComparer.Ordinal)
    {
        ["casting-slow"] = "langsames Gießharz (casting-slow)",
        ["laminating-slow"] = "langsames Laminierharz (laminating-slow)",
        ["laminating-standard"] = "Laminierharz (laminating-standard)",
        ["infusion-reference"] = "Infusionsharz (infusion-reference)",
        ["infusion-other"] = "anderes Infusionsharz (infusion-other)",
        ["slow laminating epoxy"] = "langsames Laminierepoxid",
    };

    // Sides of a mesh that is no fin are told by its axes: "+x side".
    private static readonly Dictionary<string, string> Sides = new(StringComparer.Ordinal)
    {
        ["trailing edge"] = "Hinterkante",
        ["leading edge"] = "Vorderkante",
        ["tip"] = "Spitze",
        ["root"] = "Wurzel",
        ["starboard side"] = "Steuerbordseite",
        ["port side"] = "Backbordseite",
        ["+x side"] = "Seite +x",
        ["-x side"] = "Seite −x",
        ["+y side"] = "Seite +y",
        ["-y side"] = "Seite −y",
        ["+z side"] = "Seite +z",
        ["-z side"] = "Seite −z",
    };

    private static readonly Dictionary<string, string> Owners = new(StringComparer.Ordinal)
    {
        ["front box bolt"] = "vordere Finnenschraube",
        ["rear box bolt"] = "hintere Finnenschraube",
        ["box bolt"] = "Finnenschraube",
        ["box bolts"] = "Finnenschrauben",
        ["clamp rod"] = "Spannstange",
        ["carbon rod"] = "Kohlestab",
        ["cross pin"] = "Querstift",
        ["plate screw"] = "Plattenschraube",
        ["cavity"] = "Hohlraum",
    };

    private static readonly Dictionary<string, string> Openings = new(StringComparer.Ordinal)
    {
        ["bore"] = "Bohrung",
        ["hole"] = "Loch",
        ["nut"] = "Mutter",
        ["nut pocket"] = "Muttertasche",
        ["nut pocket, way in"] = "Muttertasche, Einführung",
        ["socket pocket"] = "Tasche für den Steckschlüssel",
        ["lid"] = "Deckel",
    };

    private static readonly Dictionary<string, string> Places = new(StringComparer.Ordinal)
    {
        ["in the blade"] = "im Blatt",
        ["in the base"] = "in der Basis",
        ["at the top edge of the base"] = "an der Oberkante der Basis",
        ["slot in the trailing edge"] = "Schlitz in der Hinterkante",
        ["rear of the tab"] = "hinten in der Basis",
        ["front of the tab"] = "vorn in der Basis",
        ["across the cut"] = "quer über die Trennstelle",
        ["across the cuts"] = "quer über die Trennstellen",
    };

    public override string Part(string name)
    {
        Match match = NumberedPart().Match(name);
        if (!match.Success)
            return name;
        string part = match.Groups["part"].Value switch
        {
            "fin" => "Finne",
            "blade" => "Blatt",
            "base" => "Basis",
            _ => "Lehre",
        };
        string number = match.Groups["number"].Value, count = match.Groups["count"].Value;
        return part + (number.Length > 0 ? " " + number : "") + (count.Length > 0 ? " von " + count : "");
    }

    public override string Port(string name)
    {
        Match match = PortName().Match(name);
        if (!match.Success)
            return name;
        string[] words =
        [
            match.Groups["role"].Value switch { "feed" => "Zulauf", "vent" => "Entlüftung", _ => "" },
            match.Groups["index"].Value,
            Part(match.Groups["part"].Value),
            match.Groups["place"].Value switch { "front" => "vorn", "rear" => "hinten", "further" => "zusätzlich", _ => "" },
            match.Groups["further"].Value,
        ];
        return string.Join(" ", words.Where(word => word.Length > 0));
    }

    public override string Attitude(string name)
    {
        Match match = AttitudeName().Match(name);
        if (!match.Success)
            return name;
        IEnumerable<string> tilts = match.Groups["side"].Captures.Zip(match.Groups["degrees"].Captures, (side, degrees) => $"{Side(side.Value)} um {degrees.Value}° nach unten geneigt");
        string up = $"{Side(match.Groups["up"].Value)} nach oben", tilted = string.Join(" und ", tilts);
        return tilted.Length > 0 ? $"{up}, {tilted}" : up;
    }

    public override string Feature(string name)
    {
        int colon = name.LastIndexOf(": ", StringComparison.Ordinal);
        return colon >= 0 && Openings.TryGetValue(name[(colon + 2)..], out string? opening) ? $"{Owner(name[..colon])}: {opening}" : Owner(name);
    }

    public override string Size(HardwareItem item, Tongue tongue)
    {
        string size = item.Size;
        string german = item.Kind switch
        {
            HardwareKind.BoxBolt => Bolt().Replace(size, "Schraube ${thread}, nichtrostend; dazu kommt, was das Brett über der Basis dick ist"),
            HardwareKind.Nut => Nut().Replace(size, match => $"{NutForm(match.Groups["form"].Value)} {match.Groups["thread"].Value}{match.Groups["rest"].Value.Replace(" x ", " × ", StringComparison.Ordinal)}{(match.Groups["washer"].Success ? " mit Scheibe" : "")}"),
            HardwareKind.ThreadedRod => ThreadedRod().Replace(size, "Gewindestange ${thread}, nichtrostend"),
            HardwareKind.CarbonRod => CarbonRod().Replace(size, "Kohlestab ${diameter}"),
            HardwareKind.CrossPin => CrossPin().Replace(size, "Stift ${diameter}; dazu kommt, was in die Schienen des Finnenkastens ragt"),
            HardwareKind.PlateScrew => PlateScrew().Replace(size, "Schraube ${thread} mit Plattenmutter; dazu kommt die Dicke der Platte"),
            HardwareKind.StripSheet => StripSheet().Replace(size, "Streifen, ${thickness} dick, ${width} breit"),
            HardwareKind.Lid => Lid().Replace(RoundLid().Replace(size, "runder Deckel, ${diameter}, am Rand ${thickness} dick"), "Deckel, ${length} × ${height}, an der dünnsten Stelle ${thickness} dick"),
            HardwareKind.Dowel => Dowel().Replace(size, "Dübelstab ${diameter}"),
            _ => size,
        };
        return Measured(german, item.Kind, tongue);
    }

    public override string Resin(string name) => Resins.GetValueOrDefault(name, name);

    public override string Place(HardwareItem item)
    {
        if (item.Kind is HardwareKind.Lid)
            return Owner(item.Place);
        if (Places.TryGetValue(item.Place, out string? whole))
            return whole;
        int comma = item.Place.LastIndexOf(", ", StringComparison.Ordinal);
        return comma >= 0 && Places.TryGetValue(item.Place[(comma + 2)..], out string? place) ? $"{Owner(item.Place[..comma])}, {place}" : Owner(item.Place);
    }

    // "carbon rod 2": a thing and, when there are several, its number.
    private static string Owner(string name)
    {
        Match match = Numbered().Match(name);
        return match.Success && Owners.TryGetValue(match.Groups["thing"].Value, out string? thing) ? thing + match.Groups["number"].Value : name;
    }

    private static string Side(string side) => Sides.GetValueOrDefault(side, side);

    private static string NutForm(string form) => form switch
    {
        "hexagon" => "Sechskantmutter",
        "square" => "Vierkantmutter",
        _ => "Quermutter",
    };

    [GeneratedRegex(@"^(?<part>fin|blade|base|gauge)( (?<number>\d+))?( of (?<count>\d+))?$", Options, TimeoutMilliseconds)]
    private static partial Regex NumberedPart();

    [GeneratedRegex(@"^((?<role>feed|vent)( (?<index>\d+))?)?( ?(?<part>(fin|blade|base|gauge)( \d+)?) (?<place>front|rear|further)( (?<further>\d+))?)?$", Options, TimeoutMilliseconds)]
    private static partial Regex PortName();

    [GeneratedRegex(@"^(?<up>[a-z +-]+) up(,? (and )?(?<side>[a-z +-]+?) tilted down (?<degrees>\d+)°)*$", Options, TimeoutMilliseconds)]
    private static partial Regex AttitudeName();

    [GeneratedRegex(@"^(?<thing>.*?)(?<number> \d+)?$", Options, TimeoutMilliseconds)]
    private static partial Regex Numbered();

    [GeneratedRegex(@"^(?<thread>M\d+) bolt, stainless; add the board's own thickness above the base$", Options, TimeoutMilliseconds)]
    private static partial Regex Bolt();

    [GeneratedRegex(@"^(?<thread>M\d+) (?<form>hexagon|square|cross) nut(?<rest>.*?)(?<washer> and washer)?$", Options, TimeoutMilliseconds)]
    private static partial Regex Nut();

    [GeneratedRegex(@"^(?<thread>M\d+) threaded rod, stainless$", Options, TimeoutMilliseconds)]
    private static partial Regex ThreadedRod();

    [GeneratedRegex(@"^(?<diameter>.+) carbon rod$", Options, TimeoutMilliseconds)]
    private static partial Regex CarbonRod();

    [GeneratedRegex(@"^(?<diameter>.+) pin; add what stands out into the rails of the box$", Options, TimeoutMilliseconds)]
    private static partial Regex CrossPin();

    [GeneratedRegex(@"^(?<thread>M\d+) screw and plate nut; add the plate$", Options, TimeoutMilliseconds)]
    private static partial Regex PlateScrew();

    [GeneratedRegex(@"^(?<thickness>.+) sheet, (?<width>.+) wide$", Options, TimeoutMilliseconds)]
    private static partial Regex StripSheet();

    [GeneratedRegex(@"^round lid, (?<diameter>.+), (?<thickness>.+) thick at its rim$", Options, TimeoutMilliseconds)]
    private static partial Regex RoundLid();

    [GeneratedRegex(@"^lid, (?<length>.+) by (?<height>.+), (?<thickness>.+) thick at its thinnest$", Options, TimeoutMilliseconds)]
    private static partial Regex Lid();

    [GeneratedRegex(@"^(?<diameter>.+) dowel rod$", Options, TimeoutMilliseconds)]
    private static partial Regex Dowel();

    private const RegexOptions Options = RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture;

    private const int TimeoutMilliseconds = 1000;
}
