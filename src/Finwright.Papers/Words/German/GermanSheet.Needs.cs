namespace Finwright.Papers.Words.German;

internal sealed partial class GermanSheet
{
    public override string Needs => "Was gebraucht wird";

    public override string NeedsSentence => "Alles kaufen, zuschneiden und bereitlegen, bevor der erste Druck beginnt: Ein Halt des Druckers wartet nicht auf eine Mutter aus der Post.";

    public override string CutList => "Kaufen und zuschneiden";

    public override string CutNothing => "Außer Kunststoff und Harz ist nichts zu kaufen oder zuzuschneiden.";

    public override string ItemColumn => "was";

    public override string CountColumn => "Anzahl";

    public override string LengthColumn => "Länge";

    public override string ToleranceColumn => "wie genau";

    public override string PlaceColumn => "wo";

    public override string BoltTolerance => "durch die Mutter, nicht bis ans Ende der Bohrung";

    public override string ByBox => "nach dem Kasten";

    public override string ByTemplate => "nach der Schablone";

    public override string Materials => "Kunststoff und Harz";

    public override string AmountColumn => "Menge";

    public override string RemarkColumn => "davon";

    public override string MixByDataSheet => "Harz und Härter im Verhältnis des Datenblatts";

    public override string NoMix => "kein Teil wird gefüllt";

    public override string MaterialsNote => "Rand, Umlauf und Versuche sind nicht mitgezählt. Ein Viertel mehr Harz als hier bereithalten: Ein Leck nimmt etwas davon (gängige Praxis, ohne Quelle).";

    public override string Tools => "Werkzeug und Kleinteile";

    public override StepWords ToolsBody => new("Nitrilhandschuhe (viele), Augenschutz, lange Ärmel, Maske P2 oder P3, Seife und Wasser, bewegte Luft", "Für Haut, Augen und Lunge, vom ersten Anstrich bis zum letzten Schleifpapier.");

    public override StepWords ToolsSealing => new("Klarlack oder dünnes Epoxid mit Pinsel, Klebeband, Seifenwasser", "Um den Druck dicht zu machen und zu finden, wo er es nicht ist.");

    public override StepWords ToolsTray => new("Flaches Metallblech, im Freien, auf Stein oder Sand", "Für einen Becher, der heiß wird, und für dünn ausgestrichene Reste.");

    public override StepWords ToolsBonding => new("Schleifpapier mit Körnung 120 bis 180, Isopropanol, saubere Tücher, angedicktes oder zähes Epoxid, Zwingen", "Eine Klebung hält nur auf rauen, sauberen Flächen.");

    public override StepWords ToolsSanding => new("Wasserfestes Schleifpapier mit Körnung 80, 180, 240 und 400, harter Schleifklotz, die Profilschablonen", "Zum Formen, Glätten und Fertigschleifen.");

    public override StepWords ToolsFitting => new("Trockene Seife, Fett für die Gewinde, Schraubendreher oder Schlüssel der Schrauben, weiche Scheiben für ihre Köpfe", "Um zu finden, wo die Basis anliegt, und um Luft aus den Schraubenlöchern zu halten.");

    public override string BoltNote => "Schrauben: Die Länge ist der Teil in der Finne. Das Brett über der Basis kommt dazu, an jedem Schraubenloch gemessen; die Schrauben eines Kastens sind oft verschieden lang. Wie genau ein Schnitt sein muss, ist gängige Praxis, ohne Quelle; jede Bohrung ist ein wenig tiefer als das, was hineingeht.";

    public override string CutShort(string atMost) => $"nicht länger; bis {atMost} kürzer";

    public override string RodTolerance(string atMost) => $"nicht länger; bis {atMost} kürzer, Enden gerundet";

    public override string Filament(string name) => $"Filament: {name}";

    public override string OfSpool(string share, string spool) => $"{share} einer vollen Spule von {spool}";

    public override string Mix(string name) => $"Harz mit Härter: {name}";

    public override string MixOf(string resin, string hardener) => $"{resin} Harz, {hardener} Härter";

    public override StepWords ToolsMixing(string cups, string scales) => new($"Saubere Becher ({cups}, dazu einige als Vorrat), Rührstäbe, Waage, die {scales} zeigt, Uhr", "Harz und Härter werden gewogen, nicht geschätzt: Im falschen Verhältnis härtet es nie.");

    public override StepWords ToolsPouring(string drill) => new($"Bohrer {drill}, Spritze von 50 bis 100 ml mit passendem Schlauch, Trichter, Klebeband für Marken", "Um die Anschlüsse zu öffnen und das Harz langsam einzufüllen.");

    public override StepWords ToolsBath(string level) => new($"Wanne, in die jedes Teil in seiner Lage passt, gefüllt bis {level} seiner Höhe, mit einer Halterung; Thermometer am Draht", "Wasser führt die Wärme des Aushärtens ab.");

    public override StepWords ToolsBench(string mass, string gauge) => new($"Gewicht von {mass}, gewogen; Schlaufe aus Schnur; Maßstab oder Messuhr, die {gauge} zeigt; ein Block oder Kasten, der die Basis hält; etwas Weiches darunter", "Um die Finne an Land zu prüfen.");
}
