using System.Globalization;
using Finwright.Terminal;

namespace Finwright.Commands.Bench;

/// <summary>The number of readings that a command is given.</summary>
internal static class SessionNumber
{
    /// <summary>The number.</summary>
    /// <exception cref="WrongInputException">The word is no number.</exception>
    public static long Of(string word) =>
        long.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out long number) ? number
        : throw new WrongInputException($"\"{Inputs.Shorten(word)}\" is not the number of readings.", "\"finwright bench list\" shows the numbers.");
}
