using Finwright.Page.Editing;
using Finwright.Page.Words;

namespace Finwright.Page.Scene;

/// <summary>Draws an open design into a scene, and says in words what it shows.</summary>
public static class FinScene
{
    /// <summary>The scene that was asked for; the plain fin, with the reason, when what it would show is not known.</summary>
    /// <param name="standing">The design and what is known of it.</param>
    /// <param name="asked">What is asked for.</param>
    /// <param name="reader">The reader's words and units.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <returns>The scene; null when not even the shape could be drawn.</returns>
    public static DrawnScene? Of(Standing standing, SceneRequest asked, Reader reader, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(standing);
        ArgumentNullException.ThrowIfNull(asked);
        ArgumentNullException.ThrowIfNull(reader);
        return asked.Surface switch
        {
            Surface.Pressure => PressureScene.Of(standing, asked, reader, cancellation),
            Surface.Stress => StressScene.Of(standing, asked, reader),
            Surface.Bent => BentScene.Of(standing, asked, reader),
            Surface.Warmth => WarmthScene.Of(standing, asked, reader, cancellation),
            Surface.Air => AirScene.Of(standing, asked, reader),
            Surface.Parts => PlateScene.Of(standing, asked, reader),
            _ => PlainScene.Of(standing, asked, reader),
        };
    }
}
