using Finwright.Page.Editing;
using Finwright.Water.Sailing;

namespace Finwright.Page.Scene;

/// <summary>What the reader asks to see.</summary>
/// <param name="Surface">What is shown.</param>
public sealed record SceneRequest(Surface Surface)
{
    /// <summary>The load case; null for the one that matters most for the surface.</summary>
    public LoadCaseKind? Case { get; init; }

    /// <summary>Number of the plate, from 1.</summary>
    public int Plate { get; init; } = 1;

    /// <summary>Whether the blade is clear, so that what is inside is seen.</summary>
    public bool Inside { get; init; }

    /// <summary>The design beside this one.</summary>
    public BesideDesign? Beside { get; init; }

    /// <summary>The place in the design that was pointed at; empty for none.</summary>
    public string Place { get; init; } = "";
}

/// <summary>A scene, and what is said of it in words.</summary>
public sealed record DrawnScene
{
    /// <summary>The scene file.</summary>
    public required byte[] File { get; init; }

    /// <summary>Version of the design that it shows.</summary>
    public required long Version { get; init; }

    /// <summary>What it shows, in a sentence.</summary>
    public required string Says { get; init; }

    /// <summary>What is to be known before it is believed: that it is old, quick, or not there; empty for nothing.</summary>
    public string Note { get; init; } = "";

    /// <summary>Whether what was asked for is there; else the plain fin stands in its place, and <see cref="Note"/> says why.</summary>
    public bool IsThere { get; init; } = true;

    /// <summary>The colours; null without a field.</summary>
    public SceneLegend? Legend { get; init; }

    /// <summary>The values worth knowing, greatest and least first.</summary>
    public IReadOnlyList<SceneValue> Values { get; init; } = [];

    /// <summary>Load cases that can be chosen; empty where there are none.</summary>
    public IReadOnlyList<LoadCaseKind> Cases { get; init; } = [];

    /// <summary>The case that is shown.</summary>
    public LoadCaseKind? Case { get; init; }

    /// <summary>How many plates there are.</summary>
    public int Plates { get; init; }

    /// <summary>How many times the true bending is drawn; null when nothing is bent.</summary>
    public double? Exaggeration { get; init; }
}

/// <summary>A scale of colours as it is shown.</summary>
/// <param name="Title">What it measures.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Scale">The colours.</param>
/// <param name="Limit">A limit that is marked on it; null for none.</param>
/// <param name="LimitWords">What the limit is.</param>
public sealed record SceneLegend(string Title, string Unit, ColourScale Scale, double? Limit = null, string LimitWords = "");

/// <summary>A value worth knowing.</summary>
/// <param name="What">What it is.</param>
/// <param name="Value">With its unit, as the reader wants it.</param>
/// <param name="Where">Where it is.</param>
public sealed record SceneValue(string What, string Value, string Where);
