using Finwright.Design;
using Finwright.Page.Words;
using Finwright.Workshop.Library;

namespace Finwright.Page.Libraries;

/// <summary>How the library speaks of what it keeps.</summary>
internal static class LibraryWords
{
    /// <summary>Title of a kind's page, in English.</summary>
    public static string Title(LibraryKind kind) => kind switch
    {
        LibraryKind.Box => "Fin boxes",
        LibraryKind.Printer => "Printers",
        LibraryKind.Material => "Filaments and materials",
        LibraryKind.Resin => "Resins",
        LibraryKind.Hardware => "Rods, bolts and nuts",
        LibraryKind.Board => "Boards",
        LibraryKind.Sail => "Sails",
        LibraryKind.Rider => "Riders",
        _ => "Spots",
    };

    /// <summary>What a kind holds, in English.</summary>
    public static string About(LibraryKind kind) => kind switch
    {
        LibraryKind.Box => "The box in the board, and what you corrected after trying the gauge.",
        LibraryKind.Printer => "Bed, line, allowances and speeds of a printer.",
        LibraryKind.Material => "Stiffness, strength and mass of print, cast resin, rods, metal and sheet, each number with its range and source.",
        LibraryKind.Resin => "How a resin cures, how warm it gets, how it thickens. The data sheet in hand goes before all of these, your own cup before both.",
        LibraryKind.Hardware => "Bolts, nuts and rods that you use together.",
        LibraryKind.Board => "Width, width above the fin, and where the fin stands.",
        LibraryKind.Sail => "Area, and how high its force acts.",
        LibraryKind.Rider => "Mass with gear, and how far it hangs out.",
        _ => "Depth, weed, water and chop of a place to sail.",
    };

    /// <summary>The word for a single thing, in English.</summary>
    public static string One(LibraryKind kind) => kind switch
    {
        LibraryKind.Box => "fin box",
        LibraryKind.Printer => "printer",
        LibraryKind.Material => "material",
        LibraryKind.Resin => "resin",
        LibraryKind.Hardware => "hardware",
        LibraryKind.Board => "board",
        LibraryKind.Sail => "sail",
        LibraryKind.Rider => "rider",
        _ => "spot",
    };

    /// <summary>The word for the kind of a material, in English; empty for other things.</summary>
    public static string Form(LibraryContent? content) => content is KeptMaterial material
        ? material.Form switch
        {
            "printed-plastic" => "printed plastic",
            "cast-resin" => "cast resin",
            "rod" => "rod",
            "metal" => "metal",
            _ => "sheet",
        }
        : "";

    /// <summary>The numbers that tell one from another in a list.</summary>
    public static string Short(LibraryContent? content, Reader reader)
    {
        switch (content)
        {
            case DesignPart { Kind: LibraryKind.Box } part when part.Carrier.Base is { Box: BoxKind.Measured, Measured: { } box }:
                return reader["measured: {0} long, {1} wide, {2} deep", reader.Tongue.Length(box.HullLengthMm * 1e-3), reader.Tongue.Length(box.HullWidthMm * 1e-3), reader.Tongue.Length(box.FrontDepthMm * 1e-3)];
            case DesignPart { Kind: LibraryKind.Box } part:
                return reader[Fields.FieldAt.LabelOf(Word(part.Carrier.Base.Box))];
            case DesignPart { Kind: LibraryKind.Printer } part:
                Print print = part.Carrier.Print;
                return reader["{0} × {1} × {2}", reader.Tongue.Length(print.BedXMm * 1e-3, 0), reader.Tongue.Length(print.BedYMm * 1e-3, 0), reader.Tongue.Length(print.BedZMm * 1e-3, 0)];
            case DesignPart { Kind: LibraryKind.Hardware } part:
                Hardware hardware = part.Carrier.Hardware;
                return reader["{0} bolts, {1} clamp rods, {2} carbon rods", hardware.BoxBolts.Thread, hardware.ClampRods.Count, hardware.CarbonRods.Count];
            case DesignPart { Kind: LibraryKind.Board } part:
                return reader["{0} wide, {1} above the fin", reader.Tongue.Length(part.Carrier.Brief.BoardWidthMm * 1e-3, 0), reader.Tongue.Length(part.Carrier.Brief.TailWidthMm * 1e-3, 0)];
            case DesignPart { Kind: LibraryKind.Sail } part:
                return $"{reader.Tongue.Number(part.Carrier.Brief.SailAreaM2, 1)} m²";
            case DesignPart { Kind: LibraryKind.Rider } part:
                return reader.Tongue.Mass(part.Carrier.Brief.RiderMassKg, 0);
            case DesignPart { Kind: LibraryKind.Spot } part:
                Brief brief = part.Carrier.Brief;
                return brief.DraughtLimitMm is double limit
                    ? reader["to {0} deep, {1}", reader.Tongue.Length(limit * 1e-3, 0), reader.Tongue.Temperature(brief.WaterTemperatureCelsius + 273.15)]
                    : reader["deep, {0}", reader.Tongue.Temperature(brief.WaterTemperatureCelsius + 273.15)];
            case KeptMaterial material:
                return reader[Form(material)];
            case KeptResin { Resin.PotLife: { } life }:
                return reader["pot life {0}", reader.Tongue.Duration(life.Seconds)];
            default:
                return "";
        }
    }

    private static string Word(BoxKind kind) => System.Text.Json.JsonNamingPolicy.SnakeCaseLower.ConvertName(kind.ToString());
}
