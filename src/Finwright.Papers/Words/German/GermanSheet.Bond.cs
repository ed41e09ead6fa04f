namespace Finwright.Papers.Words.German;

internal sealed partial class GermanSheet
{
    public override string Bonding => "Trocken anpassen und kleben";

    public override string BondingSentence => "Was trocken nicht hineingeht, geht auch nass nicht hinein: erst alles probieren, dann aufrauen, abwischen und kleben.";

    public override StepWords CleanParts => new("Rand, Fäden und den Wulst der ersten Schicht mit dem Schaber abnehmen", "Sie halten die Teile auseinander.");

    public override StepWords GreaseThreads => new("Die Gewinde der Schrauben fetten und einschrauben, oder Bohrungen und Muttern mit Wachs füllen; Öffnungen abkleben", "Harz, das in eine Mutter läuft, ist nicht mehr herauszubekommen.");

    public override StepWords TryRods => new("Jeden Stab trocken bis zu seiner Marke einschieben und wieder herausziehen", "Ein Stab, der im nassen Harz auf halbem Weg klemmt, bleibt dort. Die Bohrung ausschaben, nie mit Gewalt.");

    public override StepWords BondRods => new("Die Stäbe aufrauen, abwischen, Stab und Bohrung mit Harz bestreichen, langsam drehend einschieben, Austretendes abwischen", "Eine Klebung hält nur auf rauem, sauberem Kohlestab; Drehen treibt die Luft hinaus.");

    public override StepWords TryBase => new("Basis und Blatt mit ihren Schrauben oder Stangen trocken zusammensetzen", "Die Flächen müssen ringsum schließen, und die Schrauben müssen von Hand gehen.");

    public override StepWords TryLids => new("Jeden Deckel in seine Vertiefung legen", "Er muss bündig mit der Haut liegen und Platz für etwas Dichtmasse lassen.");

    public override StepWords BondHardens => new("Die Klebungen härten lassen, wie das Datenblatt des Klebers sagt", "Eine Klebung, die sich vor dem Abbinden bewegt, hält nicht.");

    public override string NoDowels => "keine Dübel";

    public override string Sealing => "Abdichten und Lecks suchen";

    public override string SealingSentence => "Ein jetzt gefundenes Leck kostet einen Pinselstrich, ein später gefundenes die ganze Füllung.";

    public override StepWords FirstCoat => new("Die ganze Haut dünn mit Klarlack oder dünnem Epoxid streichen; die Mulden der Anschlüsse müssen zu sehen bleiben", "Das schließt die feinen Spalten zwischen Linien und Schichten.");

    public override StepWords SecondCoat => new("Wenn er trocken ist, den zweiten Anstrich quer zum ersten; über Nacht trocknen lassen", "Zwei dünne Anstriche schließen, was einer offen lässt.");

    public override StepWords DrillFeeds => new("Bei jedem Teil den Zulauf, Anschluss 1, bohren, wie die Tabelle beim Füllen sagt", "Die Prüfung braucht einen Weg hinein; die anderen Anschlüsse bleiben noch zu.");

    public override StepWords LeakTest => new("Seifenwasser auf die Haut streichen oder das Teil unter Wasser halten; die leere Spritze auf Anschluss 1 setzen und von Hand leicht drücken", "Blasen zeigen jedes Leck. Nie mit dem Kompressor: Ein Teil kann bersten.");

    public override StepWords MendLeaks => new("Lecks anzeichnen, das Teil trocknen, überstreichen, noch einmal prüfen; dann eine Nacht warm trocknen lassen", "Wasser in den Poren hindert das Harz am Aushärten.");

    public override StepWords TryBolts(string bore) => new($"Jede Schraube von Hand durch ihre Bohrung in ihre Mutter drehen; klemmt sie, die Bohrung auf {bore} aufbohren", "Eine Mutter, die schief sitzt, muss gefunden werden, bevor sie vergossen ist.");

    public override StepWords CutRods(string lengths) => new($"Die Stäbe nass auf Länge schneiden, mit Maske und Handschuhen: {lengths}", "Splitter und Staub von Kohlefaser gehen unter die Haut und in die Lunge.");

    public override StepWords TryPieces(int pieces, string dowels) => new($"Die {pieces} Stücke des Blatts trocken zusammensetzen, mit: {dowels}; an beiden Kanten entlangsehen und das Blatt auf die Umrissschablone legen", "Ein schief geklebtes Blatt bleibt schief.");

    public override StepWords BondPieces(string gap) => new($"Die Schnittflächen aufrauen und abwischen, mit angedicktem Epoxid kleben, Klebspalt {gap}, mit Klebeband und Brettern gerade halten", "Eine Klebung dieser Dicke ist am stärksten (gängige Praxis, ohne Quelle).");

    public override StepWords TapeOpenings(bool hasSlot) => new(hasSlot ? "Die Öffnungen von Bohrungen und Taschen und den Schlitz des Streifens abkleben" : "Die Öffnungen von Bohrungen und Taschen abkleben", "Lack und Harz dürfen nicht hinein.");
}
