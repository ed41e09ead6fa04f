using System.Security.Cryptography;

namespace Finwright.Page.Hosting;

/// <summary>Names that nobody can guess.</summary>
internal static class UnguessableName
{
    /// <summary>A new one, of letters and digits.</summary>
    /// <param name="bytes">How many random bytes it holds.</param>
    public static string New(int bytes = 16) => Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(bytes));

    /// <summary>Whether a text could be one.</summary>
    /// <param name="text">The text.</param>
    /// <param name="bytes">How many random bytes it would hold.</param>
    public static bool IsOne(string text, int bytes = 16) => text.Length == 2 * bytes && text.All(char.IsAsciiHexDigitLower);
}
