using Finwright.Making.Motion;
using Finwright.Terminal;

namespace Finwright.Commands;

/// <summary>Reading a motion file that a command is given.</summary>
internal static class MotionInput
{
    /// <summary>Options of the reader.</summary>
    /// <param name="filament">Diameter of the filament, metres; null for the usual.</param>
    /// <param name="isVolumetric">Whether plastic is given as a volume.</param>
    /// <param name="acceleration">m/s²; null for the usual.</param>
    /// <param name="stopLine">A line that stops this printer; null for none besides the usual words.</param>
    public static MotionOptions Options(double? filament, bool isVolumetric, double? acceleration, string? stopLine)
    {
        MotionOptions usual = new();
        return usual with
        {
            FilamentDiameter = filament ?? usual.FilamentDiameter,
            ExtrusionIsVolume = isVolumetric,
            Acceleration = acceleration ?? usual.Acceleration,
            StopLines = stopLine is null ? [] : [stopLine],
        };
    }

    /// <summary>Reads a motion file.</summary>
    /// <exception cref="WrongInputException">It cannot be opened.</exception>
    public static MotionReading Read(string file, MotionOptions options, CancellationToken cancellation)
    {
        if (Directory.Exists(file))
            throw new WrongInputException($"\"{file}\" is a folder.", "Name the motion file in it.");
        try
        {
            return MotionFile.ReadFile(file, options, cancellation);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            string why = problem is FileNotFoundException or DirectoryNotFoundException ? "There is no such file." : problem.Message;
            throw new WrongInputException($"\"{file}\" cannot be read. {why}", "Check the path.");
        }
    }
}
