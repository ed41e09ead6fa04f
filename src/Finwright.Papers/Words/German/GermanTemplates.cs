namespace Finwright.Papers.Words.German;

internal sealed partial class GermanTemplates : TemplateWords
{
    public override string CheckLine => "100 mm: diese Linie vor Gebrauch nachmessen";

    public override string Fin(string name, string? number) => string.IsNullOrEmpty(number) ? name : $"{name}, Teilenummer {number}";

    public override string TrueSize => "Wahre Größe: mit 100 % drucken und zuerst die Prüflinie nachmessen.";

    public override string LengthsIn(string unit) => $"Längeneinheit: {unit}.";

    public override string PlanformTitle => "Umriss";

    public override string PlanformUse => "Die gedruckten Teile auflegen und ihren Umriss prüfen; Tiefen und Linien auf das Blatt übertragen.";

    public override string PrintedBlade => "Rand des gedruckten Blatts";

    public override string Base => "Basis";

    public override string BaseAndFlange => "Basis und Flansch";

    public override string StripEdge => "äußerer Rand des Streifens";

    public override string SlotBottom => "Grund des Schlitzes für den Streifen";

    public override string CutBetweenParts => "Schnitt zwischen zwei Teilen des Blatts";

    public override string QuarterChordLine => "Viertelpunktlinie der Sehnen";

    public override string Hull => "Rumpf";

    public override string Depth(string depth) => $"Tiefe {depth}";

    public override string Chord(string chord) => $"Sehne {chord}";

    public override string StripTitle => "Streifen";

    public override string StripUse(string sheet, string width, string length) =>
        $"Den Streifen aus {sheet} dicker Folie schneiden, {width} breit und an der gedruckten Kante {length} lang. Gezeichnet, wie er flach in der Ebene des Blatts liegt. Vor dem Anrauen und Kleben im Schlitz anprobieren.";

    public override string StripCutLine => "hier schneiden";

    public override string StripPrintedEdge => "hier endet die gedruckte Hinterkante";

    public override string StripInSlot(string depth) => $"in den Schlitz, {depth} tief";

    public override string StripOutside(string overhang) => $"bleibt außen, {overhang}";

    public override string ToTheTip => "zur Spitze";

    public override string RootEnd => "Ende an der Wurzel";

    public override string SectionsTitle => "Profile";

    public override string SectionsUse(bool symmetric) => symmetric
        ? "Auf Karton kleben und ausschneiden: Das Stück zeigt das Profil, der Karton ringsum ist die Lehre. Den Karton entlang der Sehne trennen, das gibt eine Lehre für eine Seite; beim Schleifen an das Blatt halten."
        : "Auf Karton kleben und ausschneiden: Das Stück zeigt das Profil, der Karton ringsum ist die Lehre. Steuerbord liegt oben. Den Karton entlang der Sehne trennen, das gibt eine Lehre für jede Seite; beim Schleifen an das Blatt halten.";

    public override string Section(string depth, string share, string chord, string thickness, string behind) =>
        $"Tiefe {depth} ({share} der Spannweite): Sehne {chord}, Dicke {thickness}, {behind} hinter der Vorderkante";

    public override string SectionOutline => "Rand des Profils";

    public override string SectionMiddle => "Sehne; der Pfeil zeigt nach vorn, über die Vorderkante hinaus";

    public override string GreatestThickness => "größte Dicke";

    public override string DrillTitle => "Bohrstellen";

    public override string DrillUse =>
        "Das Papier auf die genannte Seite legen, Umriss auf Umriss, und die Kreuze durchstechen. Von Hand und mit Tiefenanschlag bohren, so tief, wie die Tabelle sagt, ab der Haut; langsam, damit der Kunststoff nicht schmilzt; Schutzbrille tragen. Abstand zu dem halten, was innen liegt. "
        + "Bohrungen und Taschen sind gedruckt; sie stehen hier, damit sie sich prüfen lassen. Tiefen mit Minus liegen über dem Rumpf.";

    public override string SeenFrom(bool starboard) => starboard ? "Steuerbordseite" : "Backbordseite";

    public override string PortRole(string name, bool feed)
    {
        string role = feed ? "Zulauf" : "Entlüftung";
        return name.Contains(role, StringComparison.OrdinalIgnoreCase) ? name : $"{name}, {role}";
    }

    public override string Drill(string diameter, string depth) => $"Ø {diameter}, {depth} tief";

    public override string SideOf(int side) => side > 0 ? "Steuerbord" : side < 0 ? "Backbord" : "Kante";

    public override string OutlineOfParts => "Blatt und Basis";

    public override string InsideLines => "innen: Bohrungen, Taschen, Dübel";

    public override string PartHead => "Teil";

    public override string PortHead => "Anschluss";

    public override string SideHead => "Seite";

    public override string DiameterHead => "Ø";

    public override string DrillDepthHead => "Tief ab Haut";

    public override string AngleHead => "Zur Blattebene";

    public override string FromOriginHead => "Hinter 0";

    public override string BelowHullHead => "Unter dem Rumpf";

    public override string InsideHead => "Innen";

    public override string FromHullHead => "Beginnt unter dem Rumpf";

    public override string ToHullHead => "Endet unter dem Rumpf";

    public override string BaseTitle => "Lehre für die Basis";

    public override string BaseUse =>
        "Auf Karton kleben, beide Stücke ausschneiden und im Finnenkasten anprobieren: Das lange zeigt Länge, Tiefe und Winkel der Enden, das schmale die Breite. Wo es klemmt oder klappert, die Maße der Basis im Entwurf berichtigen.";

    public override string CutLine => "hier schneiden";

    public override string BoltAxis => "Achse einer Schraube vom Deck";

    public override string Bolt(string thread) => $"Schraube {thread}";

    public override string CrossPin(string diameter) => $"Querstift, {diameter}";

    public override string WhatHead => "Was";

    public override string FromFrontCornerHead => "Hinter der vorderen Ecke";

    public override string AboveHullHead => "Über dem Rumpf";

    public override string LeanHead => "Nach oben hin nach hinten geneigt";

    public override string CutAcross => "quer";

    public override string Front => "vorn";

    public override string JigTitle(string part) => $"Gießlehre: {part}";

    public override string JigUse(string attitude) =>
        $"So wird das Teil beim Gießen gehalten: {attitude}. Das Papier auf ein stehendes Brett heften, die Tischlinie waagerecht; das Teil Umriss auf Umriss davor halten und die Stützen darunter setzen. Die Anschlüsse bleiben frei.";

    public override string PartFromTheSide => "das Teil, waagerecht von der Seite gesehen";

    public override string Support => "Stütze, Höhe daneben";

    public override string BenchLevel => "Tisch, waagerecht";

    public override string Plumb => "lotrecht";

    public override string Level => "waagerecht";

    public override string AlongHull => "gleichlaufend mit dem Rumpf";

    public override string AlongSpan => "längs der Spannweite, senkrecht zum Rumpf";

    public override string ReferenceToLevel(string direction, string angle) => $"{direction}, {angle} zur Waagerechten";

    public override string AboveBenchHead => "Über dem Tisch";
}
