using System.Globalization;
using System.Text;
using System.Xml;

namespace Finwright.Geometry.Files;

/// <summary>
/// Reads the model part of a 3MF package. Geometry, names, own metadata and the build are kept; colours and materials are passed over.
/// </summary>
/// <remarks>3MF Core Specification 1.4.0, sections 3 to 5. The schema alone does not say that ids are unique, indices exist or transforms keep volume; it is checked here.</remarks>
internal sealed class ThreeMfModelReader(XmlReader xml, string path)
{
    private readonly Dictionary<int, Resource> _objects = [];
    private readonly HashSet<int> _ids = [];
    private readonly List<KeyValuePair<string, string>> _notes = [];
    private readonly HashSet<string> _metadata = new(StringComparer.Ordinal);
    private readonly List<ThreeMfPart> _parts = [];
    private string _title = "";
    private double _unit;
    private long _triangles;

    private sealed record Resource(string Name, TriangleMesh Mesh, bool Printable);

    private string Here => StrictXml.Place(xml, path);

    /// <summary>Reads the whole document.</summary>
    public ThreeMfDocument Read()
    {
        StrictXml.Root(xml, path, "model", ThreeMfNames.Core);
        StrictXml.Only(xml, Here, "unit", "requiredextensions", "recommendedextensions");
        if (xml.GetAttribute("requiredextensions") is { Length: > 0 } extensions)
            throw new FileFormatException($"{Here}: the model requires the extensions \"{Shown(extensions)}\". Only the core form is read; save it without them.");
        _unit = Unit(xml.GetAttribute("unit"));
        int stage = 0;
        foreach (string element in StrictXml.Children(xml, path, ThreeMfNames.Core))
        {
            (int order, Action read) = element switch
            {
                "metadata" => (0, (Action)ReadMetadata),
                "resources" => (1, ReadResources),
                "build" => (2, ReadBuild),
                _ => throw Unexpected(element),
            };
            if (order < stage || (order == stage && order > 0))
                throw new FileFormatException($"{Here}: <{element}> stands in the wrong place or twice.");
            stage = order;
            read();
        }

        if (_parts.Count == 0)
            throw new FileFormatException($"{path}: the build has no item, so there is nothing to print.");
        return new(_title, _parts) { Notes = _notes };
    }

    private double Unit(string? name) => name switch
    {
        "micron" => 1e-6,
        null or "millimeter" => 1e-3,
        "centimeter" => 1e-2,
        "inch" => 0.0254,
        "foot" => 0.3048,
        "meter" => 1,
        _ => throw new FileFormatException($"{Here}: the unit \"{Shown(name)}\" is not one of micron, millimeter, centimeter, inch, foot, meter."),
    };

    private void ReadMetadata()
    {
        string place = Here;
        StrictXml.Only(xml, place, "name", "preserve", "type");
        string name = StrictXml.Required(xml, place, "name");
        if (!_metadata.Add(name))
            throw new FileFormatException($"{place}: the metadata \"{Shown(name)}\" is given twice.");
        int colon = name.IndexOf(':', StringComparison.Ordinal);
        string? space = colon < 0 ? null : xml.LookupNamespace(name[..colon]);
        if (colon < 0 ? !ThreeMfNames.WellKnownMetadata.Contains(name, StringComparer.Ordinal) : space == null)
            throw new FileFormatException($"{place}: the metadata name \"{Shown(name)}\" is neither a known one nor in a declared namespace.");
        string value = Text(place);
        if (name == "Title")
            _title = value;
        else if (space is ThreeMfNames.Own)
            _notes.Add(new(name[(colon + 1)..], value));
    }

    private string Text(string place)
    {
        if (xml.IsEmptyElement)
            return "";
        StringBuilder text = new();
        while (xml.Read() && xml.NodeType != XmlNodeType.EndElement)
        {
            if (xml.NodeType == XmlNodeType.Element)
                throw new FileFormatException($"{place}: an element stands where text must stand.");
            text.Append(xml.Value);
        }

        return text.ToString();
    }

