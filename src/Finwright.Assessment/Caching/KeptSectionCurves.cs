using System.Globalization;
using System.Text;
using Finwright.Assessment.Stages;
using Finwright.Geometry.Sections;
using Finwright.Numerics;
using Finwright.Water.Polars;
using Finwright.Water.Sections;

namespace Finwright.Assessment.Caching;

/// <summary>Solves curves of sections, each once: looks in a cache first and puts there what it had to solve.</summary>
/// <remarks>
/// The key holds the section's ordinates, the stream, the surface and the angles to the last bit, and the identity of the code that
/// solves: a changed program never takes an old answer.
/// </remarks>
/// <param name="solver">Solves a curve that is not kept.</param>
/// <param name="cache">Keeps the curves.</param>
public sealed class KeptSectionCurves(SectionCurveSolver solver, IStageCache cache)
{
    // The ordinates at this many stations, close together at the nose, tell any two sections apart that differ in the water.
    private const int Stations = 161;

    /// <summary>Identity of the compiled code that decides a curve; another build of other code has another one.</summary>
    private static readonly string Code = string.Join(
        ' ',
        ((Type[])[typeof(SectionCurve), typeof(Section), typeof(BSplineCurve)]).Select(type => type.Assembly.ManifestModule.ModuleVersionId.ToString()));

    /// <summary>Solves a curve or takes it from the cache; see <see cref="SectionCurveSolver"/>.</summary>
    public SectionCurve Solve(Section section, SectionConditions conditions, IReadOnlyList<double> angles, CancellationToken cancellation)
    {
        StageKey key = KeyOf(section, conditions, angles);
        if (cache.TryGet(key, out StageResult<SectionCurve>? kept) && kept.Value is { } known)
            return known;
        SectionCurve curve = solver(section, conditions, angles, cancellation);
        cache.Keep(key, new StageResult<SectionCurve>(curve, []));
        return curve;
    }

    internal static StageKey KeyOf(Section section, SectionConditions conditions, IReadOnlyList<double> angles)
    {
        ArgumentNullException.ThrowIfNull(section);
        ArgumentNullException.ThrowIfNull(conditions);
        ArgumentNullException.ThrowIfNull(angles);
        StringBuilder shape = new();
        for (int i = 0; i < Stations; i++)
        {
            double x = (1 - Math.Cos(Math.PI * i / (Stations - 1))) / 2;
            Append(shape, section.HalfThickness(x));
            Append(shape, section.Camber(x));
            Append(shape, section.CamberSlope(x));
        }

        Append(shape, section.SquareShare);
        foreach (double join in section.Joins)
            Append(shape, join);
        StringBuilder stream = new();
        Append(stream, conditions.ReynoldsNumber);
        Append(stream, conditions.CriticalAmplification);
        Append(stream, conditions.Upper);
        Append(stream, conditions.Lower);
        StringBuilder sweep = new();
        foreach (double angle in angles)
            Append(sweep, angle);
        return StageKey.Of("section-curve", Code, shape.ToString(), stream.ToString(), sweep.ToString());
    }

    private static void Append(StringBuilder text, SideFinish finish)
    {
        Append(text, finish.TripAt ?? -1);
        Append(text, finish.RoughnessHeight);
        Append(text, finish.CriticalRoughnessReynoldsNumber);
        Append(text, finish.SandRoughness);
    }

    private static void Append(StringBuilder text, double number) =>
        text.Append(BitConverter.DoubleToInt64Bits(number).ToString("x16", CultureInfo.InvariantCulture)).Append(' ');
}
