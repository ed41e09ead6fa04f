using Finwright.Numerics;

namespace Finwright.Water.Sailing;

/// <summary>The trade's rules for the size of a fin, worked out for one brief.</summary>
/// <remarks>All for upright fins in freeride to slalom use; a swept weed fin is shorter and wider, a wave fin smaller.</remarks>
public static class RulesOfThumb
{
    private const double AreaPerSailLow = 41e-4, AreaPerSailHigh = 55e-4; // m² of fin per m² of sail
    private const double SpanPerWidth = 0.55;
    private const double SpanPerWidthSpread = 0.1; // judgement: the pairings read scatter by 2 %, kinds of board by more
    private const double SpanPerSailLow = 0.047, SpanPerSailHigh = 0.056; // m of span per m² of sail
    private const double SpanPerMass = 0.001; // m per kg of rider
    private const double UsualMass = 80; // kg

    /// <summary>The bands and where the fin stands in them.</summary>
    /// <param name="brief">Rider, sail, board.</param>
    /// <param name="area">Area of the fin, m².</param>
    /// <param name="span">Span of the fin, m.</param>
    public static IReadOnlyList<RuleOfThumb> For(SailingBrief brief, double area, double span)
    {
        ArgumentNullException.ThrowIfNull(brief);
        brief.Check();
        Require.Positive(area);
        Require.Positive(span);
        double byWidth = SpanPerWidth * brief.BoardWidth;
        double byMass = Math.Max(byWidth + SpanPerMass * (brief.RiderMass - UsualMass), 0);
        return
        [
            new(
                "area for the sail",
                FinMeasure.Area,
                AreaPerSailLow * brief.SailArea,
                AreaPerSailHigh * brief.SailArea,
                area,
                Certainty.CommonPractice,
                "41 to 55 cm² of fin for each m² of sail; sailors disagree within this band, and those who sail flat water at the upper end."),
            Span("length for the board", byWidth, Certainty.CommonPractice, "About 0.55 of the board's width, a tenth either way; the widest racing boards use 0.7."),
            new(
                "length for the sail",
                FinMeasure.Span,
                SpanPerSailLow * brief.SailArea,
                SpanPerSailHigh * brief.SailArea,
                span,
                Certainty.CommonPractice,
                "4.7 to 5.6 cm for each m² of sail, from slalom boards and their fins."),
            Span("length for the rider", byMass, Certainty.FromMemory, "The length for the board, and 1 cm more for each 10 kg of rider above 80 kg (less below)."),
        ];

        RuleOfThumb Span(string name, double middle, Certainty certainty, string basis) =>
            new(name, FinMeasure.Span, (1 - SpanPerWidthSpread) * middle, (1 + SpanPerWidthSpread) * middle, span, certainty, basis);
    }
}
