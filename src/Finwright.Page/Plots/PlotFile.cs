using System.Text.Json;
using System.Text.Json.Serialization;
using Finwright.Page.Words;

namespace Finwright.Page.Plots;

/// <summary>A plot as the browser takes it: all lines on one grid, in one text.</summary>
internal static class PlotFile
{
    private static readonly JsonSerializerOptions Form = new(JsonSerializerDefaults.Web) { Converters = { new JsonStringEnumConverter(JsonNamingPolicy.CamelCase) } };

    /// <summary>Writes it.</summary>
    /// <param name="sheet">The plot.</param>
    /// <param name="reader">Knows the decimal mark.</param>
    public static string Write(PlotSheet sheet, Reader reader)
    {
        IReadOnlyList<double> grid = sheet.Grid();
        return JsonSerializer.Serialize(
            new
            {
                sheet.X,
                sheet.Y,
                sheet.IsUpright,
                Grid = grid,
                Lines = sheet.Lines.Select(line => new { line.Name, line.Ink, line.Dash, line.IsGhost, Values = grid.Select(line.At) }),
                sheet.Bands,
                sheet.Limits,
                HasComma = reader.Tongue.Number(0.5, 1).Contains(',', StringComparison.Ordinal),
            },
            Form);
    }
}
