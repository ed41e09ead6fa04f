using Finwright.Water.Polars;
using Finwright.Water.Sections;

namespace Finwright.Assessment.Caching;

/// <summary>Curves of sections as bytes; without the details of the surface.</summary>
public sealed class SectionCurveForm() : ResultForm<SectionCurve>("section-curve-3")
{
    /// <summary>More points than any sweep asks for.</summary>
    private const int MostPoints = 4096;

    /// <inheritdoc/>
    public override bool CanWrite(SectionCurve value)
    {
        ArgumentNullException.ThrowIfNull(value);
        return value.Points.Count <= MostPoints && value.Points.All(point => point.Surface is null);
    }

    /// <inheritdoc/>
    public override void Write(BinaryWriter writer, SectionCurve value)
    {
        ArgumentNullException.ThrowIfNull(writer);
        ArgumentNullException.ThrowIfNull(value);
        writer.Write(value.Conditions.ReynoldsNumber);
        writer.Write(value.Conditions.CriticalAmplification);
        Write(writer, value.Conditions.Upper);
        Write(writer, value.Conditions.Lower);
        writer.Write(value.Points.Count);
        foreach (SectionPoint point in value.Points)
        {
            writer.Write(point.Converged);
            writer.Write(point.IsPastNoseStall);
            writer.Write(point.Iterations);
            foreach (double number in Numbers(point))
                writer.Write(number);
        }
    }

    /// <inheritdoc/>
    public override SectionCurve Read(BinaryReader reader)
    {
        ArgumentNullException.ThrowIfNull(reader);
        SectionConditions conditions = new()
        {
            ReynoldsNumber = Finite(reader),
            CriticalAmplification = Finite(reader),
            Upper = ReadFinish(reader),
            Lower = ReadFinish(reader),
        };
        int count = reader.ReadInt32();
        if (count is < 0 or > MostPoints)
            throw new InvalidDataException($"A curve cannot have {count} points.");
        SectionPoint[] points = new SectionPoint[count];
        for (int i = 0; i < count; i++)
        {
            bool converged = reader.ReadBoolean(), pastNoseStall = reader.ReadBoolean();
            int iterations = reader.ReadInt32();
            points[i] = new()
            {
                Converged = converged,
                IsPastNoseStall = pastNoseStall,
                Iterations = iterations,
                AngleOfAttack = Finite(reader),
                Cl = Finite(reader),
                Cd = Finite(reader),
                CdFriction = Finite(reader),
                Cm = Finite(reader),
                TransitionUpper = Finite(reader),
                TransitionLower = Finite(reader),
                SeparationUpper = Finite(reader),
                SeparationLower = Finite(reader),
                MinimumCp = Finite(reader),
                MinimumCpAt = Finite(reader),
            };
        }

        return new() { Conditions = conditions, Points = points };
    }

    // In the order in which they are read.
    private static double[] Numbers(SectionPoint point) =>
    [
        point.AngleOfAttack,
        point.Cl,
        point.Cd,
        point.CdFriction,
        point.Cm,
        point.TransitionUpper,
        point.TransitionLower,
        point.SeparationUpper,
        point.SeparationLower,
        point.MinimumCp,
        point.MinimumCpAt,
    ];

    private static void Write(BinaryWriter writer, SideFinish finish)
    {
        writer.Write(finish.TripAt.HasValue);
        writer.Write(finish.TripAt ?? 0);
        writer.Write(finish.RoughnessHeight);
        writer.Write(finish.CriticalRoughnessReynoldsNumber);
        writer.Write(finish.SandRoughness);
    }

    private static SideFinish ReadFinish(BinaryReader reader)
    {
        bool tripped = reader.ReadBoolean();
        double at = Finite(reader);
        return new()
        {
            TripAt = tripped ? at : null,
            RoughnessHeight = Finite(reader),
            CriticalRoughnessReynoldsNumber = Finite(reader),
            SandRoughness = Finite(reader),
        };
    }

    private static double Finite(BinaryReader reader)
    {
        double value = reader.ReadDouble();
        return double.IsFinite(value) ? value : throw new InvalidDataException("A number is not finite.");
    }
}
