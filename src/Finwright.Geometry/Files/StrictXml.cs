using System.Xml;

namespace Finwright.Geometry.Files;

/// <summary>Steps through an XML document and refuses what is not expected; foreign namespaces are passed over.</summary>
internal static class StrictXml
{
    /// <summary>Deeper nesting serves only to exhaust a reader.</summary>
    private const int DeepestNesting = 64;

    /// <summary>"path, line n", for messages.</summary>
    public static string Place(XmlReader xml, string path) => $"{path}, line {((IXmlLineInfo)xml).LineNumber}";

    /// <summary>Steps to the root element, which must have this name.</summary>
    public static void Root(XmlReader xml, string path, string name, string space)
    {
        if (xml.MoveToContent() != XmlNodeType.Element || xml.LocalName != name || xml.NamespaceURI != space)
            throw new FileFormatException($"{Place(xml, path)}: the document must begin with <{name}> in the namespace {space}.");
    }

    /// <summary>
    /// Steps through the child elements of the present element that are in a namespace, giving their names. Each must have been read to its
    /// own end (<see cref="SkipContent"/>) before the next step.
    /// </summary>
    public static IEnumerable<string> Children(XmlReader xml, string path, string space)
    {
        if (xml.IsEmptyElement)
            yield break;
        while (xml.Read() && xml.NodeType != XmlNodeType.EndElement)
        {
            if (xml.NodeType != XmlNodeType.Element)
                throw new FileFormatException($"{Place(xml, path)}: text stands where an element must stand.");
            if (xml.Depth > DeepestNesting)
                throw new FileFormatException($"{Place(xml, path)}: elements are nested deeper than {DeepestNesting}.");
            if (xml.NamespaceURI == space)
                yield return xml.LocalName;
            else
                SkipContent(xml);
        }
    }

    /// <summary>Reads to the end of the present element.</summary>
    public static void SkipContent(XmlReader xml)
    {
        if (xml.IsEmptyElement)
            return;
        int depth = xml.Depth;
        while (xml.Read() && (xml.NodeType != XmlNodeType.EndElement || xml.Depth != depth))
            if (xml.Depth > DeepestNesting)
                throw new FileFormatException($"Line {((IXmlLineInfo)xml).LineNumber}: elements are nested deeper than {DeepestNesting}.");
    }

    /// <summary>An attribute that must be there and not be empty.</summary>
    public static string Required(XmlReader xml, string place, string name) => xml.GetAttribute(name) is { Length: > 0 } value
        ? value
        : throw new FileFormatException($"{place}: <{xml.LocalName}> lacks the attribute \"{name}\".");

    /// <summary>Refuses attributes without a namespace other than these.</summary>
    public static void Only(XmlReader xml, string place, params ReadOnlySpan<string> names)
    {
        string element = xml.LocalName;
        while (xml.MoveToNextAttribute())
            if (xml.Prefix.Length == 0 && xml.LocalName is not "xmlns" && !names.Contains(xml.LocalName))
                throw new FileFormatException($"{place}: <{element}> has an attribute \"{xml.LocalName}\" that the format does not know.");
        xml.MoveToElement();
    }
}
