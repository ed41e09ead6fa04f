using System.Security.Cryptography;

namespace Finwright.Page.Hosting;

/// <summary>Names that nobody can guess.</summary>
internal static class UnguessableName
{
    /// <summary>A new one, of letters and digits.</summary>
    /// <param name="bytes">How many random bytes it holds.</param>
    public static string New(int bytes = 16) => Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(bytes));
}
