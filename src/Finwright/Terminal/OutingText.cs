using Finwright.Assessment.Packing;
using Finwright.Workshop.Outings;

namespace Finwright.Terminal;

/// <summary>Outings as plain text.</summary>
internal static class OutingText
{
    /// <summary>Writes a list, a row each.</summary>
    public static void WriteAll(TextStreams streams, IReadOnlyList<Outing> outings)
    {
        TextColumns columns = new(" outing", "day", "build", "place", "wind", " sail", "track", "grip, note");
        foreach (Outing outing in outings)
        {
            columns.Add(
                $"{outing.Id}", ShelfText.Day(outing.SailedOn), outing.Build, outing.Place, Wind(outing), ShelfText.Number(outing.SailM2, "0.0", "m²"), outing.HasTrack ? "yes" : "",
                ShelfText.Joined(outing.Grip is int grip ? $"grip {grip}" : "", outing.SpinOuts is int times ? $"let go {times} x" : "", ShelfText.FirstLine(outing.Note)));
        }

        columns.Write(streams);
    }

    /// <summary>Writes one in full.</summary>
    public static void WriteOne(TextStreams streams, Outing outing)
    {
        streams.Out.WriteLine($"Outing {outing.Id}, {ShelfText.Day(outing.SailedOn)}");
        Row("build", outing.Build);
        Row("place", outing.Place);
        Row("wind", Wind(outing));
        Row("sail", ShelfText.Joined(ShelfText.Number(outing.SailM2, "0.0", "m²"), outing.Sail));
        Row("board", outing.Board);
        Row("rider", outing.Rider);
        Row("grip", outing.Grip is int grip ? $"{grip} of 5" : "");
        Row("let go", outing.SpinOuts is int times ? $"{times} {(times == 1 ? "time" : "times")}" : "");
        Row("speed", outing.Speed is int speed ? $"{speed} of 5" : "");
        Row("feel", outing.Feel is int feel ? $"{feel} of 5" : "");
        Row("note", outing.Note);

        void Row(string name, string text)
        {
            if (text.Length > 0)
                streams.Out.WriteLine($"  {name,-8}" + Wrapping.Wrap(text, streams.Width, 10, 10));
        }
    }

    private static string Wind(Outing outing) =>
        outing is { WindLowKnots: double low, WindHighKnots: double high } ? low.Equals(high) ? $"{low:0.#} kn" : $"{low:0.#}-{high:0.#} kn" : "";
}
