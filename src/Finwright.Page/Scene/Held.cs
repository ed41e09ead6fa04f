using Finwright.Geometry;

namespace Finwright.Page.Scene;

/// <summary>Lays parts out for looking at: up is up, one beside the other, standing on one level.</summary>
internal sealed class Held
{
    // Room between two parts, metres.
    private const double Gap = 0.03;

    private double _next;

    /// <summary>Towards the reader, in the axes of a scene: from the port side, a little from ahead and above.</summary>
    public static Point3 ToReader { get; } = new(-0.45, -0.18, -1);

    /// <summary>From axes with z up to those of a scene, whose up is −y.</summary>
    public static Placement Upright { get; } = new(new(1, 0, 0), new(0, 0, 1), new(0, -1, 0), default);

    /// <summary>Turns a part so that a direction points up, and puts it beside the last one.</summary>
    /// <param name="mesh">The part.</param>
    /// <param name="up">Upward direction in the axes of the mesh.</param>
    /// <returns>From the axes of the mesh to those of the scene.</returns>
    public Placement Put(TriangleMesh mesh, Point3 up)
    {
        // The port side faces the reader as far as it can; of a part that lies flat, the nose is to the left.
        Point3 hint = new(-up.Y, up.X, 0);
        hint = hint.Length > 0.1 * up.Length ? hint : new(1, 0, 0);
        Placement turn = Placement.Along(default, up, hint).RigidInverse().Then(Upright);
        Bounds box = mesh.Placed(turn).Bounds();
        Placement place = turn.Then(Placement.Shift(new(_next - box.Minimum.X, -box.Maximum.Y, -(box.Minimum.Z + box.Maximum.Z) / 2)));
        _next += box.Maximum.X - box.Minimum.X + Gap;
        return place;
    }
}
