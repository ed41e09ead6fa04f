namespace Finwright.Papers.Words;

/// <summary>What the dimensioned drawing and the cover's drawing say.</summary>
public abstract class ViewWords
{
    /// <summary>What the dimensioned drawing is called.</summary>
    public abstract string DrawingTitle { get; }

    /// <summary>Beside the line of the hull.</summary>
    public abstract string Hull { get; }

    /// <summary>Above the arrow of the water.</summary>
    public abstract string Water { get; }

    /// <summary>A chord away from the root.</summary>
    /// <param name="share">Share of the span.</param>
    /// <param name="chord">The chord.</param>
    public abstract string ChordAt(string share, string chord);

    /// <summary>Above a section.</summary>
    /// <param name="letter">Its letter.</param>
    /// <param name="depth">Its depth below the hull.</param>
    public abstract string SectionAt(string letter, string depth);

    /// <summary>Above a section whose sizes are told in words.</summary>
    /// <param name="letter">Its letter.</param>
    /// <param name="depth">Its depth below the hull.</param>
    /// <param name="chord">Its chord.</param>
    /// <param name="thickness">Its thickness.</param>
    public abstract string SectionOfSize(string letter, string depth, string chord, string thickness);

    /// <summary>Above the base.</summary>
    public abstract string BaseView { get; }

    /// <summary>Above the sections.</summary>
    public abstract string SectionsView { get; }

    /// <summary>Key: printed wall.</summary>
    public abstract string Wall { get; }

    /// <summary>Key: core filled with resin.</summary>
    public abstract string Core { get; }

    /// <summary>Key: rod.</summary>
    public abstract string Rod { get; }

    /// <summary>Resin that has no name.</summary>
    public abstract string Resin { get; }

    /// <summary>Title block: scale.</summary>
    public abstract string ScaleLabel { get; }

    /// <summary>Title block: unit of lengths.</summary>
    public abstract string LengthsLabel { get; }

    /// <summary>Title block: date.</summary>
    public abstract string DateLabel { get; }

    /// <summary>Title block: area.</summary>
    public abstract string AreaLabel { get; }

    /// <summary>Title block: aspect ratio.</summary>
    public abstract string AspectRatioLabel { get; }

    /// <summary>Title block: rake.</summary>
    public abstract string RakeLabel { get; }

    /// <summary>Title block: names of the sections.</summary>
    public abstract string SectionsLabel { get; }

    /// <summary>Title block: material.</summary>
    public abstract string MaterialLabel { get; }

    /// <summary>What the fin is made of.</summary>
    /// <param name="filament">The filament.</param>
    /// <param name="infill">Share of the gyroid in the core.</param>
    /// <param name="resin">The resin.</param>
    public abstract string Material(string filament, string infill, string resin);

    /// <summary>Title block: the design.</summary>
    public abstract string DesignLabel { get; }

    /// <summary>Title block: part number.</summary>
    public abstract string NumberLabel { get; }

    /// <summary>Title block: version of the program.</summary>
    public abstract string ProgramLabel { get; }
}
