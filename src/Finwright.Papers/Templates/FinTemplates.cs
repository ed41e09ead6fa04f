using Finwright.Assessment;
using Finwright.Papers.Words;

namespace Finwright.Papers.Templates;

/// <summary>The templates of a fin.</summary>
public static class FinTemplates
{
    /// <summary>Draws them.</summary>
    /// <param name="result">A fin without errors, worked out to its parts at least. Ports are drawn, and jigs made, when it was worked out to the pour.</param>
    /// <param name="tongue">How they speak.</param>
    /// <returns>Planform, strip when there is one, sections, places to drill, base gauge, and a jig for each part that is poured.</returns>
    /// <exception cref="ArgumentException">The fin has errors, or was not worked out to its parts.</exception>
    public static IReadOnlyList<Template> Of(AssessmentResult result, Tongue tongue)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(tongue);
        TemplateFin fin = TemplateFin.Of(result);
        List<Template> templates = [PlanformTemplate.Draw(fin, tongue)];
        if (fin.Solids.Slot is { } slot && fin.Design.Shape.Strip is { } strip)
            templates.Add(StripTemplate.Draw(fin, slot, strip, tongue));
        templates.Add(SectionsTemplate.Draw(fin, tongue));
        templates.Add(DrillPlacesTemplate.Draw(fin, tongue));
        templates.Add(BaseGaugeTemplate.Draw(fin, tongue));
        if (fin.Poured is { } poured)
            templates.AddRange(poured.Parts.Select(part => PourJigTemplate.Draw(fin, part, tongue)));
        return templates;
    }
}
