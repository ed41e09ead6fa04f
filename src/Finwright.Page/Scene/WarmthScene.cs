using Finwright.Assessment.Made;
using Finwright.Geometry;
using Finwright.Page.Editing;
using Finwright.Page.Words;
using Finwright.Papers;
using Finwright.Papers.Words;

namespace Finwright.Page.Scene;

/// <summary>How warm the parts are when their resin is hottest, cut open along the middle of the fin, as they stand while they cure.</summary>
internal static class WarmthScene
{
    private const double Kelvin = 273.15;

    public static DrawnScene? Of(Standing standing, SceneRequest asked, Reader reader, CancellationToken cancellation)
    {
        string plain = reader["How warm the parts are when their resin is hottest."];
        if (standing.Made is not { Parts: { } plan } made)
            return SceneNotes.Instead(standing, asked, reader, SceneNotes.Missing(standing, reader), plain);
        if (made.Cured is not { Parts.Count: > 0 } cured)
            return SceneNotes.Instead(standing, asked, reader, made.Poured is { Parts.Count: 0 } ? reader["No part is poured, so none cures."] : SceneNotes.Missing(standing, reader), plain);
        bool isFahrenheit = reader.Tongue.Units is PaperUnits.Inch;
        double Shown(double kelvin) => isFahrenheit ? UnitScale.Fahrenheit * (kelvin - Kelvin) + UnitScale.FahrenheitZero : kelvin - Kelvin;
        List<(string Name, TriangleMesh Slice, double[] Values, TriangleMesh Behind, Placement Place, PartCured Part)> drawn = [];
        Held held = new();
        foreach (PartCured part in cured.Parts)
        {
            cancellation.ThrowIfCancellationRequested();
            if (plan.Parts.FirstOrDefault(own => string.Equals(own.Name, part.Name, StringComparison.Ordinal))?.Mesh is not { } mesh)
                continue;
            Placement place = held.Put(mesh, part.Part.Layers.ToLayers.RigidInverse().Turn(part.Part.Up));
            (TriangleMesh slice, double[] warmth) = WarmthSlice.Of(part);
            drawn.Add((reader.Tongue.Words.Names.Part(part.Name), slice, [.. warmth.Select(Shown)], WarmthSlice.Behind(mesh, starboard: place.RigidInverse().Turn(Held.ToReader).Z < 0), place, part));
        }

        if (drawn.Count == 0)
            return SceneNotes.Instead(standing, asked, reader, SceneNotes.Missing(standing, reader), plain);
        double softening = Shown(cured.Softening), least = drawn.Min(own => own.Values.Where(double.IsFinite).DefaultIfEmpty(softening).Min()), greatest = drawn.Max(own => Shown(own.Part.Band.Nominal.Resin.Temperature));
        ColourScale scale = ColourScale.Rising(least, greatest);
        string unit = isFahrenheit ? "°F" : "°C";
        double? limit = greatest >= softening ? softening : null;
        SceneFile scene = new();
        List<SceneValue> values = [];
        foreach ((string name, TriangleMesh slice, double[] warmth, TriangleMesh behind, Placement place, PartCured part) in drawn)
        {
            scene.Add(name, "blade", slice.Placed(place), warmth);
            scene.Add(name, "base", behind.Placed(place));
            Point3 hottest = part.HottestPlace;
            scene.AddLabel(reader.Tongue.Temperature(part.Band.Nominal.Resin.Temperature), "cross", place.Apply(hottest));
            Bounds box = behind.Placed(place).Bounds();
            scene.AddLabel(name, "none", new(box.Centre.X, box.Maximum.Y, box.Centre.Z));
            (double low, double high) = part.Range(run => run.Resin.Temperature);
            values.Add(new(
                name,
                reader["{0} ({1} to {2})", reader.Tongue.Temperature(part.Band.Nominal.Resin.Temperature), reader.Tongue.Temperature(low), reader.Tongue.Temperature(high)],
                reader["{0} after the first pour", reader.Tongue.Duration(part.Band.Nominal.Resin.Time)]));
        }

        scene.About = new { version = standing.MadeVersion, isHeld = true, scale = SceneScale.Of(scale, unit, reader, limit, isPlaced: false) };
        return new()
        {
            File = scene.ToBytes(),
            Version = standing.MadeVersion,
            Says = reader["The parts when their resin is hottest, cut open along the middle of the fin, as they stand while they cure. The walls soften at {0}.", reader.Tongue.Temperature(cured.Softening)],
            Note = SceneNotes.Made(standing, reader),
            Legend = new(reader["temperature"], unit, scale, limit, reader["the walls soften"]),
            Values = values,
        };
    }
}
