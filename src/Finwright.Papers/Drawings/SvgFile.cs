using System.Globalization;
using System.Text;
using System.Xml;
using Finwright.Geometry;

namespace Finwright.Papers.Drawings;

/// <summary>
/// Writes a drawing at true scale in SVG form (W3C, Scalable Vector Graphics 1.1, 2011), fit for printing, cutting and engraving: sizes in millimetres with
/// a view box of the same numbers, geometry as plain paths, one group for each layer and pen, no style sheet, no transform but the turn of words.
/// </summary>
public static class SvgFile
{
    /// <summary>Empty rim round the drawing, metres.</summary>
    public const double Margin = 10e-3;

    private const string Space = "http://www.w3.org/2000/svg";

    /// <summary>Writes a drawing, its box laid inside the margin. Same drawing, same bytes.</summary>
    /// <param name="drawing">The drawing. What belongs to one layer and pen is drawn where the first of it lies.</param>
    /// <param name="title">What is drawn.</param>
    /// <param name="stream">Where it goes; left open.</param>
    public static void Write(Drawing drawing, string title, Stream stream)
    {
        ArgumentNullException.ThrowIfNull(drawing);
        ArgumentNullException.ThrowIfNull(stream);
        DrawnBox box = drawing.Bounds;
        Drawing laid = drawing.Moved(new Point2(Margin, Margin) - box.From);
        string width = Millimetres(box.Width + 2 * Margin), height = Millimetres(box.Height + 2 * Margin);
        XmlWriterSettings settings = new() { Encoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), Indent = true, IndentChars = " ", NewLineChars = "\n", CloseOutput = false };
        using XmlWriter xml = XmlWriter.Create(stream, settings);
        xml.WriteStartElement("svg", Space);
        xml.WriteAttributeString("width", width + "mm");
        xml.WriteAttributeString("height", height + "mm");
        xml.WriteAttributeString("viewBox", $"0 0 {width} {height}");
        xml.WriteElementString("title", Space, Printable(title));
        HashSet<string> ids = new(StringComparer.Ordinal);
        foreach (IGrouping<string, DrawnItem> group in laid.Items.GroupBy(Kind, StringComparer.Ordinal))
            WriteGroup(xml, [.. group], Id(group.First().Layer, ids));
        xml.WriteEndElement();
    }

    // What looks the same and belongs to the same layer shares a group.
    private static string Kind(DrawnItem item) => item.Layer + item switch
    {
        DrawnStroke stroke => $" line {stroke.Pen.Colour.Hex} {Millimetres(stroke.Pen.Width)} {Dashes(stroke.Pen)}",
        DrawnArea area => $" area {area.Colour.Hex}",
        DrawnText text => $" words {text.Look.Colour.Hex} {Millimetres(text.Look.Size)} {text.Look.Bold}",
        _ => "",
    };

    private static string Id(string layer, HashSet<string> ids)
    {
        string id = layer;
        for (int number = 2; !ids.Add(id); number++)
            id = string.Create(CultureInfo.InvariantCulture, $"{layer}-{number}");
        return id;
    }

    private static void WriteGroup(XmlWriter xml, DrawnItem[] items, string id)
    {
        xml.WriteStartElement("g", Space);
        xml.WriteAttributeString("id", id);
        switch (items[0])
        {
            case DrawnStroke { Pen: { } pen }:
                xml.WriteAttributeString("fill", "none");
                xml.WriteAttributeString("stroke", pen.Colour.Hex);
                xml.WriteAttributeString("stroke-width", Millimetres(pen.Width));
                xml.WriteAttributeString("stroke-linejoin", "round");
                xml.WriteAttributeString("stroke-linecap", pen.Dashes is null ? "round" : "butt");
                if (pen.Dashes is not null)
                    xml.WriteAttributeString("stroke-dasharray", Dashes(pen));
                break;
            case DrawnArea area:
                xml.WriteAttributeString("fill", area.Colour.Hex);
                xml.WriteAttributeString("fill-rule", "evenodd");
                break;
            case DrawnText { Look: { } look }:
                xml.WriteAttributeString("fill", look.Colour.Hex);
                xml.WriteAttributeString("font-family", "Inter, sans-serif");
                xml.WriteAttributeString("font-size", Millimetres(look.Size));
                if (look.Bold)
                    xml.WriteAttributeString("font-weight", "bold");
                break;
        }

        foreach (DrawnItem item in items)
        {
            switch (item)
            {
                case DrawnStroke stroke:
                    WritePath(xml, Path(stroke.Points, stroke.Closed));
                    break;
                case DrawnArea area when area.Rings.Count > 0:
                    WritePath(xml, string.Join(' ', area.Rings.Select(ring => Path(ring, closed: true))));
                    break;
                case DrawnText text:
                    WriteText(xml, text);
                    break;
            }
        }

        xml.WriteEndElement();
    }

    private static void WritePath(XmlWriter xml, string path)
    {
        xml.WriteStartElement("path", Space);
        xml.WriteAttributeString("d", path);
        xml.WriteEndElement();
    }

    private static void WriteText(XmlWriter xml, DrawnText text)
    {
        string x = Millimetres(text.At.X), y = Millimetres(text.At.Y);
        xml.WriteStartElement("text", Space);
        xml.WriteAttributeString("x", x);
        xml.WriteAttributeString("y", y);
        xml.WriteAttributeString("text-anchor", text.Look.Anchor switch { TextAnchor.Middle => "middle", TextAnchor.End => "end", _ => "start" });
        if (text.Look.UpwardTurn is not 0)
            xml.WriteAttributeString("transform", $"rotate({Number(-double.RadiansToDegrees(text.Look.UpwardTurn))} {x} {y})");
        xml.WriteString(Printable(text.Text));
        xml.WriteEndElement();
    }

    private static string Path(IReadOnlyList<Point2> points, bool closed)
    {
        StringBuilder path = new();
        for (int i = 0; i < points.Count; i++)
            path.Append(i == 0 ? "M" : " L").Append(Millimetres(points[i].X)).Append(' ').Append(Millimetres(points[i].Y));
        return path.Append(closed ? " Z" : "").ToString();
    }

    private static string Dashes(Pen pen) => pen.Dashes is { } dashes ? string.Join(' ', dashes.Select(Millimetres)) : "";

    private static string Millimetres(double metres) => Number(1e3 * metres);

    /// <summary>Four decimals: a tenth of a micrometre. Adding zero turns -0 into 0.</summary>
    private static string Number(double value) => (Math.Round(value, 4) + 0.0).ToString("0.####", CultureInfo.InvariantCulture);

    private static string Printable(string text) => string.Concat(text.EnumerateRunes().Select(rune => rune.IsBmp && !XmlConvert.IsXmlChar((char)rune.Value) ? " " : rune.ToString()));
}
