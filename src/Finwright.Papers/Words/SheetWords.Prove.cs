using Finwright.Assessment.Figures;
using Finwright.Design;
using Finwright.Strength.Margins;

namespace Finwright.Papers.Words;

/// <content>The bench and the first sail.</content>
public abstract partial class SheetWords
{
    /// <summary>Name of the chapter.</summary>
    public abstract string Prove { get; }

    /// <summary>Its sentence.</summary>
    public abstract string ProveSentence(string mass, string distance, string where, string tip);

    /// <summary>The bench was not predicted.</summary>
    public abstract string ProveUnknown(string mass, string distance, string where);

    /// <summary>Why, and what to do, as the assessment says it.</summary>
    public abstract string ProveReason { get; }

    /// <summary>A place on the chord.</summary>
    public abstract string Where(ChordPlace place);

    /// <summary>What the picture shows.</summary>
    public abstract string BenchCaption { get; }

    /// <summary>How the root is taken to be held.</summary>
    public abstract StepWords HoldBase(RootHold hold);

    /// <summary>Wait for the full cure.</summary>
    public abstract StepWords FullCure { get; }

    /// <summary>Keep clear.</summary>
    public abstract StepWords StandClear { get; }

    /// <summary>Read without the weight.</summary>
    public abstract StepWords ReadBefore { get; }

    /// <summary>Hang the weight.</summary>
    public abstract StepWords Hang(string mass, string distance, string where);

    /// <summary>Read with it.</summary>
    public abstract StepWords ReadLoaded { get; }

    /// <summary>Read after it.</summary>
    public abstract StepWords ReadAfter { get; }

    /// <summary>When to stop.</summary>
    public abstract StepWords StopWhen { get; }

    /// <summary>When the first crack is expected.</summary>
    public abstract string FirstCrack(string times, string part, string depth);

    /// <summary>What may give.</summary>
    public abstract string Stressed(StressedPart part);

    /// <summary>The blade bends farther than the method is good for.</summary>
    public abstract string BendsFar(string share, string limit);

    /// <summary>A place.</summary>
    public abstract string ReadAtColumn { get; }

    /// <summary>What is predicted.</summary>
    public abstract string PredictedColumn(string unit);

    /// <summary>Its range.</summary>
    public abstract string RangeColumn { get; }

    /// <summary>What it must not pass.</summary>
    public abstract string PassColumn { get; }

    /// <summary>Reading before.</summary>
    public abstract string BeforeColumn { get; }

    /// <summary>Reading with the weight.</summary>
    public abstract string LoadedColumn { get; }

    /// <summary>Reading after.</summary>
    public abstract string AfterwardsColumn { get; }

    /// <summary>Difference.</summary>
    public abstract string DifferenceColumn { get; }

    /// <summary>A place by its letter.</summary>
    public abstract string Place(string letter, string where, bool isTip);

    /// <summary>Turn of the tip.</summary>
    public abstract string TipTurn { get; }

    /// <summary>Turn where the weight hangs.</summary>
    public abstract string LoadTurn { get; }

    /// <summary>How the turn is read.</summary>
    public abstract string TurnNote { get; }

    /// <summary>How the table is to be read.</summary>
    public abstract string PassNote { get; }

    /// <summary>What it should sound like.</summary>
    public abstract StepWords Tap(string frequencies);

    /// <summary>Blanks for sound and stiffness.</summary>
    public abstract IReadOnlyList<string> ProveBlanks { get; }

    /// <summary>What the readings are for.</summary>
    public abstract string ReadingsFor { get; }

    /// <summary>What the figure shows.</summary>
    public abstract string BendCaption { get; }

    /// <summary>Title of the figure of the bench.</summary>
    public abstract string BenchTitle(string fin);

    /// <summary>What the figure of the bench says, in millimetres.</summary>
    public abstract BenchFigureWords BenchCurves { get; }

    /// <summary>Name of the chapter.</summary>
    public abstract string Sail { get; }

    /// <summary>Its sentence.</summary>
    public abstract string SailSentence { get; }

    /// <summary>Steps of the first sail.</summary>
    public abstract IReadOnlyList<StepWords> SailSteps { get; }

    /// <summary>Head over verdicts that count on the water.</summary>
    public abstract string SailHeed { get; }

    /// <summary>Blanks for notes.</summary>
    public abstract IReadOnlyList<string> SailBlanks { get; }
}