    private void ReadResources()
    {
        StrictXml.Only(xml, Here);
        foreach (string element in StrictXml.Children(xml, path, ThreeMfNames.Core))
        {
            string place = Here;
            int id = Index(StrictXml.Required(xml, place, "id"), place, "id");
            if (id < 1 || !_ids.Add(id))
                throw new FileFormatException($"{place}: the resource id {id} is not positive or used twice.");
            if (element is "object")
                _objects.Add(id, ReadObject());
            else if (element is "basematerials")
                StrictXml.SkipContent(xml);
            else
                throw Unexpected(element);
        }
    }

    private Resource ReadObject()
    {
        string place = Here;
        StrictXml.Only(xml, place, "id", "type", "thumbnail", "partnumber", "name", "pid", "pindex");
        string name = xml.GetAttribute("name") ?? "", type = xml.GetAttribute("type") ?? "model";
        if (type is not ("model" or "solidsupport" or "support" or "surface" or "other"))
            throw new FileFormatException($"{place}: the object type \"{Shown(type)}\" is not known.");
        TriangleMesh? mesh = null;
        foreach (string element in StrictXml.Children(xml, path, ThreeMfNames.Core))
        {
            if (element is "metadatagroup" && mesh == null)
                StrictXml.SkipContent(xml);
            else if (element is "mesh" && mesh == null)
                mesh = ReadMesh();
            else if (element is "components" && mesh == null)
                mesh = ReadComponents();
            else
                throw Unexpected(element);
        }

        return new(name, mesh ?? throw new FileFormatException($"{place}: the object has neither a mesh nor components."), type is not "other");
    }

    private TriangleMesh ReadMesh()
    {
        string place = Here;
        double[]? vertices = null;
        int[]? triangles = null;
        foreach (string element in StrictXml.Children(xml, path, ThreeMfNames.Core))
        {
            if (element is "vertices" && vertices == null)
                vertices = ReadVertices();
            else if (element is "triangles" && vertices != null && triangles == null)
                triangles = ReadTriangles(vertices.Length / 3);
            else
                throw Unexpected(element);
        }

        if (vertices == null || triangles == null || triangles.Length == 0)
            throw new FileFormatException($"{place}: the mesh has no triangles.");
        return new(vertices, triangles);
    }

    private double[] ReadVertices()
    {
        List<double> vertices = [];
        foreach (string element in StrictXml.Children(xml, path, ThreeMfNames.Core))
        {
            if (element is not "vertex")
                throw Unexpected(element);
            string place = Here;
            StrictXml.Only(xml, place, "x", "y", "z");
            foreach (string axis in (ReadOnlySpan<string>)["x", "y", "z"])
                vertices.Add(MeshLimits.Checked(Number(StrictXml.Required(xml, place, axis), place) * _unit, place));
            if (vertices.Count > 3 * MeshLimits.Triangles)
                throw new FileFormatException($"{place}: the mesh has more than {MeshLimits.Triangles} vertices. Reduce their number.");
            StrictXml.SkipContent(xml);
        }

        return [.. vertices];
    }

    private int[] ReadTriangles(int vertexCount)
    {
        List<int> triangles = [];
        foreach (string element in StrictXml.Children(xml, path, ThreeMfNames.Core))
        {
            if (element is not "triangle")
                throw Unexpected(element);
            string place = Here;
            StrictXml.Only(xml, place, "v1", "v2", "v3", "p1", "p2", "p3", "pid");
            int a = Corner("v1"), b = Corner("v2"), c = Corner("v3");
            if (a == b || b == c || c == a)
                throw new FileFormatException($"{place}: the triangle {a}, {b}, {c} uses a vertex twice.");
            triangles.AddRange([a, b, c]);
            Count(1);
            StrictXml.SkipContent(xml);

            int Corner(string name)
            {
                int index = Index(StrictXml.Required(xml, place, name), place, name);
                return index < vertexCount ? index : throw new FileFormatException($"{place}: vertex {index} does not exist; the mesh has {vertexCount}.");
            }
        }

        return [.. triangles];
    }

