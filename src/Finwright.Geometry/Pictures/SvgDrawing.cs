using System.Globalization;
using System.Text;
using System.Xml;

namespace Finwright.Geometry.Pictures;

/// <summary>A line through points of a drawing.</summary>
/// <param name="Points">x to the right, y down, metres; at least two.</param>
/// <param name="Closed">Whether the last point joins the first.</param>
public sealed record DrawnLine(IReadOnlyList<Point2> Points, bool Closed = false);

/// <summary>A pen.</summary>
/// <param name="Colour">Its ink.</param>
/// <param name="WidthMm">Width of its line, millimetres.</param>
public sealed record Pen(Ink Colour, double WidthMm);

/// <summary>
/// A drawing at true scale in SVG form (W3C, Scalable Vector Graphics 1.1, 2011), fit for printing, cutting and engraving: sizes in
/// millimetres with a view box of the same numbers, geometry as plain paths, one group and one colour an operation, no transform, no style sheet.
/// </summary>
/// <param name="width">Width of the sheet, metres.</param>
/// <param name="height">Height of the sheet, metres.</param>
/// <param name="title">What is drawn.</param>
public sealed class SvgDrawing(double width, double height, string title)
{
    private const string Space = "http://www.w3.org/2000/svg";
    private readonly List<(string Name, Pen Pen, IReadOnlyList<DrawnLine> Lines)> _groups = [];
    private readonly List<(string Text, Point2 Place, string Anchor)> _notes = [];

    /// <summary>Height of notes, metres.</summary>
    public const double NoteHeight = 3.5e-3;

    /// <summary>Width of the sheet, metres.</summary>
    public double Width => width;

    /// <summary>Height of the sheet, metres.</summary>
    public double Height => height;

    /// <summary>Adds a group of lines for one operation.</summary>
    /// <param name="name">Name of the group: lower-case letters, digits and "-"; no name twice.</param>
    /// <param name="pen">Its pen.</param>
    /// <param name="lines">Its lines.</param>
    public void Add(string name, Pen pen, IReadOnlyList<DrawnLine> lines)
    {
        ArgumentNullException.ThrowIfNull(pen);
        ArgumentNullException.ThrowIfNull(lines);
        if (string.IsNullOrEmpty(name) || !name.All(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) || c == '-') || _groups.Any(group => group.Name == name))
            throw new ArgumentException($"The group name \"{name}\" is malformed or used twice.", nameof(name));
        foreach (DrawnLine line in lines)
            if (line.Points.Count < 2 || line.Points.Any(p => !double.IsFinite(p.X + p.Y)))
                throw new ArgumentException($"A line of \"{name}\" has fewer than two points or one that is not finite.", nameof(lines));
        _groups.Add((name, pen, lines));
    }

    /// <summary>Adds a note; notes stand in a group of their own, apart from all geometry.</summary>
    /// <param name="text">The note.</param>
    /// <param name="place">Foot of its letters, metres.</param>
    /// <param name="centred">Whether the place is its middle; else its left end.</param>
    public void AddNote(string text, Point2 place, bool centred = false) => _notes.Add((text, place, centred ? "middle" : "start"));

    /// <summary>Writes the drawing. Same drawing, same bytes.</summary>
    public void WriteTo(Stream stream)
    {
        ArgumentNullException.ThrowIfNull(stream);
        XmlWriterSettings settings = new() { Encoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), Indent = true, IndentChars = " ", NewLineChars = "\n", CloseOutput = false };
        using XmlWriter xml = XmlWriter.Create(stream, settings);
        xml.WriteStartElement("svg", Space);
        xml.WriteAttributeString("width", Millimetres(width) + "mm");
        xml.WriteAttributeString("height", Millimetres(height) + "mm");
        xml.WriteAttributeString("viewBox", $"0 0 {Millimetres(width)} {Millimetres(height)}");
        xml.WriteElementString("title", Space, Printable(title));
        foreach ((string name, Pen pen, IReadOnlyList<DrawnLine> lines) in _groups)
            WriteGroup(xml, name, pen, lines);
        if (_notes.Count > 0)
            WriteNotes(xml);
        xml.WriteEndElement();
    }

    private static void WriteGroup(XmlWriter xml, string name, Pen pen, IReadOnlyList<DrawnLine> lines)
    {
        xml.WriteStartElement("g", Space);
        xml.WriteAttributeString("id", name);
        xml.WriteAttributeString("fill", "none");
        xml.WriteAttributeString("stroke", pen.Colour.Hex);
        xml.WriteAttributeString("stroke-width", Number(pen.WidthMm));
        xml.WriteAttributeString("stroke-linejoin", "round");
        xml.WriteAttributeString("stroke-linecap", "round");
        foreach (DrawnLine line in lines)
        {
            StringBuilder path = new();
            for (int i = 0; i < line.Points.Count; i++)
                path.Append(i == 0 ? "M" : " L").Append(Millimetres(line.Points[i].X)).Append(' ').Append(Millimetres(line.Points[i].Y));
            xml.WriteStartElement("path", Space);
            xml.WriteAttributeString("d", path.Append(line.Closed ? " Z" : "").ToString());
            xml.WriteEndElement();
        }

        xml.WriteEndElement();
    }

    private void WriteNotes(XmlWriter xml)
    {
        xml.WriteStartElement("g", Space);
        xml.WriteAttributeString("id", "notes");
        xml.WriteAttributeString("fill", Palette.Quiet.Hex);
        xml.WriteAttributeString("font-family", "Inter, sans-serif");
        xml.WriteAttributeString("font-size", Millimetres(NoteHeight));
        foreach ((string text, Point2 place, string anchor) in _notes)
        {
            xml.WriteStartElement("text", Space);
            xml.WriteAttributeString("x", Millimetres(place.X));
            xml.WriteAttributeString("y", Millimetres(place.Y));
            xml.WriteAttributeString("text-anchor", anchor);
            xml.WriteString(Printable(text));
            xml.WriteEndElement();
        }

        xml.WriteEndElement();
    }

    private static string Millimetres(double metres) => Number(1e3 * metres);

    /// <summary>Four decimals: a tenth of a micrometre. Adding zero turns -0 into 0.</summary>
    private static string Number(double value) => (Math.Round(value, 4) + 0.0).ToString("0.####", CultureInfo.InvariantCulture);

    private static string Printable(string text) => string.Concat(text.EnumerateRunes().Select(rune => rune.IsBmp && !XmlConvert.IsXmlChar((char)rune.Value) ? " " : rune.ToString()));
}
