using System.Text.Json;
using Finwright.Page.Words;

namespace Finwright.Page.RunSheets;

/// <summary>What the script of a run sheet says.</summary>
internal static class RunWords
{
    /// <summary>All of it, in the reader's language, as JSON.</summary>
    public static string Of(Reader reader) => JsonSerializer.Serialize(new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["kept"] = reader["everything is kept"],
        ["waiting"] = reader["out of reach: {0} waiting to be sent; go on, nothing is lost"],
        ["sending"] = reader["sending"],
        ["refused"] = reader["not taken: {0}"],
        ["gone"] = reader["This device is not let in any more. What it could not send stays on it."],
        ["left"] = reader["{0} left"],
        ["over"] = reader["due since {0}"],
        ["runs"] = reader["{0} since {1}"],
        ["since"] = reader["since {0}, due at {1}"],
        ["stop"] = reader["clear the clock"],
        ["again"] = reader["again"],
        ["dueAt"] = reader["due at {0}"],
        ["dueBetween"] = reader["due about {0} (between {1} and {2})"],
        ["dueLater"] = reader["the clock of its start does not run yet"],
        ["progress"] = reader["{0} of {1} done"],
        ["soundOn"] = reader["sound is on"],
        ["soundOff"] = reader["sound is off"],
        ["notNumber"] = reader["\"{0}\" is no temperature that a thermometer here can show. Type a number, such as {1}."],
        ["expected"] = reader["{0}: within what is expected now ({1} to {2})."],
        ["cool"] = reader["{0}: cooler than expected now ({1} to {2}). It cures more slowly: wait longer before you handle it."],
        ["warm"] = reader["{0}: warmer than expected now ({1} to {2}). Cool it more, read every five minutes, and be ready to do what stands under \"too hot\"."],
        ["danger"] = reader["{0}: the walls soften at {1}. Do now what stands under \"too hot\"."],
        ["unknown"] = reader["{0} noted. What is expected at this moment is not known: keep it cool and within the data sheet."],
        ["takeBack"] = reader["take back"],
        ["dueCount"] = reader["{0} due"],
    });
}
