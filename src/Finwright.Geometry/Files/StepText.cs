using System.Globalization;
using System.Text;

namespace Finwright.Geometry.Files;

/// <summary>
/// The text of a STEP file: numbered entities in the order in which they are needed.
/// </summary>
/// <remarks>ISO 10303-21:2002 (text), ISO 10303-42 (geometry and topology), ISO 10303-214 (the schema named in the header).</remarks>
internal sealed class StepText
{
    /// <summary>Uncertainty stated in the file, mm: points closer than this are the same.</summary>
    private const string Uncertainty = "1.E-06";

    private readonly string _name;
    private readonly StringBuilder _data = new();
    private readonly Dictionary<Point3, int> _points = [];
    private int _count;

    /// <summary>Starts a file.</summary>
    /// <param name="name">Name of the solid.</param>
    public StepText(string name) => _name = Quoted(name);

    /// <summary>Adds the solid bounded by a skin, its caps and, when the edge is blunt, the strip between its edges.</summary>
    public void AddSolid(SplineSurface skin)
    {
        Point3[] starboard = skin.Column(0), port = skin.Column(skin.Columns - 1);
        bool blunt = TipCut.IsBlunt(starboard[0], port[0]);
        if (blunt != TipCut.IsBlunt(starboard[^1], port[^1]))
            throw new ArgumentException("The trailing edge is blunt at one end and sharp at the other.", nameof(skin));
        // A sharp edge would make one surface meet itself; two that join at the nose do not.
        IReadOnlyList<SplineSurface> panels = blunt ? [skin] : skin.Halves();

        int rootStart = Vertex(starboard[0]), tipStart = Vertex(starboard[^1]);
        Seam first = new(rootStart, tipStart, Edge(rootStart, tipStart, Curve(starboard, skin.SpanKnots))), before = first;
        List<int> faces = [];
        List<(int Edge, bool Forward)> root = [], tip = [];
        foreach (SplineSurface panel in panels)
        {
            Seam after = panel == panels[^1] && !blunt ? first : NewSeam(panel);
            int rootEdge = Edge(before.Root, after.Root, Curve(panel.Row(0), panel.RoundKnots));
            int tipEdge = Edge(before.Tip, after.Tip, Curve(panel.Row(panel.Rows - 1), panel.RoundKnots));
            // Down the span times round the section points outwards, so every face keeps the sense of its surface; loops run left about it.
            faces.Add(Face(Surface(panel), [(before.Edge, true), (tipEdge, true), (after.Edge, false), (rootEdge, false)]));
            root.Add((rootEdge, true));
            tip.Insert(0, (tipEdge, false));
            before = after;
        }

        if (blunt)
        {
            int rootLine = Edge(before.Root, first.Root, Line(port[0], starboard[0])), tipLine = Edge(before.Tip, first.Tip, Line(port[^1], starboard[^1]));
            faces.Add(Face(Strip(port, starboard, skin.SpanKnots), [(before.Edge, true), (tipLine, true), (first.Edge, false), (rootLine, false)]));
            root.Add((rootLine, true));
            tip.Insert(0, (tipLine, false));
        }

        faces.Add(Face(Plane(starboard[0], -1), root));
        faces.Add(Face(Plane(starboard[^1], 1), tip));
        int shell = Add($"CLOSED_SHELL('',({References(faces)}))");
        Product(Add($"MANIFOLD_SOLID_BREP({_name},#{shell})"));
    }

    /// <summary>An edge down the span with its ends.</summary>
    private sealed record Seam(int Root, int Tip, int Edge);

    private Seam NewSeam(SplineSurface panel)
    {
        Point3[] column = panel.Column(panel.Columns - 1);
        int root = Vertex(column[0]), tip = Vertex(column[^1]);
        return new(root, tip, Edge(root, tip, Curve(column, panel.SpanKnots)));
    }

