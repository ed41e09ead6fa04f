using System.Security.Cryptography;

namespace Finwright.Page.Hosting;

/// <summary>Names that nobody can guess.</summary>
internal static class UnguessableName
{
    private const int UsualBytes = 16;

    /// <summary>A new one, of letters and digits.</summary>
    /// <param name="bytes">How many random bytes it holds.</param>
    public static string New(int bytes = UsualBytes) => Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(bytes));

    /// <summary>Whether a text could be one of the usual length.</summary>
    /// <param name="text">The text.</param>
    public static bool IsOne(string text) => text.Length == 2 * UsualBytes && text.All(char.IsAsciiHexDigitLower);
}
