using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Finwright.Geometry.Blades;
using Finwright.Geometry.Files;
using Finwright.Geometry.Tests.Blades;

namespace Finwright.Geometry.Tests.Files;

public sealed class StepFileTests
{
    private const string Packages = "libocct-data-exchange-dev libocct-modeling-algorithms-dev";

    [Fact]
    public void Written_blades_are_one_valid_closed_solid_of_the_right_volume_to_an_independent_reader()
    {
        using TemporaryFolder folder = new();
        string[] libraries = ["TKSTEP", "TKSTEPBase", "TKXSBase", "TKTopAlgo", "TKBRep", "TKGeomBase", "TKG3d", "TKMath", "TKernel"];
        string checker = ExternalTool.Compile("step-check.cpp", folder.FolderPath, Packages, ["-w", "-I/usr/include/opencascade", .. libraries.Select(name => "-l" + name)]);
        foreach ((string name, BladeShape blade) in Cases())
        {
            StepReport? report = null;
            AtomicFile.Write(folder[name + ".step"], stream => report = StepFile.Write(stream, blade, name));
            string output = ExternalTool.Run(checker, Packages, folder[name + ".step"]);
            Dictionary<string, string> found = output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => line.Split(' ', 2)).ToDictionary(words => words[0], words => words[1], StringComparer.Ordinal);
            Assert.True(found["problems"] == "0", $"{name}: {output}");
            Assert.Equal(("1", "1", "4", "1", "1"), (found["solids"], found["shells"], found["faces"], found["valid"], found["closed"]));
            double expected = 1e9 * Volume(blade, report!.Depth);
            Assert.Equal(expected, double.Parse(found["volume"], CultureInfo.InvariantCulture), 1e-4 * expected);
            double[] bounds = [.. found["bounds"].Split(' ').Select(word => double.Parse(word, CultureInfo.InvariantCulture))];
            Assert.Equal(0, bounds[1], 1e-5);
            Assert.Equal(1e3 * report.Depth, bounds[4], 1e-5);
        }
    }

    [Fact]
    public void The_reported_deviation_holds_everywhere_and_meets_the_tolerance()
    {
        foreach ((string name, BladeShape blade) in Cases())
            foreach (double tolerance in (double[])[0.02e-3, 0.005e-3])
            {
                StepReport report = StepFile.Write(Stream.Null, blade, name, tolerance);
                Assert.True(report.IsWithinTolerance, $"{name}: {report}");
                (SplineSurface surface, _) = SkinFit.Fit(blade, report.Depth, tolerance);
                double worst = 0;
                for (int i = 0; i <= 23; i++)
                    for (int j = 0; j <= 101; j++)
                        worst = Math.Max(worst, DistanceToSection(blade, report.Depth, surface.At(i / 23.0, j / 101.0), Math.Acos(1 - 2 * j / 101.0) / Math.PI));
                // The report samples between its own points; elsewhere the error may be a little larger.
                Assert.True(worst < 1.25 * report.Deviation + 1e-9, $"{name}: {worst} against {report.Deviation}");
            }
    }

    [Fact]
    public void A_rounded_tip_ends_flat_just_before_it_and_the_report_says_where()
    {
        StepReport rounded = StepFile.Write(Stream.Null, new PlainBlade(), "rounded");
        Assert.InRange(rounded.TipCutOff, 1e-6, 0.2e-3);
        Assert.Equal(0.22, rounded.Depth + rounded.TipCutOff, 1e-15);
        Assert.Equal(0, StepFile.Write(Stream.Null, new PlainBlade(roundedTip: false), "flat").TipCutOff);
    }

    [Fact]
    public void The_text_obeys_the_standard_and_is_the_same_each_time()
    {
        string text = Text(new PlainBlade(), "Flügel 'x'\\");
        Assert.Equal(text, Text(new PlainBlade(), "Flügel 'x'\\"));
        Assert.StartsWith("ISO-10303-21;\nHEADER;\n", text, StringComparison.Ordinal);
        Assert.EndsWith("ENDSEC;\nEND-ISO-10303-21;\n", text, StringComparison.Ordinal);
        Assert.Contains(@"'Fl\X4\000000FC\X0\gel ''x''\\'", text, StringComparison.Ordinal);
        // Every coordinate and knot is a real with a decimal point; a whole number there would be another type.
        foreach (Match point in Regex.Matches(text, @"CARTESIAN_POINT\('',\((?<list>[^)]*)\)\)", RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(10)))
            foreach (string number in point.Groups["list"].Value.Split(','))
                Assert.Matches(@"^-?\d+\.\d*(E[+-]?\d+)?$", number);
        // Numbers refer backwards to entities that exist.
        foreach (string line in text.Split('\n').Where(line => line.StartsWith('#')))
            Assert.Matches(@"^#\d+=", line);
    }

    [Fact]
    public void A_blade_without_size_or_with_a_broken_skin_is_refused()
    {
        Assert.Throws<ArgumentException>(() => StepFile.Write(Stream.Null, new PlainBlade(thickness: 1e-6, edge: 0), "thin"));
        Assert.Throws<ArgumentException>(() => StepFile.Write(Stream.Null, new PlainBlade(rootChord: double.NaN), "broken"));
        Assert.Throws<ArgumentOutOfRangeException>(() => StepFile.Write(Stream.Null, new PlainBlade(), "x", 0));
    }

    private static IEnumerable<(string Name, BladeShape Blade)> Cases() =>
    [
        ("plain", new PlainBlade()),
        ("sharp", new PlainBlade(edge: 0)),
        ("flat-tip", new PlainBlade(roundedTip: false)),
        ("flat-tip-sharp", new PlainBlade(roundedTip: false, edge: 0)),
        ("twisted", new PlainBlade(twist: 0.2, thickness: 0.06)),
        ("thick-short", new PlainBlade(span: 0.1, rootChord: 0.25, thickness: 0.14, edge: 0.0015)),
        ("long-thin", new PlainBlade(span: 0.6, rootChord: 0.1, thickness: 0.04)),
        ("spline-trapezoid", new Blade(TestBlades.Trapezoid(0.1, 0.06, 0.3, 0.05), [TestBlades.Station(0, "naca-0010", 0.1)], 0.001)),
        ("spline-sharp", new Blade(TestBlades.Trapezoid(0.1, 0.06, 0.3, 0.05), [TestBlades.Station(0, "naca-0010", 0.1)], 0)),
        ("spline-round", new Blade(TestBlades.Round(),
            [TestBlades.Station(0, "naca-0010", 0.1), TestBlades.Station(0.15, "naca-16-009", 0.09, 0.02, 0.05), TestBlades.Station(0.32, "naca-2412", 0.08, 0.03, -0.1)], 0.001)),
    ];

    private static string Text(BladeShape blade, string name)
    {
        using MemoryStream stream = new();
        StepFile.Write(stream, blade, name);
        return Encoding.ASCII.GetString(stream.ToArray());
    }

    /// <summary>Volume by sections: polygons of 2,000 points (shoelace), Simpson's rule over depth, finer towards the tip.</summary>
    private static double Volume(BladeShape blade, double depth)
    {
        const int Steps = 400;
        double end = Math.Sqrt(1 - depth / blade.Span), sum = 0;
        for (int i = 0; i <= Steps; i++)
        {
            double s = 1 - (1 - end) * i / Steps;
            double weight = i is 0 or Steps ? 1 : i % 2 == 0 ? 2 : 4;
            sum += weight * Area(blade, i == Steps ? depth : blade.Span * (1 - s * s)) * 2 * blade.Span * s;
        }

        return sum * (1 - end) / Steps / 3;
    }

    private static double Area(BladeShape blade, double y)
    {
        const int Points = 2000;
        double twice = 0;
        Point3 before = blade.Skin(y, 1);
        for (int j = 0; j <= Points; j++)
        {
            Point3 p = blade.Skin(y, j / (double)Points);
            twice += before.X * p.Z - before.Z * p.X;
            before = p;
        }

        return Math.Abs(twice) / 2;
    }

    /// <summary>Distance to the skin at the same depth, sought near a place of the section by halving.</summary>
    private static double DistanceToSection(BladeShape blade, double depth, Point3 p, double place)
    {
        double y = Math.Clamp(p.Y, 0, depth), u = place, reach = 0.01, least = (blade.Skin(y, u) - p).Length;
        for (int i = 0; i < 40; i++)
        {
            bool moved = false;
            foreach (double next in (double[])[Math.Max(0, u - reach), Math.Min(1, u + reach)])
            {
                double distance = (blade.Skin(y, next) - p).Length;
                if (distance < least)
                    (u, least, moved) = (next, distance, true);
            }

            if (!moved)
                reach /= 2;
        }

        return least;
    }
}
