using System.CommandLine;
using Finwright.Making.Motion;
using Finwright.Terminal;

namespace Finwright.Commands;

/// <summary>Reading a motion file that a command is given.</summary>
internal static class MotionInput
{
    /// <summary>The option for the diameter of the filament.</summary>
    public static Option<double?> FilamentOption() => Inputs.Number("--filament-mm", "mm", "Diameter of the filament that the motion file reckons with, 0.5 to 5; left out: 1.75.");

    /// <summary>The switch for plastic given as a volume.</summary>
    public static Option<bool> VolumetricOption() => Inputs.Switch("--volumetric", "The motion file gives plastic as mm³ instead of mm of filament.");

    /// <summary>The diameter given, metres; null when it is not.</summary>
    /// <exception cref="WrongInputException">It is outside the range.</exception>
    public static double? Filament(ParseResult arguments, Option<double?> option) => Inputs.Within(arguments, option, 0.5, 5) / 1e3;

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

    /// <summary>Refuses a file that is not there.</summary>
    /// <exception cref="WrongInputException">It is missing, or a folder.</exception>
    private static void Refuse(string file)
    {
        if (string.IsNullOrWhiteSpace(file))
            throw new WrongInputException("The name of the motion file is empty.", "Name the motion file.");
        if (Directory.Exists(file))
            throw new WrongInputException($"\"{file}\" is a folder.", "Name the motion file in it.");
        if (!File.Exists(file))
            throw new WrongInputException($"\"{file}\" cannot be read. There is no such file.", "Check the path.");
    }

    /// <summary>Reads a motion file.</summary>
    /// <exception cref="WrongInputException">It cannot be opened.</exception>
    public static MotionReading Read(string file, MotionOptions options, CancellationToken cancellation)
    {
        Refuse(file);
        try
        {
            return MotionFile.ReadFile(file, options, cancellation);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            throw new WrongInputException($"\"{file}\" cannot be read. {problem.Message}", "Check the path.");
        }
    }
}
