using Finwright.Geometry.FromDesign;

namespace Finwright.Papers.Words;

/// <summary>Names of parts, ports, attitudes and bought things.</summary>
public abstract class NameWords
{
    /// <summary>A part, for example "blade 1 of 2".</summary>
    public abstract string Part(string name);

    /// <summary>A port, for example "feed blade 1 front".</summary>
    public abstract string Port(string name);

    /// <summary>How a part is held, for example "trailing edge up, root tilted down 30°".</summary>
    public abstract string Attitude(string name);

    /// <summary>Something that is put in at a stop, for example "front box bolt: nut pocket".</summary>
    public abstract string Feature(string name);

    /// <summary>What to buy or cut, without length and count.</summary>
    public abstract string Size(HardwareItem item);

    /// <summary>Where it goes.</summary>
    public abstract string Place(HardwareItem item);
}
