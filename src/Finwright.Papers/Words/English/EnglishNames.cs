using Finwright.Geometry.FromDesign;

namespace Finwright.Papers.Words.English;

internal sealed class EnglishNames : NameWords
{
    public override string Part(string name) => name;

    public override string Port(string name) => name;

    public override string Attitude(string name) => name;

    public override string Feature(string name) => name;

    public override string Size(HardwareItem item, Tongue tongue) => Measured(item.Size, item.Kind, tongue);

    public override string Resin(string name) => name;

    public override string Place(HardwareItem item) => item.Place;
}
