namespace Finwright.Papers.Words.English;

internal sealed class EnglishPictures : PictureWords
{
    public override string Scale(string ratio) => $"scale {ratio}";

    public override string FrontOfBed => "front of the bed";

    public override string High(string height) => $"{height} high";

    public override string Up => "up";

    public override string Feed => "feed";

    public override string Vent => "vent";

    public override string Air(string volume) => $"air {volume}";

    public override string Water(string share) => $"water up to {share} of the height";

    public override string Thermometer => "thermometer";

    public override string TubeShortened => "tube and funnel not to scale";

    public override string HeldInBox => "base held in box or clamp";

    public override string HullPlane => "hull plane";

    public override string FromAbove => "from above";

    public override string FromSide => "from the side";

    public override string BentDashed => "dashed: bent by the weight";

    public override string Cushion => "something soft";

    public override string LeadingEdge => "leading edge";

    public override string TrailingEdge => "trailing edge";

    public override string Sheet(string thickness) => $"sheet {thickness}";

    public override string Slot(string width) => $"slot {width}";

    public override string Overlap(string length) => $"overlap {length}";

    public override string Overhang(string length) => $"overhang {length}";

    public override string Glue => "glue on both sides";

    public override string PrintedEdge(string thickness) => $"printed edge {thickness}";

    public override string WallBeside(string thickness) => $"wall {thickness}";

    public override string CutAt(string depth) => $"cut square to the trailing edge, {depth} below the hull";
}
