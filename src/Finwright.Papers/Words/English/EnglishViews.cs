namespace Finwright.Papers.Words.English;

internal sealed class EnglishViews : ViewWords
{
    public override string DrawingTitle => "Drawing";

    public override string Hull => "hull";

    public override string Water => "water";

    public override string ChordAt(string share, string chord) => $"chord at {share}: {chord}";

    public override string SectionAt(string letter, string depth) => $"{letter}: {depth} below the hull";

    public override string SectionOfSize(string letter, string depth, string chord, string thickness) => $"{letter}: depth {depth}, {chord} x {thickness}";

    public override string BaseView => "Base";

    public override string SectionsView => "Sections";

    public override string Wall => "wall";

    public override string Core => "filled core";

    public override string Rod => "rod";

    public override string Resin => "epoxy resin";

    public override string ScaleLabel => "Scale";

    public override string LengthsLabel => "Lengths in";

    public override string DateLabel => "Date";

    public override string AreaLabel => "Area";

    public override string AspectRatioLabel => "Aspect ratio";

    public override string RakeLabel => "Rake";

    public override string SectionsLabel => "Sections";

    public override string MaterialLabel => "Material";

    public override string Material(string filament, string infill, string resin) => $"{filament}, gyroid {infill}, filled with {resin}";

    public override string DesignLabel => "Design";

    public override string NumberLabel => "Part number";

    public override string ProgramLabel => "Finwright";
}
