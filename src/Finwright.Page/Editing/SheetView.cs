using Finwright.Assessment;
using Finwright.Design;
using Finwright.Geometry;
using Finwright.Page.Scene;
using Finwright.Workshop.Comparing;

namespace Finwright.Page.Editing;

/// <summary>What one tab shows of an open design.</summary>
public sealed class SheetView
{
    /// <summary>What the fin in three dimensions shows.</summary>
    public Surface Surface { get; private set; } = Surface.Plain;

    /// <summary>Whether the reader chose the surface; else it follows the chapter that is read.</summary>
    public bool SurfaceIsChosen { get; private set; }

    /// <summary>Where the section is drawn, share of the span from the root.</summary>
    public double Station { get; private set; } = 0.4;

    /// <summary>The design or revision beside this one; null for none.</summary>
    public BesideDesign? Beside { get; private set; }

    /// <summary>The place in the design that was pointed at last, such as <c>$.hardware.carbon_rods[0]</c>; empty for none.</summary>
    public string Place { get; private set; } = "";

    /// <summary>Something else is to be shown.</summary>
    public event Action? Changed;

    /// <summary>Shows a surface that the reader chose; null lets it follow the chapter again.</summary>
    public void Choose(Surface? surface)
    {
        SurfaceIsChosen = surface is not null;
        Surface = surface ?? Surface;
        Changed?.Invoke();
    }

    /// <summary>A chapter came into view.</summary>
    /// <param name="surface">The surface that goes with it.</param>
    public void Follow(Surface surface)
    {
        if (SurfaceIsChosen || Surface == surface)
            return;
        Surface = surface;
        Changed?.Invoke();
    }

    /// <summary>Draws the section elsewhere.</summary>
    /// <param name="station">Share of the span, 0 to 1.</param>
    public void MoveStation(double station)
    {
        Station = Math.Clamp(station, 0, 1);
        Changed?.Invoke();
    }

    /// <summary>Puts another design beside this one; null for none.</summary>
    public void PutBeside(BesideDesign? beside)
    {
        Beside = beside;
        Changed?.Invoke();
    }

    /// <summary>Points at a place in the design.</summary>
    public void PointAt(string place)
    {
        Place = place;
        Changed?.Invoke();
    }
}

/// <summary>A design or revision that is shown beside the open one.</summary>
/// <param name="Label">How it is called: name@number.</param>
/// <param name="Design">The design.</param>
/// <param name="Shape">Its shape.</param>
/// <param name="Skin">Its skin, for looking at.</param>
/// <param name="Sailing">Water and strength; null until they are worked out.</param>
public sealed record BesideDesign(string Label, FinDesign Design, AssessmentResult Shape, TriangleMesh Skin, AssessmentResult? Sailing)
{
    /// <summary>What is known of it as lines; more of them as it is worked out.</summary>
    public FinResults? Results { get; init; }
}
