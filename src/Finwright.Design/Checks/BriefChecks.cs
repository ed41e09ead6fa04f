namespace Finwright.Design.Checks;

/// <summary>Speeds in order, a tail no wider than its board, and the spot's depth against the fin's.</summary>
internal static class BriefChecks
{
    public static IEnumerable<Finding> Of(FinDesign design)
    {
        Brief brief = design.Brief;
        if (string.IsNullOrWhiteSpace(design.Name))
            yield return new("blank-name", Severity.Error, "$.name", "The fin has no name, so its files and papers would have none.", "Give it a name.");

        if (brief.CruiseSpeedMPerS < brief.GettingGoingSpeedMPerS)
            yield return SpeedsOutOfOrder("$.brief.cruise_speed_m_per_s", "usual", brief.CruiseSpeedMPerS, "getting going", brief.GettingGoingSpeedMPerS);
        if (brief.TopSpeedMPerS < brief.CruiseSpeedMPerS)
            yield return SpeedsOutOfOrder("$.brief.top_speed_m_per_s", "highest", brief.TopSpeedMPerS, "usual", brief.CruiseSpeedMPerS);

        if (brief.TailWidthMm > brief.BoardWidthMm)
        {
            yield return new("tail-wider-than-board", Severity.Error, "$.brief.tail_width_mm", $"The board is {Quantity.Text(brief.TailWidthMm, "mm")} wide at the fin but {Quantity.Text(brief.BoardWidthMm, "mm")} at its widest.", "Measure both again.")
            {
                Value = Quantity.Text(brief.TailWidthMm, "mm"),
                Limit = Quantity.Text(brief.BoardWidthMm, "mm"),
            };
        }

        if (OutlineChecks.SpanMm(design.Shape.Outline) is (double span, string path) && span > brief.DraughtLimitMm)
        {
            yield return new("deeper-than-spot", Severity.Caution, path, $"The fin reaches {Quantity.Text(span, "mm")} below the hull; the spot allows {Quantity.Text(brief.DraughtLimitMm.Value, "mm")}, so it will touch the ground.", $"Take {Quantity.Text(Math.Round(span - brief.DraughtLimitMm.Value, 2), "mm")} off the span, or sail where it is deeper.")
            {
                Value = Quantity.Text(span, "mm"),
                Limit = Quantity.Text(brief.DraughtLimitMm.Value, "mm"),
            };
        }
    }

    private static Finding SpeedsOutOfOrder(string path, string fasterName, double faster, string slowerName, double slower) =>
        new("speeds-out-of-order", Severity.Error, path, $"The {fasterName} speed is {Quantity.Text(faster, "m/s")}, below the {slowerName} speed of {Quantity.Text(slower, "m/s")}.", "Give speeds that rise from getting going over cruise to top.")
        {
            Value = Quantity.Text(faster, "m/s"),
            Limit = Quantity.Text(slower, "m/s"),
        };
}
