using Finwright.Design;

namespace Finwright.Page.Making;

/// <summary>Which files are asked for.</summary>
public enum HandoutKind
{
    /// <summary>Everything that is needed to make the fin.</summary>
    Pack,

    /// <summary>The papers alone.</summary>
    Papers,

    /// <summary>Plates, parts and blade alone.</summary>
    Parts,
}

/// <summary>How far files are.</summary>
public enum HandoutState
{
    /// <summary>Others come first.</summary>
    Waiting,

    /// <summary>They are being made.</summary>
    AtWork,

    /// <summary>They can be fetched.</summary>
    Ready,

    /// <summary>They cannot be made; the findings say why.</summary>
    Refused,

    /// <summary>The maker stopped it.</summary>
    Stopped,
}

/// <summary>Files of a fin that were asked for. Never changed; each step makes a new one.</summary>
public sealed record Handout
{
    /// <summary>Its name in addresses: nobody can guess it.</summary>
    public required string Key { get; init; }

    /// <summary>Number of the design.</summary>
    public required long DesignId { get; init; }

    /// <summary>What was asked for.</summary>
    public required HandoutKind Kind { get; init; }

    /// <summary>Name under which it is saved.</summary>
    public required string FileName { get; init; }

    /// <summary>When it was asked for.</summary>
    public required DateTimeOffset AskedAt { get; init; }

    /// <summary>How far it is.</summary>
    public HandoutState State { get; init; }

    /// <summary>What is being done, in words.</summary>
    public string Words { get; init; } = "";

    /// <summary>Share that is done, 0 to 1.</summary>
    public double Fraction { get; init; }

    /// <summary>What speaks against it, worst first.</summary>
    public IReadOnlyList<Finding> Findings { get; init; } = [];

    /// <summary>The files in it.</summary>
    public IReadOnlyList<HandoutFile> Files { get; init; } = [];

    /// <summary>Length of the whole, bytes.</summary>
    public long Bytes { get; init; }

    /// <summary>Where it is fetched.</summary>
    public string Address => $"/api/files/{Key}";

    internal string? Path { get; init; }
}

/// <summary>A file of a handout.</summary>
/// <param name="Path">Its name in the archive.</param>
/// <param name="What">What it is.</param>
/// <param name="Bytes">Its length.</param>
public sealed record HandoutFile(string Path, string What, long Bytes);
