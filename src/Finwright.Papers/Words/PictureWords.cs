namespace Finwright.Papers.Words;

/// <summary>What the pictures of the build sheet say. Numbers come with their units.</summary>
public abstract class PictureWords
{
    /// <summary>The scale of a picture, for example of "1:2".</summary>
    public abstract string Scale(string ratio);

    /// <summary>The edge of the bed that is nearest to who stands before the printer.</summary>
    public abstract string FrontOfBed { get; }

    /// <summary>How high a part stands on the bed.</summary>
    public abstract string High(string height);

    /// <summary>Beside the arrow that points up.</summary>
    public abstract string Up { get; }

    /// <summary>The port for resin.</summary>
    public abstract string Feed { get; }

    /// <summary>A port for air.</summary>
    public abstract string Vent { get; }

    /// <summary>Air that stays.</summary>
    public abstract string Air(string volume);

    /// <summary>How far the part stands in water.</summary>
    public abstract string Water(string share);

    /// <summary>Where the thermometer goes.</summary>
    public abstract string Thermometer { get; }

    /// <summary>That the tube is longer than it is drawn.</summary>
    public abstract string TubeShortened { get; }

    /// <summary>What holds the base on the bench.</summary>
    public abstract string HeldInBox { get; }

    /// <summary>The plane of the hull.</summary>
    public abstract string HullPlane { get; }

    /// <summary>A view from above.</summary>
    public abstract string FromAbove { get; }

    /// <summary>A view from the side.</summary>
    public abstract string FromSide { get; }

    /// <summary>What the dashed line is: the blade bent by the weight.</summary>
    public abstract string BentDashed { get; }

    /// <summary>What lies under the weight.</summary>
    public abstract string Cushion { get; }

    /// <summary>The leading edge.</summary>
    public abstract string LeadingEdge { get; }

    /// <summary>The trailing edge.</summary>
    public abstract string TrailingEdge { get; }

    /// <summary>The sheet of a strip.</summary>
    public abstract string Sheet(string thickness);

    /// <summary>The slot of a strip.</summary>
    public abstract string Slot(string width);

    /// <summary>How far sheet and blade overlap.</summary>
    public abstract string Overlap(string length);

    /// <summary>How far the sheet stands out.</summary>
    public abstract string Overhang(string length);

    /// <summary>What is between sheet and slot.</summary>
    public abstract string Glue { get; }

    /// <summary>The printed trailing edge.</summary>
    public abstract string PrintedEdge(string thickness);

    /// <summary>What is left on each side of the slot.</summary>
    public abstract string WallBeside(string thickness);

    /// <summary>Where a cut across lies.</summary>
    public abstract string CutAt(string depth);
}
