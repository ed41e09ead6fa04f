namespace Finwright.Papers.Words.German;

internal sealed class GermanPictures : PictureWords
{
    public override string Scale(string ratio) => $"Maßstab {ratio}";

    public override string FrontOfBed => "Vorderseite des Druckbetts";

    public override string High(string height) => $"{height} hoch";

    public override string Up => "oben";

    public override string Feed => "Zulauf";

    public override string Vent => "Entlüftung";

    public override string Air(string volume) => $"Luft {volume}";

    public override string Water(string share) => $"Wasser bis {share} der Höhe";

    public override string Thermometer => "Thermometer";

    public override string TubeShortened => "Schlauch und Trichter nicht maßstäblich";

    public override string HeldInBox => "Basis im Kasten oder in der Zwinge";

    public override string HullPlane => "Rumpfebene";

    public override string FromAbove => "von oben";

    public override string FromSide => "von der Seite";

    public override string BentDashed => "gestrichelt: vom Gewicht gebogen";

    public override string Cushion => "etwas Weiches";

    public override string LeadingEdge => "Vorderkante";

    public override string TrailingEdge => "Hinterkante";

    public override string Sheet(string thickness) => $"Folie {thickness}";

    public override string Slot(string width) => $"Schlitz {width}";

    public override string Overlap(string length) => $"Überlappung {length}";

    public override string Overhang(string length) => $"Überstand {length}";

    public override string Glue => "Klebstoff auf beiden Seiten";

    public override string PrintedEdge(string thickness) => $"gedruckte Kante {thickness}";

    public override string WallBeside(string thickness) => $"Wand {thickness}";

    public override string CutAt(string depth) => $"Schnitt quer zur Hinterkante, {depth} unter dem Rumpf";
}
