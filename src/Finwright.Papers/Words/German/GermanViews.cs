namespace Finwright.Papers.Words.German;

internal sealed class GermanViews : ViewWords
{
    public override string DrawingTitle => "Zeichnung";

    public override string Hull => "Rumpf";

    public override string Water => "Wasser";

    public override string ChordAt(string share, string chord) => $"Sehne bei {share}: {chord}";

    public override string SectionAt(string letter, string depth) => $"{letter}: {depth} unter dem Rumpf";

    public override string SectionOfSize(string letter, string depth, string chord, string thickness) => $"{letter}: Tiefe {depth}, {chord} x {thickness}";

    public override string BaseView => "Basis";

    public override string SectionsView => "Schnitte";

    public override string Wall => "Wand";

    public override string Core => "gefüllter Kern";

    public override string Rod => "Stab";

    public override string Resin => "Epoxidharz";

    public override string ScaleLabel => "Maßstab";

    public override string LengthsLabel => "Längen in";

    public override string DateLabel => "Datum";

    public override string AreaLabel => "Fläche";

    public override string AspectRatioLabel => "Streckung";

    public override string RakeLabel => "Rake";

    public override string SectionsLabel => "Profile";

    public override string MaterialLabel => "Werkstoff";

    public override string Material(string filament, string infill, string resin) => $"{filament}, Gyroid {infill}, gefüllt mit {resin}";

    public override string DesignLabel => "Entwurf";

    public override string NumberLabel => "Teilenummer";

    public override string ProgramLabel => "Finwright";
}
