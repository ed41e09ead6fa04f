using Finwright.Terminal;
using Finwright.Workshop.Outings;
using Finwright.Workshop.Tracks;

namespace Finwright.Commands.Outings;

/// <summary>Reading a track that a command is given.</summary>
internal static class TrackInput
{
    private const string Remedy = "Name the GPX file that the receiver or its program exported.";

    /// <summary>Reads a track.</summary>
    /// <exception cref="WrongInputException">It cannot be opened.</exception>
    public static TrackReading Read(string file, CancellationToken cancellation) => With(file, stream => GpxFile.Read(stream, cancellation));

    /// <summary>Reads a track as it is kept, with what was found on the way.</summary>
    /// <exception cref="WrongInputException">It cannot be opened, or there is no track in it.</exception>
    public static (Track Track, KeptTrack Kept, TrackReading Reading) ReadToKeep(string file, CancellationToken cancellation)
    {
        (TrackReading reading, KeptTrack? kept) = With(file, stream => OutingTracks.Read(stream, Path.GetFileName(file), cancellation));
        return reading.Track is { } track && kept is not null ? (track, kept, reading) : throw Refused(file, reading);
    }

    /// <summary>Why a file is refused that holds no track.</summary>
    public static WrongInputException Refused(string file, TrackReading reading) => new($"\"{file}\": {reading.Findings[0].Message}", reading.Findings[0].Remedy);

    private static T With<T>(string file, Func<FileStream, T> read)
    {
        if (string.IsNullOrWhiteSpace(file))
            throw new WrongInputException("The name of the track is empty.", Remedy);
        if (Directory.Exists(file))
            throw new WrongInputException($"\"{file}\" is a folder.", "Name the GPX file in it.");
        try
        {
            using FileStream stream = new(file, FileMode.Open, FileAccess.Read, FileShare.Read, bufferSize: 0, FileOptions.SequentialScan);
            return read(stream);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            string why = problem is FileNotFoundException or DirectoryNotFoundException ? "There is no such file." : problem.Message;
            throw new WrongInputException($"\"{file}\" cannot be read. {why}", Remedy);
        }
    }
}
