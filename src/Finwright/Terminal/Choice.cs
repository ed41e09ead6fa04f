using System.Reflection;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Finwright.Terminal;

/// <summary>Enumerations on the command line are spelled as in the design file: lower case with dashes.</summary>
internal static class Choice
{
    /// <summary>The spelling of a value.</summary>
    public static string Of<T>(T value)
        where T : struct, Enum =>
        typeof(T).GetField(value.ToString())?.GetCustomAttribute<JsonStringEnumMemberNameAttribute>()?.Name ?? JsonNamingPolicy.KebabCaseLower.ConvertName(value.ToString());

    /// <summary>The spellings of all values, in their order.</summary>
    public static IReadOnlyList<string> All<T>()
        where T : struct, Enum => [.. Enum.GetValues<T>().Select(Of)];

    /// <summary>The value of a spelling; null when there is none.</summary>
    public static T? Find<T>(string spelling)
        where T : struct, Enum =>
        Enum.GetValues<T>().Where(value => string.Equals(Of(value), spelling, StringComparison.Ordinal)).Select(value => (T?)value).FirstOrDefault();
}
