using Finwright.Assessment;
using Finwright.Assessment.Packing;
using Finwright.Papers.Drawings;
using Finwright.Papers.Sheet;
using Finwright.Papers.Templates;
using Finwright.Papers.Templates.Tiling;
using Finwright.Papers.Views;
using Finwright.Papers.Words;

namespace Finwright.Papers;

/// <summary>All papers of a fin: build sheet, templates, drawing.</summary>
public static class FinPapers
{
    /// <summary>Makes them.</summary>
    /// <param name="result">A fin without errors, worked out in full.</param>
    /// <param name="settings">How they are made.</param>
    /// <param name="cancellation">Stops the work between papers.</param>
    /// <returns>The files with their paths within a pack. Same result and settings, same bytes.</returns>
    /// <exception cref="ArgumentException">The fin has errors, or was not worked out as far as its parts.</exception>
    public static IReadOnlyList<PackFile> Of(AssessmentResult result, PaperSettings settings, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(settings);
        if (result is not { HasErrors: false, Design: not null, Solids: not null, Parts: not null })
            throw new ArgumentException("Only a fin that can be made has papers.", nameof(result));
        Tongue tongue = new(settings);
        List<PackFile> files = [];
        Add("build-sheet.pdf", "the whole job on paper, step by step, with this fin's own numbers: take it to the bench", BuildSheet.Write(result, settings, tongue));
        IReadOnlyList<Template> templates = FinTemplates.Of(result, tongue);
        Add("templates.pdf", "all templates at true size; print at 100 % and measure the rulers first", TemplateBook.Write(templates, result, settings, tongue));
        foreach (Template template in templates)
            Add($"templates/{template.Name}.svg", $"{template.Title}, true size", Svg(template.Drawing, $"{result.Design.Name}: {template.Title}"));
        (byte[] pdf, byte[] svg) = FinDrawing.Write(result, settings, tongue);
        Add("drawing.pdf", "the fin from all sides with its dimensions", pdf);
        Add("drawing.svg", "the same as SVG", svg);
        return files;

        void Add(string path, string what, byte[] content)
        {
            cancellation.ThrowIfCancellationRequested();
            files.Add(new(path, content, what));
        }
    }

    private static byte[] Svg(Drawing drawing, string title)
    {
        using MemoryStream stream = new();
        SvgFile.Write(drawing, title, stream);
        return stream.ToArray();
    }
}
