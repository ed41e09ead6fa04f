using Finwright.Assessment.Figures;

namespace Finwright.Papers.Words;

/// <content>The cure.</content>
public abstract partial class SheetWords
{
    /// <summary>Name of the chapter.</summary>
    public abstract string Cure { get; }

    /// <summary>Its sentence.</summary>
    public abstract string CureSentence(string part, string peak, string after);

    /// <summary>The cure was not worked out.</summary>
    public abstract string CureNotWorkedOut { get; }

    /// <summary>The cure of a part was not followed to its end.</summary>
    public abstract string CureLost(string part);

    /// <summary>Head of the box that says what must never be passed.</summary>
    public abstract string NeverAbove(string temperature);

    /// <summary>The same without a number.</summary>
    public abstract string NeverAboveUnknown { get; }

    /// <summary>What to do when it runs away.</summary>
    public abstract IReadOnlyList<string> Runaway(bool isBathed);

    /// <summary>Into the water.</summary>
    public abstract StepWords IntoWater(string part, string temperature, string level, string time);

    /// <summary>Into still air.</summary>
    public abstract StepWords IntoAir(string part, string temperature);

    /// <summary>How long it must stand in water at least.</summary>
    public abstract string WaterNeeded(string time);

    /// <summary>No water is needed.</summary>
    public abstract string WaterNotNeeded { get; }

    /// <summary>Even water is not enough.</summary>
    public abstract string WaterNotEnough { get; }

    /// <summary>What to expect.</summary>
    public abstract string Expected(string peak, string after);

    /// <summary>Blank: poured at.</summary>
    public abstract string PouredAt { get; }

    /// <summary>Blank: into the water at.</summary>
    public abstract string IntoWaterAt { get; }

    /// <summary>Blank: out of the water at.</summary>
    public abstract string OutOfWaterAt { get; }

    /// <summary>Blank: handled at.</summary>
    public abstract string HandledAt { get; }

    /// <summary>Measure.</summary>
    public abstract StepWords Measure(string place);

    /// <summary>So far below the hull plane, or above it.</summary>
    public abstract string HottestPlace(string distance, bool isBelow);

    /// <summary>Time after the pour.</summary>
    public abstract string HoursColumn { get; }

    /// <summary>Resin expected.</summary>
    public abstract string ResinHeatColumn { get; }

    /// <summary>Skin expected.</summary>
    public abstract string SkinHeatColumn { get; }

    /// <summary>Time of the clock.</summary>
    public abstract string ClockColumn { get; }

    /// <summary>What was measured.</summary>
    public abstract string MeasuredColumn { get; }

    /// <summary>What the figure shows.</summary>
    public abstract string CureCaption(string part);

    /// <summary>Title of the figure of a cure.</summary>
    public abstract string CureTitle(string fin, string part);

    /// <summary>What the figure of a cure says, in °C.</summary>
    public abstract CureCurveWords CureCurves { get; }

    /// <summary>When it can be handled.</summary>
    public abstract StepWords Handle(string part, string time, string range);

    /// <summary>When it can be handled is not known.</summary>
    public abstract StepWords HandleUnknown(string part);

    /// <summary>From the early end to the late one, or longer than it was followed.</summary>
    public abstract string HandleRange(string early, string? late);

    /// <summary>Wait for hardness.</summary>
    public abstract StepWords Harden { get; }

    /// <summary>Close the ports.</summary>
    public abstract StepWords ClosePorts { get; }
}
