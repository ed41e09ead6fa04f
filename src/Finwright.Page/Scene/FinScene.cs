using Finwright.Page.Editing;

namespace Finwright.Page.Scene;

/// <summary>Draws an open design into a scene.</summary>
public static class FinScene
{
    /// <summary>The scene of a design.</summary>
    /// <param name="standing">The design and what is known of it.</param>
    /// <param name="surface">What is shown.</param>
    /// <returns>The scene file; null when what it would show is not known yet.</returns>
    public static byte[]? Of(Standing standing, Surface surface)
    {
        ArgumentNullException.ThrowIfNull(standing);
        SceneFile scene = new();
        switch (surface)
        {
            case Surface.Plain when standing.Skin is { } skin:
                scene.Add("blade", "blade", skin);
                break;
            default:
                return null;
        }

        return scene.ToBytes();
    }
}
