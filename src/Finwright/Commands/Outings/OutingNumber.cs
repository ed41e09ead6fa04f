using System.CommandLine;
using System.Globalization;

namespace Finwright.Commands.Outings;

/// <summary>The number of an outing on the command line.</summary>
internal static class OutingNumber
{
    /// <summary>An argument that takes it.</summary>
    public static Argument<long> Argument(string description) => new("NUMBER")
    {
        Description = description,
        HelpName = "NUMBER",
        CustomParser = result =>
        {
            string text = result.Tokens[0].Value;
            if (long.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out long number))
                return number;
            result.AddError($"NUMBER takes the number of an outing, not \"{Inputs.Shorten(text)}\".");
            return 0;
        },
    };
}