    /// <summary>Writes the whole file.</summary>
    public void WriteTo(Stream stream)
    {
        // The standard wants a time stamp; a fixed one keeps the bytes the same.
        string text = $$"""
            ISO-10303-21;
            HEADER;
            FILE_DESCRIPTION(('Blade of a fin, design axes, millimetres'),'2;1');
            FILE_NAME({{_name}},'1970-01-01T00:00:00',(''),(''),'Finwright','Finwright','');
            FILE_SCHEMA(('AUTOMOTIVE_DESIGN { 1 0 10303 214 3 1 1 1 }'));
            ENDSEC;
            DATA;
            {{_data}}ENDSEC;
            END-ISO-10303-21;

            """;
        stream.Write(Encoding.ASCII.GetBytes(text.ReplaceLineEndings("\n")));
    }

    private int Add(string entity)
    {
        _data.Append(CultureInfo.InvariantCulture, $"#{++_count}={entity};\n");
        return _count;
    }

    /// <summary>A point in metres, written once.</summary>
    private int Point(Point3 p)
    {
        if (!_points.TryGetValue(p, out int number))
        {
            number = Add($"CARTESIAN_POINT('',({Real(1e3 * p.X)},{Real(1e3 * p.Y)},{Real(1e3 * p.Z)}))");
            _points.Add(p, number);
        }

        return number;
    }

    private string Points(IEnumerable<Point3> points) => References([.. points.Select(Point)]);

    private int Direction(double x, double y, double z) => Add($"DIRECTION('',({Real(x)},{Real(y)},{Real(z)}))");

    private int Vertex(Point3 p) => Add($"VERTEX_POINT('',#{Point(p)})");

    private int Edge(int from, int to, int curve) => Add($"EDGE_CURVE('',#{from},#{to},#{curve},.T.)");

    private int Curve(Point3[] poles, double[] knots) =>
        Add($"B_SPLINE_CURVE_WITH_KNOTS('',3,({Points(poles)}),.UNSPECIFIED.,.F.,.F.,{KnotLists(knots)},.UNSPECIFIED.)");

    private int Line(Point3 from, Point3 to)
    {
        Point3 along = 1 / (to - from).Length * (to - from);
        int vector = Add($"VECTOR('',#{Direction(along.X, along.Y, along.Z)},1.)");
        return Add($"LINE('',#{Point(from)},#{vector})");
    }

    private int Surface(SplineSurface skin)
    {
        string net = string.Join(",\n", Enumerable.Range(0, skin.Rows).Select(row => $"({Points(skin.Row(row))})"));
        return Add($"B_SPLINE_SURFACE_WITH_KNOTS('',3,3,(\n{net}),.UNSPECIFIED.,.F.,.F.,.F.,{KnotCounts(skin.SpanKnots)},{KnotCounts(skin.RoundKnots)},{KnotValues(skin.SpanKnots)},{KnotValues(skin.RoundKnots)},.UNSPECIFIED.)");
    }

    /// <summary>The ruled surface between two edges: cubic down the span, straight across.</summary>
    private int Strip(Point3[] from, Point3[] to, double[] knots)
    {
        string net = string.Join(",\n", from.Zip(to, (a, b) => $"({Points([a, b])})"));
        return Add($"B_SPLINE_SURFACE_WITH_KNOTS('',3,1,(\n{net}),.UNSPECIFIED.,.F.,.F.,.F.,{KnotCounts(knots)},(2,2),{KnotValues(knots)},(0.,1.),.UNSPECIFIED.)");
    }

    /// <summary>A plane of constant depth.</summary>
    /// <param name="through">A point of it.</param>
    /// <param name="facing">1 when its outside is further down, -1 when further up.</param>
    private int Plane(Point3 through, int facing)
    {
        int axis = Add($"AXIS2_PLACEMENT_3D('',#{Point(through)},#{Direction(0, facing, 0)},#{Direction(1, 0, 0)})");
        return Add($"PLANE('',#{axis})");
    }

    private int Face(int surface, IReadOnlyList<(int Edge, bool Forward)> loop)
    {
        List<int> edges = [];
        foreach ((int edge, bool forward) in loop)
            edges.Add(Add($"ORIENTED_EDGE('',*,*,#{edge},{(forward ? ".T." : ".F.")})"));
        int bound = Add($"FACE_OUTER_BOUND('',#{Add($"EDGE_LOOP('',({References(edges)}))")},.T.)");
        return Add($"ADVANCED_FACE('',(#{bound}),#{surface},.T.)");
    }

