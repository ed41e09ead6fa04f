using System.Runtime.CompilerServices;
using Finwright.Assessment;
using Finwright.Assessment.Afloat;
using Finwright.Geometry;
using Finwright.Geometry.Blades;
using Finwright.Page.Editing;
using Finwright.Page.Words;
using Finwright.Papers;
using Finwright.Papers.Words;
using Finwright.Water.Sailing;

namespace Finwright.Page.Scene;

/// <summary>Pressure of the water on both sides of the blade.</summary>
internal static class PressureScene
{
    // The scale leaves out this share of the places at either end: a nose of a millimetre would take all its colours. The end bands hold what lies beyond.
    private const double LeftOut = 0.01;

    private const double KiloPascal = 1e3;

    private static readonly ConditionalWeakTable<CaseAfloat, BladePressure> Known = [];

    public static DrawnScene? Of(Standing standing, SceneRequest asked, Reader reader, CancellationToken cancellation)
    {
        string plain = reader["Pressure of the water on the blade."];
        if (standing.Sailing is not { Blade: { } blade } result || Skins.Of(standing, result) is not { } skin)
            return SceneNotes.Instead(standing, asked, reader, SceneNotes.Missing(standing, reader), plain);
        if (result.Afloat is not { Cases.Count: > 0 } afloat)
            return SceneNotes.Instead(standing, asked, reader, SceneNotes.Missing(standing, reader, result.Afloat?.Problem ?? result.Polars?.Problem), plain);
        CaseAfloat sailed = afloat[asked.Case ?? LoadCaseKind.Cruise] ?? afloat.Cases[0];
        if (PressureOf(result, sailed, cancellation) is not { } pressure)
            return SceneNotes.Instead(standing, asked, reader, reader["The flow past the sections could not be solved {0}, so no pressure is shown.", reader.Tongue.Words.Verdicts.InCase(sailed.Load.Kind)], plain) is { } instead
                ? instead with { Cases = [.. afloat.Cases.Select(own => own.Load.Kind)], Case = sailed.Load.Kind }
                : null;
        (string unit, double factor) = UnitOf(reader);
        double[] values = new double[skin.VertexCount];
        for (int i = 0; i < values.Length; i++)
            values[i] = At(pressure, blade, skin.Vertex(i)) / factor;
        double[] sorted = [.. values.Where(double.IsFinite).Order()];
        ColourScale scale = ColourScale.AroundZero(sorted[(int)(LeftOut * (sorted.Length - 1))], sorted[(int)((1 - LeftOut) * (sorted.Length - 1))]);
        SceneFile scene = new();
        scene.Add("blade", "blade", skin, values);
        Pointed.Add(scene, standing, asked.Place);
        PlainScene.AddOutlines(scene, standing, asked);
        scene.About = new { version = standing.SailingVersion, view = "pressure", scale = SceneScale.Of(scale, unit, reader) };
        string note = SceneNotes.Sailing(standing, reader);
        if (!sailed.IsCarried)
            note = SceneNotes.Both(note, reader["The fin does not carry this load before it stalls; shown at the most it carries."]);
        if (pressure.Solved.Count < pressure.Asked)
            note = SceneNotes.Both(note, reader["At {0} of {1} depths the flow could not be solved; there the neighbours' pressure is carried on.", pressure.Asked - pressure.Solved.Count, pressure.Asked]);
        LoadCase load = sailed.Load;
        return new()
        {
            File = scene.ToBytes(),
            Version = standing.SailingVersion,
            Says = reader["Pressure against still water, {0}: {1} of side force at {2}. Blue is suction, on the starboard side; brown is push.",
                reader.Tongue.Words.Verdicts.InCase(load.Kind), reader.Tongue.Force(Math.Abs(sailed.IsCarried ? load.SideForce : sailed.UnderHull.Result.SideForce)), reader.Tongue.Speed(load.Speed)],
            Note = note,
            Legend = new(reader["pressure"], unit, scale),
            Values =
            [
                Worst(reader["strongest suction"], values, skin, Array.IndexOf(values, sorted[0]), unit, reader),
                Worst(reader["strongest push"], values, skin, Array.IndexOf(values, sorted[^1]), unit, reader),
            ],
            Cases = [.. afloat.Cases.Select(own => own.Load.Kind)],
            Case = load.Kind,
        };
    }

    /// <summary>The pressure in a case, worked out once.</summary>
    public static BladePressure? PressureOf(AssessmentResult result, CaseAfloat sailed, CancellationToken cancellation)
    {
        if (Known.TryGetValue(sailed, out BladePressure? known))
            return known;
        if (BladePressure.Of(result, sailed, cancellation) is not { } pressure)
            return null;
        Known.AddOrUpdate(sailed, pressure);
        return pressure;
    }

    private static double At(BladePressure pressure, Blade blade, Point3 place)
    {
        double depth = Math.Clamp(place.Y, 0, blade.Span), chord = blade.Outline.Chord(depth);
        double share = chord > 0 ? (place.X - blade.Outline.LeadingEdge(depth)) / chord : 0.5;
        return pressure.At(share, depth, place.Z > blade.MidSurface(place.X, depth));
    }

    private static SceneValue Worst(string what, double[] values, TriangleMesh skin, int at, string unit, Reader reader)
    {
        Point3 place = skin.Vertex(at);
        return new(what, $"{reader.Tongue.Number(values[at], Math.Abs(values[at]) < 10 ? 1 : 0)} {unit}", $"{reader[place.Z >= 0 ? "starboard side" : "port side"]}, {SceneScale.Place(place, reader)}");
    }

    private static (string Unit, double Pascals) UnitOf(Reader reader) => reader.Tongue.Units is PaperUnits.Inch ? ("psi", UnitScale.PoundForce / (UnitScale.Inch * UnitScale.Inch)) : ("kPa", KiloPascal);
}
