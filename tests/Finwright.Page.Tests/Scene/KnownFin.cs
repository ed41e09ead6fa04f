using Finwright.Assessment;
using Finwright.Assessment.Afloat;
using Finwright.Design;
using Finwright.Geometry.Blades;
using Finwright.Geometry.FromDesign;
using Finwright.Geometry.Sections;
using Finwright.Page.Editing;
using Finwright.Page.Hosting;
using Finwright.Page.Settings;
using Finwright.Page.Words;
using Finwright.Page.Works;
using Finwright.Water.Polars;

[assembly: AssemblyFixture(typeof(Finwright.Page.Tests.Scene.KnownFin))]

namespace Finwright.Page.Tests.Scene;

/// <summary>A small fin of which everything is known: one section solved for all depths, then water, strength, print, pour and cure as always.</summary>
public sealed class KnownFin : IDisposable
{
    private readonly Lazy<Standing> _sailed, _made;
    private readonly Desk _desk = Desk.InMemory();
    private readonly string _folder = Directory.CreateTempSubdirectory("finwright-scene-").FullName;

    public KnownFin()
    {
        _sailed = new(Sail);
        _made = new(Make);
        Reader = new(new ReaderSettings(new PageSettings { StorePath = Path.Combine(_folder, "workshop.finstore"), MadeBy = "test" }), _desk, TimeProvider.System);
    }

    /// <summary>The design: a short stiff fin for little wind.</summary>
    public static FinDesign Design { get; } = DesignReader.Read("""
        {
          "format": 2, "name": "Small", "brief": { "rider_mass_kg": 60, "side_force_n": 120 },
          "shape": {
            "outline": { "family": "upright", "span_mm": 160, "root_chord_mm": 180 },
            "sections": [{ "at_percent": 0, "thickness_percent": 11 }, { "at_percent": 100, "thickness_percent": 9 }],
            "flange": { "overhang_mm": 8, "thickness_mm": 5, "fillet_mm": 8 }
          },
          "base": { "fixing": "clamp-rods" },
          "hardware": { "clamp_rods": [
            { "thread": "M6", "from_front_mm": 55, "blade_depth_mm": 32, "lean_degrees": 5 },
            { "thread": "M6", "from_front_mm": 95, "blade_depth_mm": 32, "lean_degrees": 0 }] }
        }
        """).Design!;

    internal Standing Shaped { get; } = Shape();

    internal Standing Sailed => _sailed.Value;

    internal Standing Made => _made.Value;

    internal Reader Reader { get; }

    public void Dispose()
    {
        _desk.Dispose();
        Directory.Delete(_folder, recursive: true);
    }

    private static Standing Shape()
    {
        using Assessor assessor = new();
        AssessmentResult shape = assessor.Assess(Design, AssessmentDepth.Shape);
        return new()
        {
            Design = Design,
            Version = 1,
            Findings = shape.Findings,
            Shape = shape,
            Skin = BladeFromDesign.Skin(Design.Shape with { SkinToleranceMm = 0.1 }, shape.Blade!, []),
            ShapeVersion = 1,
        };
    }

    private Standing Sail()
    {
        Blade blade = Shaped.Shape!.Blade!;
        Section section = blade.SectionAt(0.4 * blade.Span);
        double[] angles = [.. Enumerable.Range(-14, 29).Select(degrees => double.DegreesToRadians(degrees))];
        SectionPolarTable table = new([.. ((double[])[2.5e5, 9e5]).Select(reynolds => SectionCurves.Solve(section, new() { ReynoldsNumber = reynolds }, angles, CancellationToken.None))]);
        FinPolars polars = new() { Family = new([0.0], [table]), CriticalAmplification = 9, StarboardFinish = "smooth", PortFinish = "smooth" };
        AssessmentResult quick = QuickLook.Of(Design, blade, Shaped.Shape! with { Polars = polars }, CancellationToken.None);
        return Shaped with { Sailing = QuickLook.WithCurves(quick, CancellationToken.None), SailingVersion = 1, Reach = Reach.Sailing };
    }

    private Standing Make()
    {
        using Assessor assessor = new();
        return Shaped with { Made = assessor.Assess(Design, AssessmentDepth.Cure), MadeVersion = 1, Reach = Reach.Everything };
    }
}
