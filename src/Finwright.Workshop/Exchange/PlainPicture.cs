using System.Text;
using System.Xml;

namespace Finwright.Workshop.Exchange;

/// <summary>Whether an SVG from elsewhere is a drawing and nothing else: no script, no style sheet, nothing that is fetched.</summary>
/// <remarks>Elements and attributes are those of W3C, Scalable Vector Graphics 1.1, 2011, that a plain drawing needs.</remarks>
internal static class PlainPicture
{
    private const int Largest = 1 << 20;
    private const string Space = "http://www.w3.org/2000/svg";

    private static readonly HashSet<string> Elements = new(StringComparer.Ordinal) { "svg", "g", "path", "line", "polyline", "polygon", "rect", "circle", "ellipse", "text", "tspan", "title", "desc" };

    private static readonly HashSet<string> Attributes = new(StringComparer.Ordinal)
    {
        "xmlns", "version", "id", "role", "viewBox", "width", "height", "preserveAspectRatio", "d", "points", "x", "y", "x1", "y1", "x2", "y2", "dx", "dy", "cx", "cy", "r", "rx", "ry", "transform",
        "fill", "fill-opacity", "fill-rule", "opacity", "stroke", "stroke-width", "stroke-linejoin", "stroke-linecap", "stroke-dasharray", "stroke-dashoffset", "stroke-miterlimit", "stroke-opacity", "vector-effect",
        "font-family", "font-size", "font-style", "font-weight", "text-anchor", "dominant-baseline", "letter-spacing",
    };

    /// <summary>Why a picture is not taken; null when it is.</summary>
    /// <param name="svg">The picture.</param>
    public static string? Problem(string svg)
    {
        if (Encoding.UTF8.GetByteCount(svg) > Largest)
            return "it is too large";
        XmlReaderSettings settings = new() { DtdProcessing = DtdProcessing.Prohibit, XmlResolver = null, IgnoreComments = true, MaxCharactersInDocument = Largest };
        try
        {
            using XmlReader reader = XmlReader.Create(new StringReader(svg), settings);
            bool any = false;
            while (reader.Read())
            {
                if (reader.NodeType == XmlNodeType.ProcessingInstruction)
                    return "it holds an instruction to programs";
                if (reader.NodeType != XmlNodeType.Element)
                    continue;
                if (!any && reader.LocalName != "svg")
                    return "it is no SVG";
                any = true;
                if (reader.NamespaceURI != Space || !Elements.Contains(reader.LocalName))
                    return $"it holds <{reader.LocalName}>, which is no part of a plain drawing";
                if (Attribute(reader) is string problem)
                    return problem;
            }

            return null;
        }
        catch (XmlException)
        {
            return "it is no SVG";
        }
    }

    private static string? Attribute(XmlReader reader)
    {
        for (bool more = reader.MoveToFirstAttribute(); more; more = reader.MoveToNextAttribute())
        {
            if (!Attributes.Contains(reader.Name) || reader.Value.Contains("url(", StringComparison.OrdinalIgnoreCase))
                return $"it holds the attribute \"{reader.Name}\", which is no part of a plain drawing";
        }

        reader.MoveToElement();
        return null;
    }
}
