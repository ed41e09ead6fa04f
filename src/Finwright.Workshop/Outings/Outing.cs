namespace Finwright.Workshop.Outings;

/// <summary>One time on the water with one fin.</summary>
public sealed record Outing
{
    /// <summary>Its number; 0 before it is kept.</summary>
    public long Id { get; init; }

    /// <summary>The day.</summary>
    public required DateOnly SailedOn { get; init; }

    /// <summary>Where, in the sailor's words.</summary>
    public string Place { get; init; } = "";

    /// <summary>Wind in the lulls, knots.</summary>
    public double? WindLowKnots { get; init; }

    /// <summary>Wind in the gusts, knots.</summary>
    public double? WindHighKnots { get; init; }

    /// <summary>The sail, in the sailor's words.</summary>
    public string Sail { get; init; } = "";

    /// <summary>Its area, square metres.</summary>
    public double? SailM2 { get; init; }

    /// <summary>The board, in the sailor's words.</summary>
    public string Board { get; init; } = "";

    /// <summary>Who sailed.</summary>
    public string Rider { get; init; } = "";

    /// <summary>Number of the build that was sailed; null for a fin that is not kept here.</summary>
    public long? BuildId { get; init; }

    /// <summary>Name of that build; filled in by the store.</summary>
    public string Build { get; init; } = "";

    /// <summary>How it gripped, 1 (poor) to 5 (good).</summary>
    public int? Grip { get; init; }

    /// <summary>How often it let go.</summary>
    public int? SpinOuts { get; init; }

    /// <summary>How fast it felt, 1 to 5.</summary>
    public int? Speed { get; init; }

    /// <summary>How it felt, 1 to 5.</summary>
    public int? Feel { get; init; }

    /// <summary>The sailor's own words.</summary>
    public string Note { get; init; } = "";

    /// <summary>Whether a track is kept with it; filled in by the store.</summary>
    public bool HasTrack { get; init; }
}

/// <summary>A track as it is kept.</summary>
/// <param name="FileName">Name of the file that it came from, without its folder.</param>
/// <param name="Hash">SHA-256 of that file, lower-case hexadecimal: the same track is not kept twice.</param>
/// <param name="Points">The points, packed.</param>
public sealed record KeptTrack(string FileName, string Hash, byte[] Points);
