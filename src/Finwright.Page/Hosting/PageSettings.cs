using System.Net;

namespace Finwright.Page.Hosting;

/// <summary>How the page is served.</summary>
public sealed record PageSettings
{
    /// <summary>Port that is asked for when nobody says otherwise: the same each time, so that the browser finds its way back.</summary>
    public const int UsualPort = 5614;

    /// <summary>The store's file.</summary>
    public required string StorePath { get; init; }

    /// <summary>Program and version, for what is kept.</summary>
    public required string MadeBy { get; init; }

    /// <summary>Port on this computer; 0 for any that is free.</summary>
    public int Port { get; init; } = UsualPort;

    /// <summary>Whether the server ends when the page was open and nobody has it open any more.</summary>
    public bool EndsAlone { get; init; }

    /// <summary>Demo designs by name, as the text of their files.</summary>
    public IReadOnlyDictionary<string, string> Demos { get; init; } = new Dictionary<string, string>(StringComparer.Ordinal);

    /// <summary>The clock.</summary>
    public TimeProvider Time { get; init; } = TimeProvider.System;

    /// <summary>Folder of the program's own files that the browser reads.</summary>
    public string ProgramFolder { get; init; } = AppContext.BaseDirectory;

    /// <summary>Folder beside the store in which the page keeps its key and the reader's settings.</summary>
    public string KeepingFolder => Path.Combine(Path.GetDirectoryName(Path.GetFullPath(StorePath))!, "page");

    internal IPEndPoint Listening => new(IPAddress.Loopback, Port);
}