    private TriangleMesh ReadComponents()
    {
        string first = Here;
        List<double> vertices = [];
        List<int> triangles = [];
        foreach (string element in StrictXml.Children(xml, path, ThreeMfNames.Core))
        {
            if (element is not "component")
                throw Unexpected(element);
            string place = Here;
            StrictXml.Only(xml, place, "objectid", "transform");
            Resource source = Referred(place);
            // Components of components can double at every step; they are counted before they are copied.
            Count(source.Mesh.TriangleCount);
            TriangleMesh moved = source.Mesh.Placed(Transform(place));
            int offset = vertices.Count / 3;
            foreach (double value in moved.Coordinates)
                vertices.Add(MeshLimits.Checked(value, place));
            foreach (int corner in moved.Corners)
                triangles.Add(corner + offset);
            StrictXml.SkipContent(xml);
        }

        return triangles.Count > 0 ? new([.. vertices], [.. triangles]) : throw new FileFormatException($"{first}: the object has no component.");
    }

    private void ReadBuild()
    {
        StrictXml.Only(xml, Here);
        foreach (string element in StrictXml.Children(xml, path, ThreeMfNames.Core))
        {
            if (element is not "item")
                throw Unexpected(element);
            string place = Here;
            StrictXml.Only(xml, place, "objectid", "transform", "partnumber");
            Resource source = Referred(place);
            if (!source.Printable)
                throw new FileFormatException($"{place}: the build uses an object of type \"other\", which cannot be printed.");
            _parts.Add(new(source.Name, source.Mesh, Transform(place)));
            StrictXml.SkipContent(xml);
        }
    }

    /// <summary>The object that the present element names; only those above it count, so that none can contain itself.</summary>
    private Resource Referred(string place)
    {
        int id = Index(StrictXml.Required(xml, place, "objectid"), place, "objectid");
        return _objects.TryGetValue(id, out Resource? source) ? source : throw new FileFormatException($"{place}: there is no object {id} above this line.");
    }

    private Placement Transform(string place)
    {
        if (xml.GetAttribute("transform") is not { } text)
            return Placement.Identity;
        string[] words = text.Split(' ', 13, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        if (words.Length != 12)
            throw new FileFormatException($"{place}: a transform has 12 numbers.");
        double[] m = [.. words.Select(word => Number(word, place))];
        foreach (double value in m)
            if (!(Math.Abs(value * _unit) <= MeshLimits.Coordinate))
                throw new FileFormatException($"{place}: the transform has a number that is not finite or too large.");
        Placement placement = new(new(m[0], m[1], m[2]), new(m[3], m[4], m[5]), new(m[6], m[7], m[8]), _unit * new Point3(m[9], m[10], m[11]));
        return placement.Determinant > 0 ? placement : throw new FileFormatException($"{place}: the transform mirrors or flattens the object.");
    }

    private void Count(int triangles)
    {
        if ((_triangles += triangles) > MeshLimits.Triangles)
            throw new FileFormatException($"{Here}: the model has more than {MeshLimits.Triangles} triangles. Reduce their number.");
    }

    private static double Number(string text, string place) => double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double value)
        ? value
        : throw new FileFormatException($"{place}: \"{Shown(text)}\" is not a number.");

    private static int Index(string text, string place, string name) => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int value)
        ? value
        : throw new FileFormatException($"{place}: {name} \"{Shown(text)}\" is not a whole number from 0 to {int.MaxValue}.");

    private FileFormatException Unexpected(string element) => new($"{Here}: <{Shown(element)}> does not belong here.");

    private static string Shown(string text) => text.Length > 40 ? text[..40] + "…" : text;
}
