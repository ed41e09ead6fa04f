namespace Finwright.Papers.Words;

/// <content>The print.</content>
public abstract partial class SheetWords
{
    /// <summary>Name of the chapter.</summary>
    public abstract string Print { get; }

    /// <summary>Its sentence.</summary>
    public abstract string PrintSentence(string time, string plates, string grams, string stops);

    /// <summary>The print was not planned.</summary>
    public abstract string PrintNotPlanned { get; }

    /// <summary>Head over the settings.</summary>
    public abstract string Settings { get; }

    /// <summary>A setting.</summary>
    public abstract string SettingColumn { get; }

    /// <summary>Plastic.</summary>
    public abstract string PlasticSetting { get; }

    /// <summary>Layer height.</summary>
    public abstract string LayerSetting { get; }

    /// <summary>Walls.</summary>
    public abstract string WallSetting { get; }

    /// <summary>So many lines so wide.</summary>
    public abstract string WallValue(int lines, string width, string thickness);

    /// <summary>Solid layers.</summary>
    public abstract string SolidSetting { get; }

    /// <summary>So many at the top and at the bottom.</summary>
    public abstract string SolidValue(int layers);

    /// <summary>Infill.</summary>
    public abstract string InfillSetting { get; }

    /// <summary>Gyroid of so much.</summary>
    public abstract string InfillValue(string share);

    /// <summary>Speed.</summary>
    public abstract string SpeedSetting { get; }

    /// <summary>Outer wall so fast, all else so fast.</summary>
    public abstract string SpeedValue(string outer, string inner);

    /// <summary>Temperatures.</summary>
    public abstract string HeatSetting { get; }

    /// <summary>By the data sheet.</summary>
    public abstract string HeatValue { get; }

    /// <summary>Supports.</summary>
    public abstract string SupportSetting { get; }

    /// <summary>Whether supports are needed.</summary>
    public abstract string SupportValue(bool needed);

    /// <summary>Head over the parts.</summary>
    public abstract string PartsHead { get; }

    /// <summary>Which plate.</summary>
    public abstract string PlateColumn { get; }

    /// <summary>Size on the bed.</summary>
    public abstract string SizeColumn(string unit);

    /// <summary>How it lies.</summary>
    public abstract string LiesColumn { get; }

    /// <summary>How long.</summary>
    public abstract string TimeColumn { get; }

    /// <summary>Plastic.</summary>
    public abstract string PlasticColumn { get; }

    /// <summary>Dry the filament.</summary>
    public abstract StepWords DryFilament(string temperature);

    /// <summary>Keep the parts as they lie.</summary>
    public abstract StepWords KeepAttitude { get; }

    /// <summary>A plate.</summary>
    public abstract string PlateHead(int number, string parts);

    /// <summary>What the picture of a plate shows.</summary>
    public abstract string PlateCaption(int number);

    /// <summary>Print a plate.</summary>
    public abstract StepWords PrintPlate(int number, string time, string grams);

    /// <summary>Try the gauge.</summary>
    public abstract StepWords TryGauge { get; }

    /// <summary>A brim.</summary>
    public abstract StepWords Brim(string parts, string width);

    /// <summary>Discs under the ends.</summary>
    public abstract StepWords Discs(string parts, string diameter);

    /// <summary>How a pause is set.</summary>
    public abstract StepWords SetPauses { get; }

    /// <summary>The layer before which it stops.</summary>
    public abstract string LayerColumn { get; }

    /// <summary>At what height.</summary>
    public abstract string HeightColumn { get; }

    /// <summary>What is put in.</summary>
    public abstract string PutInColumn { get; }

    /// <summary>Room up to the next layer.</summary>
    public abstract string RoomColumn { get; }

    /// <summary>Put it in and go on.</summary>
    public abstract StepWords PutIn { get; }

    /// <summary>Is put in after the print.</summary>
    public abstract StepWords PutInLater(string items);

    /// <summary>Cannot be put in.</summary>
    public abstract string CannotPutIn(string items);

    /// <summary>Look at the first layers.</summary>
    public abstract StepWords FirstLayers { get; }

    /// <summary>Let the plate cool.</summary>
    public abstract StepWords CoolPlate(string temperature);
}