    /// <summary>The product that the solid is the shape of, with its units.</summary>
    private void Product(int solid)
    {
        int application = Add("APPLICATION_CONTEXT('core data for automotive mechanical design processes')");
        Add($"APPLICATION_PROTOCOL_DEFINITION('international standard','automotive_design',2000,#{application})");
        int productContext = Add($"PRODUCT_CONTEXT('',#{application},'mechanical')");
        int product = Add($"PRODUCT({_name},{_name},'',(#{productContext}))");
        Add($"PRODUCT_RELATED_PRODUCT_CATEGORY('part',$,(#{product}))");
        int formation = Add($"PRODUCT_DEFINITION_FORMATION('','',#{product})");
        int definitionContext = Add($"PRODUCT_DEFINITION_CONTEXT('part definition',#{application},'design')");
        int definition = Add($"PRODUCT_DEFINITION('design','',#{formation},#{definitionContext})");
        int shape = Add($"PRODUCT_DEFINITION_SHAPE('','',#{definition})");
        int length = Add("(LENGTH_UNIT()NAMED_UNIT(*)SI_UNIT(.MILLI.,.METRE.))");
        int angle = Add("(NAMED_UNIT(*)PLANE_ANGLE_UNIT()SI_UNIT($,.RADIAN.))");
        int solidAngle = Add("(NAMED_UNIT(*)SI_UNIT($,.STERADIAN.)SOLID_ANGLE_UNIT())");
        int uncertainty = Add($"UNCERTAINTY_MEASURE_WITH_UNIT(LENGTH_MEASURE({Uncertainty}),#{length},'distance_accuracy_value','')");
        int context = Add($"(GEOMETRIC_REPRESENTATION_CONTEXT(3)GLOBAL_UNCERTAINTY_ASSIGNED_CONTEXT((#{uncertainty}))GLOBAL_UNIT_ASSIGNED_CONTEXT((#{length},#{angle},#{solidAngle}))REPRESENTATION_CONTEXT('',''))");
        int axes = Add($"AXIS2_PLACEMENT_3D('',#{Point(default)},#{Direction(0, 0, 1)},#{Direction(1, 0, 0)})");
        int representation = Add($"ADVANCED_BREP_SHAPE_REPRESENTATION({_name},(#{axes},#{solid}),#{context})");
        Add($"SHAPE_DEFINITION_REPRESENTATION(#{shape},#{representation})");
    }

    private static string References(IReadOnlyList<int> numbers) => string.Join(',', numbers.Select(number => $"#{number}"));

    private static string KnotLists(double[] knots) => $"{KnotCounts(knots)},{KnotValues(knots)}";

    private static string KnotCounts(double[] knots) => $"({string.Join(',', knots.GroupBy(knot => knot).Select(group => group.Count()))})";

    private static string KnotValues(double[] knots) => $"({string.Join(',', knots.Distinct().Select(Real))})";

    /// <summary>A real number, which must have a decimal point.</summary>
    private static string Real(double value)
    {
        string text = (value + 0.0).ToString("R", CultureInfo.InvariantCulture);
        if (text.Contains('.'))
            return text;
        int exponent = text.IndexOf('E', StringComparison.Ordinal);
        return exponent < 0 ? text + "." : text.Insert(exponent, ".");
    }

    /// <summary>A string in quotes; quotes and backslashes doubled, other than printable ASCII in the standard's hexadecimal form.</summary>
    private static string Quoted(string text)
    {
        StringBuilder quoted = new("'");
        foreach (Rune rune in text.EnumerateRunes())
        {
            if (rune.Value is '\'' or '\\')
                quoted.Append((char)rune.Value, 2);
            else if (rune.Value is >= ' ' and <= '~')
                quoted.Append((char)rune.Value);
            else
                quoted.Append(CultureInfo.InvariantCulture, $@"\X4\{rune.Value:X8}\X0\");
        }

        return quoted.Append('\'').ToString();
    }
}
