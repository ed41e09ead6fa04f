using System.Globalization;
using Finwright.Design.Reading;

namespace Finwright.Design.Migration;

/// <summary>
/// Format 1: the blade was called <c>blade</c>, its sections <c>stations</c> with <c>at</c> as a fraction of the span and <c>twist_deg</c>,
/// and the outline gave span and root chord in centimetres.
/// </summary>
internal static class Format1
{
    /// <summary>Changes a tree of format 1 into one of format 2, in place. What it does not know it leaves alone, to be reported later.</summary>
    public static void ToFormat2(Node root)
    {
        Rename(root, "blade", "shape");
        if (root.Find("shape") is not Node shape)
            return;

        Rename(shape, "stations", "sections");
        if (shape.Find("outline") is Node outline)
        {
            RenameScaled(outline, "span_cm", "span_mm", 10);
            RenameScaled(outline, "root_chord_cm", "root_chord_mm", 10);
        }

        foreach (Node station in shape.Find("sections")?.Items ?? [])
        {
            RenameScaled(station, "at", "at_percent", 100);
            Rename(station, "twist_deg", "twist_degrees");
        }
    }

    private static void Rename(Node node, string from, string to)
    {
        for (int i = 0; i < node.Members.Count; i++)
        {
            if (node.Members[i].Key == from)
                node.Members[i] = node.Members[i] with { Key = to };
        }
    }

    private static void RenameScaled(Node node, string from, string to, int factor)
    {
        for (int i = 0; i < node.Members.Count; i++)
        {
            if (node.Members[i].Key == from)
                node.Members[i] = node.Members[i] with { Key = to, Value = Scaled(node.Members[i].Value, factor) };
        }
    }

    // In decimal as the file spells it, so that 0.07 becomes 7 and not 7.000000000000001.
    private static Node Scaled(Node node, int factor) => node.Kind != NodeKind.Number
        ? node
        : new Node(NodeKind.Number, node.Line)
        {
            Text = node.Text,
            Number = decimal.TryParse(node.Text, NumberStyles.Float, CultureInfo.InvariantCulture, out decimal number) && Math.Abs(number) < 1_000_000
                ? (double)(number * factor)
                : node.Number * factor,
        };
}
