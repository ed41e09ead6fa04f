using System.Globalization;
using System.Text;
using CsCheck;
using Finwright.Geometry.Sections;

namespace Finwright.Geometry.Tests.Sections;

/// <summary>Order of the points in a written coordinate file.</summary>
internal enum PointOrder
{
    StarboardTailFirst,
    PortTailFirst,
    NoseFirst,
    TwoBlocksFromNose,
    TwoBlocksFromTail,
    CountsThenTwoSides,
    TwoSidesRunOn,
}

/// <summary>One of the many ways in which people write section coordinates; every way must read back as the same section.</summary>
internal sealed record CoordinateLayout(PointOrder Order, string Separator, bool DecimalComma, int HeadingLines, bool Comments, double Chord, double Rotation, string LineEnd)
{
    public static Gen<CoordinateLayout> Any { get; } =
        Gen.Select(
            Gen.Enum<PointOrder>(),
            OneOf((" ", true), ("\t", true), (";", true), (" ; ", true), ("   ", false), (",", false), (", ", true), (", ", false)),
            Gen.Int[0, 3],
            Gen.Bool,
            OneOf(1.0, 1.0, 100.0, 0.25, 123.456, 1000),
            Gen.OneOf(Gen.Const(0.0), Gen.Double[-0.1, 0.1]),
            OneOf("\n", "\r\n"),
            (order, separator, heading, comments, chord, rotation, end) =>
                new CoordinateLayout(order, separator.Item1, separator.Item2, heading, comments, chord, rotation, end));

    private static Gen<T> OneOf<T>(params T[] choices) => Gen.Int[0, choices.Length - 1].Select(i => choices[i]);

    public string Write(Section section, int pointsASide)
    {
        List<Point2> up = [], down = [];
        for (int i = pointsASide; i >= 0; i--)
        {
            up.Add(SectionGeometry.PointAt(section, i / (2.0 * pointsASide)));
            down.Add(SectionGeometry.PointAt(section, 1 - i / (2.0 * pointsASide)));
        }

        StringBuilder text = new();
        foreach (string heading in (string[])["Fin of the mud flat", "made 2412, by hand", "x  y"])
            if (HeadingLines > 0 && text.Length < HeadingLines * 8)
                text.Append(heading).Append(LineEnd);
        switch (Order)
        {
            case PointOrder.StarboardTailFirst:
                Append(text, [.. Enumerable.Reverse(up), .. down.Skip(1)]);
                break;
            case PointOrder.PortTailFirst:
                Append(text, [.. Enumerable.Reverse(down), .. up.Skip(1)]);
                break;
            case PointOrder.NoseFirst:
                Append(text, [.. up, .. Enumerable.Reverse(down)]);
                break;
            case PointOrder.TwoBlocksFromNose:
                Append(text, up);
                text.Append(LineEnd);
                Append(text, down);
                break;
            case PointOrder.TwoBlocksFromTail:
                Append(text, [.. Enumerable.Reverse(down)]);
                text.Append(LineEnd).Append("other side").Append(LineEnd);
                Append(text, [.. Enumerable.Reverse(up)]);
                break;
            case PointOrder.CountsThenTwoSides:
                text.Append(CultureInfo.InvariantCulture, $"{up.Count}. {down.Count}.{LineEnd}{LineEnd}");
                Append(text, up);
                text.Append(LineEnd);
                Append(text, down);
                break;
            default:
                Append(text, up);
                Append(text, down);
                break;
        }

        return text.ToString();
    }

    private void Append(StringBuilder text, List<Point2> points)
    {
        (double sine, double cosine) = Math.SinCos(Rotation);
        int digits = 7 - (int)Math.Round(Math.Log10(Chord));
        foreach (Point2 p in points)
        {
            string x = Number(Chord * (cosine * p.X - sine * p.Y), digits), y = Number(Chord * (sine * p.X + cosine * p.Y), digits);
            text.Append(x).Append(Separator).Append(y).Append(Comments ? " # measured" : "").Append(LineEnd);
        }
    }

    private string Number(double value, int digits)
    {
        string number = value.ToString("F" + digits, CultureInfo.InvariantCulture);
        return DecimalComma ? number.Replace('.', ',') : number;
    }
}
